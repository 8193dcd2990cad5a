/** Where two JSON values differ. Pure. */

export interface Difference {
  readonly file: string;
  /** Place in the file: a JSON pointer (RFC 6901), a line of a text, or empty for the whole. */
  readonly where: string;
  readonly found: string;
  readonly expected: string;
}

/** Whether the value is one that a later program computes beside what was published, and changes nothing that was. */
export const isAddition = ({ found }: Difference): boolean => found === NOTHING;

const NOTHING = 'nothing';
const DECIMAL = /^-?\d+(\.\d+)?$/;

/** How many values in a document are numbers or decimals: the figures that a comparison holds side by side. */
export function countFigures(value: unknown): number {
  if (typeof value === 'number') return 1;
  if (typeof value === 'string') return DECIMAL.test(value) ? 1 : 0;
  if (value === null || typeof value !== 'object') return 0;
  return Object.values(value).reduce<number>((sum, part) => sum + countFigures(part), 0);
}

/** Differences of two JSON texts or, where they are none, of two texts line by line. */
export function differencesOf(file: string, found: string, expected: string): Difference[] {
  if (found === expected) return [];
  const [mine, theirs] = [asJson(found), asJson(expected)];
  const told =
    file.endsWith('.json') && mine !== undefined && theirs !== undefined
      ? within(file, '', mine, theirs)
      : byLine(file, found.split('\n'), expected.split('\n'));
  return told.length > 0 ? told : [{ file, where: '', found: 'the same values in other bytes', expected: 'the canonical form (RFC 8785)' }];
}

function asJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function within(file: string, where: string, found: unknown, expected: unknown): Difference[] {
  if (isContainer(found) && isContainer(expected) && Array.isArray(found) === Array.isArray(expected)) {
    const keys = [...new Set([...Object.keys(found), ...Object.keys(expected)])];
    return keys.flatMap((key) => within(file, `${where}/${escaped(key)}`, found[key], expected[key]));
  }
  return Object.is(found, expected) ? [] : [{ file, where, found: shown(found), expected: shown(expected) }];
}

const isContainer = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;
const escaped = (key: string): string => key.replaceAll('~', '~0').replaceAll('/', '~1');

function shown(value: unknown): string {
  const text = value === undefined ? NOTHING : JSON.stringify(value);
  return text.length > 120 ? `${text.slice(0, 120)}…` : text;
}

const byLine = (file: string, found: readonly string[], expected: readonly string[]): Difference[] =>
  Array.from({ length: Math.max(found.length, expected.length) }, (_, i) => i)
    .filter((i) => found[i] !== expected[i])
    .map((i) => ({ file, where: `line ${i + 1}`, found: shown(found[i]), expected: shown(expected[i]) }));
