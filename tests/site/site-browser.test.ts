import type { Browser, Page } from 'playwright-core';
import { axeFaults } from '../support/axe.js';
import { launchBrowser } from '../support/browser.js';
import { testGerman } from './in-german.js';
import { lookAt, SCREENS, type Seen } from './look-at.js';
import { testPhone } from './on-a-phone.js';
import { serveFolders, type FolderServer } from '../support/serve-folder.js';
import { sharedSite } from '../support/shared-site.js';

/** International avoirdupois pound-force (NIST SP 811, B.8). */
const NEWTONS_PER_POUND = 4.4482216;
const VARIANT = '/variants/brinewickel-pe-1-0-moss-green/';
const TEMPLATES = [
  '/',
  '/editions/',
  '/editions/2026/',
  '/editions/2024/',
  '/editions/2025/revisions/1/',
  '/editions/2026/breaking-stress/',
  '/editions/2024/knot-retention/',
  VARIANT,
  '/lines/',
  '/lines/brinewickel/',
  '/makers/quaymarrow/',
  '/methods/',
  '/methods/straight-pull/2/',
  '/checks/',
  '/data/',
  '/problems/',
  '/read/ranking/',
  '/read/verify/',
  '/read/own-bench/',
  '/read/hand-in-file/',
  '/records/',
  '/editions/2026/rigs/',
  '/editions/2026/labels/',
  '/editions/2026/map/',
  '/editions/2026/booklet/',
  '/search/?q=brine',
  '/compare/',
  ...['/find/?by=breaking-stress', '/weigh/', '/embed/newest/overall/', '/errata/', '/who-we-are/'],
  '/404.html',
];

const WITH_TABLES = [
  ...['/', '/editions/2026/', '/editions/2026/breaking-stress/', VARIANT, '/lines/brinewickel/', '/makers/quaymarrow/', '/records/'],
  ...['/editions/2026/rigs/', '/editions/2026/labels/', '/editions/2026/map/', '/weigh/', '/embed/newest/overall/'],
];

let site: FolderServer;
let browser: Browser;

beforeAll(async () => {
  const built = await sharedSite();
  site = await serveFolders(built.site, built.api);
  browser = await launchBrowser();
});

afterAll(async () => {
  await browser.close();
  await site.close();
});

async function open(path: string, options: Parameters<Browser['newContext']>[0] = {}): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  const page = await context.newPage();
  await page.goto(site.url + path);
  return page;
}

describe('every template', () => {
  let seen: Seen;
  beforeAll(async () => {
    seen = await lookAt(browser, site.url, TEMPLATES);
  }, 1_800_000);

  test('has no violation and does not scroll sideways, in both themes, at 320, 768 and 1280 px', () => expect(seen.faults).toEqual([]));

  test.each(SCREENS)('answers in its first screen of $width × $height px', ({ width }) =>
    expect(seen.late.filter((one) => one.startsWith(`${width}: `))).toEqual([]),
  );

  test('asks nobody but its own host, and breaks no rule of its content policy', () => {
    expect(seen.asked.length).toBeGreaterThan(TEMPLATES.length * 2);
    expect(seen.asked.filter((url) => !url.startsWith(site.url) && !url.startsWith('data:'))).toEqual([]);
    expect(seen.complaints).toEqual([]);
  });
});

testGerman(() => ({ browser, url: site.url }), WITH_TABLES);

test('the keyboard reaches the content first, then every link, filter and switch, with a visible focus', async () => {
  const page = await open('/editions/2026/breaking-stress/');
  await page.evaluate('document.querySelector(".control").open = true');
  await page.keyboard.press('Tab');
  expect(await page.evaluate('document.activeElement.textContent')).toBe('Skip to the content');
  await page.keyboard.press('Enter');
  expect(await page.evaluate('document.activeElement.id')).toBe('content');
  const reached = new Set<string>();
  const name =
    '`${document.activeElement.localName} ${document.activeElement.getAttribute("href") ?? document.activeElement.getAttribute("name") ?? document.activeElement.textContent}`';
  for (let presses = 0; presses < 120; presses += 1) {
    await page.keyboard.press('Tab');
    reached.add(await page.evaluate<string>(name));
    expect(
      await page.evaluate(
        'document.activeElement === document.body || parseFloat(getComputedStyle(document.activeElement).outlineWidth) >= 2',
      ),
    ).toBe(true);
  }
  for (const one of [
    'select construction',
    'select maker',
    'button Show all',
    'select units',
    `a ${VARIANT}`,
    'a /v1/releases/2026/1/csv/results.csv',
    'a /read/report-an-error/',
  ])
    expect(reached).toContain(one);
  await page.context().close();
});

const rowsShown = (page: Page) => page.locator('#standings tbody tr:visible').count();

