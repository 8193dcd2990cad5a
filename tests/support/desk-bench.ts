import type { Locator, Page } from 'playwright-core';
import { setUpBench } from './bench.js';
import type { Bench } from './bench.js';
import { keepBenchDay, openDesk } from './desk.js';
import type { OpenDesk, StorageState } from './desk.js';

/** Forces [N] and times [s] of ten specimens of the spool whose label says 20 lbf. */
export const FORCES = ['90.1', '91.4', '88.9', '90.7', '89.5', '92.2', '90.3', '88.1', '91.0', '89.9'];
export const TIMES = ['18.2', '17.9', '18.4', '18.8', '18.1', '18.4', '17.6', '19.0', '18.3', '18.5'];

/** A tester's day at the desk of a bench with a control line. */
export class DeskBench {
  /** Of each tester the device as it stood when the day was said: signing in and saying it once is enough for all that is tested on top. */
  private readonly arrived = new Map<string, StorageState>();

  private constructor(
    readonly bench: Bench,
    readonly desk: OpenDesk,
  ) {}

  static async open(): Promise<DeskBench> {
    const bench = await setUpBench();
    await bench.editor.call('post', '/v1/control-lines').send({ code: 'C1', name: 'Grey line', lot: 'A', words: 'Kept dark.' }).expect(201);
    return new DeskBench(bench, await openDesk(bench.t));
  }

  async close(): Promise<void> {
    await this.desk.close();
    await this.bench.t.close();
  }

  /** A tester signed in, with the day's context said, on a device of their own. */
  async arrive(email: string, width?: number): Promise<Page> {
    const before = this.arrived.get(email);
    const page = await this.desk.signedIn(email, '/desk/bench/', await this.desk.device(width, before));
    if (!before) {
      await keepBenchDay(page, '2026-03-10');
      this.arrived.set(email, await page.context().storageState());
    }
    return page;
  }

  /** Opens a new sheet for a spool, ready for the first number. */
  async beginSheet(page: Page, code: string): Promise<void> {
    await page.goto(`${this.desk.url}/desk/enter/?spool=${code}&method=straight-pull`);
    await page.getByLabel('Force, specimen 1', { exact: true }).waitFor();
  }

  /** A submission as its tester reads it. */
  async read(reference: string) {
    return (await this.bench.tester.call('get', `/v1/submissions/${reference}`).expect(200)).body;
  }
}

/** Types a code at the bench, and comes to its sheet. */
export async function typeCode(page: Page, code: string): Promise<void> {
  await page.getByLabel('Code on the spool').fill(code);
  await page.getByLabel('Method').last().selectOption('straight-pull');
  await page.getByRole('button', { name: 'Begin' }).click();
  await page.getByLabel('Force, specimen 1', { exact: true }).waitFor();
}

/** Types force and time of one specimen after another, wherever the cursor is. */
export async function pull(page: Page, forces: readonly string[]): Promise<void> {
  for (const [i, force] of forces.entries())
    for (const text of [force, TIMES[i]!]) {
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
    }
}

export const isSaved = (page: Page) => page.locator('[data-waiting="0"]', { hasText: 'last sent' }).waitFor();

export async function handedIn(page: Page): Promise<string> {
  await page.getByRole('heading', { name: 'Handed in' }).waitFor({ timeout: 20_000 });
  return /S-2026-\d+/.exec(await page.locator('.lede').innerText())![0];
}

export const draftOf = (page: Page): string => new URL(page.url()).searchParams.get('draft')!;

const FARTHEST_BY_TAB = 80;

/** Walks on by Tab until it is there; nobody points at anything. */
export async function tabTo(page: Page, field: Locator): Promise<void> {
  await field.waitFor();
  for (let i = 0; i < FARTHEST_BY_TAB; i += 1) {
    if (await field.evaluate((one) => one.ownerDocument.activeElement === one)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`${field.toString()} is not come to by Tab.`);
}

export async function typeInto(page: Page, label: string, text: string): Promise<void> {
  await tabTo(page, page.getByLabel(label, { exact: true }));
  await page.keyboard.type(text);
}
