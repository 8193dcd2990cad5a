/** Someone changes their password or loses it, a device stays behind, and an editor reads what stands in the way of the closing. */
import type { Page } from 'playwright-core';
import { contentFor, pulls, setUpBench } from '../support/bench.js';
import { LINE, MAKER, VARIANT } from '../support/catalogue-fixtures.js';
import type { Bench } from '../support/bench.js';
import { openDesk } from '../support/desk.js';
import type { OpenDesk } from '../support/desk.js';
import { runSql } from '../support/run-sql.js';
import { PASSWORD } from '../support/test-application.js';

const NEW_PASSWORD = 'a longer one than before';

let b: Bench;
let desk: OpenDesk;
beforeAll(async () => {
  b = await setUpBench();
  desk = await openDesk(b.t);
});
afterAll(async () => {
  expect(desk.complaints).toEqual([]);
  await desk.close();
  await b.t.close();
});

test('the edition is not closed while a submission waits: it is named, with the way on, and the button does nothing', async () => {
  const sent = await b.tester.call('post', '/v1/submissions').send(contentFor(b.spool, { specimens: pulls(91) }));
  expect(sent.status).toBe(201);
  const { reference } = sent.body as { reference: string };
  const page = await desk.signedIn(b.editor.email, '/desk/season/?edition=2026');
  const list = page.getByRole('list', { name: 'What stands in the way' });
  await list.getByText(reference).waitFor();
  const asked: string[] = [];
  page.on('request', (request) => {
    if (request.method() === 'POST') asked.push(request.url());
  });
  const close = page.getByRole('button', { name: /^Close / });
  expect(await close.getAttribute('aria-disabled')).toBe('true');
  await close.click({ force: true });
  await page.waitForTimeout(300);
  expect(asked).toEqual([]);

  // From an entry of the board to asking for what it lacks.
  const entry = `${MAKER.name} ${LINE.name} ${VARIANT.size}, ${VARIANT.colour}`;
  await page.getByRole('region', { name: 'Entries by category' }).getByRole('link', { name: entry }).click();
  const work = page.locator('#who-pulls-what');
  await work.getByText(`Spools of ${entry} alone.`).waitFor();
  expect(
    await work
      .getByRole('group', { name: /^Spools/ })
      .getByRole('checkbox')
      .count(),
  ).toBeGreaterThan(0);
  await work.getByRole('button', { name: 'Show those of every entry' }).click();
  await work.getByText(`Spools of ${entry} alone.`).waitFor({ state: 'hidden' });
});

test('a wrong password changes nothing; the right one does, and only the new one signs in', async () => {
  const { email } = b.reviewer;
  const page = await desk.signedIn(email, '/desk/account/');
  const change = async (current: string) => {
    await page.getByLabel('Password until now').fill(current);
    await page.getByLabel('New password').fill(NEW_PASSWORD);
    await page.getByRole('button', { name: 'Change the password' }).click();
  };
  const signIn = async (password: string) => (await b.t.call('post', '/v1/sessions').send({ email, password })).status;
  // A tie is declared to a maker by name.
  await page.getByText('Declare a tie: the makers').click();
  await page.getByLabel('Maker', { exact: true }).selectOption({ label: MAKER.name });
  await page.getByLabel('The tie, in words').fill('They lent me a reel.');
  await page.getByRole('button', { name: 'Declare a tie' }).click();
  await page.getByText(`Your tie to ${MAKER.name} is on record.`).waitFor();
  await page.getByText(`${MAKER.name}: They lent me a reel.`).waitFor();
  await change('not the one that it was');
  await page.getByRole('alert').filter({ hasText: 'password' }).waitFor();
  expect([await signIn(PASSWORD), await signIn(NEW_PASSWORD)]).toEqual([201, 401]);
  await change(PASSWORD);
  await page.getByText('The password is changed.').waitFor();
  expect([await signIn(PASSWORD), await signIn(NEW_PASSWORD)]).toEqual([401, 201]);
});

test('a token for a program is made, shown once, and revoked', async () => {
  const page = await desk.signedIn(b.tester.email, '/desk/account/');
  await page.getByLabel('What it is for').fill('gauge of R1');
  await page.getByRole('checkbox', { name: 'tester' }).check();
  await page.getByRole('button', { name: 'Make a token' }).click();
  await page.getByText('Made. Copy it now; it is shown this once.').waitFor();
  const token = await page.locator('code').last().innerText();
  const used = async () => (await b.t.call('get', '/v1/spools').set('Authorization', `Bearer ${token}`)).status;
  expect(await used()).toBe(200);
  await page.reload();
  const revoke = page.getByRole('button', { name: 'Revoke gauge of R1' });
  await revoke.waitFor();
  expect(await page.content()).not.toContain(token);
  await revoke.click();
  await revoke.waitFor({ state: 'detached' });
  expect(await used()).toBe(401);
  await page.close();
});

