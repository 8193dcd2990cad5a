import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import type { Caller } from '../support/test-application.js';

let b: Bench;
let other: Caller;
let force = 40;
beforeAll(async () => {
  b = await setUpBench();
  other = await b.t.caller(['reviewer'], 'S. Tarn');
});
afterAll(() => b.t.close());

async function submitted(change: object = {}) {
  force += 2;
  const content = contentFor(b.spool, { specimens: pulls(force), ...change });
  const { reference } = (await b.tester.call('post', '/v1/submissions').send(content).expect(201)).body as { reference: string };
  return { reference, content };
}
const at = (by: Caller, verb: 'post' | 'delete' | 'get', path: string, version = 1) =>
  by.call(verb, `/v1/submissions/${path}`).set('If-Match', `"${version}"`);
const seen = async (reference: string) =>
  (await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200)).body as {
    version: number;
    findings: { id: string; severity: string }[];
  };
async function accept(by: Caller, reference: string) {
  const { version, findings } = await seen(reference);
  const resolutions = findings.filter(({ severity }) => severity === 'held').map(({ id }) => ({ finding: id, words: 'Stands.' }));
  return at(by, 'post', `${reference}/reviews`, version).send({ decision: 'accepted', resolutions });
}
const possible = async (by: Caller, reference: string) =>
  new Map(
    (
      (await by.call('get', `/v1/submissions/${reference}/actions`).expect(200)).body.items as {
        action: string;
        isPossible: boolean;
        why: string | null;
        counts: object;
      }[]
    ).map(({ action, ...rest }) => [action, rest]),
  );

describe('a review is claimed by one person', () => {
  test('others see by whom and do not decide; given back, or over, it is free again; the record keeps the rule too', async () => {
    const { reference } = await submitted();
    await at(b.reviewer, 'post', `${reference}/claim`).expect(201);
    const refused = await at(other, 'post', `${reference}/claim`).expect(409);
    expect(refused.body).toMatchObject({ code: 'reviews/claimed', detail: expect.stringContaining('R. Quill') });
    expect((await accept(other, reference)).body.code).toBe('reviews/claimed');
    expect((await possible(other, reference)).get('decide')).toMatchObject({ isPossible: false, why: expect.stringContaining('R. Quill') });
    const review = `INSERT INTO review (id, revision_id, reviewer_id, decision, at) SELECT gen_random_uuid(), r.id, $2, 'accepted', $3
      FROM submission s JOIN submission_revision r ON r.submission_id = s.id WHERE s.reference = $1`;
    await expect(b.sql(review, [reference, other.accountId, b.t.clock.time])).rejects.toThrow(/review_is_by_its_claimer/);
    await at(b.reviewer, 'delete', `${reference}/claim`).expect(204);
    await at(other, 'post', `${reference}/claim`).expect(201);
    b.t.clock.time = new Date(b.t.clock.time.getTime() + 2 * 3_600_000 + 1000);
    await at(b.reviewer, 'post', `${reference}/claim`).expect(201);
    expect((await accept(b.reviewer, reference)).status).toBe(201);
  });

  test('of ten who claim at once one has it', async () => {
    const { reference } = await submitted();
    const reviewers: Caller[] = [];
    for (let i = 0; i < 10; i += 1) reviewers.push(await b.t.caller(['reviewer']));
    const answers = await Promise.all(reviewers.map((reviewer) => at(reviewer, 'post', `${reference}/claim`)));
    expect(answers.map(({ status }) => status).sort()).toEqual([201, ...Array<number>(9).fill(409)]);
  });

  test('nobody claims their own, in the record either', async () => {
    const both = await b.t.caller(['tester', 'reviewer']);
    const content = contentFor(b.spool, { specimens: pulls(33.3) });
    const { reference } = (await both.call('post', '/v1/submissions').send(content).expect(201)).body as { reference: string };
    expect((await at(both, 'post', `${reference}/claim`).expect(403)).body.code).toBe('reviews/own-submission');
    const claim = `INSERT INTO review_claim SELECT id, tester_id, now(), now() + interval '1 hour' FROM submission WHERE reference = $1`;
    await expect(b.sql(claim, [reference])).rejects.toThrow(/claimer_is_not_tester/);
  });
});

