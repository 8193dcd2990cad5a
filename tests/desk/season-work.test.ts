/** What an editor does with an edition besides opening and closing it: change a plan, amend what is open, correct what is published. */
import { planResponse } from '../../api/contract/endpoints/planning.js';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { openDesk } from '../support/desk.js';
import type { OpenDesk } from '../support/desk.js';
import { csvFile, inventPullsOf, pullRows } from '../support/hand-in-csv.js';
import { createHouse, workEdition } from '../support/house.js';
import type { House } from '../support/house.js';
import { proposeWithdrawal } from '../support/propose.js';
import { acceptAll, editionRequest, moveEdition, publish, VARIANTS } from '../support/season.js';

/** As people call two of the variants. */
const GANNET = 'Marlow Quay Cordage Eight gannet-20, moss';
const PETREL = 'Seven Weirs Line Works Eight petrel-40, moss';

let house: House;
let desk: OpenDesk;
beforeAll(async () => {
  house = await createHouse();
  await workEdition(house, '2026');
  await house.editor
    .call('post', '/v1/editions')
    .send({ ...editionRequest('2027'), opensOn: '2027-01-01', closesOn: '2027-12-31' })
    .expect(201);
  desk = await openDesk(house.t);
});
afterAll(async () => {
  expect(desk.complaints).toEqual([]);
  await desk.close();
  await house.t.close();
});

const edition = async (slug: string) => (await house.editor.call('get', `/v1/bench/editions/${slug}`)).body as Record<string, unknown>;

test('a plan is changed, an entry is taken out again, and the whole is taken away', async () => {
  const page = await desk.signedIn(house.editor.email, '/desk/season/?edition=2027');
  await page.getByLabel(GANNET).check();
  await page.getByRole('button', { name: 'Enter these' }).click();
  await page.getByRole('button', { name: `Take out ${GANNET}` }).click();
  await page.getByText(`${GANNET} is out again.`).waitFor();
  expect(await edition('2027')).toMatchObject({ entries: 0 });
  await page.getByText('Change what is planned').click();
  await page.getByLabel('Name', { exact: true }).fill('Trials of the second winter');
  await page.getByRole('button', { name: 'Change it' }).click();
  await page.getByRole('heading', { name: 'Trials of the second winter' }).waitFor();
  expect(await edition('2027')).toMatchObject({ name: 'Trials of the second winter', opensOn: '2027-01-01' });
  await page.getByText('Take the edition away').click();
  await page.getByRole('button', { name: 'Take Trials of the second winter away' }).click();
  await page.waitForURL('**/desk/season/');
  expect((await house.editor.call('get', '/v1/bench/editions/2027')).status).toBe(404);
});

test('a plan is divided, and an entry put where its rule does not put it, with the reason', async () => {
  const plan = { ...editionRequest('2028'), opensOn: '2028-01-01', closesOn: '2028-12-31' };
  await house.editor.call('post', '/v1/editions').send(plan).expect(201);
  const { slug } = VARIANTS[0]!;
  await house.editor
    .call('post', '/v1/editions/2028/entries')
    .send({ variants: [slug] })
    .expect(201);
  const page = await desk.signedIn(house.editor.email, '/desk/season/?edition=2028');
  await page.getByText('Compare some lines apart').click();
  for (const [name, construction] of [
    ['Braided', 'braided'],
    ['Single strand', 'monofilament'],
  ] as const) {
    await page.getByLabel('Name of the division').fill(name);
    await page.getByLabel(construction, { exact: true }).check();
    await page.getByRole('button', { name: 'Add this division' }).click();
    await page.getByText(`${name} is added.`).waitFor();
  }
  await page.getByRole('button', { name: 'Divide the edition' }).click();
  await page.getByText('Put an entry into another division').click();
  await page.getByLabel('Entry', { exact: true }).selectOption({ label: `${GANNET}: Braided` });
  await page.getByLabel('Division', { exact: true }).selectOption({ label: 'Single strand' });
  const overruling = page.locator('details', { hasText: 'Put an entry into another division' });
  await overruling.getByLabel('Why, in words that readers see').fill('One strand, whatever its label says.');
  await page.getByRole('button', { name: 'Put it there' }).click();
  await page.getByText('(1 are)').waitFor();
  const { entries } = (await house.editor.call('get', '/v1/editions/2028/board').expect(200)).body as { entries: object[] };
  expect(entries).toMatchObject([{ variant: slug, division: 'single-strand', overruled: 'One strand, whatever its label says.' }]);
});

