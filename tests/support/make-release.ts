import { createHash } from 'node:crypto';
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { FORMAT_VERSION } from '../../api/contract/documents/release-documents.js';
import { SITE_LISTS } from '../../api/site-lists.js';
import type {
  EditionDocument,
  Manifest,
  PairsDocument,
  RecordsDocument,
  ReleaseSummary,
} from '../../api/contract/documents/release-documents.js';
import { catalogueDocument, categoryDocument, editionDocument, headingOf } from './invented/edition-documents.js';
import { inventVariants } from './invented/invent-variants.js';
import { inventedMethods } from './invented/invented-methods.js';
import { inventedRetests } from './invented/invented-retests.js';
import { inventedPeople, inventedRigs } from './invented/invented-rigs.js';
import { inventedRoundRobins } from './invented/invented-round-robins.js';
import { inventSeason, type Season } from './invented/season.js';
import { variantDocument } from './invented/variant-document.js';

/** How many editions and variants to invent. The last edition is 2026; with two or more, the last but one has an erratum. */
export interface InventedSize {
  editions: number;
  variants: number;
}

const LAST_YEAR = 2026;
const digest = (bytes: string) => createHash('sha256').update(bytes).digest('hex');

const erratum: NonNullable<EditionDocument['erratum']> = {
  reasonCode: 'reidentification',
  expected: [],
  words: 'A spool had been sold under the wrong sticker. Its results now stand under the line that it really is.',
  changes: [
    { where: 'breaking-stress, second row, value', before: '918 MPa', after: '1181 MPa' },
    { where: 'breaking-stress, second row, interval', before: '880 to 956 MPa', after: '1130 to 1232 MPa' },
    { where: 'reply, second row, words', before: null, after: 'It was the shop that put it into the wrong box.' },
    { where: 'overall, second row, place', before: '9', after: '4' },
  ],
  consequences: '1 value changed, 9 places.',
};

function csvOf(season: Season): Record<string, string> {
  const lines = season.overall.map((row) => [row.place ?? '', row.variant.slug, row.score, row.group ?? ''].join(','));
  const results = [...season.categoryRows].flatMap(([code, rows]) =>
    rows.map(({ variant, figure }) => [code, variant.slug, figure.value, figure.low ?? '', figure.high ?? '', figure.unit].join(',')),
  );
  return {
    'csv/standings.csv': ['place,variant,score,group', ...lines, ''].join('\r\n'),
    'csv/results.csv': ['category,variant,value,low,high,unit', ...results, ''].join('\r\n'),
    'csv/readings.csv': 'submission,specimen,role,text,unit\r\n',
  };
}

/** The first row of each category is the record of its class. */
const recordsOf = (season: Season): RecordsDocument['records'] =>
  [...season.categoryRows].flatMap(([category, [first]]) =>
    first
      ? [
          {
            category,
            strengthFromN: 50,
            strengthBelowN: 100,
            value: first.figure.value,
            unit: first.figure.unit,
            variant: first.variant.slug,
            edition: String(season.year),
            equalled: [],
            isNew: true,
            since: String(season.year),
          },
        ]
      : [],
  );

/** Whoever stands higher is ahead with 80 %. */
function pairsOf({ overall, hasIntervals }: Season): Pick<PairsDocument, 'variants' | 'aheadPercent'> {
  const variants = hasIntervals ? overall.filter(({ place }) => place !== null).map(({ variant }) => variant.slug) : [];
  return { variants, aheadPercent: variants.map((_, i) => variants.map((__, j) => (i === j ? 50 : i < j ? 80 : 20))) };
}

