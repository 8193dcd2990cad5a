/** What a tester typed is kept, and given to nobody else, whatever the network, the tabs and the session do. */
import type { Page } from 'playwright-core';
import { faultsOfPage } from '../support/axe.js';
import { CLAIM, LINE, MAKER, VARIANT } from '../support/catalogue-fixtures.js';
import { keepBenchDay, signOut } from '../support/desk.js';
import { contentFor, planRoundRobin } from '../support/bench.js';
import { DeskBench, FORCES, draftOf, handedIn, isSaved, pull } from '../support/desk-bench.js';
import { PASSWORD } from '../support/test-application.js';

let day: DeskBench;
beforeAll(async () => {
  day = await DeskBench.open();
});
afterAll(async () => {
  expect(day.desk.complaints).toEqual([]);
  await day.close();
});

test('the network goes in the middle: nothing is lost, it is told, a reload keeps it, and it is handed in once', async () => {
  const page = await day.arrive(day.bench.tester.email);
  const context = page.context();
  await day.beginSheet(page, day.bench.otherSpool);
  await pull(page, FORCES.slice(0, 4));
  await isSaved(page);
  const address = page.url();
  await context.setOffline(true);
  await pull(page, FORCES.slice(4, 7));
  await page.getByText(/^3 waiting, last sent \d\d:\d\d\./).waitFor();
  await page.getByText('The network is away').waitFor();

  await page.close();
  await context.setOffline(false);
  const again = await context.newPage();
  await again.goto(address);
  await again.getByText('7 of 5').waitFor();
  await isSaved(again);

  // The answer to the handing-in is lost on its way, twice; the server has it since the first.
  let lost = 0;
  await again.route('**/revisions', async (route) => {
    const { status } = await route.fetch().then((answer) => ({ status: answer.status() }));
    expect(status).toBe(201);
    lost += 1;
    if (lost <= 2) await route.abort('connectionreset');
    else await route.fallback();
  });
  await again.getByRole('button', { name: 'Hand in' }).click();
  const reference = await handedIn(again);
  expect(lost).toBe(3);
  const stored = await day.read(reference);
  expect({ state: stored.state, revision: stored.revision, specimens: stored.specimens.length }).toEqual({
    state: 'submitted',
    revision: 1,
    specimens: 7,
  });
  await context.close();
});

test('a sheet that was only opened leaves nothing behind; what is typed before a row is done is found again on the device', async () => {
  const page = await day.arrive(day.bench.otherTester.email);
  const context = page.context();
  const begun = async () => (await day.bench.otherTester.call('get', '/v1/submissions?state=draft').expect(200)).body.items as unknown[];
  await day.beginSheet(page, day.bench.spool);
  await page.waitForLoadState('networkidle');
  expect(await begun()).toEqual([]);
  await page.keyboard.type('64.2');
  await page.waitForURL(/copy=/);
  await page.close();
  const again = await context.newPage();
  await again.goto(`${day.desk.url}/desk/bench/`);
  await again.locator('.rows > li', { hasText: 'on this device alone so far' }).getByRole('link', { name: 'Go on' }).click();
  await again.getByLabel('Force, specimen 1', { exact: true }).waitFor();
  expect(await again.getByLabel('Force, specimen 1', { exact: true }).inputValue()).toBe('64.2');
  await again.waitForURL(/draft=/);
  await isSaved(again);
  expect(await begun()).toHaveLength(1);
  await context.close();
});

test('two tabs on one draft: both texts stand by row, and what is chosen is what is kept', async () => {
  const page = await day.arrive(day.bench.tester.email);
  const context = page.context();
  await day.beginSheet(page, day.bench.spool);
  await pull(page, FORCES.slice(0, 1));
  await isSaved(page);
  await page.waitForURL(/draft=/);
  const other = await context.newPage();
  await other.goto(page.url());
  await other.getByLabel('Force, specimen 2', { exact: true }).focus();
  await pull(other, ['95.5']);
  await isSaved(other);
  await page.bringToFront();
  await page.getByLabel('Force, specimen 2', { exact: true }).focus();
  await pull(page, ['77.7', '78.8']);
  await page.getByRole('heading', { name: 'written elsewhere meanwhile' }).waitFor();
  const row = page.locator('.conflict tbody tr').first();
  expect(await faultsOfPage(page, 'conflict', [320, 1280])).toEqual([]);
  expect(await row.innerText()).toMatch(/77\.7 N, 18\.2 s[\s\S]*95\.5 N, 18\.2 s/);
  await row.getByLabel(/95\.5/).check();
  await page.getByRole('button', { name: 'Go on with these rows' }).click();
  await isSaved(page);
  const reference = draftOf(page);
  const { draft } = await day.read(reference);
  expect(draft.rows.map(({ cells }: any) => cells.breakingForce?.text ?? '')).toEqual(['90.1', '95.5', '78.8', '']);
  await context.close();
});

