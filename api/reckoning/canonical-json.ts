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

/** So deep a value is taken apart; what lies below, a submission or a row, is one piece of text. */
const DEPTH = 5;
const PART_LENGTH = 65_536;

/** The same text in parts: what holds a large edition is then never one text in memory. */
export function* canonicalParts(value: unknown): Generator<string> {
  let part = '';
  for (const piece of piecesOf(value, DEPTH)) {
    part += piece;
    if (part.length < PART_LENGTH) continue;
    yield part;
    part = '';
  }
  yield part;
}

function* piecesOf(value: unknown, depth: number): Generator<string> {
  if (depth === 0 || value === null || typeof value !== 'object' || 'toJSON' in value) {
    yield canonicalJson(value);
    return;
  }
  const isList = Array.isArray(value);
  const inner = isList
    ? value.map((one: unknown) => ['', one === undefined ? null : one] as const)
    : Object.entries(value)
        .filter(([, one]) => one !== undefined)
        .sort(([one], [other]) => (one < other ? -1 : 1))
        .map(([name, one]: [string, unknown]) => [`${canonicalJson(name)}:`, one] as const);
  yield isList ? '[' : '{';
  for (const [i, [name, one]] of inner.entries()) {
    yield i === 0 ? name : `,${name}`;
    yield* piecesOf(one, depth - 1);
  }
  yield isList ? ']' : '}';
}
