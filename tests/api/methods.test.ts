import pg from 'pg';
import { MethodsModule } from '../../api/methods/methods.module.js';
import { MethodsReadModel } from '../../api/methods/methods.read-model.js';
import { runSql } from '../support/run-sql.js';
import { waitForLock } from '../support/wait-for-lock.js';
import { createTestApplication } from '../support/test-application.js';
import type { Caller, TestApplication } from '../support/test-application.js';

let t: TestApplication;
let editor: Caller;
let tester: Caller;

const UNTREATED = { code: 'untreated', kind: 'breakingForce', treatment: null };
const KNOTTED = { code: 'knotted', kind: 'breakingForce', treatment: { kind: 'knot', name: 'Palomar', words: 'Tied on a ring.' } };
const METHOD = { slug: 'straight-pull', name: 'Straight pull' };
const VERSION = {
  number: 1,
  effectiveFrom: '2026-01-01',
  effectiveUntil: null as string | null,
  limits: {
    minimumSpecimens: 5,
    maximumCvPercent: 12,
    gripBreakSharePercent: 40,
    timeToBreakS: { low: 10, high: 30 },
    ambientTemperatureC: { low: 18, high: 26 },
    ambientHumidityPercent: { low: 40, high: 75 },
  },
  series: [UNTREATED],
  parameters: {
    areaFrom: 'circle',
    reproducibilityPercent: 1.5,
    places: { breakingForce: 1, apparentStress: 0 },
    settings: [{ name: 'Free length', value: '250', unit: 'mm' }],
  },
  wording: {
    purpose: 'Finds the force at which an unknotted specimen parts.',
    apparatus: ['Force gauge', 'Two capstan grips'],
    steps: ['Wind four turns on each grip.', 'Pull until the specimen parts.'],
    formulae: [{ figure: 'Mean breaking force', formula: 'F = ΣFᵢ/n', where: 'n valid specimens' }],
    cautions: ['A line under load whips when it parts: stay out of its path.'],
    sources: ['common practice'],
    changes: 'First version.',
  },
  isComparableWithPrevious: false,
};

beforeAll(async () => {
  t = await createTestApplication();
  editor = await t.caller(['editor']);
  tester = await t.caller(['tester']);
  await editor.call('post', '/v1/catalogue/methods').send(METHOD).expect(201);
});
afterAll(() => t.close());

const versions = '/v1/catalogue/methods/straight-pull/versions';
const post = (change: object) => editor.call('post', versions).send({ ...VERSION, ...change });

test('editors write, anybody signed in reads', async () => {
  await t.call('get', '/v1/catalogue/methods').expect(401);
  for (const other of [tester, await t.caller(['reviewer', 'admin'])]) {
    await other
      .call('post', '/v1/catalogue/methods')
      .send({ ...METHOD, slug: 'other' })
      .expect(403);
    await other.call('post', versions).send(VERSION).expect(403);
    await other.call('get', '/v1/catalogue/methods/straight-pull').expect(200);
  }
});

test('a method is on record once, under a lower-case slug', async () => {
  expect((await editor.call('post', '/v1/catalogue/methods').send(METHOD).expect(409)).body.errors).toEqual([
    expect.objectContaining({ pointer: '/slug' }),
  ]);
  expect(
    (
      await editor
        .call('post', '/v1/catalogue/methods')
        .send({ ...METHOD, slug: 'Straight' })
        .expect(422)
    ).body.errors,
  ).toEqual([expect.objectContaining({ pointer: '/slug' })]);
  await editor
    .call('post', '/v1/catalogue/methods')
    .send({ ...METHOD, slug: 'other', owner: 'x' })
    .expect(422);
  await editor.call('get', '/v1/catalogue/methods/other').expect(404);
});