test('the session ends while somebody types: the password is asked for over the page, and the rows are there and saved', async () => {
  const page = await day.arrive(day.bench.tester.email);
  await day.beginSheet(page, day.bench.spool);
  await pull(page, FORCES.slice(0, 2));
  await isSaved(page);
  await day.bench.sql('DELETE FROM session');
  await page.keyboard.type('91.1');
  await page.keyboard.press('Enter');
  await page.keyboard.type('18.0');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'Your session has ended' }).waitFor();
  expect(await page.getByLabel('Force, specimen 3', { exact: true }).inputValue()).toBe('91.1');
  await page.getByLabel('Password').fill('not this one at all');
  await page.getByRole('button', { name: 'Go on' }).click();
  const refused = page.getByRole('dialog').getByRole('alert').filter({ hasText: /./ });
  expect(await refused.innerText()).toBe(`This is not the password of ${day.bench.tester.email}. Type it again.`);
  await page.getByLabel('Password').fill(PASSWORD);
  await page.getByRole('button', { name: 'Go on' }).click();
  await page.getByRole('dialog').waitFor({ state: 'hidden' });
  await isSaved(page);
  const { draft } = await day.read(draftOf(page));
  expect(draft.rows[2].cells).toEqual({ breakingForce: { text: '91.1', unit: 'N' }, timeToBreak: { text: '18.0', unit: 's' } });
  await page.context().close();
});

/** Texts of fields as they stand after the page was loaded anew. */
async function afterReload(page: Page, labels: readonly string[]): Promise<string[]> {
  await page.reload();
  await page.getByText('did not send stands here').waitFor();
  return Promise.all(labels.map((label) => page.getByLabel(label, { exact: true }).inputValue()));
}

test('a control pull that is typed and not sent stands there after a reload with its unit, is sent once, and is then gone', async () => {
  const page = await day.arrive(day.bench.tester.email);
  const context = page.context();
  const pulls = ['Pull 1', 'Pull 2', 'Pull 3'];
  await page.getByLabel(pulls[0]!, { exact: true }).waitFor();
  // What is known already lies behind one line.
  const standing = page.getByText(/^R1, .* · C1, .* · Straight pull · /);
  expect(await page.getByLabel('Rig', { exact: true }).isVisible()).toBe(false);
  await standing.click();
  await page.getByLabel('Displayed in').last().selectOption('lbf');
  for (const [i, text] of ['18.7', '18,9', '18.8'].entries()) await page.getByLabel(pulls[i]!, { exact: true }).fill(text);
  expect(await afterReload(page, pulls)).toEqual(['18.7', '18,9', '18.8']);
  expect(await standing.innerText()).toMatch(/ · lbf$/);

  // The answer is lost; the page is loaded anew, and the same pull is sent once more.
  await page.route('**/v1/control-pulls', async (route) => {
    await route.fetch();
    await route.abort('connectionreset');
  });
  await page.getByRole('button', { name: 'Pulled' }).click();
  await page.getByRole('alert').filter({ hasText: /\S/ }).waitFor();
  expect(await afterReload(page, pulls)).toEqual(['18.7', '18,9', '18.8']);
  await page.unroute('**/v1/control-pulls');
  await page.getByRole('button', { name: 'Pulled' }).click();
  await page.getByText('R1: on record').waitFor();
  // The next pull is of the same.
  expect(await standing.innerText()).toMatch(/ · lbf$/);
  expect(await day.bench.sql('SELECT count(*)::int AS pulls FROM control_pull')).toEqual([{ pulls: 1 }]);
  await page.reload();
  await page.getByLabel('Pull 1', { exact: true }).waitFor();
  expect(await page.getByLabel('Pull 1', { exact: true }).inputValue()).toBe('');
  expect(await standing.innerText()).toMatch(/ · lbf$/);
  await context.close();
});

test('what is typed into a round robin stays on the device for its account alone, and can be emptied', async () => {
  await planRoundRobin(day.bench, 'quay-hands');
  await day.bench.editor.call('post', '/v1/round-robins/quay-hands/opening').set('If-Match', '"1"').expect(201);
  const context = await day.desk.device();
  const page = await day.desk.signedIn(day.bench.tester.email, '/desk/rigs/?robin=quay-hands', context);
  const forces = ['Force, specimen 1', 'Force, specimen 2'];
  await page.getByLabel(forces[0]!).fill('90.1');
  await page.getByLabel(forces[1]!).fill('90,5');
  expect(await afterReload(page, forces)).toEqual(['90.1', '90,5']);
  await signOut(page);
  const theirs = await day.desk.signedIn(day.bench.otherTester.email, '/desk/rigs/?robin=quay-hands', context);
  await theirs.getByLabel(forces[0]!).waitFor();
  expect(await theirs.getByLabel(forces[0]!).inputValue()).toBe('');
  await signOut(theirs);
  const again = await day.desk.signedIn(day.bench.tester.email, '/desk/rigs/?robin=quay-hands', context);
  expect(await afterReload(again, forces)).toEqual(['90.1', '90,5']);
  await again.getByRole('button', { name: 'Empty it' }).click();
  await again.reload();
  await again.getByLabel(forces[0]!).waitFor();
  expect(await again.getByLabel(forces[0]!).inputValue()).toBe('');
  await context.close();
});

