/** What stands on a page is what was published: the numbers of every row of every table of standings, and on every other page of an edition no number that its documents do not hold. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type {
  CategoryDocument,
  CategoryRow,
  EditionDocument,
  OverallRow,
  VariantDocument,
} from '../../api/contract/documents/release-documents.js';
import { sharedSite, type SharedSite } from '../support/shared-site.js';
import { pagesOf } from '../support/site-folder.js';

let built: SharedSite;

beforeAll(async () => {
  built = await sharedSite();
});

const page = (path: string) => readFile(join(built.site, path, 'index.html'), 'utf8');
const document = async (path: string): Promise<unknown> =>
  JSON.parse(await readFile(join(built.api, 'v1/releases/2026/1/documents', path), 'utf8'));

const textOf = (html: string): string =>
  html
    .replaceAll(/<[^>]+>/g, ' ')
    .replaceAll(/&#x2212;|−/g, '-')
    .replaceAll(/\s+/g, ' ')
    .trim();
const numbersIn = (text: string): string[] => text.match(/-?\d+(?:\.\d+)?/g) ?? [];

/** Rows of the table of standings: label of the cell → its text. */
function rowsOf(html: string, mark: 'id="standings"' | 'class="sheet overall standings"'): Map<string, string>[] {
  const [, table = ''] = new RegExp(`<table[^>]*${mark}[^>]*>([\\s\\S]*?)</table>`).exec(html) ?? [];
  return [...table.matchAll(/<tr[^>]*>([\s\S]*?)<\/tr>/g)]
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
  const shown = rowsOf(await page('editions/2026'), 'class="sheet overall standings"');
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

/** Numbers as they are written, without leading zeros; those of a date one by one. */
const plain = (text: string): string[] =>
  numbersIn(textOf(text).replaceAll(/(\d)-(?=\d)/g, '$1 ')).map((one) => one.replace(/^(-?)0+(?=\d)/, '$1'));
/** Text of the cells of all tables and of all terms of reports; headings and captions hold constants. */
const cellsIn = (html: string): string[] =>
  [...html.matchAll(/<(td|dd)\b[^>]*>([\s\S]*?)<\/\1>|<th\b[^>]*role="rowheader"[^>]*>([\s\S]*?)<\/th>/g)].map(
    ([, , cell, head]) => cell ?? head ?? '',
  );

async function publishedOf(paths: readonly string[]): Promise<Set<string>> {
  const texts = await Promise.all(paths.map((path) => readFile(join(built.api, 'v1/releases/2026/1', path), 'utf8')));
  return new Set(texts.flatMap((text) => plain(text)));
}

async function strangersOn(path: string, documents: readonly string[], ofPage: readonly string[] = []): Promise<string[]> {
  const published = await publishedOf(['manifest.json', 'documents/edition.json', ...documents]);
  // Other units are converted; their factors are checked by themselves.
  const inSi = (await page(path)).replaceAll(/<svg[\s\S]*?<\/svg>|<span class="(?:trade|kgf)">[\s\S]*?<\/span>/g, '');
  const cells = cellsIn(inSi);
  const numbers = cells.flatMap((cell) => plain(cell));
  expect([path, numbers.length > 20]).toEqual([path, true]);
  return numbers.filter((one) => !published.has(one) && !ofPage.includes(one)).map((one) => `${path}: ${one}`);
}

test('variant pages: no number in a table or a report that the documents do not hold, and every figure is there', async () => {
  const { overall } = (await document('edition.json')) as EditionDocument;
  let figures = 0;
  for (const { variant } of overall) {
    const at = `variants/${variant.slug}`;
    expect(await strangersOn(at, [`documents/variants/${variant.slug}.json`])).toEqual([]);
    const shown = new Set(plain(await page(at)));
    const { categories, claims, history, submissions } = (await document(`variants/${variant.slug}.json`)) as VariantDocument;
    const values = [
      ...categories.map(({ row }) => row.figure.value),
      ...claims.flatMap(({ measured, ratioPercent }) => [measured?.value, ratioPercent]),
      ...history.flatMap((point) => point.categories.map(({ value }) => value)),
      ...submissions.flatMap(({ specimens }) => specimens.flatMap(({ readings }) => readings.map(({ entered }) => entered.text))),
    ].filter((value) => value !== undefined && value !== null);
    expect([variant.slug, values.filter((value) => !plain(value).every((one) => shown.has(one)))]).toEqual([variant.slug, []]);
    figures += values.length;
  }
  expect(figures).toBeGreaterThan(500);
});

test('labels, rigs and records: no number that their documents do not hold', async () => {
  expect(await strangersOn('editions/2026/labels', ['documents/claims.json'])).toEqual([]);
  expect(await strangersOn('editions/2026/rigs', ['documents/rigs.json', 'documents/round-robins.json', 'documents/retests.json'])).toEqual(
    [],
  );
});

/** [%] Where a drawing has its dots, within the axes of a map. */
const dotsOf = (html: string): (readonly [number, number])[] =>
  [...html.matchAll(/class="dot" cx="([\d.]+)%" cy="([\d.]+)%"/g)].map(([, cx, cy]) => [(Number(cx) - 8) / 0.86, (Number(cy) - 6) / 0.82]);
const mapIn = (html: string): string => /<svg class="line-map"[\s\S]*?<ul/.exec(html)?.[0] ?? '';

test('a map stands on the page of each of its lines, all others as one drawing; and the three that are nearest are named', async () => {
  const map = mapIn(await page('editions/2026/map'));
  const shown = [...map.matchAll(/href="\/variants\/([^/]+)\/"/g)].map(([, slug = '']) => slug);
  const dots = dotsOf(map);
  expect([dots.length > 10, shown.length]).toEqual([true, dots.length]);
  const variants = await Promise.all(shown.map(async (slug) => (await document(`variants/${slug}.json`)) as VariantDocument));
  const sizes = variants.map(({ variant, figures }) => ({
    line: variant.line.slug,
    force: Number(figures.find(({ quantity }) => quantity.startsWith('breakingForce'))?.value),
    diameter: Number(figures.find(({ quantity }) => quantity.startsWith('diameter'))?.value),
  }));
  // By ratio: thin lines, of which there are most, stand as far apart as thick ones.
  for (const [axis, of] of [['diameter', 0] as const, ['force', 1] as const]) {
    const [logs, at] = [sizes.map((size) => Math.log(size[axis])), dots.map((dot) => dot[of])];
    const shareIn = (all: readonly number[]) => (k: number) => (all[k]! - all[0]!) / (all.at(-1)! - all[0]!);
    for (const k of shown.keys()) expect(shareIn(at)(k)).toBeCloseTo(shareIn(logs)(k), 2);
  }
  for (const [i, slug] of shown.entries()) {
    const html = await page(`variants/${slug}`);
    const own = mapIn(html);
    expect(dotsOf(own)).toEqual([dots[i]]);
    const [, path = ''] = /class="spots" d="([^"]*)"/.exec(own) ?? [];
    const drawn = [...path.matchAll(/M([\d.]+) ([\d.]+)h0/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
    const isDrawn = ([x, y]: readonly [number, number]) => drawn.some(([dx, dy]) => Math.abs(dx - x) < 0.1 && Math.abs(dy - y) < 0.1);
    expect([slug, dots.filter((dot) => !isDrawn(dot))]).toEqual([slug, []]);
    const [, next = ''] = /id="next"[\s\S]*?<ul>([\s\S]*?)<\/ul>/.exec(html) ?? [];
    const named = [...next.matchAll(/<a href="\/variants\/([^/]+)\/"/g)].map(([, one = '']) => one);
    const away = (k: number) => Math.hypot(sizes[k]!.force / sizes[i]!.force - 1, sizes[k]!.diameter / sizes[i]!.diameter - 1);
    const others = [...shown.keys()].filter((k) => sizes[k]!.line !== sizes[i]!.line).toSorted((a, b) => away(a) - away(b));
    expect([slug, named]).toEqual([slug, others.slice(0, 3).map((k) => shown[k])]);
  }
});

test('what explains a drawing stands where one is drawn', async () => {
  const pages = await pagesOf(built.site);
  expect(pages.filter(({ html }) => /<div class="histories">\s*<\/div>/.test(html)).map(({ path }) => path)).toEqual([]);
  expect(pages.filter(({ html }) => html.includes('Its place in each edition')).length).toBeGreaterThan(0);
});

test('methods and categories are called by their names: what stands in addresses is printed nowhere', async () => {
  const slug = /named knot|straight pull|\b(?:named|straight|breaking|knot|abrasion|strength)-(?:knot|pull|stress|retention|honesty)\b/;
  const pages = (await pagesOf(built.site)).filter(({ path }) => /^\/(editions|variants|errata|records|search)\//.test(path));
  const textIn = (html: string) => textOf(html.replaceAll(/<(head|script|code|pre)\b[\s\S]*?<\/\1>/g, ' ')).replaceAll(/https?:\S+/g, '');
  const printed = pages.flatMap(({ path, html }) => slug.exec(textIn(html))?.map((found) => `${path}: ${found}`) ?? []);
  expect(printed).toEqual([]);
  const index = JSON.parse(await readFile(join(built.site, 'search-index.json'), 'utf8')) as { name: string; more: string }[];
  expect(index.filter(({ name, more }) => slug.test(`${name}, ${more}`))).toEqual([]);
  expect(pages.filter(({ html }) => /Needed:/.test(html)).length).toBeGreaterThan(0);
});
