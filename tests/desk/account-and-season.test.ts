/** Someone changes their password, and an editor reads what stands in the way of the closing. */
import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { openDesk } from '../support/desk.js';
import type { OpenDesk } from '../support/desk.js';
import { PASSWORD } from '../support/test-application.js';

const NEW_PASSWORD = 'a longer one than before';

let b: Bench;
let desk: OpenDesk;
beforeAll(async () => {
  b = await setUpBench();
  desk = await openDesk(b.t);
}, 120_000);
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
}, 60_000);

test('a wrong password changes nothing; the right one does, and only the new one signs in', async () => {
  const { email } = b.reviewer;
  const page = await desk.signedIn(email, '/desk/account/');
  const change = async (current: string) => {
    await page.getByLabel('Password until now').fill(current);
    await page.getByLabel('New password').fill(NEW_PASSWORD);
    await page.getByRole('button', { name: 'Change the password' }).click();
  };
  const signIn = async (password: string) => (await b.t.call('post', '/v1/sessions').send({ email, password })).status;
  await change('not the one that it was');
  await page.getByRole('alert').filter({ hasText: /./ }).waitFor();
  expect(await signIn(PASSWORD)).toBe(201);
  await change(PASSWORD);
  await page.getByText('The password is changed.').waitFor();
  expect([await signIn(PASSWORD), await signIn(NEW_PASSWORD)]).toEqual([401, 201]);
}, 60_000);