test('an open edition takes a later closing day, with the reason', async () => {
  const page = await desk.signedIn(house.editor.email, '/desk/season/?edition=2026');
  await page.getByText('A further entry, a method that was forgotten').click();
  await page.getByLabel('Later closing day').fill('2027-01-31');
  await page.getByRole('button', { name: 'Take these in' }).click();
  await page.getByRole('alert').filter({ hasText: /./ }).waitFor();
  expect(await edition('2026')).toMatchObject({ amendments: [] });
  await page.locator('details[open]').getByLabel('Why, in words that readers see').fill('A rig was down.');
  await page.getByRole('button', { name: 'Take these in' }).click();
  await page.getByText('instead of').waitFor();
  expect(await edition('2026')).toMatchObject({ closesOn: '2027-01-31', amendments: [{ reason: 'A rig was down.' }] });
});

test('an editor sees what leaving an entry out would change, decides, and takes it back in', async () => {
  const page = await desk.signedIn(house.editor.email, '/desk/season/?edition=2026');
  const excluded = async () => {
    const { body } = await house.editor.call('get', '/v1/editions/2026/board').expect(200);
    return (body.entries as { variant: string; exclusion: object | null }[]).flatMap((one) => (one.exclusion ? [one.variant] : []));
  };
  await page.getByText('Leave an entry out (0 are)').click();
  await page.getByLabel('Entry', { exact: true }).selectOption('petrel-40');
  await page.getByLabel('The others').selectOption('closedUp');
  await page.getByLabel('Why, in words that readers see').first().fill('It cannot be bought.');
  await page.getByRole('button', { name: 'See what that would change' }).click();
  const effect = page.getByRole('region', { name: `What leaving ${PETREL} out would change` });
  await effect.getByText(`overall, ${PETREL}, place`).waitFor();
  expect(await excluded()).toEqual([]);
  await effect.getByRole('button', { name: `Leave ${PETREL} out` }).click();
  await page.getByText(`${PETREL} is left out.`).waitFor();
  expect(await excluded()).toEqual(['petrel-40']);
  await page.getByRole('button', { name: `Take ${PETREL} back in` }).click();
  await page.getByText(`${PETREL} is in again.`).waitFor();
  expect(await excluded()).toEqual([]);
  await page.close();
});

test('an editor learns what more testing would buy, the most first, and what cannot be told apart from nothing', async () => {
  const page = await desk.signedIn(house.editor.email, '/desk/season/?edition=2026');
  const part = page.locator('details', { hasText: 'What would more testing buy?' }).last();
  await part.locator('summary').click();
  const told = page.waitForResponse((one) => one.url().includes('/editions/2026/plan?'));
  await part.getByRole('button', { name: 'Work it out' }).click();
  const plan = planResponse.parse(await (await told).json());
  await part.getByText(`${plan.entries} entries have place intervals of ${plan.expected.width} places on average`).waitFor();
  const rows = await part.locator('.rows').first().locator('p').allInnerTexts();
  const buys = plan.alternatives
    .toSorted((one, other) => Number(other.narrowerPercent) - Number(one.narrowerPercent))
    .map(({ narrowerPercent, standardErrorPercent }) =>
      Number(narrowerPercent) > 2 * Number(standardErrorPercent)
        ? `narrows the table by ${narrowerPercent} %`
        : 'would not narrow the table',
    );
  expect(buys.length).toBeGreaterThan(2);
  expect(rows.map((row, at) => row.includes(buys[at]!))).toEqual(buys.map(() => true));
  expect(await part.locator('.rows').last().locator('li').count()).toBe(plan.needed.length);
  await page.close();
});

