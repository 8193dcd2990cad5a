import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { csvFile, inventPulls, pullRows } from '../support/hand-in-csv.js';
import type { Caller } from '../support/test-application.js';

let b: Bench;
let force = 30;
beforeAll(async () => {
  b = await setUpBench();
});
afterAll(() => b.t.close());

const content = (change: object = {}) => contentFor(b.spool, { specimens: pulls((force += 3)), ...change });
const revise = (by: Caller, reference: string, version: number, body: object) =>
  by.call('post', `/v1/submissions/${reference}/revisions`).set('If-Match', `"${version}"`).send(body);
const beginDraft = async (change: object = {}) =>
  (
    await b.tester
      .call('post', '/v1/drafts')
      .send({ content: { ...content(), ...change } })
      .expect(201)
  ).body as { reference: string; version: number };

/** A submission that a reviewer has sent back with a question. */
async function returned(): Promise<{ reference: string; version: number; queryId: string }> {
  const { reference } = (await b.tester.call('post', '/v1/submissions').send(content()).expect(201)).body as { reference: string };
  const query = { specimens: [2], question: 'Please look at specimen 2 again.' };
  const answer = await b.reviewer
    .call('post', `/v1/submissions/${reference}/reviews`)
    .set('If-Match', '"1"')
    .send({ decision: 'returned', query })
    .expect(201);
  return { reference, version: answer.body.version as number, queryId: answer.body.queries[0].id as string };
}

const answerQuery = (by: Caller, id: string, answer = 'A slip of the pen.') => by.call('post', `/v1/queries/${id}/answer`).send({ answer });

test('a returned submission comes back as its next revision, and the first stands', async () => {
  const { reference, version, queryId } = await returned();
  const queries = await b.tester.call('get', '/v1/queries').expect(200);
  expect(queries.body.items[0]).toMatchObject({ id: queryId, submission: reference, revision: 1, specimens: [2], answer: null });
  await answerQuery(b.tester, queryId).expect(201);
  const answer = await revise(b.tester, reference, version, content({ benchDay: '2026-03-11' })).expect(201);
  expect(answer.body).toMatchObject({
    reference,
    state: 'submitted',
    revision: 2,
    version: version + 1,
    benchDay: '2026-03-11',
    queries: [{ answer: 'A slip of the pen.' }],
  });
  const stored = await b.sql(
    `SELECT r.number, count(p.id)::int AS specimens FROM submission s JOIN submission_revision r ON r.submission_id = s.id JOIN specimen p ON p.revision_id = r.id WHERE s.reference = $1 GROUP BY r.number ORDER BY 1`,
    [reference],
  );
  expect(stored).toEqual([
    { number: 1, specimens: 10 },
    { number: 2, specimens: 10 },
  ]);
  const seen = await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200);
  expect(seen.body.reviews).toEqual([expect.objectContaining({ revision: 1, decision: 'returned', reviewer: 'R. Quill' })]);
  await expect(b.sql(`UPDATE reading SET value_si = 1`)).rejects.toThrow('record_is_append_only');
});

test('a returned submission comes back as a CSV file of it; a file of two is refused, and a fault is told by its row', async () => {
  const { reference, version, queryId } = await returned();
  await answerQuery(b.tester, queryId).expect(201);
  const occasion = { edition: '2026', spool: b.spool, instrument: 'R1' };
  const six = (forceN: number) => pullRows(occasion, 'straight-pull', inventPulls(forceN, 'untreated', 1));
  const send = (rows: readonly string[]) =>
    b.tester
      .call('post', `/v1/submissions/${reference}/revisions`)
      .set('If-Match', `"${version}"`)
      .set('Content-Type', 'text/csv')
      .send(csvFile(rows));
  const two = await send([...six(200), ...six(201).map((row) => row.replace('2026-03-10', '2026-03-11'))]).expect(422);
  expect(two.body.errors).toEqual([expect.objectContaining({ code: 'not_one_submission', row: 8 })]);
  const other = await send(six(202).map((row) => row.replace(b.spool, b.otherSpool))).expect(422);
  expect(other.body.errors).toEqual([expect.objectContaining({ code: 'other_spool', row: 2, column: 'spool' })]);
  const answer = await send(six(203)).expect(201);
  expect(answer.body).toMatchObject({ reference, state: 'submitted', revision: 2, figures: { validSpecimens: 6 } });
});

