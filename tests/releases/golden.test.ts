/**
 * Releases that were written once and are never edited, three of each format: a first, its correction, and the year after. The program
 * that lies in a release goes on to verify it; what today's program computes from inputs of its own format may hold more, and nothing else.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { join } from 'node:path';
import {
  catalogueDocumentSchema,
  categoryDocumentSchema,
  editionDocumentSchema,
  manifestSchema,
  methodDocumentSchema,
  recordsDocumentSchema,
  variantDocumentSchema,
} from '../../api/contract/documents/release-documents.js';
import { computeRelease } from '../../api/reckoning/compute-release.js';
import type { Bundle } from '../../api/reckoning/documents/bundle.js';
import { keyNow } from '../../api/reckoning/documents/format-1.js';
import { releasesAt } from '../../api/releases/verify/release-source.js';
import { verifyRelease } from '../../api/releases/verify/verify-release.js';
import { runVerify } from '../support/run-verify.js';

const GOLDEN = fileURLToPath(new URL('golden', import.meta.url));
const FORMATS = ['format-1', 'format-2', 'format-3'];
const [NOW, ...BEFORE] = FORMATS.toReversed();
/** A release of today's format by the program that first wrote it, which compared all pairs at once. */
const FIRST_WRITTEN = 'format-3-as-first-written';
const NAMES = ['2026-1', '2026-2', '2027-1'];
const SURROUNDINGS = { TZ: 'Asia/Tokyo', LC_ALL: 'de_DE.UTF-8' };
const read = (...path: string[]): unknown => JSON.parse(readFileSync(join(GOLDEN, ...path), 'utf8'));
const documentsOf = (format: string, name: string): string[] =>
  (read(format, name, 'manifest.json') as { files: { path: string }[] }).files
    .map(({ path }) => path)
    .filter((path) => path.startsWith('documents/'));

/** Places where a value that was written is not computed any more. */
function lost(written: unknown, computed: unknown, where = ''): string[] {
  if (written !== null && typeof written === 'object') {
    if (computed === null || typeof computed !== 'object') return [where];
    return Object.entries(written).flatMap(([key, value]) => lost(value, (computed as Record<string, unknown>)[key], `${where}/${key}`));
  }
  return Object.is(written, computed) ? [] : [where];
}

test('they are there', () => {
  expect(readdirSync(GOLDEN)).toEqual([...FORMATS, FIRST_WRITTEN]);
  for (const format of FORMATS) expect(readdirSync(join(GOLDEN, format))).toEqual(NAMES);
});

test.each(FORMATS)(
  '%s: the program inside each still verifies all of them and their chain',
  async (format) => {
    const folder = join(GOLDEN, format);
    for (const name of NAMES) {
      const { code, output } = await runVerify(join(folder, name, 'verify.mjs'), folder, SURROUNDINGS);
      expect([name, code, /figures recomputed, all equal/.test(output)]).toEqual([name, 0, true]);
    }
  },
  60_000,
);

test('a release of today’s format by an older program verifies with the program that lies in it, and today’s tells what it computes otherwise', async () => {
  const folder = join(GOLDEN, FIRST_WRITTEN);
  const { code, output } = await runVerify(join(folder, '2026-1/verify.mjs'), folder, SURROUNDINGS);
  expect([code, output]).toEqual([0, expect.stringMatching(/figures recomputed, all equal/)]);
  const [source] = await releasesAt(folder);
  const { differences, otherwise } = await verifyRelease(source!, 'the digest of another program');
  expect(differences).toEqual([]);
  // Since then a claim has a rounded form beside it and a method tells the reproducibility that it states; places, intervals and chances of this season are the same.
  const inDocuments = otherwise.filter(({ file }) => file.startsWith('documents/'));
  expect(inDocuments.length).toBeGreaterThan(0);
  expect(inDocuments.filter(({ where }) => !/^\/(items\/\d+\/)?(claims\/\d+\/shown|parameters\/\d+)$/.test(where))).toEqual([]);
});

test.each(NAMES)(
  '%s of the format of today: the program of today computes every value that was published',
  (name) => {
    const { inputs } = read(NOW!, name, 'bundle.json') as Bundle;
    const computed = new Map(computeRelease(inputs).map(({ path, content }) => [path, content]));
    const documents = documentsOf(NOW!, name);
    expect(documents.length).toBeGreaterThan(10);
    for (const path of documents)
      expect([path, lost(read(NOW!, name, path), JSON.parse(computed.get(path) ?? 'null'))]).toEqual([path, []]);
  },
  60_000,
);

describe.each(BEFORE)('%s and the program of today', (before) => {
  test('it checks digests, signature and chain, says that it recomputed nothing, and does not end as if all were well', async () => {
    const folder = join(GOLDEN, before);
    for (const source of await releasesAt(folder)) expect(await verifyRelease(source)).toMatchObject({ figures: null, differences: [] });
    const { code, output } = await runVerify(join(GOLDEN, NOW!, '2026-1/verify.mjs'), folder, SURROUNDINGS);
    expect(code).toBe(2);
    expect(output.match(/NOT recomputed: .* Run the verify\.mjs that lies in it\./g)).toHaveLength(NAMES.length);
  });

  test.each(NAMES)('it reads every document of %s', (name) => {
    const schemas = {
      'edition.json': editionDocumentSchema,
      'catalogue.json': catalogueDocumentSchema,
      'records.json': recordsDocumentSchema,
      'standings/': categoryDocumentSchema,
      'variants/': variantDocumentSchema,
      'methods/': methodDocumentSchema,
    };
    manifestSchema.parse(read(before, name, 'manifest.json'));
    for (const [part, schema] of Object.entries(schemas)) {
      const own = documentsOf(before, name).filter((path) => path.includes(`documents/${part}`));
      expect([part, own.length > 0]).toEqual([part, true]);
      for (const path of own) expect(schema.safeParse(read(before, name, path)).error).toBeUndefined();
    }
  });

  test('it finds what a quantity of then is called now', () => {
    const quantities = (format: string) =>
      new Set((read(format, '2026-1', 'bundle.json') as Bundle).outputs.results.map(({ quantity }) => keyNow(quantity)));
    // The scheme ranks no honesty, and what it does not rank is not derived any more.
    const now = quantities(NOW!);
    expect([...quantities(before)].filter((key) => !now.has(key))).toEqual(
      before === 'format-1' ? ['strengthHonesty/straight-pull/untreated'] : [],
    );
  });
});

test('a lost or changed value would be seen', () => {
  expect(lost({ a: [1, { b: '2' }] }, { a: [1, { b: '2', c: 3 }], d: 4 })).toEqual([]);
  expect(lost({ a: [1, { b: '2' }] }, { a: [1, { b: '3' }] })).toEqual(['/a/1/b']);
  expect(lost({ a: { b: null } }, {})).toEqual(['/a']);
});