test('a filter leaves the rows that match, keeps published places, and lives in the address', async () => {
  const page = await open('/editions/2026/breaking-stress/');
  const all = await rowsShown(page);
  const state = page.locator('row-filter .state');
  expect(await state.textContent()).toBe(`all ${all}`);
  await page.click('row-filter summary');
  await page.selectOption('select[name=construction]', 'fused');
  expect(page.url()).toContain('?construction=fused');
  const some = await rowsShown(page);
  expect(some).toBeGreaterThan(0);
  expect(some).toBeLessThan(all);
  const shown = await page
    .locator('#standings tbody tr[data-construction]:visible')
    .evaluateAll((rows) => rows.map((row) => row.getAttribute('data-construction')));
  expect(new Set(shown)).toEqual(new Set(['fused']));
  expect(await state.textContent()).toBe(`fused: ${some} of ${all}`);
  expect(await page.locator('[role=status]').textContent()).toBe(
    `Shown: fused: ${some} of ${all}. Places and groups stay those of the whole table.`,
  );
  await page.reload();
  expect(await rowsShown(page)).toBe(some);
  await page.click('row-filter summary');
  await page.fill('input[name=diameter-from]', '9');
  await page.press('input[name=diameter-from]', 'Enter');
  await page.waitForURL(/diameter-from=9/);
  expect(await rowsShown(page)).toBe(0);
  await page.click('row-filter .all');
  await page.waitForURL((url) => url.search === '');
  expect(await rowsShown(page)).toBe(all);
  await page.setViewportSize({ width: 320, height: 800 });
  await page.selectOption('select[name=construction]', 'fused');
  expect(await rowsShown(page)).toBe(some);
  await page.context().close();
});

