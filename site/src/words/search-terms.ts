/** `Kelpseam 8, PE 1.0` → `Kelpseam`, `8`, `PE`, `1.0`: a decimal number stays one word, with a comma as well. */
export const tokens = (text: string): string[] =>
  text
    .replaceAll(/(?<=\d),(?=\d)/g, '.')
    .split(/[\s,;:()/·]+/)
    .filter(Boolean);

/** Words without case, numbers without the zeros that one may leave out: `0.20` and `0.2` are the same. */
export function term(word: string): string {
  return /^\d+([.]\d+)?$/.test(word) ? String(Number(word)) : word.toLowerCase();
}

/** A number is the one that was asked for; a word may be its beginning, or misspelt. */
export const isWord = (word: string): boolean => !/^\d+([.]\d+)?$/.test(word);