test('an admin makes an address for a lost password; it works once, and ends what was open', async () => {
  const admin = await b.t.caller(['admin'], 'K. Holder');
  const page = await desk.signedIn(admin.email, '/desk/house/');
  const row = page.getByRole('listitem').filter({ hasText: b.otherTester.email });
  await row.getByText('roles, help, close').click();
  await row.getByRole('button', { name: 'Address for a new password' }).click();
  const address = new URL((await row.locator('[data-address]').textContent()) ?? '');
  const lost = await (await desk.device()).newPage();
  const set = async (words: string) => {
    await lost.goto(desk.url + address.pathname + address.hash);
    await lost.reload();
    await lost.getByLabel('New password').fill(words);
    await lost.getByRole('button', { name: 'Set the password' }).click();
  };
  await set('found again after all');
  await lost.getByText('It is set.').waitFor();
  const { email } = b.otherTester;
  expect((await b.t.call('post', '/v1/sessions').send({ email, password: 'found again after all' })).status).toBe(201);
  await set('somebody else tries it');
  await lost.getByRole('alert').filter({ hasText: /./ }).waitFor();
  expect((await b.t.call('post', '/v1/sessions').send({ email, password: 'somebody else tries it' })).status).toBe(401);
});

test('an invitation is taken back, and a laptop that stayed behind is signed out', async () => {
  const admin = await b.t.caller(['admin'], 'N. Holder');
  const page = await desk.signedIn(admin.email, '/desk/house/');
  await page.getByLabel('Who it is for').fill('Somebody at the quay');
  await page.getByLabel('tester', { exact: true }).first().check();
  await page.getByRole('button', { name: 'Make an invitation' }).click();
  const address = (await page.locator('[data-address]').textContent()) ?? '';
  await page.getByRole('button', { name: 'Take back the invitation for Somebody at the quay' }).click();
  await page.getByText('works no more').waitFor();
  const acceptance = { email: 'late@trials.example', displayName: 'L. Ate', password: 'a sentence is easy to keep' };
  expect((await b.t.call('post', `/v1/invitations/${address.split('#')[1]}/acceptance`).send(acceptance)).status).toBeGreaterThanOrEqual(
    400,
  );

  const behind = await desk.signedIn(admin.email, '/desk/account/');
  await page.goto(`${desk.url}/desk/account/`);
  await page
    .getByRole('button', { name: /^End it/ })
    .first()
    .waitFor();
  const others = page.getByRole('button', { name: /^End it/ });
  for (let left = await others.count(); left > 0; left -= 1) {
    await others.first().click();
    await others.nth(left - 1).waitFor({ state: 'detached' });
  }
  await behind.reload();
  await behind.getByRole('button', { name: 'Sign in' }).waitFor();
});

test('an admin tells an integrator of changes, pauses that with a reason, and ends it', async () => {
  const admin = await b.t.caller(['admin'], 'W. Holder');
  const page = await desk.signedIn(admin.email, '/desk/house/');
  await page.getByText('Nobody is told of changes yet').waitFor();
  await page.getByText('No backups are made').waitFor();
  await page.getByText('Tell a further address').click();
  // By number, so that nobody has to be asked for a name; nothing is ever sent there.
  await page.getByLabel('Address, https').fill('https://100.0.0.1/changes');
  await page.getByLabel('Whose it is and what for').fill('Tackle shop');
  await page.getByRole('button', { name: 'Tell it from now on' }).click();
  await page.getByText(/^whsec_/).waitFor();
  await page.getByText('What was tried, pause, end').click();
  await page.getByRole('button', { name: 'The last attempts' }).click();
  await page.getByText('Nothing was tried yet').waitFor();
  await runSql(
    b.t.databaseUrl,
    `INSERT INTO webhook_attempt (id, webhook_id, change_number, at, is_delivered, status, words, took_ms)
     SELECT gen_random_uuid(), id, 1, now(), true, 204, 'It answered with 204.', 5 FROM webhook`,
  );
  await page.getByRole('button', { name: 'The last attempts' }).click();
  await page.getByRole('button', { name: /^Tell again from here/ }).click();
  await page.getByText('told up to change 0').waitFor();
  await page.getByText('Pause what goes to Tackle shop').first().click();
  await page.getByLabel('Why', { exact: true }).fill('It moves house.');
  await page.getByRole('button', { name: 'Pause what goes to Tackle shop' }).click();
  await page.getByText(/paused since .*: It moves house\./).waitFor();
  expect((await admin.call('get', '/v1/webhooks').expect(200)).body.items).toMatchObject([
    { note: 'Tackle shop', pausedBecause: 'It moves house.' },
  ]);
  await page.getByText('End what goes to Tackle shop').click();
  await page.getByRole('button', { name: 'Yes, end it' }).click();
  await page.getByText('Nobody is told of changes yet').waitFor();
});

