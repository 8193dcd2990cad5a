/** What separates the cells of a file, of readings or of a logger. Pure. */
export const SEPARATORS = [',', ';', '\t'] as const;
export type Separator = (typeof SEPARATORS)[number];

/** A first line by which a spreadsheet says what separates the cells. */
const DECLARED = new RegExp(`^"?sep=([${SEPARATORS.join('')}])"?$`, 'i');

export const declaredSeparator = (line: string): Separator | null => (DECLARED.exec(line.trimEnd())?.[1] as Separator | undefined) ?? null;

/** Whichever the header has most of, a comma before the others. */
export function separatorOfHeader(line: string): Separator {
  const counts = SEPARATORS.map((separator) => line.split(separator).length);
  return SEPARATORS[counts.indexOf(Math.max(...counts))] ?? ',';
}

/** What stands in each of some lines of numbers; a tab or a semicolon before a comma, which may be a decimal comma beside them. */
export const separatorOfNumbers = (lines: readonly string[]): Separator =>
  SEPARATORS.findLast((separator) => lines.every((line) => line.includes(separator))) ?? ',';

/** Whether a comma in a number is its decimal sign: wherever it separates no cells. */
export const hasDecimalComma = (separator: Separator): boolean => separator !== ',';
