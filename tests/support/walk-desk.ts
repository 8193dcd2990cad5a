/** Four people's way through the desk of a house with a past, each from sign-in to sign-out, with what their pages told of themselves. */
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { shareDesk } from './shared-desk.js';
import { demoAdmin, demoEditor, demoReviewers, demoTesters } from '../../prisma/seed/demo-accounts.js';
import type { DemoAccount } from '../../prisma/seed/demo-accounts.js';
import { HouseClient } from '../../prisma/seed/loader/house-client.js';
import { launchBrowser } from './browser.js';
import { meetTroubles } from './desk-troubles.js';
import { signOut } from './desk.js';

interface Walked {
  /** Of all shifts while somebody typed that no key had asked for, the sum (Layout Instability API). */
  readonly shift: number;
  /** What these shifts moved: the beginning of each element. */
  readonly moved: readonly string[];
  /** From Enter to the shown figure [ms], in 95 of 100 rows. */
  readonly figureP95Ms: number;
  readonly accepted: string;
  /** What went wrong on the way, and was got over. */
  readonly met: readonly string[];
  /** What the content policy or a script complained of, and whoever was asked besides the house. */
  readonly complaints: readonly string[];
}

const ROWS = 20;

/** The test of it, in a house with the demo. */
export function testDesk(house: () => { readonly url: string; readonly dataFolder: string }): void {
  test('tester, reviewer, editor and admin go through the desk, from sign-in to sign-out, whatever goes wrong; nothing shifts while one types', async () => {
    const { url, dataFolder } = house();
    await shareDesk(dataFolder);
    const browser = await launchBrowser();
    const people = {
      tester: demoTesters[1],
      otherTester: demoTesters[2],
      reviewer: demoReviewers[1],
      otherReviewer: demoReviewers[0],
      editor: demoEditor,
      admin: demoAdmin,
    };
    const { shift, moved, figureP95Ms, accepted, complaints, met } = await walkDesk(browser, url, people).finally(() => browser.close());
    expect(complaints).toEqual([]);
    expect(moved).toEqual([]);
    expect(shift).toBe(0);
    process.stdout.write(
      `Desk of the demo: layout shift while typing ${shift}; from Enter to the figure p95 ${figureP95Ms.toFixed(1)} ms. Gone through: ${met.join(', ')}.\n`,
    );
    const editor = await HouseClient.signedIn(url, demoEditor);
    expect(await editor.get<{ state: string }>(`/v1/submissions/${accepted}`)).toMatchObject({ state: 'accepted' });
    await editor.signOut();
  }, 1_800_000);
}

async function walkDesk(
  browser: Browser,
  url: string,
  people: Record<'tester' | 'otherTester' | 'reviewer' | 'otherReviewer' | 'editor' | 'admin', DemoAccount>,
): Promise<Walked> {
  const complaints: string[] = [];
  const device = async (): Promise<BrowserContext> => {
    const context = await browser.newContext({ viewport: { width: 1280, height: 740 }, timezoneId: 'Europe/Lisbon', locale: 'en-GB' });
    context.setDefaultTimeout(30_000);
    context.on('weberror', (error) => complaints.push(error.error().message));
    context.on('request', (request) => {
      if (!request.url().startsWith(url) && !request.url().startsWith('data:')) complaints.push(`asked ${request.url()}`);
    });
    return context;
  };
  const arrive = async ({ email, password }: DemoAccount, path: string, context?: BrowserContext): Promise<Page> => {
    const page = await (context ?? (await device())).newPage();
    await page.goto(url + path);
    await page.getByLabel('E-mail').fill(email);
    await page.getByLabel('Password').fill(password);
    await page.getByRole('button', { name: 'Sign in' }).click();
    await page.getByRole('button', { name: 'Sign out' }).waitFor();
    return page;
  };
  const leave = async (page: Page) => {
    await signOut(page);
    await page.context().close();
  };

  const tester = await arrive(people.tester, '/desk/bench/');
  await keepToday(tester);
  const typed = await typeRows(tester, url);
  const met = await meetTroubles({ url, arrive, ...people, tester: { page: tester, password: people.tester.password } });
  await tester.context().close();

  const reviewer = await arrive(people.reviewer, '/desk/review/');
  const accepted = await acceptOldest(reviewer);
  await leave(reviewer);

  const editor = await arrive(people.editor, '/desk/season/?edition=2027');
  await editor.getByRole('heading', { name: 'Entries by category' }).waitFor();
  await editor.locator('.matrix tbody tr').first().waitFor();
  await leave(editor);

  const admin = await arrive(people.admin, '/desk/house/');
  await admin.getByText(accepted).first().waitFor();
  await leave(admin);
  return { ...typed, accepted, complaints, met };
}

