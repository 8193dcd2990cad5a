import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';

let b: Bench;
beforeAll(async () => {
  b = await setUpBench();
}, 60_000);
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
  const insert = `INSERT INTO method_version (id, method_id, number, effective_from, limits, parameters, wording, is_comparable_with_previous)
    SELECT gen_random_uuid(), method_id, 9, '2026-01-05', limits, parameters, wording, false FROM method_version v JOIN method m ON m.id = v.method_id WHERE m.slug = 'straight-pull' LIMIT 1`;
  await expect(b.sql(insert)).rejects.toThrow(/method_version_begins_after_use/);
  const added = await post({ effectiveFrom: '2026-01-06', checks: { 'date/long-past': { severity: 'blocks', limits: { days: 1 } } } });
  expect(added.status).toBe(201);
  expect(await codesOf(reference)).toEqual(before);
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
