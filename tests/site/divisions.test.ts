/** Pages of an edition with several divisions beside one that has none, from the releases that are kept as written. */
import { readdirSync, readFileSync } from 'node:fs';
import { cp, mkdtemp, mkdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Manifest } from '../../api/contract/documents/release-documents.js';
import type { Bundle } from '../../api/reckoning/documents/bundle.js';
import type { ReleaseInputs } from '../../api/reckoning/release-inputs.js';
import { sha256 } from '../../api/platform/identifiers/identifiers.js';
import { axeFaults } from '../support/axe.js';
import { launchBrowser } from '../support/browser.js';
import { buildSite } from '../support/build-site.js';
import { cellsOfFiles } from '../support/cells-of-files.js';
import { inventInputs } from '../support/invent-inputs.js';
import { serveFolders, type FolderServer } from '../support/serve-folder.js';
import type { Weighed } from '../../site/src/weigh/weighed.js';
import { NONE_BEFORE } from '../../site/src/words/movement-words.js';
import { writeRelease } from '../support/write-release.js';
import { UNPLACED } from '../../site/src/words/unplaced-words.js';
import { linksIn, pagesOf, type SitePage } from '../support/site-folder.js';

const GOLDEN = fileURLToPath(new URL('../releases/golden/format-3', import.meta.url));
/** Of the same lines, by the program of today: no place in one category, and a place that the score counts otherwise. */
const { evidence, ...invented } = inventInputs(5, { variants: 4, testers: 3, rigs: 2, specimens: 4 });
const { edition, submissions } = evidence;
const yearBefore = (slug: string, change: Partial<typeof edition>): ReleaseInputs => ({
  ...invented,
  publishedAt: `${slug}-03-01T09:00:00.000Z`,
  evidence: { ...evidence, submissions, edition: { ...edition, slug, name: `Winter ${slug}`, ...change } },
});
const stating = (percentOf: (slug: string) => number | null) => ({
  methods: edition.methods.map((one) => ({ ...one, reproducibilityPercent: percentOf(one.slug) })),
});
type Submissions = ReleaseInputs['evidence']['submissions'];
/** Diameters are those of one piece each, which tells nothing of how they scatter. */
const onOnePiece = (all: Submissions): Submissions =>
  all.map((one) => (one.method.slug === 'diameter' ? { ...one, specimens: one.specimens.slice(0, 1) } : one));
const having = (inputs: ReleaseInputs, some: Submissions): ReleaseInputs => ({
  ...inputs,
  evidence: { ...inputs.evidence, submissions: some },
});
const leftOut = { reasonCode: 'notObtainable', words: 'No shop had it.', effect: 'closedUp' } as const;
const COMPUTED = [
  having(
    yearBefore(
      '2024',
      stating((slug) => (slug === 'named-knot' ? null : 2)),
    ),
    onOnePiece(submissions),
  ),
  having(
    yearBefore(
      '2023',
      stating(() => null),
    ),
    submissions.filter(({ method }) => method.slug !== 'abrasion'),
  ),
  yearBefore('2025', { entries: edition.entries.map((one, i) => ({ ...one, exclusion: i === 0 ? leftOut : null })) }),
];
/** The divided edition once more, without one of its submissions, and without what tells how diameters scatter. */
const written = new Map(
  readdirSync(join(GOLDEN, '2027-1'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.json'))
    .map(({ parentPath, name }) => join(parentPath, name))
    .map((path) => [relative(join(GOLDEN, '2027-1'), path), readFileSync(path, 'utf8')] as const),
);
const divided = (JSON.parse(written.get('bundle.json')!) as Bundle).inputs;
const corrected: ReleaseInputs = {
  ...divided,
  revision: 2,
  evidence: { ...divided.evidence, submissions: onOnePiece(divided.evidence.submissions.slice(1)) },
  correction: { reasonCode: 'withdrawal', words: 'A rig was bent.', expects: [], before: cellsOfFiles(written), corrected: [] },
};
const RELEASES = [
  { name: '2027-2', status: 'published', inputs: corrected },
  { name: '2027-1', status: 'superseded' },
  { name: '2026-2', status: 'published' },
  { name: '2026-1', status: 'superseded' },
  ...COMPUTED.map((inputs) => ({ name: `${inputs.evidence.edition.slug}-1`, status: 'published', inputs })),
];

let folder: string;
let api: FolderServer;
let pages: SitePage[];
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'divisions-'));
  const at = (path: string) => join(folder, 'api/v1', path);
  const items = RELEASES.map(async ({ name, status, ...release }) => {
    const [slug = '', revision = ''] = name.split('-');
    const own = at(`releases/${slug}/${revision}`);
    if ('inputs' in release) await writeRelease(own, release.inputs);
    else await cp(join(GOLDEN, name), own, { recursive: true });
    const manifest = await readFile(join(own, 'manifest.json'), 'utf8');
    const { publishedAt } = JSON.parse(manifest) as Manifest;
    const summary = { edition: slug, editionName: `Winter ${slug}`, revision: Number(revision), status, publishedAt, erratum: null };
    return { ...summary, digest: sha256(manifest) };
  });
  await mkdir(at('submissions'), { recursive: true });
  await writeFile(at('releases.json'), JSON.stringify({ items: await Promise.all(items) }));
  await writeFile(at('submissions/csv-columns.json'), JSON.stringify({ items: [], nextCursor: null }));
  api = await serveFolders(join(folder, 'api'));
  await buildSite({ apiUrl: api.url, publicUrl: 'https://trials.example', out: join(folder, 'site') });
  pages = await pagesOf(join(folder, 'site'));
});
afterAll(async () => {
  await api.close();
  await rm(folder, { recursive: true });
});

