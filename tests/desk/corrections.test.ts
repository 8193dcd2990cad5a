/** An editor puts right what was copied wrongly: freely at first, with a reason once readings rest on it. */
import { MAKER, VARIANT } from '../support/catalogue-fixtures.js';
import { contentFor, METHOD_VERSION, pulls, setUpBench } from '../support/bench.js';
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

test('an editor writes the next version of a method, and another method like it: what was not changed goes on, what is on record stays', async () => {
  const page = await desk.signedIn(b.editor.email, '/desk/methods/');
  const row = page.getByRole('listitem').filter({ hasText: 'Straight pull' });
  await row.getByRole('link', { name: 'write the next' }).click();
  await page.getByRole('heading', { name: 'Straight pull: next version' }).waitFor();
  const put = page.getByRole('button', { name: 'Put it on record' });
  await page.getByLabel('First bench day').fill('2026-01-01');
  await page.getByLabel('What is done, in order').fill('Wet the line.\n\nPull until the specimen parts.');
  await page.getByLabel('Settings of the rig').fill('gauge length: 500 mm\ngrips: bollards, three turns\nwhat nobody set');
  await page.getByLabel('Valid specimens, at least').fill('7');
  await page.getByLabel('Coefficient of variation, at most').fill('9,5');
  await put.click();
  // What lacks is told at its field, nothing is sent, and nothing that was typed is lost.
  expect(
    await page.locator('[aria-invalid=true]').evaluateAll((all) => all.map((one) => (one as unknown as { name: string }).name)),
  ).toEqual(['wording/changes', 'isComparableWithPrevious', 'parameters/settings']);
  await page.getByLabel('Settings of the rig').fill('gauge length: 500 mm\ngrips: bollards, three turns');
  await page.getByLabel('What changed against the version before').fill('The line is wetted.');
  await page.getByLabel('Results of this version').selectOption('may not be compared');
  await put.click();
  await page.getByText('Found 2026-01-01, expected a day after').first().waitFor();
  await page.getByLabel('First bench day').fill('2026-09-01');
  await put.click();
  await page.getByText('Straight pull, version 2, is in force from 1 Sept 2026.').waitFor();
  const at = '/v1/catalogue/methods/straight-pull/versions';
  const [first, second] = await Promise.all([1, 2].map(async (number) => (await b.editor.call('get', `${at}/${number}`).expect(200)).body));
  expect(first).toMatchObject({ ...METHOD_VERSION, effectiveUntil: '2026-08-31' });
  expect(second).toMatchObject({
    ...METHOD_VERSION,
    ...{ number: 2, effectiveFrom: '2026-09-01', isComparableWithPrevious: false },
    limits: { ...METHOD_VERSION.limits, minimumSpecimens: 7, maximumCvPercent: 9.5 },
    parameters: {
      ...METHOD_VERSION.parameters,
      settings: [
        { name: 'gauge length', value: '500', unit: 'mm' },
        { name: 'grips', value: 'bollards, three turns', unit: '' },
      ],
    },
    wording: { ...METHOD_VERSION.wording, steps: ['Wet the line.', 'Pull until the specimen parts.'], changes: 'The line is wetted.' },
  });

  await page.goto(`${desk.url}/desk/methods/?like=straight-pull`);
  await page.getByLabel('What it is called').fill('Straight pull, wet');
  await page.getByLabel('First bench day').fill('2026-01-01');
  await page.getByLabel('Other rigs, testers and days differ by').fill('');
  await put.click();
  await page.getByText('Straight pull, wet, version 1, is in force').waitFor();
  const wet = (await b.editor.call('get', '/v1/catalogue/methods/straight-pull-wet/versions/1').expect(200)).body;
  expect(wet).toMatchObject({ limits: { minimumSpecimens: 7 }, parameters: { areaFrom: 'circle', reproducibilityPercent: null } });
  expect(wet.wording.changes).toBe('First version.');
});

test('a line that is sold under another name leads on to it: of one kind, not to itself, with the reason', async () => {
  const page = await desk.signedIn(b.editor.email, '/desk/catalogue/');
  await page.getByText('One that goes on as another').click();
  const lead = page.getByRole('button', { name: 'Let it lead on' });
  await page.getByLabel('The one that was').selectOption(VARIANT.slug);
  await page.getByLabel('What takes its place').selectOption(VARIANT.slug);
  await page.getByLabel('Why', { exact: true }).fill('Sold in other clothes.');
  await lead.click();
  await page.getByRole('alert').filter({ hasText: /./ }).waitFor();
  const there = async () => (await b.editor.call('get', '/v1/catalogue/successions').expect(200)).body.items as object[];
  expect(await there()).toEqual([]);
  await page.getByLabel('What takes its place').selectOption('tern-40-moss');
  await lead.click();
  await page.getByText(/goes on as .*moss\.$/).waitFor();
  expect(await there()).toEqual([
    expect.objectContaining({ kind: 'variant', slug: VARIANT.slug, successor: 'tern-40-moss', reason: 'Sold in other clothes.' }),
  ]);
  await page.getByLabel('What goes on').selectOption('maker');
  expect(await page.getByLabel('What takes its place').getByRole('option').allInnerTexts()).toEqual(['Choose', MAKER.name]);
});
