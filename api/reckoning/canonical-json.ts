import canonicalize from 'canonicalize';

/**
 * Canonical text of a JSON value (RFC 8785): one text, so one digest, for one content.
 * @throws TypeError for what is not JSON
 */
export function canonicalJson(value: unknown): string {
  const text = canonicalize(value);
  if (text === undefined) throw new TypeError('A release holds JSON only; found undefined or a function.');
  return text;
}
