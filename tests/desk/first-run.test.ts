/** From an empty house to a published release in the browser alone: admin, editor, tester and reviewer, each from the invitation to the sign-out. */
import type { Page } from 'playwright-core';
import { AccountsModule } from '../../api/accounts/accounts.module.js';
import { Invite } from '../../api/accounts/invite.js';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { keepBenchDay, openDesk, signOut } from '../support/desk.js';
import type { OpenDesk } from '../support/desk.js';
import { createTestApplication, PASSWORD } from '../support/test-application.js';
import type { TestApplication } from '../support/test-application.js';

let t: TestApplication;
let desk: OpenDesk;
beforeAll(async () => {
  t = await createTestApplication({}, undefined, false);
  desk = await openDesk(t);
  await t.app.select(ReleasesModule).get(ReleaseWork).start(false);
});
afterAll(async () => {
  expect(desk.complaints).toEqual([]);
  await desk.close();
  await t.close();
});

/** Opens an invitation and makes the account; its person is signed in then. */
async function accept(address: string, name: string): Promise<Page> {
  const page = await (await desk.device()).newPage();
  await page.goto(desk.url + new URL(address).pathname + new URL(address).hash);
  // Sent too early, it says what is needed, and the cursor stands where that goes.
  await page.getByRole('button', { name: 'Make the account' }).click();
  await page.getByText('Nothing is here yet; it is needed').first().waitFor();
  expect(await page.evaluate('document.activeElement.name')).toBe('email');
  await page.getByLabel('E-mail').fill(`${name.toLowerCase()}@house.example`);
  await page.getByLabel('Name').fill(name);
  await page.getByLabel('Password').fill(PASSWORD);
  await page.getByRole('button', { name: 'Make the account' }).click();
  await page.getByRole('heading', { name }).waitFor();
  return page;
}

async function invite(admin: Page, role: string): Promise<string> {
  await admin.goto(`${desk.url}/desk/house/`);
  await admin.getByLabel('Who it is for').fill(`our ${role}`);
  await admin.getByRole('group', { name: 'Roles', exact: true }).getByLabel(role).check();
  await admin.getByRole('button', { name: 'Make an invitation' }).click();
  return admin.locator('[data-address]').innerText();
}

/** Fills the fields of the form whose button has this name, then presses it. */
async function send(page: Page, button: string, values: Record<string, string>, ticks: readonly string[] = []): Promise<void> {
  const form = page.locator('form', { has: page.getByRole('button', { name: button, exact: true }) });
  for (const [label, value] of Object.entries(values)) {
    const field = form.getByLabel(label, { exact: true });
    if ((await field.locator('xpath=self::select').count()) === 1) await field.selectOption(value);
    else await field.fill(value);
  }
  for (const tick of ticks) await form.getByLabel(tick).check();
  const said = form.locator('.send p');
  const before = await said.innerText();
  await form.getByRole('button', { name: button, exact: true }).click();
  await said.filter({ hasText: /./, hasNotText: before || 'nothing was said' }).waitFor();
}

async function setUpHouse(page: Page): Promise<void> {
  await page.getByText('Next: Instruments and their certificates').waitFor();
  await page.goto(`${desk.url}/desk/methods/`);
  await send(page, 'Add the instrument', {
    'Short code on it': 'R1',
    'What the bench calls it': 'First rig',
    'Largest value': '500',
    'Its unit': 'N',
    'Smallest step': '0.01',
    'Unit of the step': 'N',
  });
  await send(page, 'Add the certificate', {
    'Number of the certificate': 'C-1',
    'First day': '2026-01-01',
    'Last day': '2026-12-31',
    'Expanded uncertainty U, %': '0,5',
  });
  await page.getByLabel('In force from').fill('2026-01-01');
  await page.getByRole('button', { name: 'Take straight pull' }).click();
  await page.getByText('Straight pull, version 1, is in force').waitFor();
  await send(page, 'Add the control line', {
    Code: 'C1',
    'What the bench calls it': 'Grey line',
    'Lot on its label': 'A',
    'What it is, and how it is kept': 'Kept dark and dry.',
  });
}

