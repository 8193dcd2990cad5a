/** Ends of names that say a unit → its symbol (NIST SP 811). */
const UNITS: readonly (readonly [end: RegExp, symbol: string])[] = [
  [/[a-z]Percent$/, '%'],
  [/[a-z]MPa$/, 'MPa'],
  [/[a-z]Tex$/, 'tex'],
  [/[a-z]Bytes$/, 'B'],
  [/[a-z]Ms$/, 'ms'],
  [/[a-z]Mm$/, 'mm'],
  [/[a-z]N$/, 'N'],
  [/[a-z]S$/, 's'],
  [/[a-z]M$/, 'm'],
];
const SAYS_A_UNIT = /\[[^\]]+\]/;

/** The symbol of the unit that a field's name ends in; null where it says none. */
export const unitOf = (name: string): string | null => UNITS.find(([end]) => end.test(name))?.[1] ?? null;

/** What is said of a field, with the unit that its name says, where the words say none. */
export function withUnit(name: string, description: unknown): string | null {
  const unit = unitOf(name);
  return unit === null || typeof description !== 'string' || SAYS_A_UNIT.test(description) ? null : `${description} [${unit}]`;
}
