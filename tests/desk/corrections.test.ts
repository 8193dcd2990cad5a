/** An editor puts right what was copied wrongly: freely at first, with a reason once readings rest on it. */
import { VARIANT } from '../support/catalogue-fixtures.js';
import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { openDesk } from '../support/desk.js';
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

test('a colour is corrected freely; once readings rest on the variant it takes a reason, and what it said is shown', async () => {
  const page = await desk.signedIn(b.editor.email, '/desk/catalogue/');
  await page.getByRole('group').filter({ hasText: 'variants' }).first().click();
  await page.getByRole('link', { name: `${VARIANT.size}, ${VARIANT.colour}` }).click();
  await page.getByLabel('Colour as on the label').fill('heather');
  // The label's claims are corrected in the same form.
  expect(await page.getByLabel('What is to be corrected').getByRole('option').count()).toBeGreaterThan(1);
  expect(await page.getByRole('button', { name: 'Correct it' }).count()).toBe(1);
  await page.getByRole('button', { name: 'Correct it' }).click();
  await page.getByText('Corrected: size and colour.').waitFor();
  const colour = async () =>
    ((await b.editor.call('get', `/v1/catalogue/variants/${VARIANT.slug}`).expect(200)).body as { colour: string }).colour;
  expect(await colour()).toBe('heather');

  await b.tester
    .call('post', '/v1/submissions')
    .send(contentFor(b.spool, { specimens: pulls(91) }))
    .expect(201);
  await page.reload();
  await page.getByLabel('Colour as on the label').fill('bracken');
  await page.getByRole('button', { name: 'Correct it' }).first().click();
  await page.getByText(/Say why it changes/).waitFor();
  expect(await colour()).toBe('heather');
  await page.getByLabel('Why it is changed').first().fill('Read by daylight.');
  await page.getByRole('button', { name: 'Correct it' }).first().click();
  await page.getByRole('heading', { name: 'What it said before' }).waitFor();
  await page.getByText('colour heather').waitFor();
  expect(await colour()).toBe('bracken');
});

test('a mistyped certificate is put right; a variant, a spool and an instrument are retired and taken into use again', async () => {
  const page = await desk.signedIn(b.editor.email, '/desk/correct/?kind=instrument&key=M1');
  await page.getByLabel('Last day').fill('2027-01-31');
  await page.getByLabel('Why it is changed').fill('The paper says January.');
  await page.getByRole('button', { name: 'Correct it' }).click();
  await page.getByText(/^Corrected/).waitFor();
  const { calibrations } = (await b.editor.call('get', '/v1/instruments/M1').expect(200)).body as {
    calibrations: { validUntil: string }[];
  };
  expect(calibrations.map(({ validUntil }) => validUntil)).toEqual(['2027-01-31']);

  for (const subject of ['kind=variant&key=tern-40-moss', `kind=spool&key=${b.strangeSpool}`, 'kind=instrument&key=M1']) {
    await page.goto(`${desk.url}/desk/correct/?${subject}`);
    await page.getByText('Retire it').first().click();
    await page.getByLabel('Why', { exact: true }).fill('Not sold any more.');
    await page.getByRole('button', { name: 'Retire it' }).click();
    await page.getByRole('heading', { name: 'Retired' }).waitFor();
    await page.getByRole('button', { name: 'Take it into use again' }).click();
    await page.getByText('It is in use again.').waitFor();
  }
});
