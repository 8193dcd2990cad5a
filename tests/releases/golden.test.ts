/**
 * Releases that were written once and are never edited: a first, its correction, and the year after. What a later program
 * computes from their inputs may hold more, and nothing else.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { join } from 'node:path';
import { computeRelease } from '../../api/reckoning/compute-release.js';
import type { Bundle } from '../../api/reckoning/documents/bundle.js';
import { runVerify } from '../support/run-verify.js';

const GOLDEN = fileURLToPath(new URL('golden', import.meta.url));
const names = readdirSync(GOLDEN);

/** Places where a value that was written is not computed any more. */
function lost(written: unknown, computed: unknown, where = ''): string[] {
  if (written !== null && typeof written === 'object') {
    if (computed === null || typeof computed !== 'object') return [where];
    return Object.entries(written).flatMap(([key, value]) => lost(value, (computed as Record<string, unknown>)[key], `${where}/${key}`));
  }
  return Object.is(written, computed) ? [] : [where];
}

test('they are there', () => expect(names).toEqual(['2026-1', '2026-2', '2027-1']));

test('the program inside each still verifies all of them and their chain', async () => {
  for (const name of names) {
    const { code, output } = await runVerify(join(GOLDEN, name, 'verify.mjs'), GOLDEN, { TZ: 'Asia/Tokyo', LC_ALL: 'de_DE.UTF-8' });
    expect([name, code, /figures recomputed, all equal/.test(output)]).toEqual([name, 0, true]);
  }
}, 60_000);

test.each(names)(
  '%s: the program of today computes every value that was published',
  (name) => {
    const { inputs } = JSON.parse(readFileSync(join(GOLDEN, name, 'bundle.json'), 'utf8')) as Bundle;
    const computed = new Map(computeRelease(inputs).map(({ path, content }) => [path, content]));
    const { files } = JSON.parse(readFileSync(join(GOLDEN, name, 'manifest.json'), 'utf8')) as { files: { path: string }[] };
    const documents = files.map(({ path }) => path).filter((path) => path.startsWith('documents/'));
    expect(documents.length).toBeGreaterThan(10);
    for (const path of documents) {
      const written: unknown = JSON.parse(readFileSync(join(GOLDEN, name, path), 'utf8'));
      expect([path, lost(written, JSON.parse(computed.get(path) ?? 'null'))]).toEqual([path, []]);
    }
  },
  60_000,
);

test('a lost or changed value would be seen', () => {
  expect(lost({ a: [1, { b: '2' }] }, { a: [1, { b: '2', c: 3 }], d: 4 })).toEqual([]);
  expect(lost({ a: [1, { b: '2' }] }, { a: [1, { b: '3' }] })).toEqual(['/a/1/b']);
  expect(lost({ a: { b: null } }, {})).toEqual(['/a']);
});
