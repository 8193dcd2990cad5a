/** What a reader does from page to page: by keyboard alone, and to find a line. */
import type { Browser, Page } from 'playwright-core';
import type { Weighed } from '../../site/src/weigh/weighed.js';
import { launchBrowser } from '../support/browser.js';
import { testTasks } from './ten-tasks.js';
import { serveFolders, type FolderServer } from '../support/serve-folder.js';
import { sharedSite } from '../support/shared-site.js';

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

async function open(path: string): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
  const page = await context.newPage();
  await page.goto(site.url + path);
  return page;
}

/** Goes on with the tabulator until something with these words has the focus. */
async function tabTo(page: Page, words: RegExp): Promise<void> {
  for (let presses = 0; presses < 400; presses += 1) {
    await page.keyboard.press('Tab');
    const focused = await page.evaluate<string>(
      '`${document.activeElement.localName} ${document.activeElement.getAttribute("name") ?? ""} ${document.activeElement.textContent.trim().replace(/\\s+/g, " ")}`',
    );
    if (words.test(focused)) return;
  }
  throw new Error(`400 presses of the tabulator did not lead to ${words.source} on ${page.url()}`);
}

test('by keyboard alone: front page, category, filter, variant, specimen', async () => {
  const page = await open('/');
  await tabTo(page, /^a {2}Breaking stress/);
  await page.keyboard.press('Enter');
  await page.waitForURL('**/editions/2026/breaking-stress/');
  await tabTo(page, /^summary .*Filter/);
  await page.keyboard.press('Enter');
  await tabTo(page, /^select construction/);
  await page.keyboard.press('ArrowDown');
  await page.waitForURL(/\?construction=/);
  expect(await page.locator('[role=status]').textContent()).toMatch(/^Shown: .*: \d+ of \d+\./);
  await page.locator('#standings tbody tr[data-construction]:visible a').first().waitFor();
  const name = (await page.locator('#standings tbody tr[data-construction]:visible a').first().innerText()).slice(0, 12);
  await tabTo(page, new RegExp(`^a {2}${name}`));
  await page.keyboard.press('Enter');
  await page.waitForURL('**/variants/**');
  await tabTo(page, /^summary .*Every submission/);
  await page.keyboard.press('Enter');
  await tabTo(page, /^summary .*specimens counted/);
  await page.keyboard.press('Enter');
  const specimens = page.getByRole('table', { name: /Readings as they were entered/ }).first();
  await specimens.waitFor();
  expect(await specimens.getByRole('rowheader').count()).toBeGreaterThan(3);
  await page.context().close();
});

test('rows are sorted within their groups alone, from the keyboard, and the order lives in the address', async () => {
  const page = await open('/editions/2026/breaking-stress/');
  const groups = async () => {
    const rows = await page
      .locator('#standings tbody tr')
      .evaluateAll((all) => all.map((row) => [row.getAttribute('data-group') ?? '', row.querySelector('a')?.textContent ?? ''] as const));
    const runs: string[][] = [];
    rows.forEach(([group, name], index) => (group === rows[index - 1]?.[0] ? runs.at(-1)!.push(name) : runs.push([name])));
    return runs;
  };
  const published = await groups();
  await page.click('row-filter summary');
  await page.locator('select[name=order]').focus();
  await page.keyboard.press('ArrowDown');
  await page.waitForURL('**/?order=name');
  const sorted = await groups();
  expect(sorted).toEqual(published.map((names) => names.toSorted((one, other) => one.localeCompare(other, 'en', { numeric: true }))));
  expect(sorted).not.toEqual(published);
  expect(await page.locator('row-filter [role=status]').textContent()).toMatch(/within each group by name\./);
  await page.reload();
  expect(await groups()).toEqual(sorted);
  await page.click('row-filter summary');
  await page.click('row-filter .all');
  expect(await groups()).toEqual(published);
  await page.context().close();
});

test('an address of one submission lands on its readings, open', async () => {
  const page = await open('/editions/2026/breaking-stress/');
  await page.locator('#standings tbody a').first().click();
  await page.waitForURL('**/variants/**');
  const details = page.locator('#submissions > details').first();
  expect(await details.isVisible()).toBe(false);
  await page.goto(`${page.url()}#${await details.getAttribute('id')}`);
  await details.getByRole('table').first().waitFor();
  await page.context().close();
});