const page = (path: string): string => pages.find((one) => one.path === path)?.html ?? `no page at ${path}`;

test('each division has its standings, categories and map below the edition, which lists them', () => {
  const links = linksIn(page('/editions/2027/'));
  for (const division of ['braided', 'solid'])
    for (const below of ['', 'stress/', 'knot/', 'fg/', 'map/']) {
      const path = `/editions/2027/${division}/${below}`;
      expect(links).toContain(path);
      expect(page(path)).toContain(division === 'braided' ? 'Braided' : 'Solid');
    }
  expect(pages.map(({ path }) => path)).not.toContain('/editions/2027/stress/');
});

test('a table holds the entries of its division alone, and says which were put there against the rule', () => {
  const shownIn = (path: string) => linksIn(page(path)).filter((link) => link.startsWith('/variants/'));
  const [braided, solid] = ['/editions/2027/braided/', '/editions/2027/solid/'].map((path) => new Set(shownIn(path)));
  expect([braided!.size, solid!.size]).toEqual([3, 2]);
  expect([...braided!].filter((link) => solid!.has(link))).toEqual([]);
  expect(page('/editions/2027/solid/')).toContain('made of one strand');
  expect(page('/editions/2027/braided/')).not.toContain('against its rule');
});

test('where the edition before had no such division, that is said once for the table and not as "new" in each row', () => {
  for (const path of ['/editions/2027/braided/', '/editions/2027/braided/knot/']) {
    const [tables = ''] = page(path).split('id="erratum"');
    expect(tables).toContain(NONE_BEFORE);
    expect(tables).not.toMatch(/>\s*new\s*</);
    expect(tables).not.toMatch(/>(Place since|Since) the last edition/);
  }
  expect(page('/editions/2027/braided/knot/')).toContain('Value since the last edition');
});

test('front, records, search and pictures tell the divisions apart', async () => {
  for (const name of ['Braided', 'Solid']) {
    expect(page('/')).toContain(name);
    expect(page('/records/')).toMatch(new RegExp(`<caption[^>]*>\\s*${name}\\s*<`));
    expect(page('/find/')).toMatch(new RegExp(`<option value[^>]*>${name}</option>`));
  }
  const entries = JSON.parse(await readFile(join(folder, 'site/search-index.json'), 'utf8')) as { kind: string; more: string }[];
  const places = entries.filter(({ kind }) => kind === 'variant').map(({ more }) => more.split(', ')[0]);
  expect(places).toEqual(expect.arrayContaining(['place 1 in Braided', 'place 1 in Solid']));
  for (const division of ['braided', 'solid'])
    expect((await stat(join(folder, `site/pictures/editions/2027/${division}-stress.png`))).size).toBeGreaterThan(0);
});