test.each([
  [{ number: 2 }, '/number'],
  [{ effectiveUntil: '2025-12-31' }, '/effectiveUntil'],
  [{ effectiveFrom: '1 January' }, '/effectiveFrom'],
  [{ limits: { ...VERSION.limits, minimumSpecimens: 0 } }, '/limits/minimumSpecimens'],
  [{ limits: { ...VERSION.limits, maximumCvPercent: 0 } }, '/limits/maximumCvPercent'],
  [{ limits: { ...VERSION.limits, gripBreakSharePercent: 101 } }, '/limits/gripBreakSharePercent'],
  [{ limits: { ...VERSION.limits, timeToBreakS: { low: 30, high: 10 } } }, '/limits/timeToBreakS/low'],
  [{ limits: { ...VERSION.limits, ambientHumidityPercent: { low: 40, high: 140 } } }, '/limits/ambientHumidityPercent/high'],
  [{ limits: { ...VERSION.limits, maximumRange: 1 } }, '/limits/maximumRange'],
  [{ parameters: { ...VERSION.parameters, areaFrom: 'square' } }, '/parameters/areaFrom'],
  [{ parameters: { ...VERSION.parameters, speed: 1 } }, '/parameters/speed'],
  [{ series: undefined }, '/series'],
  [{ series: [] }, '/series'],
  [{ series: [{ code: 'untreated', kind: 'tensileForce', treatment: null }] }, '/series/0/kind'],
  [{ series: [{ ...UNTREATED, treatment: { kind: 'knot', name: '', words: 'Tied.' } }] }, '/series/0/treatment/name'],
  [{ series: [UNTREATED, { code: 'untreated', kind: 'linearDensity' }] }, '/series/1/code'],
  [{ series: [UNTREATED, { ...UNTREATED, code: 'again' }] }, '/series/1'],
  [{ series: [KNOTTED, { ...KNOTTED, code: 'fg' }] }, '/series/1'],
  [{ series: [{ code: 'outline', kind: 'diameterAlongStations', stations: 0 }] }, '/series/0/stations'],
  [{ parameters: { ...VERSION.parameters, knot: 'Palomar' } }, '/parameters/knot'],
  [{ wording: { ...VERSION.wording, steps: [] } }, '/wording/steps'],
  [{ wording: { ...VERSION.wording, cautions: [] } }, '/wording/cautions'],
  [{ wording: { ...VERSION.wording, author: 'x' } }, '/wording/author'],
  [{ isDraft: true }, '/isDraft'],
])('a version with %j is refused at %s', async (change, pointer) => {
  expect((await post(change).expect(422)).body.errors).toEqual([expect.objectContaining({ pointer })]);
});

test('versions are numbered one by one, and the next one ends the one before', async () => {
  const first = await post({}).expect(201);
  const { id, ...shown } = first.body;
  expect(shown).toEqual({ ...METHOD, ...VERSION, checks: {} });
  expect((await post({ number: 1, effectiveFrom: '2026-06-01' }).expect(422)).body.errors).toEqual([
    expect.objectContaining({ pointer: '/number', code: 'not_consecutive' }),
  ]);
  expect((await post({ number: 2 }).expect(422)).body.errors).toEqual([
    expect.objectContaining({ pointer: '/effectiveFrom', code: 'overlaps' }),
  ]);
  await post({ number: 2, effectiveFrom: '2026-06-01', effectiveUntil: '2026-08-31', isComparableWithPrevious: true }).expect(201);
  expect((await post({ number: 3, effectiveFrom: '2026-08-31' }).expect(422)).body.errors).toEqual([
    expect.objectContaining({ pointer: '/effectiveFrom' }),
  ]);
  await post({ number: 3, effectiveFrom: '2026-09-15' }).expect(201);
  const method = await tester.call('get', '/v1/catalogue/methods/straight-pull').expect(200);
  expect(method.body.versions).toEqual([
    { number: 1, effectiveFrom: '2026-01-01', effectiveUntil: '2026-05-31', yields: ['breakingForce'] },
    { number: 2, effectiveFrom: '2026-06-01', effectiveUntil: '2026-08-31', yields: ['breakingForce'] },
    { number: 3, effectiveFrom: '2026-09-15', effectiveUntil: null, yields: ['breakingForce'] },
  ]);
  expect((await tester.call('get', '/v1/catalogue/methods').expect(200)).body).toEqual({ items: [method.body], nextCursor: null });
  expect((await tester.call('get', `${versions}/1`).expect(200)).body).toEqual({ id, ...shown, effectiveUntil: '2026-05-31' });
  await tester.call('get', `${versions}/4`).expect(404);
  for (const number of ['0', 'last', '1.5']) await tester.call('get', `${versions}/${number}`).expect(422);
  await editor.call('post', '/v1/catalogue/methods/nowhere/versions').send(VERSION).expect(404);
});

