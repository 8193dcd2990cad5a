/** One look at every kind of page: what it asks for, what its first screen answers, what is wrong with it at each width and in both themes. */
import type { Browser, Page } from 'playwright-core';
import { axeFaults } from '../support/axe.js';
import { BROKEN_HEADS, HARD_HEADS, OVER_EACH_OTHER, PAST_THE_EDGE } from './layout-faults.js';

export const SCREENS = [
  { width: 1280, height: 900 },
  { width: 360, height: 740 },
];
/** Where tables and heads are looked at, the widest last. */
const WIDTHS = [320, 360, 768, 1280];
const AT_ONCE = 2;
/** How long a page may take to show what it fetches [ms]. */
const PATIENCE = 10_000;

/** Foot of the first figure that a reader sees below the head of a page: a number, or a dot of a map [CSS px]. */
const FIRST_FIGURE = `Math.min(...[...document.querySelectorAll('main :is(td.num, .value, strong, dd, .lede, .found .label, .line-map .dot)')]
  .filter((one) => one.checkVisibility() && (one.matches('.dot') || /\\d\\d|\\d\\.\\d/.test(one.textContent)))
  .map((one) => one.getBoundingClientRect().bottom + scrollY))`;
/** Foot of the first sentence, row or choice below the heading of a page that has words alone [CSS px]. */
const FIRST_WORDS = `Math.min(...[...document.querySelectorAll('main :is(p, li, td, dd, select)')]
  .filter((one) => one.checkVisibility() && one.textContent.trim().length > 10)
  .map((one) => one.getBoundingClientRect().bottom + scrollY))`;

/** Foot of the first row of the first table [CSS px]. */
const FIRST_ROW = `Math.min(...[...document.querySelectorAll('main tbody tr')]
  .filter((one) => one.checkVisibility()).map((one) => one.getBoundingClientRect().bottom + scrollY))`;
/** Pages that are read for their table: who came first, an order, a category. */
const OF_A_TABLE = ['/', '/editions/2026/', '/editions/2026/breaking-stress/'];

/** What answers in words: no figure is published there, or none before the reader has chosen. */
const IN_WORDS = /^\/(editions\/|lines\/|methods\/|checks\/|problems\/|data\/|read\/.*|compare\/|who-we-are\/|404\.html)$/;

/** What was seen of all pages; empty lists but for `asked` where all is well. */
export interface Seen {
  readonly faults: string[];
  /** Each begins with the width of its screen. */
  readonly late: string[];
  /** Every address that was asked for. */
  readonly asked: string[];
  /** What the pages told of errors and broken rules of their content policy. */
  readonly complaints: string[];
}

async function lateOn(page: Page, path: string): Promise<string[]> {
  const isInWords = IN_WORDS.test(path);
  const foot = () => page.evaluate<number>(isInWords ? FIRST_WORDS : FIRST_FIGURE);
  for (const end = Date.now() + PATIENCE; !Number.isFinite(await foot()) && Date.now() < end;) await page.waitForTimeout(50);
  const late: string[] = [];
  for (const screen of SCREENS) {
    await page.setViewportSize(screen);
    const at = Math.max(await foot(), OF_A_TABLE.includes(path) ? await page.evaluate<number>(FIRST_ROW) : 0);
    if (at > screen.height) late.push(`${screen.width}: ${path}: ${at.toFixed(0)} px down`);
  }
  return late;
}

async function layoutFaults(page: Page): Promise<string[]> {
  const wider = await page.evaluate<number>('document.documentElement.scrollWidth - innerWidth');
  return [
    ...(wider > 0 ? [`${wider} px too wide`] : []),
    ...(await page.evaluate<string[]>(PAST_THE_EDGE)).map((table) => `the table ${table} runs past the edge`),
    ...(await page.evaluate<string[]>(BROKEN_HEADS)).map((word) => `the head ${word} is broken`),
    ...(await page.evaluate<string[]>(HARD_HEADS)).map((word) => `the head ${word} stands hard on the one before`),
    ...(await page.evaluate<string[]>(OVER_EACH_OTHER)).map((cells) => `${cells} lie over each other`),
  ];
}

/** What is wrong with a page at any width, with all that it folds open. */
async function faultsAtWidths(page: Page, path: string): Promise<string[]> {
  await page.evaluate('document.querySelectorAll("details").forEach((one) => { one.open = true; })');
  const faults: string[] = [];
  for (const width of WIDTHS) {
    await page.setViewportSize({ width, height: 900 });
    faults.push(...(await layoutFaults(page)).map((fault) => `${path} ${width}: ${fault}`));
  }
  return faults;
}

async function faultsOf(page: Page, path: string): Promise<string[]> {
  const faults = await faultsAtWidths(page, path);
  const add = (at: string, found: readonly string[]) => faults.push(...found.map((fault) => `${path} ${at}: ${fault}`));
  // Between the widest and the narrowest nothing is shown that neither of them shows, and colours are those of a theme whatever the width: the narrowest is asked for the
  // colours of what the widest does not show.
  add('light 1280', await axeFaults(page));
  await page.evaluate(`document.querySelectorAll('body *').forEach((one) => one.toggleAttribute('data-unseen', !one.checkVisibility()))`);
  await page.setViewportSize({ width: 320, height: 900 });
  add('light 320', await axeFaults(page, 'all but colours'));
  add('light 320', await axeFaults(page, 'colours', '[data-unseen]'));
  await page.emulateMedia({ colorScheme: 'dark' });
  add('dark', await axeFaults(page, 'colours'));
  await page.emulateMedia({ colorScheme: 'light' });
  return faults;
}

export async function lookAt(browser: Browser, url: string, paths: readonly string[]): Promise<Seen> {
  const waiting = [...paths];
  const seen: Seen = { faults: [], late: [], asked: [], complaints: [] };
  const look = async () => {
    const page = await browser.newPage({ colorScheme: 'light' });
    page.on('request', (request) => seen.asked.push(request.url()));
    page.on('console', (message) => message.type() === 'error' && seen.complaints.push(`${page.url()}: ${message.text()}`));
    page.on('pageerror', (error) => seen.complaints.push(`${page.url()}: ${error.message}`));
    for (let path = waiting.shift(); path; path = waiting.shift()) {
      await page.setViewportSize(SCREENS[0]!);
      await page.goto(url + path);
      seen.late.push(...(await lateOn(page, path)));
      seen.faults.push(...(await faultsOf(page, path)));
    }
    await page.close();
  };
  await Promise.all(Array.from({ length: AT_ONCE }, look));
  return seen;
}

/** What is wrong with the layout of pages, whatever their colours and scripts do. */
export async function layoutOf(browser: Browser, url: string, paths: readonly string[]): Promise<string[]> {
  const page = await browser.newPage();
  const faults: string[] = [];
  for (const path of paths) {
    await page.goto(url + path);
    faults.push(...(await faultsAtWidths(page, path)));
  }
  await page.close();
  return faults;
}