test('earlier results stay hidden until the first judgement, which is given once and stands', async () => {
  const { reference: earlier } = await submitted();
  expect((await accept(other, earlier)).status).toBe(201);
  const { reference } = await submitted();
  expect((await at(b.reviewer, 'get', `${reference}/earlier-results`).expect(403)).body.code).toBe('reviews/judge-first');
  await at(b.reviewer, 'post', `${reference}/judgements`).send({ verdict: 'plausible', words: ' ' }).expect(422);
  const judged = await at(b.reviewer, 'post', `${reference}/judgements`)
    .send({ verdict: 'doubtful', words: 'Two groups of specimens.' })
    .expect(201);
  expect((judged.body.items as { reference: string }[]).map((one) => one.reference)).toContain(earlier);
  expect((await at(b.reviewer, 'get', `${reference}/earlier-results`).expect(200)).body).toEqual(judged.body);
  expect(
    (await at(b.reviewer, 'post', `${reference}/judgements`).send({ verdict: 'plausible', words: 'Now I see.' }).expect(409)).body.code,
  ).toBe('reviews/judged');
  await at(other, 'get', `${reference}/earlier-results`).expect(403);
  await expect(b.sql(`UPDATE judgement SET verdict = 'plausible'`)).rejects.toThrow(/append_only/);
});

describe('a question tells neither size nor sign', () => {
  test.each([
    'Specimen 3 is too low, please look.',
    'Is the unit right? It reads twice what I expect.',
    'Why is specimen 2 higher than the others?',
    'Specimens 1 and 2 look like outliers.',
    'Did you mean 36.5?',
    'Was the gauge set to 5 kgf?',
    'The spread is 12 %: what happened?',
  ])('refused: %s', async (question) => {
    const { reference } = await submitted();
    const refused = await at(b.reviewer, 'post', `${reference}/reviews`)
      .send({ decision: 'returned', query: { kind: 'reading', specimens: [1, 2, 3], question } })
      .expect(422);
    expect(refused.body.errors).toMatchObject([{ pointer: '/query/question', code: 'question_tells_figures' }]);
  });

  test.each([
    ['unit', 'Please look at the unit of these specimens beside the display of the rig.'],
    ['apparatus', 'Which of the two capstans were specimens 2 and 4 laid on? The note names one, the sketch the other.'],
    ['condition', 'Had the spool lain in the room for 24 hours before?'],
  ])('taken, with its kind: %s', async (kind, question) => {
    const { reference } = await submitted();
    await at(b.reviewer, 'post', `${reference}/reviews`)
      .send({ decision: 'returned', query: { kind, specimens: [2, 4], question } })
      .expect(201);
    const { items } = (await b.tester.call('get', '/v1/queries').expect(200)).body as { items: object[] };
    expect(items[0]).toMatchObject({ submission: reference, kind, question });
  });

  test('they come in pages, newest first, each once', async () => {
    const { body: all } = await b.tester.call('get', '/v1/queries?limit=1000').expect(200);
    const first = await b.tester.call('get', '/v1/queries?limit=2').expect(200);
    expect(first.headers['link']).toBe(`</v1/queries?limit=2&cursor=${first.body.nextCursor}>; rel="next"`);
    const rest = await b.tester.call('get', `/v1/queries?limit=1000&cursor=${first.body.nextCursor}`).expect(200);
    expect([...first.body.items, ...rest.body.items]).toEqual(all.items);
    expect([first.body.items.length, rest.body.items.length, rest.body.nextCursor]).toEqual([2, all.items.length - 2, null]);
    expect(rest.body.items.length).toBeGreaterThan(0);
    await b.tester.call('get', '/v1/queries?limit=1001').expect(422);
  });
});

