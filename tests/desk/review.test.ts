/** A reviewer's work in the browser, from sign-in to sign-out, on a real application. */
import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { openDesk, signOut } from '../support/desk.js';
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

const handIn = async (spool: string, forceN: number): Promise<string> =>
  (
    await b.tester
      .call('post', '/v1/submissions')
      .send(contentFor(spool, { specimens: pulls(forceN) }))
      .expect(201)
  ).body.reference;
const read = async (reference: string) => (await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200)).body;

test('from sign-in to sign-out: queue, first judgement before earlier results, findings answered, a specimen set aside, accepted by keys', async () => {
  const reference = await handIn(b.spool, 90);
  const page = await desk.signedIn(b.reviewer.email, '/desk/review/');
  await page.getByRole('link', { name: b.spool }).first().click();
  await page.getByText('Readings as entered').waitFor();
  expect(await page.locator('table.readings tbody tr').first().innerText()).toContain('91.13 N, 18.0 s');
  expect(await page.locator('svg.plot .specimen').count()).toBe(10);
  expect(await page.locator('svg.plot .limit').count()).toBe(2);
  await page.getByText('stays hidden until you have said what you think').waitFor();
  await page.getByLabel('Because').fill('Even, and in the window.');
  await page.getByRole('button', { name: 'Say so, and show earlier results' }).click();
  await page.getByText('Nobody has an accepted result of this variant').waitFor();

  const now = page.getByRole('button', { name: 'Accept now' });
  expect(await now.getAttribute('aria-disabled')).toBe('true');
  for (const answer of await page.getByLabel('Why it stands all the same').all()) await answer.fill('Looked at; the readings stand.');
  await page.locator('h1').click();
  for (let i = 0; i < 5; i += 1) await page.keyboard.press('s');
  await page.keyboard.press('Enter');
  await page.getByLabel('Why specimen 5 is set aside').fill('The clamp was loose.');
  await page.locator('h1').click();
  await page.keyboard.press('h');
  await page.getByText('A mean of few pulls says little of the spool.').waitFor();
  await page.keyboard.press('a');
  await page.keyboard.press('Enter');
  await page.getByText(/R\. Quill has accepted it/).waitFor();
  const { state, specimens } = await read(reference);
  expect(state).toBe('accepted');
  expect(specimens[4]).toMatchObject({ state: 'setAside', reason: 'The clamp was loose.' });
  await signOut(page);
});

test('what was handed in by somebody who had read the key is shown as not blind, to be answered', async () => {
  const both = await b.t.caller(['tester', 'editor']);
  await both.call('get', `/v1/catalogue/spools/${b.spool}`).expect(200);
  const content = contentFor(b.spool, { specimens: pulls(91) });
  const { reference } = (await both.call('post', '/v1/submissions').send(content).expect(201)).body as { reference: string };
  const page = await desk.signedIn(b.reviewer.email, `/desk/review-one/?reference=${reference}`);
  await page.getByText('Not blind: its tester has read what this spool is').waitFor();
  expect(await page.getByLabel('Why it stands all the same').count()).toBeGreaterThan(0);
  await page.close();
});

test('a question that tells a size or a direction is stopped before it is sent; another comes to its tester', async () => {
  const reference = await handIn(b.otherSpool, 92);
  const page = await desk.signedIn(b.reviewer.email, `/desk/review-one/?reference=${reference}`);
  await page.getByRole('button', { name: 'Return with a question' }).first().click();
  await page.getByLabel('3', { exact: true }).check();
  await page.getByLabel('Question', { exact: true }).fill('Is specimen 3 too high?');
  await page.getByText('“too high” tells the tester').waitFor();
  const sent: string[] = [];
  page.on('request', (request) => sent.push(`${request.method()} ${request.url()}`));
  const now = page.getByRole('button', { name: 'Return with a question now' });
  await now.click({ force: true });
  expect(sent.filter((one) => one.startsWith('POST'))).toEqual([]);
  expect((await read(reference)).state).toBe('submitted');
  await page.getByLabel('Question', { exact: true }).fill('Please look at the display of specimen 3 again.');
  await now.click();
  await page.getByText(/R\. Quill has returned it/).waitFor();

  const theirs = await desk.signedIn(b.tester.email, '/desk/submissions/');
  await theirs.getByText('Please look at the display of specimen 3 again.').waitFor();
  await theirs.getByLabel('Your answer').fill('It said 92.57; I read it again.');
  await theirs.getByRole('button', { name: 'Answer' }).click();
  await theirs.locator('.rows a', { hasText: 'Go on' }).first().click();
  const third = theirs.getByLabel('Force, specimen 3', { exact: true });
  await third.fill('92.58');
  await third.press('Enter');
  await theirs.getByRole('button', { name: 'Hand in' }).click();
  await theirs.getByRole('heading', { name: 'Handed in' }).waitFor();
  const again = await read(reference);
  expect([again.state, again.revision, again.specimens[2].readings[0].entered.text]).toEqual(['submitted', 2, '92.58']);
});

test('on a phone a review names no keys, and no number of a specimen covers another', async () => {
  const reference = await handIn(b.spool, 88.2);
  const page = await desk.signedIn(b.reviewer.email, `/desk/review-one/?reference=${reference}`, await desk.device(360));
  await page.locator('svg.plot .number').first().waitFor();
  const boxes = (await page
    .locator('svg.plot .number')
    .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().toJSON() as object))) as Record<
    'left' | 'right' | 'top' | 'bottom',
    number
  >[];
  expect(boxes).toHaveLength(10);
  const covered = boxes.flatMap((one, i) =>
    boxes
      .slice(i + 1)
      .filter((other) => one.left < other.right && other.left < one.right && one.top < other.bottom - 3 && other.top < one.bottom - 3),
  );
  expect(covered).toEqual([]);
  expect(await page.getByText('Keys while you are not typing').isVisible()).toBe(false);
  await page.close();
});

