/** What those who tell others of a page take from it: citation, link to a row, pictures, paper. */
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { loadImage } from '@napi-rs/canvas';
import type { Browser, Page } from 'playwright-core';
import { launchBrowser } from '../support/browser.js';
import { serveFolders, type FolderServer } from '../support/serve-folder.js';
import { sharedSite } from '../support/shared-site.js';
import { drawPictures, orderPicture } from '../../site/src/pictures/pictures.js';
import { PAST_THE_EDGE } from './layout-faults.js';

const CATEGORY = '/editions/2026/breaking-stress/';
const LASTING = '/editions/2026/revisions/1/breaking-stress/';
const SOURCE = 'North Quay Line Trials: Winter 2026, revision 1, 1 March 2026';

let site: FolderServer;
let browser: Browser;
let page: Page;

beforeAll(async () => {
  const built = await sharedSite();
  site = await serveFolders(built.site, built.api);
  browser = await launchBrowser();
  const context = await browser.newContext({
    viewport: { width: 1280, height: 900 },
    permissions: ['clipboard-read', 'clipboard-write'],
  });
  page = await context.newPage();
});

afterAll(async () => {
  await browser.close();
  await site.close();
});

const copied = () => page.evaluate<string>('navigator.clipboard.readText()');
const told = (words: RegExp) => page.locator('pass-on output', { hasText: words }).waitFor();

async function saved(kind: 'PNG' | 'SVG'): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.locator('pass-on').getByRole('button', { name: kind, exact: true }).click(),
  ]);
  return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
}

/** Headings of a PDF with the page that each stands on and how far up, as its outline says (ISO 32000-2, 12.3.3), and the number of its pages. */
async function paper(): Promise<{ pages: number; headings: { title: string; page: string; up: number }[] }> {
  const text = (await page.pdf({ preferCSSPageSize: true, outline: true, tagged: true })).toString('latin1');
  const headings = [...text.matchAll(/\/Title \(([^)]*)\)\s*\/Dest \[(\d+) 0 R \/XYZ [\d.]+ ([\d.]+)/g)];
  return {
    pages: [...text.matchAll(/\/Type \/Page\b(?!s)/g)].length,
    headings: headings.map(([, title = '', on = '', up]) => ({ title, page: on, up: Number(up) })),
  };
}

test('the citation and the address of a row are copied by a press, and the row that an address names is marked', async () => {
  await page.goto(site.url + CATEGORY);
  const copy = page.getByRole('button', { name: 'Copy the citation' });
  const [above, below] = await Promise.all(
    [copy, page.locator('.pass-on label', { hasText: 'A picture of' })].map((one) => one.boundingBox()),
  );
  expect(below!.y - above!.y - above!.height).toBeGreaterThanOrEqual(12);
  await copy.click();
  await told(/is copied/);
  expect(await copied()).toMatch(
    /^North Quay Line Trials: Winter 2026, revision 1, published 1 March 2026\. https:\/\/trials\.example\/editions\/2026\/revisions\/1\/breaking-stress\/ – SHA-256 [0-9a-f]{64}$/,
  );
  const row = page.locator('#standings tbody tr').nth(2);
  await row.hover();
  await row.getByRole('link', { name: /^Link to the row of / }).click();
  await told(/link to the row is copied/);
  const address = await copied();
  expect(address).toBe(`${site.url}${CATEGORY}#${await row.getAttribute('id')}`);
  expect(page.url()).toBe(address);
  expect(await page.evaluate<boolean>('document.querySelectorAll("#standings tbody tr")[2].matches(":target")')).toBe(true);
});