const SPOOL = {
  Maker: 'Quaymade',
  Line: 'Quaymade 8',
  'Ends braided if there is one': '8',
  'Colour on the label': 'grey',
  When: '2026-02-01',
  Where: 'A shop by the harbour',
};

async function openEdition(page: Page): Promise<string[]> {
  await page.goto(`${desk.url}/desk/catalogue/`);
  await send(page, 'Add the spool', { ...SPOOL, 'Size on the label': 'PE 1.2', 'Breaking force on the label if there is one': '20' });
  // A name that was mistyped would be new.
  await page.getByText('New here: maker Quaymade, line Quaymade 8.').waitFor();
  await page.getByText('Many at once').click();
  const row = (day: string) => `Quaymade\tQuaymade 8\t8\tPE 2\tgrey\t30\t${day}\tA shop by the harbour`;
  const header = 'maker\tline\tends\tsize\tcolour\tclaim\tday\tplace';
  await page.getByLabel('The table', { exact: true }).fill([header, row('1.2.2026')].join('\n'));
  await page
    .getByRole('region', { name: 'as it was read' })
    .getByText(/^day: /)
    .waitFor();
  await page.getByLabel('The table', { exact: true }).fill([header, row('2026-02-01')].join('\n'));
  await page.getByRole('button', { name: 'Add 1 spool', exact: true }).click();
  await page.getByText(/^code [0-9A-Z]{7}$/).waitFor();
  await page.locator('.rows .code').nth(1).waitFor();
  const codes = await page.locator('.rows .code').allInnerTexts();
  await page.goto(`${desk.url}/desk/season/`);
  await send(page, 'Make the scheme', { 'Name of the scheme': 'Strength alone' }, ['Strength against the label']);
  await send(page, 'Plan the edition', { 'Short name': '2026', Name: 'Trials 2026', 'Opens on': '2026-01-01', 'Closes on': '2026-12-31' }, [
    'Straight pull, version 1',
  ]).catch(() => undefined);
  await page.waitForURL('**/season/?edition=2026');
  for (const size of ['PE 1.2', 'PE 2']) await page.getByLabel(`Quaymade 8 ${size}, grey`, { exact: true }).check();
  await page.getByRole('button', { name: 'Enter these' }).click();
  await page.getByText('2 entered.').waitFor();
  await page.getByRole('button', { name: 'Open Trials 2026' }).click();
  await page.getByText('0 of 2 entries have a result').waitFor();
  return codes;
}

async function testAll(page: Page, codes: readonly string[]): Promise<void> {
  await page.goto(`${desk.url}/desk/bench/`);
  await keepBenchDay(page, '2026-03-10');
  for (const [i, force] of ['83.1', '82.6', '83.4'].entries()) await page.getByLabel(`Pull ${i + 1}`).fill(force);
  await page.getByRole('button', { name: 'Pulled' }).click();
  await page.getByText('R1: on record; there are no limits yet').waitFor();
  for (const [i, code] of codes.entries()) {
    await page.goto(`${desk.url}/desk/enter/?spool=${code}&method=straight-pull`);
    await page.getByLabel('Force, specimen 1', { exact: true }).waitFor();
    for (const text of ['1', '3', '2', '4', '5', '2'].flatMap((last) => [`${90 + 40 * i}.${last}`, `18.${last}`])) {
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
    }
    await page.getByRole('button', { name: 'Hand in' }).click();
    await page.getByRole('heading', { name: 'Handed in' }).waitFor();
  }
}

async function acceptAll(page: Page): Promise<void> {
  for (let done = 0; done < 2; done += 1) {
    await page.goto(`${desk.url}/desk/review/`);
    await page.locator('.rows a').first().click();
    await page.getByText('Readings as entered').waitFor();
    for (const answer of await page.getByLabel('Why it stands all the same').all()) await answer.fill('Looked at; it stands.');
    await page.getByRole('button', { name: 'Accept now' }).click();
    await page.getByText('has accepted it').waitFor();
  }
}

