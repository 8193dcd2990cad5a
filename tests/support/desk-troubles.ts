/** What goes wrong on an ordinary day at the desk, in a house with a past: what was typed is there afterwards, and given to nobody else. */
import type { BrowserContext, Page } from 'playwright-core';
import type { DemoAccount } from '../../prisma/seed/demo-accounts.js';
import { HouseClient } from '../../prisma/seed/loader/house-client.js';
import { signOut } from './desk.js';

export interface Troubled {
  readonly url: string;
  /** Somebody signed in, on the page where the typing goes on; the sheet has its first rows. */
  readonly tester: { readonly page: Page; readonly password: string };
  readonly otherTester: DemoAccount;
  readonly otherReviewer: DemoAccount;
  /** Signs somebody in at an address of the desk. */
  readonly arrive: (person: DemoAccount, path: string, context?: BrowserContext) => Promise<Page>;
  readonly reviewer: DemoAccount;
}

const force = (page: Page, row: number) => page.getByLabel(`Force, specimen ${row}`, { exact: true });
const isSent = (page: Page) => page.locator('[data-waiting="0"]', { hasText: 'last sent' }).waitFor();

async function typeRow(page: Page, row: number, text: string): Promise<void> {
  await force(page, row).focus();
  for (const typed of [text, '18.2']) {
    await page.keyboard.type(typed);
    await page.keyboard.press('Enter');
  }
}

/** Number of the first row without a force. */
async function nextRow(page: Page): Promise<number> {
  const fields = await page.getByLabel(/^Force, specimen \d+$/).all();
  for (const [i, field] of fields.entries()) if ((await field.inputValue()) === '') return i + 1;
  throw new Error('The sheet has no empty row.');
}

/**
 * Goes through all five, one after the other.
 * @returns what was met, in the words of the desk
 */
export async function meetTroubles(troubled: Troubled): Promise<string[]> {
  const { page, password } = troubled.tester;
  const context = page.context();
  const again = await networkCut(page, context);
  await twoTabs(again, context);
  await sessionEnds(again, context, password);
  await sharedDevice(again, context, troubled);
  await staleReview(troubled);
  return ['the network was cut', 'two tabs', 'the session ended', 'a shared device', 'a stale review'];
}

async function networkCut(page: Page, context: BrowserContext): Promise<Page> {
  const row = await nextRow(page);
  await isSent(page);
  await page.waitForURL(/draft=/);
  await context.setOffline(true);
  await typeRow(page, row, '71.1');
  await page.getByText(/^1 waiting, last sent \d\d:\d\d\./).waitFor();
  await page.getByText('The network is away').waitFor();
  const address = page.url();
  await page.close();
  await context.setOffline(false);
  const again = await context.newPage();
  await again.goto(address);
  await force(again, row).waitFor();
  expect(await force(again, row).inputValue()).toBe('71.1');
  await isSent(again);
  return again;
}

async function twoTabs(page: Page, context: BrowserContext): Promise<void> {
  const row = await nextRow(page);
  const other = await context.newPage();
  await other.goto(page.url());
  await force(other, row).waitFor();
  await typeRow(other, row, '72.2');
  await isSent(other);
  await other.close();
  await typeRow(page, row, '73.3');
  await page.getByRole('heading', { name: 'written elsewhere meanwhile' }).waitFor();
  const conflict = page.locator('.conflict tbody tr').first();
  expect(await conflict.innerText()).toMatch(/73\.3 N[\s\S]*72\.2 N/);
  await conflict.getByLabel(/72\.2/).check();
  await page.getByRole('button', { name: 'Go on with these rows' }).click();
  await isSent(page);
  expect(await force(page, row).inputValue()).toBe('72.2');
}

async function sessionEnds(page: Page, context: BrowserContext, password: string): Promise<void> {
  const row = await nextRow(page);
  await context.clearCookies();
  await typeRow(page, row, '74.4');
  await page.getByRole('heading', { name: 'Your session has ended' }).waitFor();
  expect(await force(page, row).inputValue()).toBe('74.4');
  await page.getByLabel('Password').fill(password);
  await page.getByRole('button', { name: 'Go on' }).click();
  await page.getByRole('dialog').waitFor({ state: 'hidden' });
  await isSent(page);
}

async function sharedDevice(page: Page, context: BrowserContext, { url, otherTester, arrive }: Troubled): Promise<void> {
  const address = page.url().slice(url.length);
  await signOut(page);
  const theirs = await arrive(otherTester, address, context);
  await theirs.getByRole('alert').waitFor();
  expect(await theirs.locator('body').innerText()).not.toMatch(/71\.1|72\.2|74\.4/);
  expect(await theirs.getByLabel(/^Force, specimen/).count()).toBe(0);
  await signOut(theirs);
}

async function staleReview({ url, arrive, reviewer, otherReviewer }: Troubled): Promise<void> {
  const page = await arrive(reviewer, '/desk/review/');
  await page.locator('.rows a').first().click();
  await page.getByText('Readings as entered').waitFor();
  const reference = new URL(page.url()).searchParams.get('reference') ?? '';
  for (const answer of await page.getByLabel('Why it stands all the same').all()) await answer.fill('Looked at; it stands.');
  const other = await HouseClient.signedIn(url, otherReviewer);
  const { version } = await other.get<{ version: number }>(`/v1/submissions/${reference}`);
  await other.post(`/v1/submissions/${reference}/reviews`, { version, body: { decision: 'refused', reason: 'It was another spool.' } });
  await other.signOut();
  await page.getByRole('button', { name: 'Accept now' }).click();
  await page.getByText(`${otherReviewer.displayName} has refused it`).waitFor();
  await page.getByText('nothing was decided by you').waitFor();
  await signOut(page);
  await page.context().close();
}