test('a table becomes a picture that says which house, edition, revision, date and unit, in the units that show', async () => {
  await page.goto(site.url + CATEGORY);
  const { name, bytes } = await saved('SVG');
  expect(name).toMatch(/^breaking-stress-winter-2026.*\.svg$/);
  const svg = bytes.toString();
  const words = [SOURCE, `https://trials.example${LASTING}`, 'Breaking stress, Winter 2026', 'MPa', 'More is better.'];
  for (const said of [...words, 'Invented figures for demonstration']) expect([said, svg.includes(said)]).toEqual([said, true]);
  // What stands beside a row on the page does so in the picture: that it could be first, and that words stand beside its figures.
  expect(svg).not.toMatch(/stroke-width="3"|†/);
  await page.evaluate(`(() => {
    const rows = [...document.querySelectorAll('#standings tbody tr')];
    for (const row of rows.slice(0, 2)) row.querySelector('.marks').classList.add('first');
    rows[0].querySelector('th').append('†');
  })()`);
  const marked = (await saved('SVG')).bytes.toString();
  expect([marked.match(/stroke-width="3"/g)?.length, marked.includes('>† words stand beside its figures<')]).toEqual([2, true]);
  const values = await page.locator('#standings td.value .si').allTextContents();
  expect(values.length).toBeGreaterThan(10);
  for (const value of values) expect(svg).toContain(`>${/[\d.]+/.exec(value)?.[0] ?? value}<`);
  expect(svg).not.toContain('psi');
  await page.selectOption('unit-switch select', 'trade');
  expect((await saved('SVG')).bytes.toString()).toContain('psi');
  await page.selectOption('unit-switch select', '');
});

test('a chart becomes a picture with its own colours, as PNG twice as fine as on the page', async () => {
  await page.goto(`${site.url}/editions/2026/map/`);
  const drawing = (await page.locator('svg.line-map').first().boundingBox())!;
  const { name, bytes } = await saved('PNG');
  expect(name).toMatch(/\.png$/);
  const { width } = await loadImage(bytes);
  expect(width).toBeGreaterThanOrEqual(2 * Math.floor(drawing.width));
  const svg = (await saved('SVG')).bytes.toString();
  expect(svg).toContain(SOURCE);
  const dot = await page.evaluate<string>('getComputedStyle(document.querySelector("svg.line-map .dot")).fill');
  expect(svg).toContain(`fill="${dot}"`);
});

test('on paper a table stays a table; forty lines of a category take three pages at most; each page names its address and revision', async () => {
  await page.goto(site.url + CATEGORY);
  await page.evaluate(`(() => {
    const body = document.querySelector('#standings tbody');
    for (const row of [...body.rows, ...body.rows, ...body.rows].slice(0, 42 - body.rows.length)) body.append(row.cloneNode(true));
  })()`);
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: 703, height: 1000 });
  expect(await page.locator('#standings tbody tr').count()).toBe(42);
  expect(await page.evaluate<string>('getComputedStyle(document.querySelector("#standings tbody tr")).display')).toBe('table-row');
  expect(await page.evaluate<number>('document.documentElement.scrollWidth')).toBeLessThanOrEqual(703);
  const { pages } = await paper();
  expect(pages).toBeGreaterThan(1);
  expect(pages).toBeLessThanOrEqual(3);
  expect(await page.evaluate<string>('getComputedStyle(document.documentElement).getPropertyValue("--foot")')).toBe(
    `"${SOURCE}. https://trials.example${LASTING}"`,
  );
  const sheets = await page.evaluate<string>(
    '[...document.styleSheets].map(({ cssRules }) => [...cssRules].map((one) => one.cssText).join("")).join("")',
  );
  expect(sheets).toMatch(/@page \{[^]*@bottom-left \{[^}]*var\(--foot/);
  await page.emulateMedia({ media: null });
});

