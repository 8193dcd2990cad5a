/**
 * Marks words that readers see: say`place ${place} of ${placed}`. As written they are English; a build for a house of another language, or with
 * words of its own, puts those in their place (`../languages/put-words.ts`), so that no page carries a table of words.
 */
export const say = (parts: TemplateStringsArray, ...values: readonly unknown[]): string =>
  parts.map((part, index) => (index === 0 ? part : String(values[index - 1]) + part)).join('');