test('of two next versions at once, the second sees the first', async () => {
  const other = new pg.Client({ connectionString: t.databaseUrl });
  await other.connect();
  await other.query("BEGIN; SELECT 1 FROM method WHERE slug = 'straight-pull' FOR UPDATE");
  await other.query(`INSERT INTO method_version (id, method_id, number, effective_from, limits, series, parameters, wording, is_comparable_with_previous)
    SELECT gen_random_uuid(), method_id, 4, '2027-01-01', limits, series, parameters, wording, true FROM method_version WHERE number = 3`);
  const late = post({ number: 4, effectiveFrom: '2027-01-01' }).expect(422);
  const answer = late.then(({ body }) => body as { errors: object[] });
  await waitForLock(t.databaseUrl);
  await other.query('COMMIT');
  await other.end();
  expect((await answer).errors).toMatchObject([{ pointer: '/number' }, { pointer: '/effectiveFrom' }]);
});

test('a version never changes', async () => {
  for (const change of ["UPDATE method_version SET limits = '{}'", 'DELETE FROM method_version', 'TRUNCATE method_version CASCADE']) {
    await expect(runSql(t.databaseUrl, change)).rejects.toMatchObject({ code: 'FP001' });
  }
});

test('additions stand in the audit trail', async () => {
  const events = await runSql(
    t.databaseUrl,
    "SELECT action, object_id, actor_id FROM audit_event WHERE object_type = 'method' ORDER BY id LIMIT 2",
  );
  expect(events).toEqual([
    { action: 'method.added', object_id: 'straight-pull', actor_id: editor.accountId },
    { action: 'methodVersion.added', object_id: 'straight-pull/1', actor_id: editor.accountId },
  ]);
});

test('other features read versions by number and by id', async () => {
  const methods = t.app.select(MethodsModule).get(MethodsReadModel);
  const second = await methods.version('straight-pull', 2);
  expect(second).toMatchObject({ number: 2, effectiveUntil: '2026-08-31', isComparableWithPrevious: true, limits: VERSION.limits });
  expect([...(await methods.versionsById([second?.id ?? ''])).values()]).toEqual([second]);
  expect(await methods.version('straight-pull', 9)).toBeNull();
});

describe('a version sets severities and limits of its checks', () => {
  test('what a check does not allow is refused, with its place; what it allows is on record', async () => {
    const slug = 'set-checks';
    await editor.call('post', '/v1/catalogue/methods').send({ slug, name: 'Sets checks' }).expect(201);
    const post = (checks: object) => editor.call('post', `/v1/catalogue/methods/${slug}/versions`).send({ ...VERSION, checks });
    const refused = await post({ 'date/long-past': { limits: { days: 0 } }, 'no/such': {} }).expect(422);
    expect((refused.body.errors as { pointer: string }[]).map(({ pointer }) => pointer).sort()).toEqual([
      '/checks/date~1long-past/limits/days',
      '/checks/no~1such',
    ]);
    const checks = { 'date/long-past': { severity: 'held', limits: { days: 30 } } };
    await post(checks).expect(201);
    expect((await tester.call('get', `/v1/catalogue/methods/${slug}/versions/1`).expect(200)).body.checks).toEqual(checks);
  });
});
