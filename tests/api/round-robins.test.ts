import { KEYS, METHOD_SERIES } from '../support/method-series.js';
import { knownEffects } from '../../api/reckoning/rigs/known-effects.js';
import { testerEffectOf } from '../../api/reckoning/rigs/tester-effect.js';
import type { RoundRobinEvidence } from '../../api/reckoning/evidence/round-robin-evidence.js';
import { RoundRobinsModule } from '../../api/round-robins/round-robins.module.js';
import { RoundRobinsReadModel } from '../../api/round-robins/round-robins.read-model.js';
import { setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import type { Caller } from '../support/test-application.js';

/** Glucose in serum, 8 laboratories, 3 tests each: the example of ASTM E691; data as in NIST Dataplot, GLUCOSE.DAT. Read as N here. */
const MATERIAL_A = [
  ['41.03', '41.45', '41.37'],
  ['41.17', '42.00', '41.15'],
  ['41.01', '40.68', '42.66'],
  ['39.37', '42.37', '42.63'],
  ['41.88', '41.19', '41.32'],
  ['43.28', '40.50', '42.28'],
  ['41.08', '41.27', '39.02'],
  ['43.36', '42.65', '41.72'],
];
const MATERIAL_D = [
  ['193.71', '193.59', '193.65'],
  ['190.88', '200.14', '194.30'],
  ['192.71', '193.28', '190.28'],
  ['195.85', '196.36', '199.43'],
  ['192.59', '191.44', '195.12'],
  ['195.34', '198.26', '198.13'],
  ['194.66', '191.99', '187.13'],
  ['197.56', '195.99', '200.82'],
];

let b: Bench;
let testers: Caller[];
beforeAll(async () => {
  b = await setUpBench();
  testers = [];
  for (const index of MATERIAL_A.keys()) testers.push(await b.t.caller(['tester'], `Bench ${index + 1}`));
});
afterAll(() => b.t.close());

const plan = (change: object = {}) => ({
  slug: 'spring',
  name: 'Spring round',
  words: 'How far do our benches differ?',
  method: 'straight-pull',
  spools: [b.spool, b.otherSpool],
  specimens: 3,
  testers: testers.map(({ accountId }) => accountId),
  ...change,
});
const post = (body: object, by: Caller = b.editor) => by.call('post', '/v1/round-robins').send(body);
const view = (by: Caller, slug = 'spring') => by.call('get', `/v1/round-robins/${slug}`);
const move = (step: string, version: number, by: Caller = b.editor) =>
  by.call('post', `/v1/round-robins/spring/${step}`).set('If-Match', `"${version}"`);
const handIn = (by: Caller, spool: string, texts: readonly string[], change: object = {}) =>
  by
    .call('post', '/v1/round-robins/spring/cells')
    .send({ spool, instrument: 'R1', readings: texts.map((text) => ({ text, unit: 'N' })), ...change });
const pointers = (body: { errors: { pointer: string; code: string }[] }) => body.errors.map(({ pointer, code }) => `${pointer} ${code}`);

test('a plan names what exists; all faults are told at once, and nothing is stored', async () => {
  const faulty = plan({
    method: 'diameter',
    spools: [b.spool, b.spool.toLowerCase(), 'ZZZZZZ'],
    testers: [testers[0]!.accountId, b.editor.accountId, testers[0]!.accountId],
  });
  expect(pointers((await post(faulty).expect(422)).body)).toEqual([
    '/method breaks_nothing',
    '/spools/1 duplicate',
    '/spools/2 spool_unknown',
    '/testers/1 not_a_tester',
    '/testers/2 duplicate',
  ]);
  await view(b.editor).expect(404);
  await post(plan(), b.reviewer).expect(403);
  await post(plan({ specimens: 1 })).expect(422);
  expect((await post(plan()).expect(201)).body).toMatchObject({ state: 'planned', version: 1 });
  expect((await post(plan()).expect(409)).body.errors).toMatchObject([{ pointer: '/slug', code: 'duplicate' }]);
});

test('testers hand in while it is open, each spool once and whole, and those of the plan alone', async () => {
  expect((await handIn(testers[0]!, b.spool, MATERIAL_A[0]!).expect(409)).body.code).toBe('round-robins/wrong-state');
  expect((await move('closure', 1).expect(409)).body.code).toBe('round-robins/wrong-state');
  await move('opening', 9).expect(412);
  expect((await move('opening', 1).expect(201)).body).toMatchObject({ state: 'open', version: 2 });

  await handIn(b.tester, b.spool, MATERIAL_A[0]!).expect(404);
  const faulty = await handIn(testers[0]!, b.strangeSpool, ['41.03'], { instrument: 'M1' }).expect(422);
  expect(pointers(faulty.body)).toEqual(['/spool spool_not_in_plan', '/instrument not_a_rig', '/readings wrong_count']);
  const slipped = await handIn(testers[0]!, b.spool, ['41.03', 'about 41', '41.37']).expect(422);
  expect(slipped.body.errors).toMatchObject([{ pointer: '/readings/1' }]);

  await handIn(testers[0]!, b.spool.toLowerCase(), MATERIAL_A[0]!).expect(201);
  expect((await handIn(testers[0]!, b.spool, MATERIAL_A[0]!).expect(409)).body.code).toBe('round-robins/handed-in');
  expect((await move('closure', 2).expect(409)).body).toMatchObject({
    code: 'round-robins/too-few',
    detail: expect.stringContaining(b.otherSpool),
  });
});

test('until it is closed a tester sees the own readings and no names; those who plan see all', async () => {
  await handIn(testers[1]!, b.spool, MATERIAL_A[1]!).expect(201);
  const own = (await view(testers[1]!).expect(200)).body;
  expect(own).toMatchObject({ yourNumber: 2, names: [] });
  expect(own.report.levels[0].cells).toMatchObject([{ tester: 2, readings: [{ text: '41.17' }, { text: '42.00' }, { text: '41.15' }] }]);
  expect(own.report.levels[0]).toMatchObject({ meanN: null, reproducibilitySdN: null });
  expect((await view(b.tester).expect(200)).body.report.levels[0].cells).toEqual([]);
  const all = (await view(b.reviewer).expect(200)).body;
  expect(all.report.levels[0].cells).toHaveLength(2);
  expect(all.names).toContainEqual({ number: 2, name: 'Bench 2' });
});

test('its report gives the figures of the worked example of ASTM E691; its table of critical h has 2.15 for 8 (from memory)', async () => {
  for (const [index, by] of testers.entries()) {
    if (index > 1) await handIn(by, b.spool, MATERIAL_A[index]!).expect(201);
    await handIn(by, b.otherSpool, MATERIAL_D[index]!).expect(201);
  }
  const closed = (await move('closure', 2).expect(201)).body;
  expect(closed).toMatchObject({ state: 'closed', report: { closedOn: '2026-03-15', testers: 8, specimens: 3 } });
  expect(closed.report.levels).toMatchObject([
    { level: b.spool, meanN: '41.518', repeatabilitySdN: '1.063', reproducibilitySdN: '1.063', betweenSdN: '0.000' },
    { level: b.otherSpool, meanN: '194.717', repeatabilitySdN: '2.625', reproducibilitySdN: '3.366', hCritical: '2.15' },
  ]);
  expect(closed.report.levels[1].cells).toMatchObject([
    { tester: 1, h: '-0.41', k: '0.02', isFar: false },
    { tester: 2, k: '1.78', isWide: false },
    ...Array.from({ length: 6 }, () => ({ isFar: false, isWide: false })),
  ]);
  expect((await view(testers[3]!).expect(200)).body).toMatchObject({ yourNumber: 4, names: [], report: closed.report });
  expect((await handIn(testers[0]!, b.spool, MATERIAL_A[0]!).expect(409)).body.code).toBe('round-robins/wrong-state');
  expect((await b.tester.call('get', '/v1/round-robins').expect(200)).body.items).toEqual([
    { slug: 'spring', name: 'Spring round', method: 'straight-pull', state: 'closed' },
  ]);
});

test('the record keeps the plan and what was handed in', async () => {
  for (const change of [`"state" = 'open', "closed_on" = NULL`, `"specimens" = 2`, `"levels" = '{X}'`])
    await expect(b.sql(`UPDATE "round_robin" SET ${change}`)).rejects.toThrow(/round_robin_stands/);
  await expect(b.sql(`DELETE FROM "round_robin"`)).rejects.toThrow(/round_robin_stands/);
  for (const table of ['round_robin_tester', 'round_robin_cell', 'round_robin_reading']) {
    await expect(b.sql(`DELETE FROM "${table}"`)).rejects.toThrow(/append_only/);
    await expect(b.sql(`TRUNCATE "${table}" CASCADE`)).rejects.toThrow(/append_only/);
  }
  const copy = `INSERT INTO "round_robin" (id, slug, name, words, method_id, levels, specimens, state, closed_on) SELECT gen_random_uuid(), `;
  const rest = (method: string, state: string) =>
    `name, words, (SELECT id FROM method WHERE slug = '${method}'), levels, specimens, '${state}', NULL FROM "round_robin"`;
  await expect(b.sql(`${copy} 'a', ${rest('diameter', 'planned')}`)).rejects.toThrow(/method_breaks_lines/);
  await expect(b.sql(`${copy} 'a', ${rest('straight-pull', 'closed')}`)).rejects.toThrow(/closed_round_robin_has_a_day/);

  await b.sql(`${copy} 'second', ${rest('straight-pull', 'open')}`);
  await b.sql(`INSERT INTO "round_robin_tester" SELECT id, $1, 1 FROM "round_robin" WHERE "slug" = 'second'`, [testers[0]!.accountId]);
  const cell = (tester: string, level: string, slug = 'second') =>
    b.sql(
      `INSERT INTO "round_robin_cell" SELECT gen_random_uuid(), r.id, $1, $2, (SELECT id FROM instrument WHERE code = 'R1'), now() FROM "round_robin" r WHERE r."slug" = $3`,
      [tester, level, slug],
    );
  await cell(testers[0]!.accountId, b.spool);
  await expect(cell(testers[0]!.accountId, b.strangeSpool)).rejects.toThrow(/cell_belongs_to_the_plan/);
  await expect(cell(testers[1]!.accountId, b.spool)).rejects.toThrow(/cell_belongs_to_the_plan/);
  await expect(cell(testers[0]!.accountId, b.spool, 'spring')).rejects.toThrow(/cell_belongs_to_the_plan/);
  await expect(cell(testers[0]!.accountId, b.spool)).rejects.toThrow(/round_robin_cell_round_robin_id_tester_id_level_key/);
});

test('what it tells of testers feeds the ranking, from one rig, by its method, once it is closed', async () => {
  const [robin] = await b.t.app.select(RoundRobinsModule).get(RoundRobinsReadModel).closedBetween('2026-01-01', '2026-12-31');
  // s_L of material D = √(3.3657² − 2.6251²) = 2.1063 N, s_L of A = 0: the root mean square of 0 and 2.1063/194.7171, 7 degrees of freedom each.
  const effect = testerEffectOf([robin!], 'straight-pull')!;
  expect(effect.relativeSd).toBeCloseTo(2.1063 / 194.7171 / Math.SQRT2, 5);
  expect(effect.degreesOfFreedom).toBe(14);
  expect(testerEffectOf([robin!], 'knot')).toBeNull();
  expect(testerEffectOf([{ ...robin!, state: 'open' }], 'straight-pull')).toBeNull();
  const cells = robin!.cells.map((cell) => (cell.tester === 1 ? { ...cell, instrument: 'R2' } : cell));
  const mixed: RoundRobinEvidence = { ...robin!, cells };
  expect(testerEffectOf([mixed], 'straight-pull')).toBeNull();
  const methods = [{ slug: 'straight-pull', number: 1, series: METHOD_SERIES['straight-pull'] }];
  expect(knownEffects({ roundRobins: [robin!] }, methods)[KEYS.force]).toEqual({
    tester: { relativeSd: effect.relativeSd.toFixed(6), degreesOfFreedom: 14, source: 'roundRobin' },
  });
  expect(await b.t.app.select(RoundRobinsModule).get(RoundRobinsReadModel).closedBetween('2026-03-16', '2026-12-31')).toEqual([]);
});
