/** Ways back after the handing-in: take back, close what will not return, end a proposal, answer a doubt, strike a pull; and a round robin. */
import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { keepBenchDay, openDesk } from '../support/desk.js';
import type { OpenDesk } from '../support/desk.js';

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

interface Seen {
  readonly state: string;
  readonly version: number;
  readonly findings: readonly { readonly id: string; readonly severity: string }[];
}
const handIn = async (spool: string): Promise<string> =>
  (
    (
      await b.tester
        .call('post', '/v1/submissions')
        .send(contentFor(spool, { specimens: pulls(91) }))
        .expect(201)
    ).body as { reference: string }
  ).reference;
const submission = async (reference: string) => (await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200)).body as Seen;
const review = async (reference: string, body: object) =>
  b.reviewer
    .call('post', `/v1/submissions/${reference}/reviews`)
    .set('If-Match', `"${(await submission(reference)).version}"`)
    .send(body)
    .expect(201);

test('a tester takes a hand-in back, and finds the way from the front page of the desk', async () => {
  const reference = await handIn(b.spool);
  const page = await desk.signedIn(b.tester.email, '/desk/submissions/');
  await page.getByText(`Photos, records, take back: ${reference}`).click();
  await page.getByRole('button', { name: `Take ${reference} back` }).click();
  await page.getByText('taken back by its tester').waitFor();
  expect((await submission(reference)).state).toBe('takenBack');
});

test('a reviewer finds what waits on the front page and sees what a revision changed; an editor closes one that will not come back', async () => {
  const reference = await handIn(b.otherSpool);
  await review(reference, { decision: 'returned', query: { kind: 'reading', specimens: [1], question: 'Was the display read right?' } });
  const asked = (await b.tester.call('get', '/v1/queries').expect(200)).body as { items: { id: string }[] };
  await b.tester.call('post', `/v1/queries/${asked.items[0]!.id}/answer`).send({ answer: 'Yes, it was.' }).expect(201);
  const { version } = await submission(reference);
  await b.tester
    .call('post', `/v1/submissions/${reference}/revisions`)
    .set('If-Match', `"${version}"`)
    .send(contentFor(b.otherSpool, { specimens: pulls(92) }))
    .expect(201);
  const page = await desk.signedIn(b.reviewer.email, '/desk/');
  await page.getByRole('region', { name: 'What waits for you' }).getByRole('link', { name: reference }).click();
  await page.getByRole('heading', { name: 'Since revision 1' }).waitFor();
  await page.getByText('Was the display read right?').waitFor();
  // the second row: below the head, a difference; it comes with an answer of its own
  await page.getByRole('region', { name: 'What the revision says otherwise' }).getByRole('row').nth(1).waitFor();
  await review(reference, { decision: 'returned', query: { kind: 'reading', specimens: [1], question: 'Read it once more, please.' } });
  await page.reload();
  await page.getByText('Close it: it will not come back').first().waitFor();

  // An editor comes to it from what stands in the way of closing, looks, and closes it; reviewing is not theirs.
  const editor = await desk.signedIn(b.editor.email, '/desk/season/?edition=2026');
  const obstacles = editor.getByRole('list', { name: 'What stands in the way' });
  await obstacles.getByText('closes it with a reason').waitFor();
  expect(await obstacles.innerText()).not.toContain('/v1/');
  await obstacles.getByRole('link', { name: reference }).click();
  await editor.getByText('Close it: it will not come back').first().click();
  expect(await editor.getByRole('button', { name: /Claim|Next in the queue|Accept/ }).count()).toBe(0);
  await editor.getByLabel('Why it is closed').fill('Its tester has left.');
  await editor.getByRole('button', { name: 'Close it' }).click();
  await editor.getByText('refused').first().waitFor();
  expect((await submission(reference)).state).toBe('refused');
});

test('a proposal is called off by who made it, and declined by another editor', async () => {
  const reference = await handIn(b.spool);
  const held = (await submission(reference)).findings.filter(({ severity }) => severity === 'held');
  await review(reference, { decision: 'accepted', resolutions: held.map(({ id }) => ({ finding: id, words: 'Looked at; it stands.' })) });
  const propose = async () =>
    b.reviewer.call('post', '/v1/proposals').send({ kind: 'withdrawal', submission: reference, reason: 'The rig was bent.' }).expect(201);
  const states = async () =>
    ((await b.editor.call('get', '/v1/proposals').expect(200)).body as { items: { state: string }[] }).items.map(({ state }) => state);
  await propose();
  const own = await desk.signedIn(b.reviewer.email, '/desk/proposals/');
  await own.getByText('Call off: withdraw').first().click();
  await own.getByLabel('Why', { exact: true }).first().fill('It was another rig.');
  await own.getByRole('button', { name: 'Call off' }).click();
  await own.getByText('called off: It was another rig.').waitFor();
  expect(await states()).toEqual(['calledOff']);
  await propose();
  const other = await desk.signedIn(b.editor.email, '/desk/proposals/');
  await other.getByText('Decline: withdraw').first().click();
  await other.getByLabel('Why', { exact: true }).first().fill('It is straight.');
  await other.getByRole('button', { name: 'Decline' }).click();
  await other.getByText('declined: It is straight.').waitFor();
  expect(await states()).toEqual(['declined', 'calledOff']);
});

