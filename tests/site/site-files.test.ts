import { existsSync } from 'node:fs';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { HtmlValidate } from 'html-validate';
import sharp from 'sharp';
import { buildSite } from '../support/build-site.js';
import { makeReleases } from '../support/make-release.js';
import { serveFolders, type FolderServer } from '../support/serve-folder.js';
import { linksIn, oddNumberIn, pagesOf, type SitePage } from '../support/site-folder.js';
import { testEmbeds } from './embeds.js';
import { scriptWeightOf, weightOf } from './page-weight.js';

const PUBLIC_URL = 'https://trials.example';
/** The measures of the site: with 100 entries, over the wire. */
const MOST_BYTES = 100_000;
const MOST_BYTES_FRONT = 60_000;
const MOST_BYTES_SCRIPT = 30_000;
/** Served by the API beside the release files. */
const API_PAGES = [
  ...['/v1/releases', '/v1/openapi.json', '/v1/signing-keys', '/v1/commitments', '/docs', '/desk/', '/v1/changes'],
  ...['/v1/submission-actions', '/v1/schemas', '/v1/results.csv', '/v1/results.parquet', '/client/fairpull.mjs', '/client/fairpull.d.mts'],
];

let folder: string;
let api: FolderServer;
let out: string;
let pages: SitePage[];

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'site-'));
  out = join(folder, 'site');
  await makeReleases(join(folder, 'api'), { editions: 3, variants: 100 });
  api = await serveFolders(join(folder, 'api'));
  await buildSite({ apiUrl: api.url, publicUrl: PUBLIC_URL, out });
  pages = await pagesOf(out);
});

afterAll(async () => {
  await api.close();
  await rm(folder, { recursive: true });
});

const page = (path: string) => {
  const found = pages.find((one) => one.path === path);
  if (!found) throw new Error(`No page ${path} was built; built were ${pages.length} pages.`);
  return found;
};

test('a page exists for each edition, category, variant, line, maker, method version and superseded revision', () => {
  for (const path of [
    '/',
    '/editions/2026/',
    '/editions/2025/revisions/1/',
    '/editions/2026/breaking-stress/',
    '/editions/2025/revisions/1/roundness/',
    '/methods/straight-pull/2/',
    '/checks/',
    '/data/',
    '/problems/',
    '/read/ranking/',
    '/404.html',
  ])
    page(path);
  const below = (prefix: string) => pages.filter(({ path }) => path.startsWith(prefix)).length;
  expect(below('/variants/')).toBe(100);
  expect(below('/editions/2026/variants/')).toBe(100);
  expect(below('/makers/')).toBe(12);
  expect(below('/lines/')).toBe(35);
});

test('every internal link leads to a page or a file, every release link to a file of its manifest', async () => {
  const known = new Set(pages.map(({ path }) => path));
  const broken: string[] = [];
  let followed = 0;
  for (const { path, html } of pages) {
    for (const link of new Set(linksIn(html))) {
      if (link.startsWith('#') || link.startsWith(PUBLIC_URL)) continue;
      const { origin, pathname, hash } = new URL(link, PUBLIC_URL);
      followed += 1;
      const isRelease = pathname.startsWith('/v1/releases/');
      const isThere = isRelease
        ? existsSync(join(folder, 'api', pathname))
        : API_PAGES.includes(pathname) || known.has(pathname) || (!pathname.endsWith('/') && existsSync(join(out, pathname)));
      const hasAnchor = hash === '' || pages.some((one) => one.path === pathname && one.html.includes(`id="${hash.slice(1)}"`));
      if (origin !== PUBLIC_URL || !isThere || !hasAnchor) broken.push(`${path} → ${link}`);
    }
  }
  expect(pages.length).toBeGreaterThan(400);
  expect(followed).toBeGreaterThan(10_000);
  expect(broken.slice(0, 10)).toEqual([]);
});

