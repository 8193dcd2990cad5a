import { checkSetOf } from '../../api/checks/check-set-of.js';
import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';

let b: Bench;
beforeAll(async () => {
  b = await setUpBench();
});
afterAll(() => b.t.close());

const VERSION = async () => {
  const {
    id: _,
    slug: __,
    name: ___,
    ...version
  } = (await b.editor.call('get', '/v1/catalogue/methods/straight-pull/versions/1').expect(200)).body as Record<string, unknown>;
  return { ...version, effectiveUntil: null };
};
const post = async (change: object) =>
  b.editor.call('post', '/v1/catalogue/methods/straight-pull/versions').send({ ...(await VERSION()), number: 2, ...change });
const codesOf = async (reference: string) =>
  ((await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200)).body.findings as { code: string; severity: string }[]).map(
    ({ code, severity }) => `${code} ${severity}`,
  );

test('a version begins after every bench day that was handed in, in the record too, and changes nothing of what was', async () => {
  const old = { specimens: pulls(60), benchDay: '2026-01-05' };
  const { reference } = (await b.tester.call('post', '/v1/submissions').send(contentFor(b.spool, old)).expect(201)).body as {
    reference: string;
  };
  const before = await codesOf(reference);
  expect(before).toContain('date/long-past note');
  const refused = await post({ effectiveFrom: '2026-01-05' });
  expect([refused.status, refused.body.errors]).toEqual([
    422,
    [expect.objectContaining({ pointer: '/effectiveFrom', code: 'already_used' })],
  ]);
  const insert = `INSERT INTO method_version (id, method_id, number, effective_from, limits, series, parameters, wording, is_comparable_with_previous)
    SELECT gen_random_uuid(), method_id, 9, '2026-01-05', limits, series, parameters, wording, false FROM method_version v JOIN method m ON m.id = v.method_id WHERE m.slug = 'straight-pull' LIMIT 1`;
  await expect(b.sql(insert)).rejects.toThrow(/method_version_begins_after_use/);
  const added = await post({ effectiveFrom: '2026-01-06', checks: { 'date/long-past': { severity: 'blocks', limits: { days: 1 } } } });
  expect(added.status).toBe(201);
  expect(await codesOf(reference)).toEqual(before);
});

test('what a trace tells later is held against the same limits, and only where the edition pinned the check', async () => {
  await b.sql(`ALTER TABLE method_version DISABLE TRIGGER USER`);
  const checks = JSON.stringify({ 'trace/peak-differs': { severity: 'note', limits: { percent: 5 } } });
  await b.sql(
    `UPDATE method_version SET checks = $1 WHERE number = 1 AND method_id = (SELECT id FROM method WHERE slug = 'straight-pull')`,
    [checks],
  );
  const tracedCodes = async (forceN: number, factor: number) => {
    const specimens = pulls(forceN);
    const content = contentFor(b.spool, { specimens, benchDay: '2026-01-05' });
    const { reference } = (await b.tester.call('post', '/v1/submissions').send(content).expect(201)).body as { reference: string };
    const peakN = Number(specimens[0]!.readings[0]!.value) * factor;
    const file = ['Extension (mm),Force (N)', ...[0, 25, 50, 75, 100].map((part) => `${part / 10},${((peakN * part) / 100).toFixed(4)}`)];
    const traces = `/v1/submissions/${reference}/traces?specimen=1`;
    await b.tester.call('post', traces).set('If-Match', '"1"').set('Content-Type', 'text/csv').send(file.join('\n')).expect(201);
    return (await codesOf(reference)).filter((code) => code.startsWith('trace/'));
  };
  expect(await tracedCodes(70, 1.04)).toEqual([]);
  expect(await tracedCodes(72, 1.06)).toEqual(['trace/peak-differs note']);
  await b.sql(`ALTER TABLE edition DISABLE TRIGGER opening_stands`);
  const pin = (checkSet: object) => b.sql(`UPDATE edition SET check_set = $1 WHERE slug = '2026'`, [JSON.stringify(checkSet)]);
  await pin(checkSetOf().checks.filter(({ code }) => code !== 'trace/peak-differs'));
  expect(await tracedCodes(74, 1.06)).toEqual([]);
  await pin(checkSetOf().checks);
  expect(await tracedCodes(76, 1.06)).toEqual(['trace/peak-differs note']);
});

test('checks are applied as the edition pinned them when it opened', async () => {
  const content = contentFor(b.spool, { specimens: pulls(63), benchDay: '2026-01-04' });
  const preview = async () =>
    ((await b.tester.call('post', '/v1/submissions/preview').send(content).expect(200)).body.findings as { code: string }[]).map(
      ({ code }) => code,
    );
  expect(await preview()).toContain('date/long-past');
  const pinned = [{ code: 'rig/no-evidence', title: 't', severity: 'note', explains: 'e', limit: 'l' }];
  await b.sql(`ALTER TABLE edition DISABLE TRIGGER opening_stands`);
  await b.sql(`UPDATE edition SET check_set = $1 WHERE slug = '2026'`, [JSON.stringify(pinned)]);
  expect(await preview()).toEqual(['rig/no-evidence']);
});