function filesOf(season: Season, revision: number, correctedYear: number, note: EditionDocument['erratum']): Map<string, string> {
  const json = (value: unknown) => JSON.stringify(value);
  const catalogue = catalogueDocument(season, revision);
  const methods = inventedMethods.filter(({ slug, number }) => catalogue.methods.some((one) => one.slug === slug && one.number === number));
  return new Map([
    ['documents/edition.json', json(editionDocument(season, revision, note))],
    ['documents/catalogue.json', json(catalogue)],
    ...[...season.categoryRows.keys()].map((code): [string, string] => [
      `documents/standings/${code}.json`,
      json(categoryDocument(season, revision, code)),
    ]),
    ...season.entries.map((variant): [string, string] => [
      `documents/variants/${variant.slug}.json`,
      json(variantDocument(season, variant, revision, correctedYear)),
    ]),
    ...methods.map((method): [string, string] => [`documents/methods/${method.slug}-${method.number}.json`, json(method)]),
    ['documents/records.json', json({ ...headingOf(season, revision), records: recordsOf(season), runs: [] })],
    ['documents/pairs.json', json({ ...headingOf(season, revision), ...pairsOf(season) })],
    ['documents/rigs.json', json({ ...headingOf(season, revision), ...inventedPeople(), instruments: inventedRigs() })],
    [
      'documents/claims.json',
      json({
        ...headingOf(season, revision),
        items: season.entries.map((variant) => ({ variant, claims: variantDocument(season, variant, revision, correctedYear).claims })),
      }),
    ],
    ['documents/retests.json', json({ ...headingOf(season, revision), ...inventedRetests() })],
    ['documents/round-robins.json', json({ ...headingOf(season, revision), items: inventedRoundRobins() })],
    ['documents/withdrawn.json', json({ ...headingOf(season, revision), items: [] })],
    ['verify.mjs', '// verifies\n'],
    ['bundle.json', json({ formatVersion: FORMAT_VERSION, edition: String(season.year), revision })],
    ...Object.entries(csvOf(season)),
  ]);
}

async function writeRelease(
  folder: string,
  season: Season,
  revision: number,
  correctedYear: number,
  note: EditionDocument['erratum'],
  previousDigest: string | null,
): Promise<ReleaseSummary> {
  const files = filesOf(season, revision, correctedYear, note);
  const { edition, publishedAt } = headingOf(season, revision);
  const manifest: Manifest = {
    formatVersion: FORMAT_VERSION,
    edition: edition.slug,
    revision,
    publishedAt,
    softwareVersion: '0.1.0',
    previousDigest,
    files: [...files].map(([path, text]) => ({
      path,
      mediaType: path.endsWith('.csv') ? 'text/csv' : 'application/json',
      sizeBytes: Buffer.byteLength(text),
      sha256: digest(text),
    })),
  };
  const written = JSON.stringify(manifest);
  for (const [path, text] of [...files, ['manifest.json', written] as const]) {
    const target = join(folder, 'v1/releases', edition.slug, String(revision), path);
    await mkdir(dirname(target), { recursive: true });
    await writeFile(target, text);
  }
  return {
    edition: edition.slug,
    editionName: edition.name,
    revision,
    status: 'published',
    digest: digest(written),
    publishedAt,
    erratum: note,
  };
}

/** Writes invented releases to a folder, at the paths under which the API answers; `v1/releases.json` is the list. */
export async function makeReleases(folder: string, { editions, variants }: InventedSize): Promise<ReleaseSummary[]> {
  const names = inventVariants(variants);
  const correctedYear = editions > 1 ? LAST_YEAR - 1 : 0;
  const summaries: ReleaseSummary[] = [];
  let before: Season | null = null;
  for (let nth = 0; nth < editions; nth += 1) {
    const year = LAST_YEAR - editions + 1 + nth;
    const isLast = nth === editions - 1;
    const write = (season: Season, revision: number, note: EditionDocument['erratum']) =>
      writeRelease(folder, season, revision, correctedYear, note, summaries[0]?.digest ?? null);
    if (year === correctedYear) {
      const wrong = inventSeason(names, nth, year, before, isLast, true);
      summaries.unshift({ ...(await write(wrong, 1, null)), status: 'superseded' });
    }
    const season: Season = inventSeason(names, nth, year, before, isLast, false);
    summaries.unshift(year === correctedYear ? await write(season, 2, erratum) : await write(season, 1, null));
    before = season;
  }
  await mkdir(join(folder, 'v1'), { recursive: true });
  await writeFile(join(folder, 'v1/releases.json'), JSON.stringify({ items: summaries }));
  await mkdir(join(folder, 'v1/submissions'), { recursive: true });
  for (const [path, answer] of Object.entries(SITE_LISTS)) await writeFile(join(folder, `${path}.json`), JSON.stringify(answer));
  return summaries;
}
