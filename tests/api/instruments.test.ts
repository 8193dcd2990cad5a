import { InstrumentsModule } from '../../api/instruments/instruments.module.js';
import { InstrumentsReadModel } from '../../api/instruments/instruments.read-model.js';
import { runSql } from '../support/run-sql.js';
import { createTestApplication } from '../support/test-application.js';
import type { Caller, TestApplication } from '../support/test-application.js';

let t: TestApplication;
let editor: Caller;
let tester: Caller;

const GAUGE = {
  code: 'R1',
  kind: 'forceGauge',
  name: 'Bench gauge',
  capacity: { text: '50', unit: 'kgf' },
  resolution: { text: '0.01', unit: 'kgf' },
};
const CERTIFICATE = {
  certificate: 'C-1',
  validFrom: '2026-01-01',
  validUntil: '2026-12-31',
  correctionPercent: '-0.2',
  expandedUncertaintyPercent: '0.5',
  coverageFactor: '2',
};

beforeAll(async () => {
  t = await createTestApplication();
  editor = await t.caller(['editor']);
  tester = await t.caller(['tester']);
  await editor.call('post', '/v1/instruments').send(GAUGE).expect(201);
});
afterAll(() => t.close());

test('an instrument keeps its range as entered beside the exact value in SI', async () => {
  const answer = await tester.call('get', '/v1/instruments/R1').expect(200);
  // 1 kgf = 9.80665 N exactly (NIST SP 811, appendix B).
  expect(answer.body).toEqual({
    ...GAUGE,
    retired: null,
    capacity: { text: '50', unit: 'kgf', value: '490.3325', siUnit: 'N' },
    resolution: { text: '0.01', unit: 'kgf', value: '0.0980665', siUnit: 'N' },
    calibrations: [],
    version: 1,
  });
  expect((await tester.call('get', '/v1/instruments').expect(200)).body).toEqual({ items: [answer.body], nextCursor: null });
});

test('editors write, anybody signed in reads', async () => {
  await t.call('get', '/v1/instruments').expect(401);
  for (const other of [tester, await t.caller(['reviewer', 'admin'])]) {
    await other
      .call('post', '/v1/instruments')
      .send({ ...GAUGE, code: 'R2' })
      .expect(403);
    await other.call('post', '/v1/instruments/R1/calibrations').send(CERTIFICATE).expect(403);
  }
});

test('a code is given once', async () => {
  expect((await editor.call('post', '/v1/instruments').send(GAUGE).expect(409)).body.errors).toEqual([
    expect.objectContaining({ pointer: '/code' }),
  ]);
});

test.each([
  ['forceGauge', 'N', 'mm'],
  ['loadFrame', 'kN', 'g'],
  ['micrometer', 'mm', 'N'],
  ['opticalGauge', 'mm', '%'],
  ['balance', 'g', 'gf'],
  ['lengthMeasure', 'm', 's'],
  ['abrader', 'N', '%'],
])('the range of a %s is stated in %s and not in %s', async (kind, right, wrong) => {
  const of = (unit: string, other: string) => ({
    code: `K-${kind}`,
    kind,
    name: kind,
    capacity: { text: '100', unit },
    resolution: { text: '0.1', unit: other },
  });
  const faults = (await editor.call('post', '/v1/instruments').send(of(wrong, wrong)).expect(422)).body.errors;
  expect(faults).toMatchObject(['/capacity/unit', '/resolution/unit'].map((pointer) => ({ pointer, code: 'units/wrong-dimension' })));
  expect((await editor.call('post', '/v1/instruments').send(of(right, wrong)).expect(422)).body.errors).toHaveLength(1);
  await editor.call('post', '/v1/instruments').send(of(right, right)).expect(201);
});

test.each([
  [{ capacity: { text: '0', unit: 'N' } }, '/capacity/text'],
  [{ capacity: { text: '5 0', unit: 'N' } }, '/capacity/text'],
  [{ resolution: { text: '-1', unit: 'N' } }, '/resolution/text'],
  [{ resolution: { text: '1', unit: 'lb' } }, '/resolution/unit'],
  [{ resolution: { text: '500', unit: 'N' } }, '/resolution/text'],
  [{ kind: 'spring' }, '/kind'],
  [{ code: 'R 9' }, '/code'],
  [{ owner: 'me' }, '/owner'],
])('an instrument with %j is refused', async (change, pointer) => {
  const answer = await editor
    .call('post', '/v1/instruments')
    .send({ ...GAUGE, code: 'R9', ...change })
    .expect(422);
  expect(answer.body.errors).toEqual([expect.objectContaining({ pointer })]);
});

describe('calibrations', () => {
  const path = '/v1/instruments/R1/calibrations';

  test('are added, oldest first, once each', async () => {
    await editor.call('post', path).send(CERTIFICATE).expect(201);
    const earlier = { ...CERTIFICATE, certificate: 'C-0', validFrom: '2025-01-01', validUntil: '2025-12-31' };
    const answer = await editor.call('post', path).send(earlier).expect(201);
    expect(answer.body.calibrations).toEqual([earlier, CERTIFICATE]);
    expect((await editor.call('post', path).send(CERTIFICATE).expect(409)).body.errors).toEqual([
      expect.objectContaining({ pointer: '/certificate' }),
    ]);
    await editor.call('post', '/v1/instruments/R404/calibrations').send(CERTIFICATE).expect(404);
    await editor.call('get', '/v1/instruments/R404').expect(404);
  });

  test.each([
    [{ validUntil: '2025-12-31' }, '/validUntil'],
    [{ validUntil: '2062-12-31' }, '/validUntil'],
    [{ validFrom: '2026-02-30' }, '/validFrom'],
    [{ expandedUncertaintyPercent: '0' }, '/expandedUncertaintyPercent'],
    [{ expandedUncertaintyPercent: '-0.5' }, '/expandedUncertaintyPercent'],
    [{ coverageFactor: '0.5' }, '/coverageFactor'],
    [{ correctionPercent: 'none' }, '/correctionPercent'],
    [{ laboratory: 'x' }, '/laboratory'],
  ])('with %j are refused', async (change, pointer) => {
    const answer = await editor
      .call('post', path)
      .send({ ...CERTIFICATE, certificate: 'C-9', ...change })
      .expect(422);
    expect(answer.body.errors).toEqual([expect.objectContaining({ pointer })]);
  });

  test('are never taken away', async () => {
    for (const change of ["DELETE FROM calibration WHERE valid_until < '2030-01-01'", 'TRUNCATE calibration'])
      await expect(runSql(t.databaseUrl, change)).rejects.toMatchObject({ code: 'FP001' });
  });

  test('stand in the audit trail with who added them', async () => {
    const events = await runSql(t.databaseUrl, "SELECT action, actor_id, after FROM audit_event WHERE object_id = 'R1' ORDER BY id");
    expect(events.map((event) => event['action'])).toEqual(['instrument.added', 'calibration.added', 'calibration.added']);
    expect(events[1]).toMatchObject({ actor_id: editor.accountId, after: CERTIFICATE });
  });
});

test('other features read instruments by code, in SI', async () => {
  const [gauge, ...none] = await t.app.select(InstrumentsModule).get(InstrumentsReadModel).byCodes(['R1', 'R404']);
  expect(none).toEqual([]);
  expect(gauge).toMatchObject({ code: 'R1', kind: 'forceGauge', dimension: 'force', capacitySi: '490.3325', resolutionSi: '0.0980665' });
  expect(gauge?.calibrations.at(-1)).toEqual(CERTIFICATE);
});