test('a certificate, a row and a table of the catalogue, and words of a review stay on the device until they are sent', async () => {
  const context = await day.desk.device();
  const page = await day.desk.signedIn(day.bench.editor.email, '/desk/methods/', context);
  await page.getByText('Add a certificate').click();
  await page.getByLabel('Number of the certificate').fill('K-17');
  await page.getByLabel('Coverage factor k').fill('2.1');
  // The line that it lies behind is open again.
  expect(await afterReload(page, ['Number of the certificate', 'Coverage factor k'])).toEqual(['K-17', '2.1']);
  expect(await page.getByLabel('Number of the certificate').isVisible()).toBe(true);

  await page.goto(`${day.desk.url}/desk/catalogue/`);
  await page.getByText('One spool', { exact: true }).click();
  await page.getByLabel('Density of the solid').fill('0.98');
  await page.getByLabel('The label says it is').selectOption('minimum');
  await page.getByText('Many at once').click();
  await page.getByRole('textbox', { name: 'The table' }).fill('maker\tline\nQuay Cordage\tHarbour');
  expect(await afterReload(page, ['Density of the solid, g/cm³', 'The label says it is'])).toEqual(['0.98', 'minimum']);
  expect(await page.getByRole('textbox', { name: 'The table' }).inputValue()).toContain('Harbour');
  await page.getByText('The table lacks').waitFor();

  const { reference } = (await day.bench.tester.call('post', '/v1/submissions').send(contentFor(day.bench.spool)).expect(201)).body as {
    reference: string;
  };
  const reviewer = await day.desk.signedIn(day.bench.reviewer.email, `/desk/review-one/?reference=${reference}`);
  await reviewer.getByRole('button', { name: 'Return with a question' }).click();
  await reviewer.getByLabel('Question').fill('Was the display read in full?');
  await reviewer.reload();
  await reviewer.getByRole('button', { name: 'Return with a question' }).click();
  expect(await reviewer.getByLabel('Question').inputValue()).toBe('Was the display read in full?');
  await context.close();
});

test('on a shared device the sheets of one tester are not those of another', async () => {
  const page = await day.arrive(day.bench.tester.email);
  const context = page.context();
  await day.beginSheet(page, day.bench.spool);
  await pull(page, ['66.6']);
  await page.waitForURL(/draft=/);
  const address = page.url().slice(day.desk.url.length);
  await context.setOffline(true);
  await page.getByRole('button', { name: 'Sign out' }).click();
  await page.getByText('You are still signed in').waitFor();
  await context.setOffline(false);
  await signOut(page);
  const theirs = await day.desk.signedIn(day.bench.otherTester.email, address, context);
  await theirs.getByRole('alert').waitFor();
  expect(await theirs.locator('body').innerText()).not.toContain('66.6');
  expect(await theirs.locator('input[value="66.6"]').count()).toBe(0);
  await context.close();
});

test('nothing that the desk of a tester receives names a maker, a line, a size or a claim', async () => {
  const context = await day.desk.device();
  const received: string[] = [];
  context.on('response', (response) => {
    if (/json|html|javascript/.test(response.headers()['content-type'] ?? ''))
      void response.text().then(
        (text) => received.push(`${response.url()}\n${text}`),
        () => '',
      );
  });
  const page = await day.desk.signedIn(day.bench.tester.email, '/desk/bench/', context);
  await keepBenchDay(page, '2026-03-10');
  await day.beginSheet(page, day.bench.spool);
  // Four times the label's 20 lbf: what the checks find must not tell.
  await pull(page, ['395.1', '396.2', '394.4', '395.8', '396.0']);
  await isSaved(page);
  await page.getByLabel('What the checks found').waitFor();
  for (const path of ['/desk/', '/desk/submissions/', '/desk/bench/', '/desk/file/', '/desk/account/']) {
    await page.goto(day.desk.url + path, { waitUntil: 'networkidle' });
  }
  expect(received.filter((answer) => answer.includes('/v1/')).length).toBeGreaterThan(10);
  for (const name of [
    MAKER.name,
    MAKER.slug,
    LINE.name,
    LINE.slug,
    VARIANT.slug,
    VARIANT.size,
    CLAIM.printed.text,
    '88.96',
    'unit-slip',
    'far-from-label',
  ])
    expect(received.filter((answer) => answer.includes(name))).toEqual([]);
  await context.close();
});
