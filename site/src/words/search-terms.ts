const NUMBER = /^(\d+(?:[.]\d+)?)(kg|lb|mm|n)?$/;
/** A figure with its unit, as labels and anglers write it: `20 lb`, `20lbs`, `9.5 kgf`. */
const FIGURE = /(\d+(?:[.]\d+)?)\s*(kg|lb|mm|n)[fs]?(?![\p{L}\d])/giu;

/** `Kelpseam 8, PE 1.0` → `Kelpseam`, `8`, `PE`, `1.0`: a decimal number stays one word, with a comma as well; `20 lb` is `20` and `20lb`. */
export const tokens = (text: string): string[] =>
  text
    .replaceAll(/(?<=\d),(?=\d)/g, '.')
    .replaceAll(FIGURE, '$1 $1$2')
    .split(/[\s,;:()/·]+/)
    .filter(Boolean);

/** Words without case, numbers without the zeros that one may leave out: `0.20` and `0.2` are the same. */
export function term(word: string): string {
  const [, number, unit = ''] = NUMBER.exec(word.toLowerCase()) ?? [];
  return number === undefined ? word.toLowerCase() : `${Number(number)}${unit}`;
}

/** A number is the one that was asked for; a word may be its beginning, or misspelt. */
export const isWord = (word: string): boolean => !NUMBER.test(word.toLowerCase());