test('a review that somebody else has decided meanwhile says who did what, and keeps what was written', async () => {
  const reference = await handIn(b.spool, 89.5);
  const page = await desk.signedIn(b.reviewer.email, `/desk/review-one/?reference=${reference}`);
  const answer = page.getByLabel('Why it stands all the same').first();
  await answer.fill('Looked at it twice.');
  const other = await b.t.caller(['reviewer'], 'S. Plover');
  const { version } = await read(reference);
  await other
    .call('post', `/v1/submissions/${reference}/reviews`)
    .set('If-Match', `"${version}"`)
    .send({ decision: 'refused', reason: 'Wrong spool.' })
    .expect(201);
  for (const one of await page.getByLabel('Why it stands all the same').all())
    if ((await one.inputValue()) === '') await one.fill('Stands.');
  await page.getByRole('button', { name: 'Accept now' }).click();
  await page.getByText(/S\. Plover has refused it .*: Wrong spool\./).waitFor();
  await page.getByText('nothing was decided by you').waitFor();
  expect((await read(reference)).state).toBe('refused');
});

test('equal cases are decided together with one reason, and one that somebody was at meanwhile is left', async () => {
  const references: string[] = [];
  // Four times the label: the same is found on each.
  for (const force of [395, 397, 399]) references.push(await handIn(b.spool, force));
  const page = await desk.signedIn(b.reviewer.email, '/desk/review/');
  const group = page.locator('details', { hasText: '3 × ' });
  await group.locator('summary').click();
  expect(await group.getByRole('button', { name: 'Accept 0 with this reason' }).getAttribute('aria-disabled')).toBe('true');
  await group.getByRole('button', { name: 'Tick all 3' }).click();
  const other = await b.t.caller(['reviewer'], 'T. Knot');
  await other
    .call('post', `/v1/submissions/${references[1]}/reviews`)
    .set('If-Match', `"${(await read(references[1]!)).version}"`)
    .send({ decision: 'refused', reason: 'Wrong spool.' })
    .expect(201);
  await group.getByLabel('Why they stand all the same').fill('The label of this batch is known to be wrong.');
  await group.getByRole('button', { name: 'Accept 3 with this reason' }).click();
  await page.getByText(`2 of 3, ${references[1]}: not decided`).waitFor();
  await page.getByText(`3 of 3, ${references[2]}: accepted`).waitFor();
  expect(await Promise.all(references.map(async (reference) => (await read(reference)).state))).toEqual([
    'accepted',
    'refused',
    'accepted',
  ]);
  const { findings } = await read(references[0]!);
  expect(new Set(findings.filter(({ severity }: any) => severity === 'held').map(({ resolution }: any) => resolution))).toEqual(
    new Set(['The label of this batch is known to be wrong.']),
  );
  await page.close();
});

test('who has claimed a review stands in the queue with what was found and how the rig stood, and stops the others', async () => {
  await b.editor.call('post', '/v1/control-lines').send({ code: 'C1', name: 'Grey line', lot: 'A', words: 'Kept dark.' }).expect(201);
  const pulled = { controlLine: 'C1', instrument: 'R1', method: 'straight-pull', benchDay: '2026-03-10' };
  const readings = ['84.1', '84.3', '83.9'].map((text) => ({ text, unit: 'N' }));
  await b.tester
    .call('post', '/v1/control-pulls')
    .send({ ...pulled, readings })
    .expect(201);
  const reference = await handIn(b.otherSpool, 93.3);
  const other = await b.t.caller(['reviewer'], 'D. Ruff');
  const { version } = await read(reference);
  await other.call('post', `/v1/submissions/${reference}/claim`).set('If-Match', `"${version}"`).expect(201);
  const page = await desk.signedIn(b.reviewer.email, '/desk/review/');
  const row = page.locator('.rows > li', { hasText: reference });
  await row.getByText('D. Ruff has claimed its review').waitFor();
  expect(await row.innerText()).toMatch(/Straight pull[\s\S]*rig: learning[\s\S]*R1 in its first pulls/);
  await page.locator('.rows > li', { hasText: reference }).getByRole('link').click();
  await page.getByText(/D\. Ruff has claimed its review/).waitFor();
  expect(await page.getByRole('button', { name: 'Accept now' }).count()).toBe(0);
});

test('a review is claimed, returned, refused and left for the next by keys; nothing is sent by them but the claim', async () => {
  const reference = await handIn(b.spool, 94.9);
  const page = await desk.signedIn(b.reviewer.email, `/desk/review-one/?reference=${reference}`);
  await page.getByText('Readings as entered').waitFor();
  expect(await page.getByText('Keys while you are not typing').isVisible()).toBe(true);
  await page.keyboard.press('c');
  await page.getByRole('button', { name: 'Give the claim back' }).waitFor();
  const chosen = page.getByRole('group', { name: 'Decision' }).getByRole('button', { pressed: true });
  for (const [key, name] of [
    ['r', 'Return with a question'],
    ['f', 'Refuse'],
    ['a', 'Accept'],
  ] as const) {
    await page.keyboard.press(key);
    await chosen.filter({ hasText: name }).waitFor();
  }
  await page.keyboard.press('n');
  await page.waitForURL((url) => url.pathname.startsWith('/desk/review') && !url.search.includes(reference));
  expect(await read(reference)).toMatchObject({ state: 'submitted' });
  await page.close();
});
