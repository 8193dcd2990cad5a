/** The code of a check → words: "specimens/time-to-break" → "specimens: time to break". */
export const findingKind = (code: string): string => code.replace('/', ': ').replaceAll('-', ' ');