test('the question is answered first', async () => {
  const { reference, version, queryId } = await returned();
  expect((await revise(b.tester, reference, version, content()).expect(409)).body.code).toBe('submissions/query-open');
  await answerQuery(b.tester, queryId).expect(201);
  await revise(b.tester, reference, version, content()).expect(201);
});

test('only its own tester answers a question, once, in words', async () => {
  const { queryId } = await returned();
  await answerQuery(b.otherTester, queryId).expect(404);
  await answerQuery(b.reviewer, queryId).expect(403);
  await answerQuery(b.tester, queryId, '  ').expect(422);
  await answerQuery(b.tester, queryId).expect(201);
  expect((await answerQuery(b.tester, queryId, 'other').expect(409)).body.code).toBe('reviews/query-answered');
  const others = await b.otherTester.call('get', '/v1/queries').expect(200);
  expect(others.body.items).toEqual([]);
  await b.tester.call('post', '/v1/queries/none/answer').send({ answer: 'x' }).expect(422);
});

test('only its own tester hands it in again, on the version seen, of the same subject', async () => {
  const { reference, version, queryId } = await returned();
  await answerQuery(b.tester, queryId).expect(201);
  await revise(b.otherTester, reference, version, content()).expect(404);
  await revise(b.tester, reference, version - 1, content()).expect(412);
  await b.tester.call('post', `/v1/submissions/${reference}/revisions`).send(content()).expect(428);
  expect((await revise(b.tester, reference, version, content({ spool: b.otherSpool })).expect(422)).body.errors).toEqual([
    expect.objectContaining({ code: 'other_spool' }),
  ]);
  expect((await revise(b.tester, reference, version, content({ benchDay: '2026-03-16' })).expect(422)).body.code).toBe(
    'submissions/blocked',
  );
  expect(await b.sql(`SELECT revision, state FROM submission WHERE reference = $1`, [reference])).toEqual([
    { revision: 1, state: 'returned' },
  ]);
});

test('a submitted or accepted one is not handed in again', async () => {
  const { reference } = (await b.tester.call('post', '/v1/submissions').send(content()).expect(201)).body as { reference: string };
  expect((await revise(b.tester, reference, 1, content()).expect(409)).body.code).toBe('submissions/wrong-state');
});

test('its own readings do not make a revision a copy', async () => {
  const { reference, version, queryId } = await returned();
  await answerQuery(b.tester, queryId).expect(201);
  const answer = await revise(b.tester, reference, version, content({ specimens: pulls(force) })).expect(201);
  expect(answer.text).not.toContain('readings/same-as-earlier');
});

test('a draft is kept as typed, however unfinished', async () => {
  const typed = { specimens: [{ number: 'one', readings: [{ value: '12,', unit: '' }] }], scribble: true };
  const { reference, version } = await beginDraft(typed);
  const read = await b.tester.call('get', `/v1/submissions/${reference}`).expect(200);
  expect(read.body).toMatchObject({ state: 'draft', revision: 0, draft: typed, figures: null, specimens: [] });
  const saved = await b.tester
    .call('put', `/v1/drafts/${reference}`)
    .set('If-Match', `"${version}"`)
    .send({ content: content({ spool: b.otherSpool, note: 'better' }) })
    .expect(200);
  expect(saved.body).toMatchObject({ version: version + 1, spool: b.otherSpool, draft: { note: 'better' } });
});

