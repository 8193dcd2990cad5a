import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildSite } from '../support/build-site.js';
import { pagesOf } from '../support/site-folder.js';

interface Row {
  readonly slug: string;
  readonly isInSet: boolean;
  readonly group: string;
  readonly place: string;
  readonly cells: ReadonlyMap<string, string>;
}

interface Compared {
  readonly name: string;
  readonly pairs: { readonly variants: readonly string[]; readonly aheadPercent: readonly (readonly number[])[] };
}

const textOf = (html: string): string =>
  html
    .replaceAll(/<[^>]+>/g, ' ')
    .replaceAll(/\s+/g, ' ')
    .trim();

function rowsOf(html: string): Row[] {
  const [, table = ''] = /<table[^>]*class="sheet (?:overall|category) standings"[^>]*>([\s\S]*?)<\/table>/.exec(html) ?? [];
  return [...table.matchAll(/<tr[^>]*>([\s\S]*?)<\/tr>/g)].flatMap(([, row = '']) => {
    const slug = /href="[^"]*\/variants\/([^/"]+)\//.exec(row)?.[1];
    const marks = textOf(/<td[^>]*class="marks[^"]*"[^>]*>([\s\S]*?)<\/td>/.exec(row)?.[1] ?? '');
    const cells = new Map(
      [...row.matchAll(/<td[^>]*data-label="([^"]+)"[^>]*>([\s\S]*?)<\/td>/g)].map(([, label = '', cell = '']) => [label, textOf(cell)]),
    );
    const group = /group (\d+)/.exec(marks)?.[1] ?? '';
    return slug ? [{ slug, isInSet: marks.includes('could be first'), group, place: cells.get('Place') ?? '', cells }] : [];
  });
}

/** Ends of the interval in a cell; null without one. */
const endsOf = ({ cells }: Row): [number, number] | null => {
  const found = /(-?[\d.]+) to (-?[\d.]+)/.exec(cells.get('95 % interval') ?? '');
  return found ? [Number(found[1]), Number(found[2])] : null;
};

function isApartByMoreThanWidth(one: Row, other: Row): boolean {
  const [a, b] = [endsOf(one), endsOf(other)];
  if (!a || !b) return false;
  return Math.max(a[0] - b[1], b[0] - a[1]) > Math.max(a[1] - a[0], b[1] - b[0]);
}

const pairsOf = (rows: readonly Row[]) => rows.flatMap((one, i) => rows.slice(i + 1).map((other) => [one, other] as const));
const isTogether = ([one, other]: readonly [Row, Row]) => (one.isInSet && other.isInSet) || (one.group !== '' && one.group === other.group);
const saysWhy = ({ cells }: Row) => (cells.get('Places allowed') ?? '').includes('by itself told from');

/** Builds the site of a house and reads its newest edition: what one page says against another, and how many pairs were looked at. */
export async function siteContradictions(
  apiUrl: string,
  edition: string,
): Promise<{ faults: string[]; looked: number; explained: number }> {
  const out = await mkdtemp(join(tmpdir(), 'demo-site-'));
  await buildSite({ apiUrl, publicUrl: 'https://trials.example', out });
  const pages = (await pagesOf(out)).filter(({ path }) => path.startsWith(`/editions/${edition}/`) && !path.includes('/revisions/'));
  const compared = JSON.parse(await readFile(join(out, 'compare.json'), 'utf8')) as Compared[];
  await rm(out, { recursive: true });
  const faults: string[] = [];
  let [looked, explained] = [0, 0];
  for (const { path, html } of pages) {
    const unfilled = /\{\w+\}/.exec(textOf(html.replaceAll(/<(head|script|code|pre)\b[\s\S]*?<\/\1>/g, ' ')));
    if (unfilled) faults.push(`${path}: ${unfilled[0]} stands where a word should`);
    const rows = rowsOf(html);
    const isCategory = html.includes('class="sheet category standings"');
    if (rows.length === 0) continue;
    if (!html.includes('so they ask more of a pair than its two intervals do'))
      faults.push(`${path}: no sentence why a pair can look apart`);
    const pairs = compared.find(({ pairs: { variants } }) => rows.some(({ slug }) => variants.includes(slug)))?.pairs;
    for (const pair of pairsOf(rows).filter(isTogether)) {
      looked += 1;
      const [one, other] = pair;
      if (isCategory && isApartByMoreThanWidth(one, other))
        faults.push(`${path}: ${one.slug} and ${other.slug} are apart by more than their width`);
      const percent = pairs?.aheadPercent[pairs.variants.indexOf(one.slug)]?.[pairs.variants.indexOf(other.slug)] ?? 50;
      if (isCategory || (percent > 0 && percent < 100)) continue;
      explained += 1;
      if (!saysWhy(one) || !saysWhy(other))
        faults.push(`${path}: ${one.slug} and ${other.slug} stand together, told apart with ${percent} %`);
    }
    faults.push(...placeFaults(path, rows, pages));
  }
  return { faults, looked, explained };
}

/** The place that the score counts stands on the page of its category too, beside the place there where they differ. */
function placeFaults(path: string, rows: readonly Row[], pages: readonly { path: string; html: string }[]): string[] {
  return [...(rows[0]?.cells.keys() ?? [])].flatMap((label) => {
    const category = /^(.+), place$/.exec(label)?.[1];
    const page = pages.find(
      (one) => one.path.startsWith(path) && one.html.includes(`data-label="${category}"`) && one.html.includes('sheet category'),
    );
    if (category === undefined || !page) return [];
    const places = new Map(rowsOf(page.html).map(({ slug, place }) => [slug, [...place.matchAll(/\d+/g)].map(([number]) => number)]));
    return rows.flatMap(({ slug, cells }) => {
      const counted = cells.get(label) ?? '';
      const there = places.get(slug);
      return there && counted !== 'none' && !there.includes(counted)
        ? [`${page.path}: ${slug} is ${there.join(', ')}, the score counts ${counted}`]
        : [];
    });
  });
}