test('the history of a line says which of its places counted all entries', () => {
  const [link = ''] = linksIn(page('/editions/2027/braided/')).filter((one) => one.startsWith('/variants/'));
  expect(page(link.split(/[?#]/)[0]!)).toMatch(/<span class="label"[^>]*>of all entries</);
});

test('lines of different divisions are not compared, and that is said', async () => {
  const compared = JSON.parse(await readFile(join(folder, 'site/compare.json'), 'utf8')) as {
    name: string;
    variants: { slug: string }[];
  }[];
  expect(compared.map(({ name, variants }) => [name, variants.length])).toEqual([
    ['Braided', 3],
    ['Solid', 2],
  ]);
  expect(page('/compare/')).toMatch(/<optgroup label="Braided">.*<optgroup label="Solid">/s);
  const [site, browser] = await Promise.all([serveFolders(join(folder, 'site')), launchBrowser()]);
  // Where several divisions tell who came first, links of two lines are targets apart.
  const front = await browser.newPage({ viewport: { width: 320, height: 900 } });
  await front.goto(site.url);
  expect(await front.locator('.sheet.firsts tbody tr:visible').count()).toBeGreaterThan(1);
  expect(await axeFaults(front, 'all but colours')).toEqual([]);
  try {
    const shown = await browser.newPage();
    await shown.goto(`${site.url}/compare/`);
    const selects = shown.locator('compare-variants select');
    for (const [at, { variants }] of compared.entries()) await selects.nth(at).selectOption(variants[0]!.slug);
    await shown.getByText('Lines of different divisions are not compared: Braided and Solid.').waitFor();
    expect(await shown.locator('.compared table').count()).toBe(0);
  } finally {
    await browser.close();
    await site.close();
  }
});

test('a reader weighs the categories of a division that have places, and all of its lines', async () => {
  const weighed = JSON.parse(await readFile(join(folder, 'site/weigh.json'), 'utf8')) as Weighed[];
  expect(weighed.map(({ name, categories, lines }) => [name, categories.map(({ code }) => code), lines.length])).toEqual([
    ['Braided', ['knot', 'abrasion', 'fg'], 3],
    ['Solid', ['knot', 'abrasion', 'fg'], 2],
  ]);
});

test('who was first twice in a row is told by table, and once of all others that nobody was', () => {
  const told = page('/records/').split('Nobody was first twice in a row');
  expect(told).toHaveLength(2);
  expect(told[1]).toMatch(/^: Braided \([^)]+\); Solid \([^)]+\)\./);
});

test('an edition with one keeps its addresses and shows no trace of divisions; no link is broken', () => {
  const before = pages.filter(({ path }) => path.startsWith('/editions/2026/'));
  expect(before.map(({ path }) => path)).toEqual(
    expect.arrayContaining(['', 'stress/', 'map/', 'revisions/1/', 'revisions/1/stress/'].map((below) => `/editions/2026/${below}`)),
  );
  for (const { html } of before) expect(html).not.toMatch(/division/i);
  const known = new Set(pages.map(({ path }) => path));
  const links = new Set(pages.flatMap(({ html }) => linksIn(html)).filter((link) => /^\/(editions|variants|lines|makers)\//.test(link)));
  expect([...links].filter((link) => !known.has(link.split(/[?#]/)[0]!))).toEqual([]);
});

test('a table without places says why, as do the edition and each variant in it', () => {
  const [first] = edition.entries;
  const reasonsOn = (path: string) =>
    Object.entries(UNPLACED).flatMap(([reason, words]) => (page(path).toLowerCase().includes(words.toLowerCase()) ? [reason] : []));
  const both = ['nothingKnownOfEffects', 'nothingKnownOfScatter'];
  const told = ['', 'stress/', 'knot/', 'abrasion/', `variants/${first!.variant}/`].map((below) => reasonsOn(`/editions/2024/${below}`));
  expect(told).toEqual([both, [both[1]], [both[0]], [], both]);
  for (const path of ['/editions/2025/', '/editions/2025/knot/', `/editions/2025/variants/${edition.entries[1]!.variant}/`])
    expect([page(path).length > 1000, reasonsOn(path)]).toEqual([true, []]);
  for (const below of ['', `variants/${first!.variant}/`]) {
    expect(page(`/editions/2024/${below}`)).toMatch(
      /no places in Breaking stress and Knot retention[^:]*: the overall order is that of the other/,
    );
    for (const reason of ['Breaking stress: nothing tells how readings', 'Knot retention[^:.]*: nothing tells what rigs'])
      expect(page(`/editions/2024/${below}`)).toMatch(new RegExp(`<p[^>]*>${reason}`));
  }
  expect(page('/editions/2024/')).toMatch(/the score leaves out Breaking stress and Knot retention.*not counted\s*<\/td>/s);
  expect(page('/editions/2023/')).toContain('In this edition nobody has a score.');
  expect(page('/editions/2026/')).not.toMatch(/leaves out|not counted/);
  expect(page('/editions/2024/knot/')).toMatch(/<td[^>]*class="num place[^>]*>\s*none\s*<\/td>/);
  expect(page('/editions/2024/')).toMatch(/<td[^>]*class="num place[^>]*>\s*1\s*<\/td>/);
  for (const below of ['', `variants/${first!.variant}/`])
    expect(page(`/editions/2023/${below}`)).toMatch(/no places in [^:.]*, and so none overall/);
});

test('a category without any result says so, and leads to what each line lacks', () => {
  expect(page('/editions/2023/abrasion/')).toMatch(/No result counts here\..*href="\/editions\/2023\/#incomplete"/s);
  expect(page('/editions/2023/')).toContain('id="incomplete"');
  expect(page('/editions/2025/abrasion/')).not.toContain('No result counts here');
});

test('a place that the score counts otherwise stands beside the place of the table, with the reason', () => {
  for (const code of ['stress', 'knot', 'abrasion'])
    expect(page(`/editions/2025/${code}/`)).toMatch(/A place in brackets counts the variants\s+that are left out as well/);
  expect(page('/editions/2025/stress/')).toMatch(/\(\d\)<span class="only-heard"[^>]*> in the score/);
  expect(page('/editions/2026/stress/')).not.toContain('in the score');
});

test('what numbers on labels stand for is told, as common practice', () => {
  expect(linksIn(page('/read/'))).toContain('/read/sizes/');
  expect(page('/read/sizes/')).toMatch(/common practice.*<th scope="row"[^>]*>\s*2\.5\s*<\/th>\s*<td[^>]*>\s*0\.260\s*<\/td>/s);
});

test('a page at two addresses takes room on the disk once', async () => {
  const files = await Promise.all(['', 'revisions/2/'].map((below) => stat(join(folder, 'site/editions/2026', below, 'index.html'))));
  expect(new Set(files.map(({ ino }) => ino)).size).toBe(1);
});

test('every revision has lasting addresses for all its pages, from its first day on', () => {
  const below = (edition: string) =>
    pages.flatMap(({ path }) => (path.startsWith(`/editions/${edition}/`) ? [path.slice(`/editions/${edition}/`.length)] : []));
  for (const [edition, revisions] of [
    ['2027', [1, 2]],
    ['2026', [1, 2]],
  ] as const) {
    const current = below(edition).filter((path) => !path.startsWith('revisions/') && !path.startsWith('booklet'));
    expect(current).toEqual(expect.arrayContaining(['', 'labels/', 'rigs/', expect.stringMatching(/^variants\/.+/)]));
    for (const revision of revisions) {
      const kept = below(edition).map((path) => path.replace(`revisions/${revision}/`, ''));
      expect(current.filter((path) => !kept.includes(path) || !below(edition).includes(`revisions/${revision}/${path}`))).toEqual([]);
    }
  }
  expect(page('/editions/2026/revisions/1/labels/')).toContain('Superseded.');
  expect(page('/editions/2026/revisions/2/labels/')).not.toContain('Superseded.');
});

test('an erratum tells division by division what changed, on its page and on that of the edition; a division tells its own alone', () => {
  const captions = (path: string) => [...page(path).matchAll(/Changed cells:\s*([^,<]+)/g)].map(([, of = '']) => of.trim());
  for (const path of ['/editions/2027/', '/editions/2027/booklet/', '/errata/'])
    expect([...new Set(captions(path))]).toEqual(expect.arrayContaining(['Braided', 'Solid', 'Whole edition']));
  expect(page('/errata/')).toMatch(/Braided: [^;]*changed.*; Solid: [^;]*changed.*; whole edition: \d+ documents? changed/);
  const told = (division: string, line: string) => page(`/editions/2027/${division}/`).split('id="erratum"')[1]?.includes(line);
  expect(captions('/editions/2027/braided/')).toContain('values');
  expect(captions('/editions/2027/solid/')).toContain('places and scores');
  expect([told('braided', 'Capstarrow'), told('solid', 'Brinewickel'), told('solid', 'Capstarrow')]).toEqual([false, false, true]);
});

test('errata have a page, which tells cells by names and not by slugs', () => {
  const told = page('/errata/');
  expect(told).toContain('/editions/2026/revisions/2/');
  const heads = [...told.matchAll(/<th scope="row"[^>]*>([^<]+)</g)].map(([, words = '']) => words.trim());
  expect(heads.length).toBeGreaterThan(0);
  const slugs = pages.flatMap(({ path }) => /^\/variants\/([^/]+)\/$/.exec(path)?.[1] ?? []);
  expect(heads.filter((words) => slugs.some((slug) => words.includes(slug)))).toEqual([]);
});