test('the front page is within 60 kB and every other page within 100 kB over the wire, with 100 entries', async () => {
  const weights = await Promise.all(pages.map(async (one) => ({ path: one.path, bytes: await weightOf(out, one) })));
  const heaviest = weights.reduce((most, one) => (one.bytes > most.bytes ? one : most));
  const front = weights.find(({ path }) => path === '/');
  // The font alone is 28 872 bytes: a weight below it would mean that nothing was weighed.
  expect(front?.bytes).toBeGreaterThan(28_872);
  expect(front?.bytes).toBeLessThanOrEqual(MOST_BYTES_FRONT);
  expect(heaviest.bytes).toBeLessThanOrEqual(MOST_BYTES);
});

test('before anything is pressed no page loads more than 30 kB of script', async () => {
  const scripts = await Promise.all(pages.map((one) => scriptWeightOf(out, one)));
  // A category has its filter, its columns, its units: a weight below would mean that what they import was not weighed.
  expect(Math.max(...scripts)).toBeGreaterThan(5_000);
  expect(Math.max(...scripts)).toBeLessThanOrEqual(MOST_BYTES_SCRIPT);
});

test('one page of each kind is valid HTML', async () => {
  const validator = new HtmlValidate({
    extends: ['html-validate:recommended'],
    rules: {
      // Roles are stated because a table that is laid out as blocks loses its own.
      'no-redundant-role': 'off',
      'prefer-native-element': 'off',
      'long-title': 'off',
      // Written by the builder, and the same to every parser.
      'void-style': 'off',
      'doctype-style': 'off',
      'attribute-boolean-style': 'off',
      'no-trailing-whitespace': 'off',
      'attribute-empty-style': 'off',
    },
  });
  const variant = pages.find(({ path }) => path.startsWith('/variants/'))!.path;
  const kinds = [
    '/',
    '/404.html',
    '/checks/',
    '/data/',
    '/editions/',
    '/editions/2024/',
    '/editions/2025/revisions/1/',
    '/editions/2026/',
    '/editions/2024/knot-retention/',
    '/editions/2026/breaking-stress/',
    '/lines/',
    '/makers/tidewick/',
    '/methods/',
    '/methods/straight-pull/2/',
    '/problems/',
    '/read/ranking/',
    '/read/verify/',
    '/read/own-bench/',
    '/editions/2026/rigs/',
    '/editions/2026/labels/',
    '/editions/2026/map/',
    ...['/read/hand-in-file/', '/compare/', '/records/', '/search/', '/weigh/', variant],
    ...['/read/embed/', '/embed/newest/overall/'],
  ];
  const faults = await Promise.all(
    kinds.map(async (path) => {
      const { results } = await validator.validateString(page(path).html, path);
      return results.flatMap(({ messages }) =>
        messages.map(({ ruleId, message, line, column }) => `${path}:${line}:${column} ${ruleId}: ${message}`),
      );
    }),
  );
  expect([...new Set(faults.flat())]).toEqual([]);
});