test('search, from every page, finds by the beginning of a word, also misspelt, tells how many, and keeps the words in the address', async () => {
  const page = await open('/');
  // From any page; what is typed on the page itself is looked for at once.
  await page.fill('header input[name=q]', 'brine');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/search/?q=brine');
  await page.locator('input[name=q]').press('End');
  await page.locator('input[name=q]').pressSequentially('wi');
  const status = page.locator('search-page [role=status]');
  const told = (words: RegExp) => status.filter({ hasText: words }).waitFor({ state: 'attached' });
  await told(/^\d+ found for “brinewi”\.$/);
  expect(page.url()).toContain('?q=brinewi');
  const hrefs = await page.locator('.found a').evaluateAll((links) => links.map((link) => link.getAttribute('href')));
  expect(hrefs).toContain('/lines/brinewickel/');
  expect(hrefs).toContain(VARIANT);
  await page.fill('input[name=q]', 'brinewikcel');
  await told(/^\d+ found for “brinewikcel”/);
  await page.fill('input[name=q]', 'straight');
  await told(/^\d+ found for “straight”/);
  // Numbers are those that were asked for, with or without a last zero; results say value and diameter.
  await page.fill('input[name=q]', 'PE 1.0');
  await told(/^\d+ found for “PE 1.0”/);
  const notes = await page.locator('.found li').allInnerTexts();
  for (const note of notes) expect(note).toMatch(/PE 1\.0|PE 1\b/);
  expect(notes[0]).toMatch(/place \d+, .*, \d+(\.\d+)?\sN, 0\.\d+\smm/);
  // A strength as reels print it, and a knot, lead to what is claimed so and to the method that ties it.
  await page.fill('input[name=q]', '20 lb');
  await told(/^[1-9]\d* found for “20 lb”/);
  // That is what reels of these two sizes say.
  for (const note of await page.locator('.found li').allInnerTexts()) expect(note).toMatch(/PE 1\.0,|0\.23 mm,/);
  // What a line held is found in whole pounds as well.
  const held = Math.round(Number(/([\d.]+)\sN,/.exec(notes[0]!)?.[1]) / NEWTONS_PER_POUND);
  await page.fill('input[name=q]', `${held}lbs`);
  await told(/^[1-9]\d* found for “\d+lbs”/);
  expect(await page.locator('.found li').allInnerTexts()).toContain(notes[0]);
  await page.fill('input[name=q]', 'double uni');
  await told(/^[1-9]\d* found for “double uni”/);
  expect(await page.locator('.found a').first().getAttribute('href')).toMatch(/^\/methods\//);
  await page.fill('input[name=q]', 'errata');
  await told(/^[1-9]\d* found for “errata”/);
  await page.fill('input[name=q]', 'zzzz');
  await told(/^Nothing found/);
  await page.reload();
  await told(/^Nothing found for “zzzz”/);
  expect(await status.count()).toBe(1);
  await page.context().close();
});

test('variants are compared side by side, with the published chances, and the choice lives in the address', async () => {
  const page = await open('/compare/');
  const [{ pairs, variants }] = (await (await fetch(`${site.url}/compare.json`)).json()) as [
    { pairs: { variants: string[] }; variants: { slug: string }[] },
  ];
  const unplaced = variants.find(({ slug }) => !pairs.variants.includes(slug))!.slug;
  const [one, other] = pairs.variants;
  await page.locator('compare-variants select').nth(0).selectOption(one!);
  await page.locator('compare-variants select').nth(1).selectOption(other!);
  await page.locator('.compared table').nth(1).waitFor();
  expect(page.url()).toContain(`?variant=${one}&variant=${other}`);
  // In words first; then category by category what lies between the two, and overall last.
  const verdict = page.locator('compare-variants [role=status]');
  expect(await verdict.innerText()).toMatch(/^.+ beside .+: (ahead|behind|too close to call) in .+\. Overall it is .+ \d+\s%\.$/);
  const rows = page.locator('.compared table').first().locator('tbody tr');
  expect(await rows.last().innerText()).toMatch(/^Overall/);
  const chances = await rows.locator('td[data-label^=Chance]').allInnerTexts();
  for (const chance of chances) expect(chance).toMatch(/^(>99|<1|\d{1,2})\s%$/);
  expect(await rows.first().locator('td').nth(1).innerText()).toMatch(/^[+\u2212][\d.]+ to [+\u2212][\d.]+\sMPa$/);
  expect(await axeFaults(page)).toEqual([]);
  // One without a place has figures and no chance overall; the others keep theirs.
  await page.locator('compare-variants select').nth(3).selectOption(unplaced);
  await page.locator('.compared table').nth(2).waitFor();
  expect(await verdict.innerText()).toContain('Overall nothing is stated of the two.');
  expect(await rows.locator('td[data-label^=Chance]').allInnerTexts()).toEqual(chances);
  expect(await page.locator('.compared table').nth(2).locator('thead th').allInnerTexts()).toHaveLength(4);
  // Who comes to it from a row has the answer in sight.
  await page.setViewportSize({ width: 360, height: 740 });
  await page.reload();
  await page.locator('.compared table').nth(2).waitFor();
  const answered = (await verdict.boundingBox())!;
  expect(answered.y + answered.height).toBeLessThan((await page.locator('compare-variants select').first().boundingBox())!.y);
  expect(answered.y + answered.height).toBeLessThan(740);
  // Two places are told in one line.
  expect(await rows.last().locator('td').first().innerText()).toMatch(/^\d+ and (\d+|none)$/);
  expect((await rows.last().locator('th').boundingBox())!.height).toBeLessThan(70);
  await page.setViewportSize({ width: 320, height: 800 });
  expect(await page.evaluate<number>('document.documentElement.scrollWidth')).toBeLessThanOrEqual(320);
  const below = ['compare-variants unit-switch', '.compared table'].map((one) => page.locator(one).first().boundingBox());
  const [units, table] = await Promise.all(below);
  expect(table!.y - units!.y - units!.height).toBeGreaterThanOrEqual(12);
  // On a phone each figure stands under the name of its choice, and not under a whole name again and again.
  const labels = await page.evaluate<string[]>(
    `[...document.querySelectorAll('.compared table:last-of-type td')].map((cell) => cell.dataset.label)`,
  );
  expect([...new Set(labels)]).toEqual(['First', 'Second', 'Third']);
  await page.context().close();
});

test('units and theme are remembered from page to page', async () => {
  const page = await open('/editions/2026/breaking-stress/');
  const unit = () => page.locator('#standings thead .num .unit').first().innerText();
  expect(await unit()).toBe('MPa');
  await page.selectOption('unit-switch select', 'trade');
  expect(await unit()).toBe('psi');
  await page.selectOption('theme-switch select', 'dark');
  await page.goto(`${site.url}${VARIANT}`);
  expect(await page.inputValue('unit-switch select')).toBe('trade');
  // Axes, claims and histories follow; most labels print kilograms-force.
  expect(await page.locator('#claims ~ .sheet tbody .unit:visible').first().innerText()).toMatch(/^(lbf|in)$/);
  expect(await page.locator('.history .trade text').first().isVisible()).toBe(true);
  await page.selectOption('unit-switch select', 'kgf');
  expect(await page.locator('#claims ~ .sheet tbody .unit:visible').allInnerTexts()).toContain('kgf');
  await page.context().close();
});

test('without scripts everything is there in published order, in both units, and no dead control shows', async () => {
  const page = await open('/editions/2026/breaking-stress/', { javaScriptEnabled: false });
  expect(await page.locator('#standings tbody tr:visible').count()).toBeGreaterThan(10);
  const value = await page.locator('#standings tbody tr').first().locator('td.value').innerText();
  expect(value.split(/\s+/)).toHaveLength(2);
  for (const control of ['row-filter', 'unit-switch', 'theme-switch']) expect(await page.locator(control).first().isVisible()).toBe(false);
  await page.context().close();
});

testPhone(open, VARIANT);
