import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { FileStore } from '../../api/platform/file-store/file-store.js';
import { sha256 } from '../../api/platform/identifiers/identifiers.js';
import type { CategoryDocument, EditionDocument, VariantDocument } from '../../api/contract/documents/release-documents.js';
import { canonicalJson } from '../../api/reckoning/canonical-json.js';
import { computeRelease } from '../../api/reckoning/compute-release.js';
import type { Bundle } from '../../api/reckoning/documents/bundle.js';
import { manifestOf } from '../../api/reckoning/release-files.js';
import type { ReleaseInputs } from '../../api/reckoning/release-inputs.js';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import type { PublishedEdition, ToldPoints } from '../../api/releases/standing-checks/published-edition.js';
import { EXCEPTIONS_FILE, RunStandingChecks } from '../../api/releases/standing-checks/run-standing-checks.js';
import { STANDING_CHECKS } from '../../api/releases/standing-checks/standing-check-list.js';
import { createHouse, workEdition } from '../support/house.js';
import { inventInputs } from '../support/invent-inputs.js';
import { listed } from '../support/listed.js';
import { moveEdition, publish } from '../support/season.js';

function published(inputs: ReleaseInputs): PublishedEdition {
  const all = computeRelease(inputs);
  const files = new Map(all.map(({ path, content }) => [path, content]));
  const { revision, publishedAt, softwareVersion, previousDigest } = inputs;
  const edition = inputs.evidence.edition.slug;
  const manifest = manifestOf(all.map(listed), { edition, revision, publishedAt, softwareVersion, previousDigest });
  const read = (path: string): unknown => JSON.parse(files.get(path)!);
  const folder = (name: string) => [...files.keys()].filter((path) => path.startsWith(name)).map(read);
  return {
    name: `${edition}/${revision}`,
    manifest,
    manifestText: canonicalJson(manifest),
    digest: sha256(canonicalJson(manifest)),
    digests: new Map(all.map(({ path, content }) => [path, sha256(content)])),
    edition: read('documents/edition.json') as EditionDocument,
    categories: folder('documents/standings/') as CategoryDocument[],
    variants: folder('documents/variants/') as VariantDocument[],
    outputs: (read('bundle.json') as Bundle).outputs,
  };
}

const sound = published(inventInputs(5, { variants: 6, testers: 3, rigs: 2, specimens: 5 }));
const spoilt = (spoil: (edition: any) => void): PublishedEdition => {
  const copy = structuredClone(sound) as any;
  spoil(copy);
  return copy as PublishedEdition;
};
const found = (edition: PublishedEdition, others: readonly PublishedEdition[] = []) =>
  STANDING_CHECKS.flatMap(({ code, run }) => run([edition, ...others], told([edition, ...others])).map(({ where }) => `${code} ${where}`));
const told = (all: readonly PublishedEdition[]): ToldPoints =>
  new Map(all.map(({ name, variants }) => [name, new Map(variants.map(({ variant, history }) => [variant.slug, history.at(-1)!]))]));

test('what the program publishes stands', () => {
  expect(found(sound)).toEqual([]);
});

const SPOILT: [string, (edition: any) => void, RegExp][] = [
  ['a changed file', ({ digests }) => digests.set('csv/results.csv', sha256('x')), /^digests-match 2026\/1\/csv\/results\.csv$/],
  ['a lost file', ({ digests }) => digests.delete('README.md'), /^digests-match 2026\/1\/README\.md$/],
  ['another manifest', (edition) => (edition.manifestText += ' '), /^digests-match 2026\/1\/manifest\.json$/],
  ['a broken chain', ({ manifest }) => (manifest.previousDigest = 'f'.repeat(64)), /^digests-match 2026\/1\/manifest\.json$/],
  ['another score in the bundle', ({ outputs }) => (outputs.edition.overall[0].score = '0'), /^documents-agree 2026\/1\/bundle\.json$/],
  ['another place on a page', ({ variants }) => (variants[0].overall.place = 77), /^documents-agree 2026\/1\/.+$/],
  ['another value on a page', ({ variants }) => (variants[0].categories[0].row.figure.value = '1'), /^documents-agree 2026\/1\/.+$/],
  ['a place that does not follow', ({ categories }) => (categories[0].rows[0].place = 3), /^places-follow-values 2026\/1\/.+$/],
  ['a better value behind', ({ categories }) => (categories[0].rows[0].figure.value = '1'), /^places-follow-values 2026\/1\/.+$/],
  [
    'a history that nobody told',
    ({ variants }) => variants[0].history.unshift({ ...variants[0].history[0], edition: '2019' }),
    /^history-without-gaps 2026\/1\/.+$/,
  ],
  [
    'a submission without readings',
    ({ variants }) => variants[0].submissions[0].specimens.forEach((one: any) => (one.readings = [])),
    /^figures-traceable 2026\/1\/.+$/,
  ],
  [
    'a figure of submissions that are not shown',
    ({ variants }) => (variants[0].figures[0].submissions = 9),
    /^figures-traceable 2026\/1\/.+$/,
  ],
  [
    'an exclusion without a reason',
    ({ edition, variants }) => edition.excluded.push({ variant: variants[0].variant, words: ' ' }),
    /^exclusions-have-reasons 2026\/1\/.+$/,
  ],
  ['a row without a place for no reason', ({ edition }) => (edition.overall[0].place = null), /^exclusions-have-reasons 2026\/1\/.+$/],
];

