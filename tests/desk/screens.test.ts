/** Every screen of the desk: axe, width, weight, content policy. */
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { faultsOfPage } from '../support/axe.js';
import { VARIANT } from '../support/catalogue-fixtures.js';
import { contentFor, planRoundRobin, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
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
}, 120_000);
afterAll(async () => {
  await desk.close();
  await b.t.close();
});

/** Waits until nothing is being fetched any more. */
async function settled(page: Page): Promise<void> {
  await page.locator('main h1').waitFor();
  await page.waitForLoadState('networkidle');
  await page.locator('main', { hasNotText: 'Fetching …' }).waitFor();
}

const SMALL = `[...document.querySelectorAll('main :is(button, select, input:not([type=checkbox], [type=radio]), .tick)')]
  .filter((one) => one.checkVisibility() && Math.min(one.getBoundingClientRect().height, one.getBoundingClientRect().width) < ${TARGET_PX})
  .map((one) => one.outerHTML.slice(0, 100))`;

test('no screen has a violation, scrolls sideways or breaks its content policy, at 320, 768 and 1280 px and in both themes', async () => {
  const faults: string[] = [];
  const lookAs = async (role: Role) => {
    const context = await desk.device();
    const page = await desk.signedIn(people.get(role)!, role === 'tester' ? '/desk/bench/' : '/desk/', context);
    if (role === 'tester') await keepBenchDay(page, '2026-03-10');
    for (const { path } of screens.filter((one) => one.role === role)) {
      await page.emulateMedia({ colorScheme: 'light' });
      await page.setViewportSize({ width: 1280, height: 740 });
      await page.goto(desk.url + path);
      await settled(page);
      await page.getByRole('button', { name: 'Sign out' }).waitFor();
      const small = (await page.evaluate(SMALL)) as string[];
      faults.push(
        ...small.map((one) => `${path}: below ${TARGET_PX} px: ${one}`),
        ...(await faultsOfPage(page, `${role} ${path}`, WIDTHS)),
      );
    }
  };
  // Two at once: while one waits for the server, the other is looked at.
  await Promise.all([lookAs('tester').then(() => lookAs('reviewer')), lookAs('editor'), lookAs('admin')]);
  const open = await (await desk.device()).newPage();
  for (const path of ['/desk/', '/desk/invitation/#nobody', '/desk/new-password/#nobody']) {
    await open.goto(desk.url + path);
    await settled(open);
    faults.push(...(await faultsOfPage(open, path, WIDTHS)));
  }
  expect(faults).toEqual([]);
  expect(desk.complaints).toEqual([]);
}, 600_000);

test('no screen carries more than 150 kB of script over the wire, and asks nobody but its own host', async () => {
  const weights: Record<string, number> = {};
  for (const path of [
    ...new Set(screens.map(({ path: address }) => address.replace(/\?.*/, ''))),
    '/desk/invitation/',
    '/desk/new-password/',
  ]) {
    // Nothing of an earlier screen is kept: each is weighed whole.
    const page = await (await desk.device()).newPage();
    let bytes = 0;
    const elsewhere: string[] = [];
    page.on('request', (request) => {
      if (!request.url().startsWith(desk.url) && !request.url().startsWith('data:')) elsewhere.push(request.url());
    });
    const scripts: Promise<void>[] = [];
    page.on('response', (response) => {
      if ((response.headers()['content-type'] ?? '').includes('javascript'))
        scripts.push(response.body().then((body) => void (bytes += gzipSync(body).length)));
    });
    await page.goto(desk.url + path, { waitUntil: 'networkidle' });
    await Promise.all(scripts);
    weights[path] = bytes;
    expect(elsewhere).toEqual([]);
    await page.context().close();
  }
  console.log('Script over the wire [bytes, gzip]:', weights);
  for (const bytes of Object.values(weights)) {
    // Preact and the schemas alone are above this: a weight below it would mean that nothing was weighed.
    expect(bytes).toBeGreaterThan(20_000);
    expect(bytes).toBeLessThanOrEqual(MOST_SCRIPT_BYTES);
  }
}, 120_000);

test('the desk stands below its own address: what is not there says so, and nobody else frames it', async () => {
  const bare = await fetch(`${desk.url}/desk`, { redirect: 'manual' });
  expect([bare.status, bare.headers.get('location')]).toEqual([302, '/desk/']);
  expect((await fetch(`${desk.url}/desk/nowhere/`)).status).toBe(404);
  expect((await fetch(`${desk.url}/desk/../../../../etc/passwd`)).status).not.toBe(200);
  const page = await fetch(`${desk.url}/desk/bench/`);
  expect(page.headers.get('content-security-policy')).toBe("frame-ancestors 'none'");
});