test('a line is found by what is fished and what matters: the list is the published order, the wish lives in the address', async () => {
  const page = await open('/');
  await page.getByRole('navigation', { name: 'Sections' }).getByRole('link', { name: 'Find a line' }).click();
  await page.getByLabel('What matters').selectOption({ label: 'Breaking stress' });
  await page.waitForURL(/by=breaking-stress/);
  const names = () => page.locator('ol.found a').allInnerTexts();
  await page.locator('ol.found strong', { hasText: 'MPa' }).first().waitFor();
  const shown = await names();
  await page.getByLabel('Diameter from, mm').fill('0.2');
  await page.getByLabel('Diameter to, mm').fill('0.27');
  await page.getByLabel('Diameter to, mm').press('Enter');
  await page.waitForURL(/diameter-to=0\.27/);
  await page.getByRole('status').filter({ hasText: 'that fit' }).waitFor();
  const sizes = await page.locator('ol.found .label').allInnerTexts();
  expect(sizes.length).toBeGreaterThan(0);
  for (const size of sizes) expect(Math.abs(Number(/([\d.]+)\smm/.exec(size)![1]) - 0.235)).toBeLessThanOrEqual(0.035);
  const narrowed = await names();
  await page.reload();
  await page.locator('ol.found strong', { hasText: 'MPa' }).first().waitFor();
  expect(await names()).toEqual(narrowed);
  expect(await page.getByLabel('Diameter from, mm').inputValue()).toBe('0.2');
  // One press away: the published order.
  await page.getByRole('link', { name: /all \d+ in the published order/ }).click();
  await page.waitForURL('**/editions/2026/breaking-stress/');
  const published = await page.locator('#standings tbody th > a:not(.row-link)').allInnerTexts();
  expect(shown.length).toBeGreaterThan(2);
  expect(published.slice(0, shown.length).map((name) => shown.some((one) => one.startsWith(name)))).toEqual(shown.map(() => true));
  await page.context().close();
});

test('own weights: as published at first, then in the order that is added by hand; the address carries them, and it says whose order it is', async () => {
  const page = await open('/weigh/');
  const [weighed] = (await (await fetch(`${site.url}/weigh.json`)).json()) as Weighed[];
  const cells = (label: string) => page.locator(`weigh-lines td[data-label="${label}"]`).allInnerTexts();
  expect(new Set(await cells('Published place'))).toEqual(new Set(['the same']));
  const [first, second, ...others] = weighed!.categories;
  for (const { name } of others) await page.getByLabel(name, { exact: true }).fill('0');
  await page.getByLabel(first!.name, { exact: true }).fill('3');
  await page.getByLabel(second!.name, { exact: true }).fill('1');
  await page.waitForURL(new RegExp(`${first!.code}=3.*${second!.code}=1`));
  // Weighted mean of the places that the published score counts, by hand.
  const byHand = weighed!.lines.map(({ results }) => ((3 * results[0]!.place + results[1]!.place) / 4).toFixed(3));
  const sorted = byHand.toSorted((one, other) => Number(one) - Number(other));
  await page.locator('weigh-lines td.score', { hasText: sorted[0]! }).first().waitFor();
  expect(await cells('Score')).toEqual(sorted);
  const told = await page.getByRole('status').innerText();
  expect(told).toMatch(/^First: .+( \([<>]?\d+\s%\))?\. (With [\d.]+\s% of the weight moved|No weights|Shared)/);
  expect(await page.locator('.own.signal').innerText()).toContain('not published');
  await page.reload();
  await page.locator('weigh-lines td.score', { hasText: sorted[0]! }).first().waitFor();
  expect([await cells('Score'), await page.getByRole('status').innerText()]).toEqual([sorted, told]);
  await page.getByRole('button', { name: 'Published weights' }).click();
  await page.waitForURL((url) => url.search === '');
  expect(new Set(await cells('Published place'))).toEqual(new Set(['the same']));
  await page.context().close();
});

test('columns of a table can be left out and taken back, and the address keeps which', async () => {
  const page = await open('/editions/2026/breaking-stress/');
  const rigs = page.locator('#standings thead th', { hasText: 'Rigs' });
  await page.click('column-choice summary');
  await page.getByLabel('Rigs', { exact: true }).uncheck();
  await page.waitForURL(/\?without=\d+$/);
  expect([await rigs.isVisible(), await page.locator('#standings tbody td[data-label=Rigs]').first().isVisible()]).toEqual([false, false]);
  expect(await page.locator('column-choice .state').innerText()).toBe('1 left out');
  await page.reload();
  expect(await rigs.isVisible()).toBe(false);
  await page.click('column-choice summary');
  await page.getByLabel('Rigs', { exact: true }).check();
  await page.waitForURL((url) => url.search === '');
  expect(await rigs.isVisible()).toBe(true);
  await page.context().close();
});

testTasks(open);