test('an empty house comes to its first release without a terminal', async () => {
  const { address } = await t.app
    .select(AccountsModule)
    .get(Invite)
    .run(null, { roles: ['admin'], note: 'first' });
  expect(address).toContain('/desk/invitation/#');
  const admin = await accept(address, 'Keyholder');
  await admin.getByText('Next: Invite an editor').waitFor();
  const forEditor = await invite(admin, 'editor');
  await admin.goto(`${desk.url}/desk/`);
  await admin.getByText('Next: Invite a tester').waitFor();
  const editor = await accept(forEditor, 'Lanternway');
  await setUpHouse(editor);
  const codes = await openEdition(editor);
  expect(codes).toHaveLength(2);

  const tester = await accept(await invite(admin, 'tester'), 'Tollgate');
  await testAll(tester, codes);
  await signOut(tester);
  const reviewer = await accept(await invite(admin, 'reviewer'), 'Plumbline');
  await acceptAll(reviewer);
  await signOut(reviewer);

  await editor.reload();
  await editor.getByText('2 of 2 entries have a result').waitFor();
  await editor.getByRole('button', { name: 'Look at the standings' }).click();
  await editor.locator('.place').first().waitFor();
  await editor.getByRole('button', { name: 'Close Trials 2026' }).click();
  await editor.getByText('Every entry has what it needs.').waitFor();
  // The first press only asks; the house is asked whether it is still open.
  await editor.reload();
  await editor.getByText('2 of 2 entries have a result').waitFor();
  await editor.getByRole('button', { name: 'Close Trials 2026' }).click();
  await editor.getByRole('button', { name: 'Yes, close Trials 2026' }).click();
  await editor.getByRole('link', { name: 'Say it first' }).click();
  await editor.getByText('Nothing is said yet.').waitFor();
  await send(editor, 'Say so from now on', {
    'Contact if there is one': 'house@house.example',
    'People, a line each': 'Lanternway: edits',
    'Who pays if there is one': 'Its members.',
    'Ties to makers and sellers if there is one': 'There are none.',
    'How a maker is heard if there is one': 'A reply stands beside the figure.',
  });
  await editor.getByText('Said; nothing is missing.').waitFor();
  await send(editor, 'Add the caveat', { Of: 'all lines that are braided', 'In words that readers see': 'How it ages is not tested.' });
  await editor.getByText('caveat on all lines that are braided: How it ages is not tested.').waitFor();
  await editor.getByText('Say the caveat on all lines that are braided otherwise').click();
  await editor.getByLabel('Why the former is superseded').fill('It ages on the reel too.');
  await editor.locator('li').getByLabel('In words that readers see').fill('How it ages on the reel is not tested.');
  await editor.getByRole('button', { name: 'Say it so from now on' }).click();
  await editor.getByText('caveat on all lines that are braided: How it ages on the reel is not tested.').waitFor();
  await editor.goto(`${desk.url}/desk/season/?edition=2026`);
  await editor.getByRole('button', { name: 'Publish', exact: true }).click();
  await editor.getByRole('button', { name: 'Not yet' }).click();
  await editor.getByRole('button', { name: 'Publish', exact: true }).click();
  await editor.getByText('as soon as it is written').waitFor();
  await editor.getByRole('button', { name: 'Yes, publish' }).click();
  await editor.getByText('Revision 1: published.').waitFor({ timeout: 60_000 });
  await editor.goto(`${desk.url}/desk/`);
  await editor.getByText('Nothing waits for you.').waitFor();
  const released = await t.call('get', '/v1/editions').expect(200);
  expect(released.body.items).toMatchObject([{ edition: '2026', revision: 1 }]);
  await signOut(editor);

  await admin.goto(`${desk.url}/desk/house/`);
  await admin.getByText('edition, closed').filter({ visible: true }).first().waitFor();
  await signOut(admin);
});
