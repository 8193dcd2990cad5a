/**
 * Places (RFC 6901) in which two JSON values differ, the deepest that can be named. Pure.
 * @param one any JSON value
 * @param other any JSON value
 */
export function differencesOf(one: unknown, other: unknown, at = ''): string[] {
  if (Object.is(one, other)) return [];
  if (!isObject(one) || !isObject(other) || Array.isArray(one) !== Array.isArray(other)) return [at];
  const names = [...new Set([...Object.keys(one), ...Object.keys(other)])];
  return names.flatMap((name) => differencesOf(one[name], other[name], `${at}/${name.replaceAll('~', '~0').replaceAll('/', '~1')}`));
}

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;
