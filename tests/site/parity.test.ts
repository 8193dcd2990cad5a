/** What stands on a page is what was published: the numbers of every row of every table of standings, and no others. */
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { CategoryDocument, CategoryRow, EditionDocument, OverallRow } from '../../api/public-api/release-documents.schemas.js';
import { buildSite } from '../support/build-site.js';
import { makeReleases } from '../support/make-release.js';
import { serveFolders, type FolderServer } from '../support/serve-folder.js';

let folder: string;
let api: FolderServer;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'site-'));
  await makeReleases(join(folder, 'api'), { editions: 2, variants: 20 });
  api = await serveFolders(join(folder, 'api'));
  await buildSite({ apiUrl: api.url, publicUrl: 'https://trials.example', out: join(folder, 'site') });
}, 120_000);
afterAll(async () => {
  await api.close();
  await rm(folder, { recursive: true });
});

const page = (path: string) => readFile(join(folder, 'site', path, 'index.html'), 'utf8');
const document = async (path: string): Promise<unknown> =>
  JSON.parse(await readFile(join(folder, 'api/v1/releases/2026/1/documents', path), 'utf8'));

const textOf = (html: string): string =>
  html
    .replaceAll(/<[^>]+>/g, ' ')
    .replaceAll(/&#x2212;|−/g, '-')
    .replaceAll(/\s+/g, ' ')
    .trim();
const numbersIn = (text: string): string[] => text.match(/-?\d+(?:\.\d+)?/g) ?? [];

/** Rows of the table of standings: label of the cell → its text. */
function rowsOf(html: string, mark: 'id="standings"' | 'class="sheet overall"'): Map<string, string>[] {
  const [, table = ''] = new RegExp(`<table[^>]*${mark}[^>]*>([\\s\\S]*?)</table>`).exec(html) ?? [];
  return [...table.matchAll(/<tr(?![^>]*group-head)[^>]*>([\s\S]*?)<\/tr>/g)]
    .map(
      ([, row = '']) =>
        new Map(
          [...row.matchAll(/<td[^>]*data-label="([^"]+)"[^>]*>([\s\S]*?)<\/td>/g)].map(([, label = '', cell = '']) => [
            label,
            textOf(cell),
          ]),
        ),
    )
    .filter((cells) => cells.size > 0);
}

const placeOf = ({ place, placeIfIncluded }: CategoryRow | OverallRow): string[] =>
  place === null ? (placeIfIncluded === null ? [] : [String(placeIfIncluded)]) : [String(place)];
const intervalOf = ({ placeInterval }: CategoryRow | OverallRow): string[] =>
  placeInterval === null ? [] : [...new Set([String(placeInterval.low), String(placeInterval.high)])];

test('categories: place, value, interval, places allowed, specimens, testers, rigs', async () => {
  const edition = (await document('edition.json')) as EditionDocument;
  let compared = 0;
  for (const { code, name } of edition.scheme.categories) {
    const { rows } = (await document(`standings/${code}.json`)) as CategoryDocument;
    const shown = rowsOf(await page(`editions/2026/${code}`), 'id="standings"');
    expect([code, shown.length]).toEqual([code, rows.length]);
    rows.forEach((row, i) => {
      const { figure } = row;
      const cells = shown[i]!;
      const both = (si: string | null, trade: string | null | undefined) => [si, trade].filter((one) => one !== null && one !== undefined);
      const expected: Record<string, string[]> = {
        Place: placeOf(row),
        [name]: [...both(figure.value, figure.trade?.value), ...numbersIn(figure.note ?? '')],
        '95 % interval': [...both(figure.low, null), ...both(figure.high, null), ...both(figure.trade?.low ?? null, figure.trade?.high)],
        Specimens: [String(figure.specimens)],
        Testers: [String(figure.testers)],
        Rigs: [String(figure.rigs)],
        ...(cells.has('Places allowed') ? { 'Places allowed': intervalOf(row) } : {}),
      };
      for (const [label, numbers] of Object.entries(expected)) {
        expect([code, i, label, numbersIn(cells.get(label)!)]).toEqual([code, i, label, numbers]);
        compared += numbers.length;
      }
    });
  }
  expect(compared).toBeGreaterThan(400);
});

test('overall: place, score, and the place in each category', async () => {
  const { overall, scheme } = (await document('edition.json')) as EditionDocument;
  const shown = rowsOf(await page('editions/2026'), 'class="sheet overall"');
  expect(shown).toHaveLength(overall.length);
  overall.forEach((row, i) => {
    const cells = shown[i]!;
    expect(numbersIn(cells.get('Place')!)).toEqual(placeOf(row));
    expect(numbersIn(cells.get('Score')!)).toEqual([row.score]);
    for (const { code, name } of scheme.categories) {
      const label = [...cells.keys()].find((one) => one.includes(name))!;
      expect([i, code, numbersIn(cells.get(label)!)]).toEqual([i, code, [String(row.categoryPlaces[code])]]);
    }
  });
});
