import { readFileSync } from 'node:fs';
import { sha256 } from '../../api/platform/identifiers/identifiers.js';
import { canonicalJson } from '../../api/reckoning/canonical-json.js';

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
});

const digested: [string, string][] = digests.inputs.ascii.map((text: string, i: number) => [text, digests.expected.sha256[i]]);
test.each(digested)('SHA-256 of "%s"', (text, digest) => {
  expect(sha256(text)).toBe(digest);
  expect(sha256(Buffer.from(text))).toBe(digest);
});

test('what is not JSON is refused', () => {
  expect(() => canonicalJson(undefined)).toThrow(TypeError);
});