test('a draft names things on record and belongs to its tester, on the version seen', async () => {
  const unknown = await b.tester
    .call('post', '/v1/drafts')
    .send({ content: content({ spool: 'ZZZZZZZ' }) })
    .expect(422);
  expect(unknown.body.errors).toEqual([expect.objectContaining({ code: 'unknown_spool', pointer: '/spool' })]);
  await b.tester.call('post', '/v1/drafts').send({ content: {} }).expect(422);
  const huge = await b.tester
    .call('post', '/v1/drafts')
    .send({ content: content({ note: 'x'.repeat(1_000_001) }) })
    .expect(422);
  expect(huge.body.errors[0].detail).toContain('at most 1000000 characters');
  const { reference } = await beginDraft();
  const put = (by: Caller, version: number) =>
    by.call('put', `/v1/drafts/${reference}`).set('If-Match', `"${version}"`).send({ content: content() });
  await put(b.otherTester, 1).expect(404);
  await put(b.tester, 7).expect(412);
  await b.otherTester.call('delete', `/v1/drafts/${reference}`).set('If-Match', '"1"').expect(404);
  await b.tester.call('delete', `/v1/drafts/${reference}`).set('If-Match', '"2"').expect(412);
  await b.tester.call('delete', `/v1/drafts/${reference}`).expect(428);
});

test('a draft that is taken away is gone, and its number does not come back', async () => {
  const { reference } = await beginDraft();
  await b.tester.call('delete', `/v1/drafts/${reference}`).set('If-Match', '"1"').expect(204);
  await b.tester.call('get', `/v1/submissions/${reference}`).expect(404);
  expect((await beginDraft()).reference).not.toBe(reference);
});

test('one person begins at most two hundred drafts, at once too; one that is taken away makes room', async () => {
  const hoarder = await b.t.caller(['tester']);
  const begin = () => hoarder.call('post', '/v1/drafts').send({ content: contentFor(b.spool, { specimens: [] }) });
  const answers = [];
  for (let i = 0; i < 20; i++) answers.push(...(await Promise.all(Array.from({ length: 11 }, begin))));
  const begun = answers.filter(({ status }) => status === 201);
  expect(begun).toHaveLength(200);
  expect(answers.filter(({ body }) => body.code === 'submissions/too-many-drafts')).toHaveLength(20);
  await hoarder
    .call('delete', `/v1/drafts/${begun[0]!.body.reference as string}`)
    .set('If-Match', '"1"')
    .expect(204);
  await begin().expect(201);
});

test('a draft is handed in once, and is no draft any more', async () => {
  const { reference } = await beginDraft();
  const answer = await revise(b.tester, reference, 1, content()).expect(201);
  expect(answer.body).toMatchObject({ reference, state: 'submitted', revision: 1, draft: null, version: 2 });
  await b.tester.call('put', `/v1/drafts/${reference}`).set('If-Match', '"2"').send({ content: content() }).expect(409);
  await b.tester.call('delete', `/v1/drafts/${reference}`).set('If-Match', '"2"').expect(409);
  await expect(b.sql(`DELETE FROM submission WHERE reference = $1`, [reference])).rejects.toThrow('only_a_draft_is_deleted');
});

test('of two hand-ins of one draft at once one counts', async () => {
  const { reference } = await beginDraft();
  const body = content();
  const answers = await Promise.all([revise(b.tester, reference, 1, body), revise(b.tester, reference, 1, body)]);
  expect(answers.map(({ status }) => status).sort()).not.toEqual([201, 201]);
  expect(await b.sql(`SELECT revision FROM submission WHERE reference = $1`, [reference])).toEqual([{ revision: 1 }]);
});

test('nothing is handed in again once the edition is closed', async () => {
  const { reference, version, queryId } = await returned();
  await answerQuery(b.tester, queryId).expect(201);
  await b.sql(`UPDATE edition SET state = 'closed' WHERE id = $1`, [b.editionId]);
  expect((await revise(b.tester, reference, version, content()).expect(422)).body.errors).toEqual([
    expect.objectContaining({ code: 'edition_not_open' }),
  ]);
});