test('results are drawn to be tested again, once; each stands there under its new code until it is', async () => {
  await workEdition(house, '2029', { variants: VARIANTS.slice(0, 2), seed: 7 });
  const page = await desk.signedIn(house.editor.email, '/desk/season/?edition=2029');
  const part = page.locator('details', { hasText: 'Tested again, blind' }).last();
  await part.locator('summary').click();
  const share = part.getByLabel('Share of the accepted results, %');
  await share.fill('a tenth');
  await part.getByRole('button', { name: 'Draw' }).click();
  await part.locator('.field .signal').waitFor();
  await share.fill('20');
  await part.getByRole('button', { name: 'Draw' }).click();
  await part.getByText(/^20 % were drawn: \d results, 0 of them tested again/).waitFor();
  expect(await share.count()).toBe(0);
  const { items } = (await house.editor.call('get', '/v1/editions/2029/retests').expect(200)).body as {
    items: { spool: string; method: 'straight-pull' }[];
  };
  expect(await part.locator('.rows .code').allInnerTexts()).toEqual(items.map(({ spool }) => spool));
  expect(await part.getByText('not yet').count()).toBe(items.length);
  const other = await house.t.caller(['tester'], 'B. Fenwick');
  for (const { spool, method } of items) {
    const file = csvFile(pullRows({ edition: '2029', spool, instrument: 'R2' }, method, inventPullsOf(VARIANTS[0]!, method, 11)));
    await other.call('post', '/v1/submissions').set('Content-Type', 'text/csv').send(file).expect(201);
  }
  await acceptAll(house.reviewer, '2029');
  await page.reload();
  await part.locator('summary').click();
  await part.getByText(`${items.length} of them tested again`).waitFor();
  expect(await part.getByText('not yet').count()).toBe(0);
  await page.close();
});

test('a correction is made by ticking what differs from the published edition, and is looked at once more', async () => {
  await moveEdition(house.editor, '2026', 'closure');
  await house.t.app.select(ReleasesModule).get(ReleaseWork).start(false);
  await publish(house.editor, '2026');
  const { body } = await house.editor.call('get', '/v1/submissions?edition=2026&limit=200').expect(200);
  const spool = house.codes.get('petrel-40');
  const knot = (body.items as { reference: string; spool: string; version: number; method: { slug: string } }[]).find(
    (item) => item.spool === spool && item.method.slug === 'named-knot',
  )!;
  const page = await desk.signedIn(house.editor.email, '/desk/season/?edition=2026');
  await page.getByText('there is nothing to correct').waitFor();
  await house.editor
    .call('post', `/v1/submissions/${knot.reference}/withdrawal`)
    .set('If-Match', `"${knot.version}"`)
    .send({ proposal: await proposeWithdrawal(house.reviewer, knot.reference) })
    .expect(201);
  await page.reload();
  // Cells of a kind are folded together, and are ticked together or one by one.
  await page.getByText(/^Values: \d+$/).click();
  await page.getByLabel(`Knot retention, ${PETREL}, value`).check();
  await page.getByText(/^Intervals: \d+$/).click();
  const intervals = page.locator('details', { hasText: /^Intervals: / }).last();
  const ticks = intervals.getByRole('checkbox');
  expect(await ticks.count()).toBeGreaterThan(2);
  for (const are of [true, false]) {
    await intervals.getByRole('button', { name: /^Tick all \d+, or none$/ }).click();
    expect(await Promise.all((await ticks.all()).map((tick) => tick.isChecked()))).toEqual(Array(await ticks.count()).fill(are));
  }
  await page.getByLabel('What changed and why, for readers').fill('A rig was found bent.');
  const publishing = page.getByRole('button', { name: 'Publish the correction' });
  // For a later hour it can be called off, also by who comes back to the page.
  await page.getByLabel('When readers see it').fill('2031-05-01T09:00');
  await publishing.click();
  await page.getByRole('button', { name: 'Yes, publish' }).click();
  await page.getByText(/Readers see it from 1 May 2031, 09:00/).waitFor();
  await page.reload();
  await page.getByRole('button', { name: 'Call revision 2 off' }).click();
  await page.getByText('Revision 2 is called off; nobody has seen it.').waitFor();
  await page.getByText(/^Values: \d+$/).click();
  await page.getByLabel(`Knot retention, ${PETREL}, value`).check();
  await page.getByLabel('What changed and why, for readers').fill('A rig was found bent.');
  await publishing.click();
  await page.getByText(/^\d+ cells against revision 1$/).waitFor();
  await page.getByRole('button', { name: 'Yes, publish' }).click();
  await page.getByText('Revision 2: published.').waitFor({ timeout: 60_000 });
  const { erratum } = (await house.t.call('get', '/v1/editions/2026').expect(200)).body as { erratum: object };
  expect(erratum).toMatchObject({ reasonCode: 'withdrawal', words: 'A rig was found bent.' });
});
