import { readFileSync } from 'node:fs';
import { sha256 } from '../../api/platform/identifiers/identifiers.js';
import { canonicalJson, canonicalParts } from '../../api/reckoning/canonical-json.js';

/** Each case names its source: RFC 8785 with the test data of its author, and the examples of FIPS 180-4. */
const [numbers, documents, digests] = JSON.parse(readFileSync('tests/releases/fixtures/canonical-json.json', 'utf8'));

const numberOf = (hex: string): number => Buffer.from(hex, 'hex').readDoubleBE();

const written: [string, string][] = numbers.inputs.ieee754_hex.map((hex: string, i: number) => [hex, numbers.expected.text[i]]);
test.each(written)('%s is written %s', (hex: string, text: string) => {
  expect(canonicalJson(numberOf(hex))).toBe(text);
});

test.each(numbers.inputs.must_be_rejected as string[])('%s is no number of JSON', (hex) => {
  expect(() => canonicalJson(numberOf(hex))).toThrow();
});

test.each(Object.keys(documents.inputs.json_text))('the document "%s" has one text and one digest', (name) => {
  const text = canonicalJson(JSON.parse(documents.inputs.json_text[name]));
  expect(Buffer.from(text).toString('hex')).toBe(documents.expected[name].utf8_hex);
  expect(sha256(text)).toBe(documents.expected[name].sha256);
  expect([...canonicalParts(JSON.parse(documents.inputs.json_text[name]))].join('')).toBe(text);
});

const digested: [string, string][] = digests.inputs.ascii.map((text: string, i: number) => [text, digests.expected.sha256[i]]);
test.each(digested)('SHA-256 of "%s"', (text, digest) => {
  expect(sha256(text)).toBe(digest);
  expect(sha256(Buffer.from(text))).toBe(digest);
});

test('a large document has the same text in parts, none of them much larger than 64 kB', () => {
  const rows = Array.from({ length: 3000 }, (_, i) => ({ b: `ü${i}`, a: [i / 7, null, { '10': 1, '9': [], x: undefined }] }));
  const document = { z: { y: { x: { w: rows } } }, a: [], n: null, left: undefined };
  const parts = [...canonicalParts(document)];
  expect(parts.join('')).toBe(canonicalJson(document));
  expect(parts.length).toBeGreaterThan(2);
  expect(Math.max(...parts.map(({ length }) => length))).toBeLessThan(70_000);
});

test('what is not JSON is refused', () => {
  expect(() => canonicalJson(undefined)).toThrow(TypeError);
});