test('a round robin is planned and opened, each hands in the own spool, and it is read once it is closed', async () => {
  const editor = await desk.signedIn(b.editor.email, '/desk/rigs/');
  await editor.getByText('Plan a round robin').click();
  await editor.getByLabel('Name', { exact: true }).fill('Hands of the quay');
  await editor.getByLabel('What is looked for').fill('How far two hands differ.');
  await editor.getByLabel('Specimens of each spool and tester').fill('2');
  for (const name of ['T. Venn', 'O. Talland']) await editor.getByRole('checkbox', { name }).check();
  // A code that was misread is told at its field, and nothing is planned.
  await editor.getByLabel('Codes on the spools').fill('ABCDEFG');
  await editor.getByRole('button', { name: 'Plan it' }).click();
  await editor.locator('.form .signal:not(:empty)').first().waitFor();
  expect((await b.editor.call('get', '/v1/round-robins').expect(200)).body.items).toEqual([]);
  await editor.getByLabel('Codes on the spools').fill(`${b.spool}, `);
  await editor.getByRole('button', { name: 'Plan it' }).click();
  await editor.getByRole('heading', { name: 'Hands of the quay' }).waitFor();
  await editor.goto(`${desk.url}/desk/rigs/`);
  await editor.getByRole('link', { name: 'Hands of the quay' }).click();
  await editor.getByRole('button', { name: 'Open it' }).click();
  await editor.getByText('It is open').waitFor();
  for (const [tester, forces] of [
    [b.tester, ['90.1', '90.5']],
    [b.otherTester, ['91,2', '91.0']],
  ] as const) {
    const page = await desk.signedIn(tester.email, '/desk/rigs/?robin=hands-of-the-quay');
    for (const [i, force] of forces.entries()) await page.getByLabel(`Force, specimen ${i + 1}`).fill(force);
    await page.getByRole('button', { name: 'Hand it in' }).click();
    await page.getByText('You have handed in all of it.').waitFor();
    expect(await page.getByRole('row').count()).toBe(2);
  }
  await editor.reload();
  await editor.getByRole('button', { name: 'Close it' }).click();
  await editor.getByText('It is closed').waitFor();
  expect(await editor.getByRole('row').count()).toBe(3);
  await editor.getByText('ISO 5725-2').waitFor();
});

test('a reviewer strikes a control pull that was wrong in itself, with the reason', async () => {
  await b.editor.call('post', '/v1/control-lines').send({ code: 'C1', name: 'Grey line', lot: 'A', words: 'Kept dark.' }).expect(201);
  await b.tester
    .call('post', '/v1/control-pulls')
    .send({ controlLine: 'C1', instrument: 'R1', method: 'straight-pull', benchDay: '2026-03-10', readings: [{ text: '83.1', unit: 'N' }] })
    .expect(201);
  const page = await desk.signedIn(b.reviewer.email, '/desk/rigs/');
  await page.getByText('The last pulls').click();
  await page.getByText('Strike the pull of').first().click();
  await page.getByLabel('Why', { exact: true }).fill('The line slipped in the clamp.');
  await page.getByRole('button', { name: 'Strike the pull of' }).click();
  await page.getByText('does not count: The line slipped in the clamp.').waitFor();
});

test('a pull of an earlier day than one that stands is taken, and told to be late; the rig is judged without it', async () => {
  const readings = [{ text: '83.1', unit: 'N' }];
  const pull = { controlLine: 'C1', instrument: 'R1', method: 'straight-pull', benchDay: '2026-03-12', readings };
  await b.tester.call('post', '/v1/control-pulls').send(pull).expect(201);
  const page = await desk.signedIn(b.tester.email, '/desk/bench/');
  await keepBenchDay(page, '2026-03-11');
  // What comes next stands above the button that was pressed.
  expect(await page.evaluate('document.activeElement.id')).toBe('content');
  for (const [i, force] of ['70.1', '70.2', '70.3'].entries()) await page.getByLabel(`Pull ${i + 1}`).fill(force);
  await page.getByRole('button', { name: 'Pulled' }).click();
  await page.getByText('R1: on record, marked as late. It came in after a pull of a later day').waitFor();
  const watching = await desk.signedIn(b.reviewer.email, '/desk/rigs/');
  await watching.getByText('The last pulls').click();
  await watching
    .getByText(/70\.20* N/)
    .first()
    .waitFor();
  await watching
    .locator('li', { hasText: /70\.20* N/ })
    .getByText('does not count: It came in after a pull of a later day')
    .waitFor();
});
