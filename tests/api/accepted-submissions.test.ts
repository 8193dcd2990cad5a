import { SubmissionsModule } from '../../api/submissions/submissions.module.js';
import { READ_AT_ONCE, SubmissionsReadModel } from '../../api/submissions/submissions.read-model.js';
import { proposeWithdrawal } from '../support/propose.js';
import { mostValues } from '../support/count-statements.js';
import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { figuresOfEvidence } from '../../api/reckoning/evidence/submission-evidence.js';

let b: Bench;
let readModel: SubmissionsReadModel;
beforeAll(async () => {
  b = await setUpBench();
  readModel = b.t.app.select(SubmissionsModule).get(SubmissionsReadModel);
});
afterAll(() => b.t.close());

async function accepted(content: object, setAside: object[] = []): Promise<string> {
  const { reference } = (await b.tester.call('post', '/v1/submissions').send(content).expect(201)).body as { reference: string };
  const seen = await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200);
  const resolutions = (seen.body.findings as { id: string }[]).map(({ id }) => ({ finding: id, words: 'Looked at.' }));
  await b.reviewer
    .call('post', `/v1/submissions/${reference}/reviews`)
    .set('If-Match', '"1"')
    .send({ decision: 'accepted', setAside, resolutions })
    .expect(201);
  return reference;
}

test('results take accepted submissions whole, and compute without what was set aside', async () => {
  const specimens = pulls(90, 8);
  const reference = await accepted(contentFor(b.spool, { specimens }), [{ specimen: 5, reason: 'Slack on film.' }]);
  await b.tester
    .call('post', '/v1/submissions')
    .send(contentFor(b.spool, { specimens: pulls(70) }))
    .expect(201);
  const [one, ...others] = await readModel.acceptedInEdition(b.editionId);
  expect(others).toEqual([]);
  expect(one).toMatchObject({
    reference,
    revision: 1,
    spool: b.spool,
    method: { slug: 'straight-pull', number: 1 },
    tester: 'T. Venn',
    reviewer: 'R. Quill',
    benchDay: '2026-03-10',
    instruments: [{ code: 'R1', kind: 'forceGauge', certificate: 'C-R1' }],
    temperatureC: '21.5',
    humidityPercent: '55',
  });
  expect(one?.specimens[4]).toMatchObject({ number: 5, state: 'setAside', reason: 'Slack on film.' });
  expect(one?.specimens[0]?.readings[0]).toEqual({
    role: 'breakingForce',
    station: null,
    enteredText: '91.13',
    enteredUnit: 'N',
    valueSi: '91.13',
    siUnit: 'N',
  });
  expect(one?.findings[0]).toMatchObject({ resolution: 'Looked at.' });
  const counted = specimens.filter(({ number }) => number !== 5).map(({ readings }) => Number(readings[0]?.value));
  const { breakingForceN } = figuresOfEvidence(one!);
  expect(breakingForceN?.n).toBe(7);
  expect(breakingForceN?.mean).toBeCloseTo(counted.reduce((sum, value) => sum + value, 0) / 7, 10);
});

test('they come by reference, in few queries however many', async () => {
  for (const force of [40, 45, 50]) await accepted(contentFor(b.otherSpool, { specimens: pulls(force) }));
  const found = await readModel.acceptedInEdition(b.editionId);
  const references = found.map(({ reference }) => reference);
  expect(references).toHaveLength(4);
  expect([...references].sort()).toEqual(references);
});

test('states are counted', async () => {
  await b.tester
    .call('post', '/v1/drafts')
    .send({ content: contentFor(b.spool) })
    .expect(201);
  expect(await readModel.countByState(b.editionId)).toEqual({
    draft: 1,
    submitted: 1,
    accepted: 4,
    returned: 0,
    refused: 0,
    withdrawn: 0,
    takenBack: 0,
  });
});

test('a withdrawn one leaves the results, not the record', async () => {
  const [first] = await readModel.acceptedInEdition(b.editionId);
  await b.editor
    .call('post', `/v1/submissions/${first?.reference ?? ''}/withdrawal`)
    .set('If-Match', '"2"')
    .send({ proposal: await proposeWithdrawal(b.reviewer, first?.reference ?? '') })
    .expect(201);
  expect((await readModel.acceptedInEdition(b.editionId)).map(({ reference }) => reference)).not.toContain(first?.reference);
  await b.reviewer.call('get', `/v1/submissions/${first?.reference ?? ''}`).expect(200);
});

test('a cross-section on record lets the stress of a later pull be judged', async () => {
  const station = (index: number) => [
    { role: 'wideDiameter', station: index, value: '0.050', unit: 'mm' },
    { role: 'narrowDiameter', station: index, value: '0.048', unit: 'mm' },
  ];
  const specimens = [{ number: 1, readings: [1, 2, 3].flatMap(station) }];
  await accepted(contentFor(b.otherSpool, { method: 'diameter', instruments: ['M1'], specimens }));
  // 90 N on a circle of 0.049 mm is 47 GPa: more than any fibre of ultra-high-molecular-weight polyethylene bears.
  const content = contentFor(b.otherSpool, { specimens: pulls(91) });
  const preview = await b.tester.call('post', '/v1/submissions/preview').send(content).expect(200);
  const { reference } = (await b.tester.call('post', '/v1/submissions').send(content).expect(201)).body as { reference: string };
  const seen = await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200);
  expect(seen.body.findings).toEqual(expect.arrayContaining([expect.objectContaining({ code: 'figures/beyond-the-fibre' })]));
  expect(preview.text).not.toContain('GPa');
});

test('they are asked for in portions, so that no statement takes more values than the database allows; together they are the same', async () => {
  for (let i = 0; i < 3; i += 1) await accepted(contentFor(b.spool, { specimens: pulls(91 + i / 10, 8) }));
  const all = await readModel.acceptedInEdition(b.editionId);
  expect(all.length).toBeGreaterThanOrEqual(3);
  expect(await readModel.acceptedInEdition(b.editionId, 1)).toEqual(all);
  expect(await readModel.acceptedInEdition(b.editionId, all.length)).toEqual(all);
  const together = await mostValues(() => readModel.acceptedInEdition(b.editionId));
  expect(together).toBeGreaterThan(8 * all.length - 1);
  expect(await mostValues(() => readModel.acceptedInEdition(b.editionId, 1))).toBeLessThan((2 * together) / all.length);
  // Submissions of five times as many specimens as these still fit.
  expect((5 * READ_AT_ONCE * together) / all.length).toBeLessThan(32_767);
});
