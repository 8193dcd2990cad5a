/** Every screen of the desk: axe, width, the way by Tab, weight, content policy. */
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { faultsOfPage } from '../support/axe.js';
import { VARIANT } from '../support/catalogue-fixtures.js';
import { contentFor, planRoundRobin, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { faultsByTab } from '../support/walk-by-tab.js';
import { keepBenchDay, openDesk } from '../support/desk.js';
import type { OpenDesk } from '../support/desk.js';
import type { Role } from '../../api/contract/roles.js';

const WIDTHS = [320, 768, 1280];
const MOST_SCRIPT_BYTES = 150_000;
/** Smallest side of what a wet or gloved hand has to hit [CSS px]. */
const TARGET_PX = 48;

let b: Bench;
let desk: OpenDesk;
let screens: { readonly role: Role; readonly path: string }[];
const people = new Map<Role, string>();
beforeAll(async () => {
  b = await setUpBench();
  await b.editor.call('post', '/v1/control-lines').send({ code: 'C1', name: 'Grey line', lot: 'A', words: 'Kept dark.' }).expect(201);
  const handIn = (content: object) => b.tester.call('post', '/v1/submissions').send(content).expect(201);
  const { reference } = (await handIn(contentFor(b.spool, { specimens: pulls(395) }))).body as { reference: string };
  await handIn(contentFor(b.otherSpool, { specimens: pulls(91) }));
  await planRoundRobin(b, 'quay-hands');
  for (const [role, { email }] of Object.entries({
    tester: b.tester,
    reviewer: b.reviewer,
    editor: b.editor,
    admin: await b.t.caller(['admin'], 'K. Holder'),
  }))
    people.set(role as Role, email);
  screens = [
    ...[
      '/desk/',
      '/desk/bench/',
      `/desk/enter/?spool=${b.spool}&method=straight-pull`,
      '/desk/file/',
      '/desk/method/?slug=straight-pull&version=1',
      '/desk/submissions/',
      '/desk/account/',
      '/desk/nowhere/',
    ].map((path) => ({ role: 'tester' as const, path })),
    ...['/desk/', '/desk/review/', `/desk/review-one/?reference=${reference}`, '/desk/proposals/'].map((path) => ({
      role: 'reviewer' as const,
      path,
    })),
    ...[
      '/desk/',
      '/desk/season/',
      '/desk/season/?edition=2026',
      '/desk/catalogue/',
      '/desk/methods/',
      '/desk/statements/',
      '/desk/rigs/',
      '/desk/rigs/?robin=quay-hands',
      `/desk/correct/?kind=variant&key=${VARIANT.slug}`,
      '/desk/correct/?kind=instrument&key=R1',
    ].map((path) => ({
      role: 'editor' as const,
      path,
    })),
    { role: 'admin', path: '/desk/house/' },
  ];
  desk = await openDesk(b.t);
});
afterAll(async () => {
  await desk.close();
  await b.t.close();
});

/** Waits until nothing is being fetched any more: a part that waits says so as long as it does. */
async function settled(page: Page): Promise<void> {
  await page.locator('main:not([aria-busy=true]) h1').waitFor();
  await page.locator('main', { hasNotText: 'Fetching …' }).waitFor();
}

const SMALL = `[...document.querySelectorAll('main :is(button, select, input:not([type=checkbox], [type=radio]), .tick)')]
  .filter((one) => one.checkVisibility() && Math.min(one.getBoundingClientRect().height, one.getBoundingClientRect().width) < ${TARGET_PX})
  .map((one) => one.outerHTML.slice(0, 100))`;

/** Every script that a screen has loaded, by its address. */
const SCRIPTS = `performance.getEntriesByType('resource').map(({ name }) => name).filter((name) => /\\.m?js($|\\?)/.test(name))`;
const scriptBytes = new Map<string, number>();

/** What the scripts of a screen weigh over the wire; each is fetched for that once, however many screens share it. */
async function weigh(page: Page): Promise<number> {
  const addresses = (await page.evaluate(SCRIPTS)) as string[];
  for (const address of addresses)
    if (!scriptBytes.has(address)) scriptBytes.set(address, gzipSync(await (await fetch(address)).bytes()).length);
  return addresses.reduce((sum, address) => sum + (scriptBytes.get(address) ?? 0), 0);
}

test('no screen has a violation, scrolls sideways, hides from the Tab key, breaks its content policy, carries over 150 kB of script or asks anybody but its host', async () => {
  const faults: string[] = [];
  const weights: Record<string, number> = {};
  const look = async (page: Page, name: string) => {
    faults.push(...(await faultsOfPage(page, name, WIDTHS)));
    weights[name] = await weigh(page);
    await page.setViewportSize({ width: 1280, height: 740 });
    faults.push(...(await faultsByTab(page)).map((fault) => `${name}: ${fault}`));
  };
  const device = async () => {
    const context = await desk.device();
    context.on('request', (request) => {
      if (!request.url().startsWith(desk.url) && !request.url().startsWith('data:')) faults.push(`asked ${request.url()}`);
    });
    return context;
  };
  const lookAs = async (role: Role) => {
    const page = await desk.signedIn(people.get(role)!, role === 'tester' ? '/desk/bench/' : '/desk/', await device());
    if (role === 'tester') await keepBenchDay(page, '2026-03-10');
    for (const { path } of screens.filter((one) => one.role === role)) {
      await page.emulateMedia({ colorScheme: 'light' });
      await page.setViewportSize({ width: 1280, height: 740 });
      await page.goto(desk.url + path);
      await settled(page);
      await page.getByRole('button', { name: 'Sign out' }).waitFor();
      const small = (await page.evaluate(SMALL)) as string[];
      faults.push(...small.map((one) => `${path}: below ${TARGET_PX} px: ${one}`));
      await look(page, `${role} ${path}`);
    }
  };
  const lookOpen = async () => {
    const open = await (await device()).newPage();
    for (const path of ['/desk/', '/desk/invitation/#nobody', '/desk/new-password/#nobody']) {
      await open.goto(desk.url + path);
      await settled(open);
      await look(open, path);
    }
  };
  // Several at once: while one waits for the server, another is looked at.
  await Promise.all([lookAs('tester').then(() => lookAs('reviewer')), lookAs('editor'), lookAs('admin').then(lookOpen)]);
  console.log('Script over the wire [bytes, gzip]:', weights);
  for (const [name, bytes] of Object.entries(weights)) {
    // Preact and the schemas alone are above this: a weight below it would mean that nothing was weighed.
    if (bytes < 20_000 || bytes > MOST_SCRIPT_BYTES) faults.push(`${name}: ${bytes} bytes of script`);
  }
  expect(Object.keys(weights)).toHaveLength(screens.length + 3);
  expect(faults).toEqual([]);
  expect(desk.complaints).toEqual([]);
}, 1_800_000);

test('the desk stands below its own address: what is not there says so, and nobody else frames it', async () => {
  const bare = await fetch(`${desk.url}/desk`, { redirect: 'manual' });
  expect([bare.status, bare.headers.get('location')]).toEqual([302, '/desk/']);
  expect((await fetch(`${desk.url}/desk/nowhere/`)).status).toBe(404);
  expect((await fetch(`${desk.url}/desk/../../../../etc/passwd`)).status).not.toBe(200);
  const page = await fetch(`${desk.url}/desk/bench/`);
  expect(page.headers.get('content-security-policy')).toBe("frame-ancestors 'none'");
});
