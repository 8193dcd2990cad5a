import { setUpBench, contentFor, pulls } from '../support/bench.js';
import type { Bench } from '../support/bench.js';

let b: Bench;
beforeAll(async () => {
  b = await setUpBench();
});
afterAll(() => b.t.close());

interface Item {
  readonly id: string;
  readonly spool: string;
  readonly handedIn: string | null;
}
const ask = (request: object) =>
  b.editor.call('post', '/v1/editions/2026/assignments').send({
    tester: b.tester.accountId,
    method: 'straight-pull',
    spools: [b.spool, b.otherSpool],
    specimens: 6,
    dueOn: '2026-04-01',
    ...request,
  });
const own = async (who = b.tester) => ((await who.call('get', '/v1/assignments').expect(200)).body as { items: Item[] }).items;

test('an editor sees who tests, and asks one of them; that one alone is told, by code and nothing else', async () => {
  const testers = (await b.editor.call('get', '/v1/testers').expect(200)).body as { items: object[] };
  expect(testers.items).toContainEqual({ id: b.tester.accountId, displayName: expect.any(String) });
  expect(testers.items).not.toContainEqual(expect.objectContaining({ id: b.editor.accountId }));
  await ask({}).expect(201);
  expect(await own()).toEqual(
    [b.spool, b.otherSpool].map((spool) => ({
      id: expect.any(String),
      edition: '2026',
      spool,
      method: 'straight-pull',
      specimens: 6,
      dueOn: '2026-04-01',
      handedIn: null,
    })),
  );
  expect(await own(b.otherTester)).toEqual([]);
  const inbox = (await b.tester.call('get', '/v1/inbox').expect(200)).body as { items: { code: string; references: string[] }[] };
  expect(inbox.items.find(({ code }) => code === 'assignments_open')?.references.sort()).toEqual([b.spool, b.otherSpool].sort());
});

test('what is handed in is done, and stands after what is not', async () => {
  const { body } = await b.tester
    .call('post', '/v1/submissions')
    .send(contentFor(b.spool, { specimens: pulls(91) }))
    .expect(201);
  expect((await own()).map(({ spool, handedIn }) => [spool, handedIn])).toEqual([
    [b.otherSpool, null],
    [b.spool, body.reference],
  ]);
});

test('every fault is told at once: who does not test, what the edition is not tested by, a strange code, one that is asked for already', async () => {
  const refused = await ask({ tester: b.editor.accountId, method: 'named-knot', spools: ['2222222', b.spool, b.spool] }).expect(422);
  expect(refused.body.errors.map(({ pointer, code }: { pointer: string; code: string }) => [pointer, code])).toEqual([
    ['/tester', 'not_a_tester'],
    ['/method', 'not_pinned'],
    ['/spools/0', 'spool_unknown'],
    ['/spools/2', 'duplicate'],
  ]);
  const again = await ask({ spools: [b.otherSpool] }).expect(422);
  expect(again.body.errors).toMatchObject([{ pointer: '/spools/0', code: 'duplicate' }]);
  await b.editor
    .call('post', '/v1/editions/none/assignments')
    .send({ tester: b.tester.accountId, method: 'straight-pull', spools: [b.spool], specimens: 6 })
    .expect(404);
});

test('it is taken back once, and nothing else of it changes, whoever asks the database', async () => {
  const [open] = await own();
  await b.editor.call('delete', `/v1/assignments/${open!.id}`).expect(204);
  expect((await own()).map(({ spool }) => spool)).toEqual([b.spool]);
  await b.editor.call('delete', `/v1/assignments/${open!.id}`).expect(404);
  await ask({ spools: [b.otherSpool], dueOn: null }).expect(201);
  const [id] = (await own()).map((one) => one.id);
  for (const change of [
    'UPDATE assignment SET specimens = 1',
    'UPDATE assignment SET taken_back_at = now(), specimens = 1',
    'DELETE FROM assignment',
  ])
    await expect(b.sql(`${change} WHERE id = $1`, [id])).rejects.toThrow('assignment_is_only_taken_back');
  await expect(b.sql('UPDATE assignment SET taken_back_at = NULL WHERE taken_back_at IS NOT NULL')).rejects.toThrow(
    'assignment_is_only_taken_back',
  );
  await expect(
    b.sql(
      `INSERT INTO assignment (id, edition_id, spool_id, method_id, tester_id, specimens, given_at)
       SELECT gen_random_uuid(), edition_id, spool_id, method_id, tester_id, 6, now() FROM assignment WHERE id = $1`,
      [id],
    ),
  ).rejects.toThrow('assignment_stands_once');
});

test('nothing is asked for once the edition is closed', async () => {
  await b.sql("UPDATE submission SET state = 'refused' WHERE state = 'submitted'").catch(() => undefined);
  await b.sql("UPDATE edition SET state = 'closed', version = version + 1 WHERE slug = '2026'");
  expect((await ask({ spools: [b.spool] }).expect(409)).body.code).toBe('assignments/too-late');
  expect(await own()).toEqual([]);
});