test('who changed what is found by person, by object and by day; persons stand there by name', async () => {
  const admin = await b.t.caller(['admin'], 'C. Holder');
  const [{ reference }] = (await b.reviewer.call('get', '/v1/submissions?limit=1').expect(200)).body.items as [{ reference: string }];
  const page = await desk.signedIn(admin.email, '/desk/house/');
  const trail = page.locator('details.part', { hasText: 'Who changed what' });
  const rows = trail.locator('.rows > li');
  await rows.filter({ hasNotText: 'T. Venn:' }).first().waitFor();
  const onlyOf = async (text: string) => {
    await trail.getByRole('button', { name: 'Look' }).click();
    await rows.filter({ hasNotText: text }).first().waitFor({ state: 'detached' });
    await rows.first().waitFor();
    expect(await rows.allInnerTexts()).not.toContainEqual(expect.stringMatching(/[0-9a-f]{8}-[0-9a-f]{4}-/));
  };
  await trail.getByLabel('Who', { exact: true }).selectOption({ label: 'T. Venn' });
  await onlyOf('T. Venn:');
  await trail.getByLabel('Who', { exact: true }).selectOption({ label: 'everybody' });
  await trail.getByLabel('Reference, code or id of the object').fill(reference);
  await onlyOf(reference);
  for (const [from, to] of [
    ['2026-03-16', ''],
    ['', '2026-03-14'],
  ] as const) {
    await trail.getByLabel('From').fill(from);
    await trail.getByLabel('To', { exact: true }).fill(to);
    await trail.getByRole('button', { name: 'Look' }).click();
    await trail.getByText('Nothing of that is on record.').waitFor();
    await trail.getByLabel('From').fill('2026-03-14');
    await trail.getByLabel('To', { exact: true }).fill('2026-03-16');
    await onlyOf(reference);
  }
  await page.close();
});

test('whoever has forgotten the password is told what happens where the house sends no letters', async () => {
  const page = await (await desk.device()).newPage();
  await page.goto(`${desk.url}/desk/`);
  await page.getByText('The password is forgotten').click();
  await page.getByLabel('Address of your account').fill(b.tester.email);
  await page.getByRole('button', { name: 'Send the letter' }).click();
  await page.getByRole('alert').filter({ hasText: 'This house sends no mail' }).waitFor();
});

/** An operation on the page of the description, which shows as many at a time as there is room for. */
async function tryOut(page: Page, verb: string, path: string, body?: object) {
  const operation = page.locator(`.opblock-${verb}`, { has: page.locator(`[data-path="${path}"]`) });
  await page.evaluate('scrollTo(0, 0)');
  while ((await operation.count()) === 0) {
    await page.evaluate('scrollBy(0, innerHeight)');
    await page.waitForTimeout(50);
  }
  await operation.locator('.opblock-summary').click();
  await operation.getByRole('button', { name: 'Try it out' }).click();
  if (body) await operation.locator('textarea').fill(JSON.stringify(body));
  await operation.getByRole('button', { name: 'Execute' }).click();
  const answer = operation.locator('.live-responses-table .response').first();
  return { status: await answer.locator('.response-col_status').innerText(), text: await answer.innerText() };
}

test('at the page of the description anybody tries what is published; who signs in there does what they may', async () => {
  const page = await (await desk.device()).newPage();
  await page.goto(`${desk.url}/docs`);
  expect((await tryOut(page, 'get', '/v1/changes')).text).toContain('"lastNumber"');
  const { email } = await b.t.caller(['tester']);
  const { text } = await tryOut(page, 'post', '/v1/sessions', { email, password: PASSWORD });
  const [, token = ''] = /"csrfToken": "([^"]+)"/.exec(text) ?? [];
  await page.getByRole('button', { name: 'Authorize' }).first().click();
  const csrf = page.locator('.auth-container', { hasText: 'X-CSRF-Token' });
  await csrf.getByRole('textbox').fill(token);
  await csrf.getByRole('button', { name: 'Apply credentials' }).click();
  await page.getByRole('button', { name: 'Close' }).first().click();
  expect((await tryOut(page, 'post', '/v1/interests', { maker: MAKER.slug, words: 'Two spools were given.' })).status).toBe('201');
});