test.each(SPOILT)('%s is found', (_name, spoil, where) => {
  expect(found(spoilt(spoil)).filter((one) => where.test(one))).not.toEqual([]);
});

test.each([
  ['each to its own uncertainty', ['2690', '2692', '2680'], [1, 2, 3], true],
  ['to the same print', ['98.4', '98.4', '98.3'], [1, 2, 3], true],
  ['one place, printed coarser and finer', ['2690', '2692', '2680'], [1, 1, 3], true],
  ['one place, apart by more than rounding hides', ['2690', '2699', '2680'], [1, 1, 3], false],
  ['a worse value before a better one', ['2690', '2699', '2680'], [1, 2, 3], false],
  ['a place left out', ['2690', '2692', '2680'], [1, 2, 4], false],
])('values rounded %s', (_name, values, places, stands) => {
  const edition = spoilt(({ categories }) => {
    const [category] = categories;
    category.category.direction = 'more';
    category.rows = values.map((value, i) => ({
      ...category.rows[i],
      place: places[i],
      figure: { ...category.rows[i].figure, value, low: value, high: value },
    }));
  });
  expect(found(edition).some((one) => one.startsWith('places-follow-values'))).toBe(!stands);
});

test('every check has a case that it finds', () => {
  const tried = new Set(SPOILT.map(([, , where]) => /^\^([a-z-]+)/.exec(where.source)![1]));
  expect([...tried].sort()).toEqual(STANDING_CHECKS.map(({ code }) => code).sort());
});

test('a site is not built over a fault, until somebody lets it stand by name', async () => {
  const house = await createHouse();
  try {
    await workEdition(house, '2026');
    await moveEdition(house.editor, '2026', 'closure');
    await house.t.app.select(ReleasesModule).get(ReleaseWork).start(false);
    await publish(house.editor, '2026');
    const standing = house.t.app.select(ReleasesModule).get(RunStandingChecks);
    expect(await standing.run()).toEqual([]);
    // What stood is trusted by its digest from then on: nothing in it is looked at again, and no file read that did not change.
    const looked = jest.spyOn(STANDING_CHECKS[1]!, 'run');
    const read = jest.spyOn(FileStore.prototype, 'read');
    expect(await standing.run()).toEqual([]);
    expect(looked).not.toHaveBeenCalled();
    expect(read).not.toHaveBeenCalled();
    looked.mockRestore();
    read.mockRestore();
    const { digest } = (await house.t.call('get', '/v1/releases')).body.items[0];
    const file = join(house.t.dataFolder, 'files/releases/2026/1', digest, 'csv/results.csv');
    await writeFile(file, `${await readFile(file, 'utf8')} `);
    const fault = { check: 'digests-match', where: '2026/1/csv/results.csv', words: 'The file is lost or changed.' };
    expect(await standing.run()).toEqual([fault]);
    const exceptions = join(house.t.dataFolder, EXCEPTIONS_FILE);
    await mkdir(house.t.dataFolder, { recursive: true });
    await writeFile(
      exceptions,
      JSON.stringify([{ check: fault.check, where: fault.where, reason: 'x', allowedBy: 'E. Sallow', on: '2026-04-01' }]),
    );
    await expect(standing.run()).rejects.toThrow(/standing-exceptions\.json is not a list of exceptions: at 0\.reason/);
    await writeFile(
      exceptions,
      JSON.stringify([
        {
          check: fault.check,
          where: fault.where,
          reason: 'A blank at the end, told to readers.',
          allowedBy: 'E. Sallow',
          on: '2026-04-01',
        },
      ]),
    );
    expect(await standing.run()).toEqual([]);
    await rm(exceptions);
  } finally {
    await house.t.close();
  }
});