/** The day as it is said once: air, and a rig with what it needs. */
async function keepToday(page: Page): Promise<void> {
  await page.getByLabel('Air, °C').fill('21.5');
  await page.getByLabel('Humidity, %').fill('55');
  await page.getByLabel('R1, ').check();
  await page.getByRole('button', { name: 'Keep for the day' }).click();
  await page.getByLabel('Code on the spool').waitFor();
}

async function typeRows(page: Page, url: string): Promise<Pick<Walked, 'shift' | 'moved' | 'figureP95Ms'>> {
  const code = await page.evaluate('fetch("/v1/spools?limit=1").then((answer) => answer.json()).then(({ items }) => items[0].blindCode)');
  await page.goto(`${url}/desk/enter/?spool=${String(code)}&method=straight-pull`);
  await page.getByLabel('Force, specimen 1', { exact: true }).waitFor();
  await page.waitForLoadState('networkidle');
  await page.evaluate(`
    window.shift = 0;
    window.moved = [];
    new PerformanceObserver((list) => list.getEntries().forEach((one) => {
      if (one.hadRecentInput) return;
      window.shift += one.value;
      window.moved.push(...one.sources.map(({ node }) => (node?.outerHTML ?? node?.textContent ?? '').slice(0, 120)));
    })).observe({ type: 'layout-shift' });
  `);
  for (let row = 1; row <= 3; row += 1)
    for (const text of [`90.${row}`, '18.2']) {
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
    }
  // What the server says of the rows comes later than any key.
  await page.locator('[data-waiting="0"]', { hasText: 'last sent' }).waitFor();
  await page.waitForLoadState('networkidle');
  const shift = (await page.evaluate('window.shift')) as number;
  const moved = (await page.evaluate('window.moved')) as string[];
  // It is watched indeed: what pushes the sheet down, without a key, is told.
  await page.evaluate(`(async () => {
    // Further down, the browser holds the view still by scrolling; and what follows a key within half a second is that key's.
    scrollTo(0, 0);
    const until = performance.now() + 10_000;
    const block = document.createElement('div');
    block.style.height = '120px';
    while (window.shift === ${shift}) {
      if (performance.now() > until) throw new Error('What pushed the sheet down was not noticed.');
      if (block.isConnected) block.remove();
      else document.querySelector('main').prepend(block);
      await new Promise(requestAnimationFrame);
    }
    block.remove();
  })()`);
  const tookMs = (await page.evaluate(`(async () => {
    const took = [];
    for (let i = 4; i < ${4 + ROWS}; i += 1) {
      const field = document.activeElement;
      field.value = String(80 + (i % 17) / 10);
      field.dispatchEvent(new InputEvent('input', { bubbles: true }));
      const begun = performance.now();
      field.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, cancelable: true }));
      while (!document.querySelector('[data-live=valid]').textContent.startsWith(i + ' ')) await new Promise(requestAnimationFrame);
      took.push(performance.now() - begun);
      document.activeElement.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, cancelable: true }));
    }
    return took;
  })()`)) as number[];
  const figureP95Ms = [...tookMs].sort((one, other) => one - other)[Math.ceil(0.95 * ROWS) - 1] ?? Infinity;
  return { shift, moved, figureP95Ms };
}

async function acceptOldest(page: Page): Promise<string> {
  await page.locator('.rows a').first().click();
  await page.getByText('Readings as entered').waitFor();
  const reference = new URL(page.url()).searchParams.get('reference') ?? '';
  for (const answer of await page.getByLabel('Why it stands all the same').all()) await answer.fill('Looked at; it stands.');
  await page.getByRole('button', { name: 'Accept now' }).click();
  await page.getByText('has accepted it').waitFor();
  return reference;
}
