import type { AddressInfo } from 'node:net';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { shareDesk } from './shared-desk.js';
import { launchBrowser } from './browser.js';
import { PASSWORD } from './test-application.js';
import type { TestApplication } from './test-application.js';

/** Narrower ones are touched [CSS px]. */
const PHONE_BELOW = 500;

/** Cookies and storage of a device, as they stood once. */
export type StorageState = Awaited<ReturnType<BrowserContext['storageState']>>;

/** The desk of a real application, in a real browser. */
export interface OpenDesk {
  readonly url: string;
  readonly browser: Browser;
  /** What pages complained of; the content policy complains there too. */
  readonly complaints: string[];
  /** A device of its own: cookies and storage are nobody else's. */
  device(width?: number, storageState?: StorageState): Promise<BrowserContext>;
  /** Opens an address of the desk and signs in there. */
  signedIn(email: string, path: string, context?: BrowserContext): Promise<Page>;
  close(): Promise<void>;
}

export async function openDesk(t: TestApplication, film?: string): Promise<OpenDesk> {
  await shareDesk(t.dataFolder);
  await t.app.listen(0, '127.0.0.1');
  const { port } = t.app.getHttpServer().address() as AddressInfo;
  const url = `http://127.0.0.1:${port}`;
  const browser = await launchBrowser(film);
  const complaints: string[] = [];

  const device = async (width = 1280, storageState?: StorageState): Promise<BrowserContext> => {
    const context = await browser.newContext({
      viewport: { width, height: 740 },
      hasTouch: width < PHONE_BELOW,
      timezoneId: 'Europe/Lisbon',
      locale: 'en-GB',
      ...(storageState && { storageState }),
    });
    context.setDefaultTimeout(30_000);
    // Browsers keep this for secure pages; a bench may be reached by plain HTTP.
    await context.addInitScript('delete Crypto.prototype.randomUUID');
    context.on('console', (message) => {
      if (/Content Security Policy|is not valid|TypeError/i.test(message.text())) complaints.push(message.text());
    });
    context.on('weberror', (error) => complaints.push(error.error().message));
    return context;
  };
  const signedIn = async (email: string, path: string, context?: BrowserContext): Promise<Page> => {
    const page = await (context ?? (await device())).newPage();
    await page.goto(url + path);
    const signOutButton = page.getByRole('button', { name: 'Sign out' });
    // A device on which somebody arrived before is signed in, as long as that session holds.
    await signOutButton.or(page.getByLabel('E-mail')).waitFor();
    if (await signOutButton.isVisible()) return page;
    await page.getByLabel('E-mail').fill(email);
    await page.getByLabel('Password').fill(PASSWORD);
    await page.getByRole('button', { name: 'Sign in' }).click();
    await signOutButton.waitFor();
    return page;
  };
  return { url, browser, complaints, device, signedIn, close: () => browser.close() };
}

/** Leaves by the button that everybody uses; the next page asks who is there. */
export async function signOut(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Sign out' }).click();
  await page.getByRole('heading', { name: 'Sign in' }).waitFor();
}

/** Says what holds for the bench day, as a tester does once a day. */
export async function keepBenchDay(page: Page, benchDay: string): Promise<void> {
  await page.getByLabel('Bench day').fill(benchDay);
  await page.getByLabel('Air, °C').fill('21.5');
  await page.getByLabel('Humidity, %').fill('55');
  await page.getByLabel('R1, ').check();
  await page.getByRole('button', { name: 'Keep for the day' }).click();
  await page.getByLabel('Code on the spool').waitFor();
}