test('no page has an inline style, runs sentences together or shows odd numbers; each states its content policy, description and lasting address', () => {
  for (const { path, html } of pages) {
    expect(`${path} ${/<style|\sstyle="/.exec(html)?.[0] ?? 'none'}`).toBe(`${path} none`);
    expect([path, /[.!?]<\/(?:span|strong)><(?:span(?: lang="[^"]*")?>|strong)/.exec(html)]).toEqual([path, null]);
    expect([path, /[\p{L}\d]<\/a><span class="only-wide">\p{L}/u.exec(html)?.[0] ?? null]).toEqual([path, null]);
    expect([path, oddNumberIn(html)]).toEqual([path, null]);
    expect(html).toContain("content=\"default-src 'none';");
    expect(html).not.toContain("'unsafe-inline'");
    expect(html).toMatch(/<meta name="description" content="[^"]{20,}"/);
    expect(html).toMatch(/<link rel="canonical" href="https:\/\/trials\.example\//);
  }
  const slug = pages.find(({ path }) => path.startsWith('/variants/'))!.path.split('/')[2];
  expect(page(`/editions/2026/variants/${slug}/`).html).toContain(`rel="canonical" href="${PUBLIC_URL}/variants/${slug}/"`);
});

test('a superseded page keeps its figures and says what replaced it', () => {
  for (const path of ['/editions/2025/revisions/1/', '/editions/2025/revisions/1/breaking-stress/']) {
    expect(page(path).html).toContain('Superseded.');
    expect(page(path).html).toContain('<meta name="robots" content="noindex">');
  }
  expect(page('/editions/2025/').html).not.toContain('Superseded.');
  expect(page('/editions/2025/').html).toContain('A spool was re-identified');
});

test('an edition without intervals says so and shows neither groups nor intervals', () => {
  const { html } = page('/editions/2024/');
  expect(html).toContain('Intervals of places are not stated for this edition');
  expect(html).not.toContain('class="marks');
  expect(page('/editions/2026/').html).toContain('class="marks');
});

test('demonstration figures are marked on every page, and every page with figures states its scope', () => {
  for (const { html } of pages) expect(html).toContain('Invented figures for demonstration');
  for (const path of ['/', '/editions/2026/', '/editions/2026/roundness/', '/data/'])
    expect(page(path).html).toContain('no basis for lifting, climbing, towing or rescue');
  expect(page('/methods/straight-pull/2/').html).toContain('eye protection');
});

test('a variant page shows every specimen, counted or not, with the reason', async () => {
  const document = JSON.parse(
    await readFile(
      join(
        folder,
        'api/v1/releases/2026/1/documents/variants',
        `${pages.find(({ path }) => path.startsWith('/variants/'))!.path.split('/')[2]}.json`,
      ),
      'utf8',
    ),
  );
  // A number is held to its unit.
  const html = page(`/variants/${document.variant.slug}/`).html.replaceAll('\u00a0', ' ');
  const readings = document.submissions.flatMap(
    ({ specimens }: { specimens: { readings: { entered: { text: string; unit: string } }[] }[] }) =>
      specimens.flatMap((specimen) => specimen.readings),
  );
  expect(readings.length).toBeGreaterThan(40);
  for (const { entered } of readings) expect(html).toContain(`${entered.text} ${entered.unit}`);
  expect(html).toContain('Broke at the grip');
  expect(html).toContain('set aside by the reviewer');
});

test('the feed names every release, the sitemap every lasting page and no superseded one', async () => {
  const feed = await readFile(join(out, 'feed.xml'), 'utf8');
  expect(feed.match(/<entry>/g)).toHaveLength(4);
  expect(feed).toContain('<title>Erratum: Winter 2025, revision 2</title>');
  expect(feed).toMatch(/<title>Winter 2026, revision 1<[^]*?<summary>[^<]+ came first[^<]*values changed beyond noise/);
  const sitemap = await readFile(join(out, 'sitemap-0.xml'), 'utf8');
  expect(sitemap).toContain(`${PUBLIC_URL}/editions/2026/breaking-stress/`);
  expect(sitemap).not.toContain('/revisions/');
  expect(await readFile(join(out, 'robots.txt'), 'utf8')).toContain(`Sitemap: ${PUBLIC_URL}/sitemap-index.xml`);
});

test('without any release a site stands that says so; two builds at once do not disturb each other; a release whose file was altered is not shown', async () => {
  const [empty, few] = [join(folder, 'empty'), join(folder, 'few')];
  await makeReleases(empty, { editions: 0, variants: 3 });
  await makeReleases(few, { editions: 1, variants: 3 });
  const servers = await Promise.all([serveFolders(empty), serveFolders(few)]);
  const outs = [join(folder, 'one'), join(folder, 'two')] as const;
  await Promise.all(outs.map((to, at) => buildSite({ apiUrl: servers[at]!.url, publicUrl: PUBLIC_URL, out: to })));
  const [one, two] = await Promise.all(outs.map(pagesOf));
  expect(one!.find(({ path }) => path === '/')?.html).toContain('Nothing is published yet');
  expect([one!, two!].map((all) => all.filter(({ path }) => path.startsWith('/variants/')).length)).toEqual([0, 3]);
  expect(two!.find(({ path }) => path === '/')?.html).not.toContain('Nothing is published yet');
  const path = join(few, 'v1/releases/2026/1/documents/edition.json');
  await writeFile(path, (await readFile(path, 'utf8')).replace('Four places', 'Five places'));
  await expect(buildSite({ apiUrl: servers[1].url, publicUrl: PUBLIC_URL, out: outs[1] })).rejects.toThrow(
    '/v1/releases/2026/1/documents/edition.json is not what was published',
  );
  await Promise.all(servers.map((server) => server.close()));
});

test('every table has its data beside it: JSON, and CSV where there is a file of its rows', () => {
  const bare = pages.filter(
    ({ html }) => html.includes('<table') && !/class="downloads"/.test(html) && !/href="[^"]+\.(json|csv)"/.test(html),
  );
  // What the program itself says of its checks, problems and columns is in the API and not in a release.
  const ofProgram = /^\/(checks|problems|methods|read|editions)\//;
  expect(bare.map(({ path }) => path).filter((path) => !ofProgram.test(path) || /^\/editions\/./.test(path))).toEqual([]);
  expect(pages.filter(({ html }) => /class="downloads"/.test(html)).length).toBeGreaterThan(200);
});

test('each edition, category and variant has a picture of its own for where it is shared, at the size that its page says', async () => {
  const pictured = pages
    .filter(({ path }) => /^\/(variants\/[^/]*\/|editions\/\d+\/([a-z]+-[a-z]+\/)?|)$/.test(path))
    .map(({ html }) => /property="og:image" content="([^"]+)"/.exec(html)?.[1]);
  const addresses = [...new Set(pictured.filter((one) => one !== undefined))];
  expect(addresses.length).toBeGreaterThan(100);
  for (const address of addresses) {
    const bytes = await readFile(join(out, new URL(address).pathname));
    const { width, height } = await sharp(bytes).metadata();
    // Its title is written: dark ink where it stands.
    const { channels } = await sharp(bytes).extract({ left: 80, top: 160, width: 1040, height: 70 }).stats();
    expect([address, channels[0]!.min < 60]).toEqual([address, true]);
    // PNG: its signature (ISO/IEC 15948, 5.2); another program reads the rest.
    expect([address, bytes.subarray(1, 4).toString(), width, height]).toEqual([address, 'PNG', 1200, 630]);
    expect(bytes.length).toBeLessThan(100_000);
  }
});

test('a submission whose tester had read what the spool is says so in words, the others do not', () => {
  const { html } = page(pages.find(({ path }) => path.startsWith('/editions/2026/variants/'))!.path);
  const told = html.split('<details').filter((part) => part.includes('specimens counted'));
  const [notBlind, blind] = [told.filter((part) => part.includes('<dt>Not blind</dt>')), told.filter((part) => !part.includes('ot blind'))];
  expect(notBlind.length).toBeGreaterThan(0);
  expect(blind.length).toBeGreaterThan(0);
  for (const part of notBlind) expect(part).toMatch(/, not blind<\/strong>[\s\S]*The tester had seen the label or read what the spool is/);
});

test('charts of rigs that were out in the edition stand open; one that signalled in another is folded', () => {
  const folded = ({ html }: SitePage) => /<summary>\s*1 chart without a signal in this edition/.test(html);
  expect([page('/editions/2026/rigs/'), page('/editions/2025/rigs/')].map(folded)).toEqual([false, true]);
});

testEmbeds(() => ({ folder, out, pages }));