test('the next revision shows what it says otherwise', async () => {
  const { reference, content } = await submitted();
  await at(b.reviewer, 'post', `${reference}/reviews`)
    .send({ decision: 'returned', query: { specimens: [2], question: 'What does the film show?' } })
    .expect(201);
  const { id } = (await b.tester.call('get', '/v1/queries').expect(200)).body.items[0] as { id: string };
  expect((await possible(b.tester, reference)).get('handIn')).toMatchObject({ isPossible: false, counts: { openQueries: 1 } });
  await b.tester.call('post', `/v1/queries/${id}/answer`).send({ answer: 'A slip of the pen.' }).expect(201);
  const specimens = content.specimens.map((specimen) =>
    specimen.number === 2 ? { ...specimen, validity: 'invalid', invalidReason: 'slipped' } : specimen,
  );
  const { version } = await seen(reference);
  await at(b.tester, 'post', `${reference}/revisions`, version)
    .send({ ...content, specimens, note: 'Film looked at.' })
    .expect(201);
  const changes = (await b.reviewer.call('get', `/v1/submissions/${reference}/revisions/2/changes`).expect(200)).body.items as object[];
  expect(changes).toEqual([
    { pointer: '/note', before: '', after: 'Film looked at.' },
    { pointer: '/specimens/2/validity', before: 'valid', after: 'invalid: slipped' },
  ]);
  await b.reviewer.call('get', `/v1/submissions/${reference}/revisions/3/changes`).expect(404);
  await b.otherTester.call('get', `/v1/submissions/${reference}/revisions/2/changes`).expect(404);
});

test('what is possible is told, with why and how many', async () => {
  const { reference } = await submitted();
  const ofReviewer = await possible(b.reviewer, reference);
  expect(ofReviewer.get('decide')).toMatchObject({ isPossible: true, counts: { unanswered: 1 } });
  expect(ofReviewer.get('resolve')).toMatchObject({ isPossible: false, why: expect.stringContaining('accepted') });
  expect((await possible(b.tester, reference)).get('addTraces')).toMatchObject({ isPossible: true, why: null });
  expect((await possible(b.editor, reference)).get('withdraw')).toMatchObject({ isPossible: false });
  const tied = await b.t.caller(['reviewer']);
  await tied.call('post', '/v1/interests').send({ maker: b.makerSlug, words: 'My brother works there.' }).expect(201);
  expect((await possible(tied, reference)).get('decide')).toMatchObject({ isPossible: false, why: expect.stringMatching(/interest/) });
});

test('two tabs on one draft: the later save is refused with what the other saved, and where they differ; earlier texts can be had back', async () => {
  const content = { ...contentFor(b.spool, { specimens: pulls(35.5) }), note: 'first' };
  const { reference } = (await b.tester.call('post', '/v1/drafts').send({ content }).expect(201)).body as { reference: string };
  const save = (note: string, version: number) =>
    b.tester
      .call('put', `/v1/drafts/${reference}`)
      .set('If-Match', `"${version}"`)
      .send({ content: { ...content, note } });
  await save('second, of tab one', 1).expect(200);
  const refused = await save('second, of tab two', 1).expect(412);
  expect(refused.headers['etag']).toBe('"2"');
  expect(refused.body).toMatchObject({
    code: 'request/if-match-stale',
    current: { version: 2, content: { note: 'second, of tab one' } },
    differs: ['/note'],
  });
  await save('merged', 2).expect(200);
  const { items } = (await b.tester.call('get', `/v1/drafts/${reference}/history`).expect(200)).body as {
    items: { version: number; content: { note: string } }[];
  };
  expect(items.map(({ version, content: { note } }) => [version, note])).toEqual([
    [2, 'second, of tab one'],
    [1, 'first'],
  ]);
  expect((await b.otherTester.call('get', `/v1/drafts/${reference}/history`).expect(200)).body.items).toEqual([]);
  for (let version = 3; version < 58; version += 1) await save(`save ${version}`, version).expect(200);
  expect((await b.tester.call('get', `/v1/drafts/${reference}/history`).expect(200)).body.items).toHaveLength(50);
  await b.tester.call('delete', `/v1/drafts/${reference}`).set('If-Match', '"58"').expect(204);
});