test('on paper what is folded takes no room, and a page of several editions says where it is from', async () => {
  await page.goto(`${site.url}/editions/2026/`);
  // What is folded on a phone alone stands there on paper.
  const folded = page.locator('main details:not([open], .wide-open)');
  expect(await folded.count()).toBeGreaterThan(0);
  await page.emulateMedia({ media: 'print' });
  expect(
    await folded.evaluateAll((all) => all.filter((one) => one.checkVisibility()).map((one) => one.textContent.trim().slice(0, 40))),
  ).toEqual([]);
  // Tables that stand side by side keep within the paper.
  await page.goto(`${site.url}/`);
  await page.setViewportSize({ width: 703, height: 1000 });
  expect(await page.evaluate<string[]>(PAST_THE_EDGE)).toEqual([]);
  await page.emulateMedia({ media: null });
  await page.goto(`${site.url}/errata/`);
  expect(await page.evaluate<string>('document.documentElement.style.getPropertyValue("--foot")')).toBe(
    '"Errata – North Quay Line Trials. https://trials.example/errata/"',
  );
});

test('the booklet of an edition begins each long table on a page of its own; short ones share pages, and none is cut', async () => {
  await page.goto(`${site.url}/editions/2026/booklet/`);
  const chapters = await page.locator('section.chapter > h2:first-child').allInnerTexts();
  expect(chapters.length).toBeGreaterThan(4);
  // A heading where each ends tells on which page that is.
  await page.evaluate(`document.querySelectorAll('section.chapter').forEach((one) => {
    one.append(Object.assign(document.createElement('h4'), { textContent: 'End of ' + one.querySelector('h2').textContent.trim() }));
  })`);
  const short = (await paper()).headings;
  const pageOf = (title: string) => short.find((one) => one.title === title)?.page;
  expect(chapters.map((title) => pageOf(`End of ${title}`))).toEqual(chapters.map(pageOf));
  expect(new Set(chapters.map(pageOf)).size).toBeLessThan(chapters.length);
  await page.evaluate(`document.querySelectorAll('section.chapter tbody').forEach((body) => {
    for (const row of [...body.rows].slice(0, 16)) body.append(row.cloneNode(true));
    body.closest('section').querySelector('h4')?.remove();
  })`);
  const { pages, headings } = await paper();
  const begun = headings.filter(({ title }) => chapters.includes(title));
  expect(begun.map(({ title }) => title)).toEqual(chapters);
  expect(new Set(begun.map((one) => one.page)).size).toBe(chapters.length);
  // All at the same height, and nothing higher on its page.
  expect(new Set(begun.map(({ up }) => Math.round(up))).size).toBe(1);
  expect(begun[0]?.up).toBe(Math.max(...headings.map(({ up }) => up)));
  expect(pages).toBeGreaterThanOrEqual(chapters.length);
});

test('what was put right under results is told in words, in the edition and beside the variant; a long list of results is cut', async () => {
  const told = async (path: string) => {
    await page.goto(`${site.url}${path}`);
    return page.locator('#superseded ~ table').last().innerText();
  };
  // Three submissions of each of thirteen entries.
  const inEdition = await told('/editions/2026/');
  expect(inEdition).toMatch(/Label claim: Breaking force of [a-z0-9-]+/);
  expect(inEdition).toContain('S-2026-0004 and 35 others, which the JSON of this page lists');
  const [, variant] = /Breaking force of ([a-z0-9-]+)/.exec(inEdition)!;
  expect(await told(`/variants/${variant!}/`)).toContain('Read again on the box.');
});

test('where two share first place in words that are wide, the picture of an edition says all of them, smaller', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'pictures-'));
  const drawing = drawPictures(folder);
  const none = { house: 'North Quay Line Trials', title: 'Winter 2026', mark: '', rows: [], span: null };
  const wide = 'Nylon: Lanternweft 0.25 mm and Plainmere 0.35 mm; the best is one of';
  for (const count of [7, 8]) orderPicture({ ...none, address: `${count}.png`, lines: [`${wide} ${count} (95 %)`, 'Published'] });
  await drawing.finish();
  const [one, other] = await Promise.all([7, 8].map((count) => readFile(join(folder, `${count}.png`))));
  expect(one!.equals(other!)).toBe(false);
  await rm(folder, { recursive: true });
});
