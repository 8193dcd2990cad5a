import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { OTHER_VARIANT, VARIANT } from '../support/catalogue-fixtures.js';
import { proposeReidentification, proposeWithdrawal } from '../support/propose.js';
import type { Caller } from '../support/test-application.js';

let b: Bench;
let second: Caller;
let force = 30;
beforeAll(async () => {
  b = await setUpBench();
  second = await b.t.caller(['editor'], 'S. Brent');
});
afterAll(() => b.t.close());

async function accepted(): Promise<{ reference: string; version: number }> {
  const { reference, version, held } = await submitted();
  await b.reviewer
    .call('post', `/v1/submissions/${reference}/reviews`)
    .set('If-Match', `"${version}"`)
    .send({ decision: 'accepted', resolutions: held.map(({ id }) => ({ finding: id, words: 'Looked at.' })) })
    .expect(201);
  return { reference, version: version + 1 };
}

async function submitted() {
  force += 3;
  const { reference } = (
    await b.tester
      .call('post', '/v1/submissions')
      .send(contentFor(b.spool, { specimens: pulls(force) }))
      .expect(201)
  ).body;
  const { version, findings } = (await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200)).body as {
    version: number;
    findings: { id: string; severity: string }[];
  };
  return { reference: reference as string, version, held: findings.filter(({ severity }) => severity === 'held') };
}

const propose = (body: object) => b.reviewer.call('post', '/v1/proposals').send({ reason: 'Bent.', ...body });
const end = (by: Caller, id: string, how: 'refusal' | 'cancellation', reason = 'The film shows nothing.') =>
  by.call('post', `/v1/proposals/${id}/${how}`).send({ reason });
const carryOut = (id: string, { reference, version }: { reference: string; version: number }) =>
  b.editor.call('post', `/v1/submissions/${reference}/withdrawal`).set('If-Match', `"${version}"`).send({ proposal: id });

describe('what could never be carried out is refused when it is proposed', () => {
  test('a withdrawal of what is not accepted, with the way on', async () => {
    const { reference } = await submitted();
    const { body } = await propose({ kind: 'withdrawal', submission: reference }).expect(422);
    expect(body).toMatchObject({
      code: 'proposals/never-possible',
      errors: [{ pointer: '/submission', code: 'not_accepted', found: 'submitted', detail: expect.stringContaining('/reviews') }],
    });
    const unknown = await propose({ kind: 'withdrawal', submission: 'S-2026-9999' }).expect(422);
    expect(unknown.body.errors).toMatchObject([{ code: 'unknown_reference' }]);
    expect(await b.sql('SELECT 1 FROM proposal')).toEqual([]);
  });

  test('a re-identification of no spool, to no variant, to what it is', async () => {
    const [{ slug }] = (await b.sql('SELECT v.slug FROM spool s JOIN variant v ON v.id = s.variant_id WHERE s.blind_code = $1', [
      b.spool,
    ])) as [{ slug: string }];
    for (const [change, pointer, code] of [
      [{ spool: 'AAAAAA0' }, '/spool', 'unknown_reference'],
      [{ variant: 'gannet-90' }, '/variant', 'unknown_reference'],
      [{ variant: slug }, '/variant', 'unchanged'],
    ] as const) {
      const { body } = await propose({ kind: 'reidentification', spool: b.spool, variant: OTHER_VARIANT.slug, ...change }).expect(422);
      expect(body.errors).toMatchObject([{ pointer, code }]);
    }
    expect(slug).toBe(VARIANT.slug);
  });
});

test('another editor declines with a reason; it is not carried out any more', async () => {
  const one = await accepted();
  const id = await proposeWithdrawal(b.editor, one.reference);
  expect((await end(b.editor, id, 'refusal').expect(403)).body.code).toBe('proposals/own-proposal');
  await end(b.reviewer, id, 'refusal').expect(403);
  await end(b.tester, id, 'refusal').expect(403);
  await end(second, id, 'refusal', ' ').expect(422);
  expect((await end(second, id, 'refusal').expect(201)).body).toMatchObject({
    state: 'declined',
    end: { reason: 'The film shows nothing.', by: 'S. Brent' },
  });
  expect((await end(second, id, 'refusal').expect(409)).body.code).toBe('proposals/ended');
  const byReviewer = await proposeWithdrawal(b.reviewer, one.reference);
  await end(second, byReviewer, 'refusal').expect(201);
  const refused = await carryOut(byReviewer, one).expect(422);
  expect(refused.body).toMatchObject({ code: 'proposals/other-matter', detail: 'It is declined already.' });
});

test('who made it calls it off, nobody else', async () => {
  const id = await proposeReidentification(b.reviewer, b.spool, OTHER_VARIANT.slug, 'The label reads so.');
  expect((await end(b.editor, id, 'cancellation').expect(403)).body.code).toBe('proposals/not-yours');
  expect((await end(b.reviewer, id, 'cancellation').expect(201)).body).toMatchObject({ state: 'calledOff', end: { by: 'R. Quill' } });
  await end(b.reviewer, '00000000-0000-7000-8000-000000000000', 'cancellation').expect(404);
});

test('what is carried out is not ended', async () => {
  const one = await accepted();
  const id = await proposeWithdrawal(b.reviewer, one.reference);
  await carryOut(id, one).expect(201);
  expect((await end(b.editor, id, 'refusal').expect(409)).body).toMatchObject({
    code: 'proposals/ended',
    detail: 'It is carried out already.',
  });
});

test('the same is open once for each person, also of many requests at once; called off, it is proposed anew', async () => {
  const { reference } = await accepted();
  const answers = await Promise.all(Array.from({ length: 40 }, () => propose({ kind: 'withdrawal', submission: reference })));
  const [made] = answers.filter(({ status }) => status === 201);
  const refused = answers.filter((answer) => answer !== made);
  expect(refused.map(({ body }) => [body.code, body.detail])).toEqual(
    Array.from({ length: 39 }, () => ['proposals/made-before', `It is open as ${made!.body.id as string}.`]),
  );
  await proposeWithdrawal(b.editor, reference);
  await end(b.reviewer, made!.body.id as string, 'cancellation').expect(201);
  await propose({ kind: 'withdrawal', submission: reference }).expect(201);
});

test('are listed by how they stand', async () => {
  const one = await accepted();
  const open = await proposeWithdrawal(b.reviewer, one.reference);
  for (const state of ['open', 'carriedOut', 'declined', 'calledOff']) {
    const { items } = (await second.call('get', `/v1/proposals?state=${state}`).expect(200)).body as {
      items: { id: string; state: string }[];
    };
    expect(new Set(items.map((item) => item.state))).toEqual(new Set([state]));
    expect(items.some(({ id }) => id === open)).toBe(state === 'open');
  }
  const { items } = (await second.call('get', '/v1/proposals').expect(200)).body as { items: { id: string }[] };
  const { body: rest } = await second.call('get', `/v1/proposals?cursor=${items[0]!.id}`).expect(200);
  expect(rest.items).toHaveLength(items.length - 1);
});

test('the record keeps the same rules', async () => {
  const one = await accepted();
  const id = await proposeWithdrawal(b.reviewer, one.reference);
  const ending = `INSERT INTO proposal_end (proposal_id, kind, reason, by_id, at) VALUES ($1, $2, 'x', $3, now())`;
  await expect(b.sql(ending, [id, 'declined', b.reviewer.accountId])).rejects.toThrow('proposal_ends_once');
  await expect(b.sql(ending, [id, 'calledOff', b.editor.accountId])).rejects.toThrow('proposal_ends_once');
  await b.sql(ending, [id, 'declined', second.accountId]);
  await expect(b.sql('DELETE FROM proposal_end')).rejects.toThrow('record_is_append_only');
  const withdrawing = `INSERT INTO withdrawal (submission_id, by_id, proposal_id, reason, at) SELECT id, $1, $2, 'x', now() FROM submission WHERE reference = $3`;
  await expect(b.sql(withdrawing, [b.editor.accountId, id, one.reference])).rejects.toThrow('ended_proposal_stays_ended');
  const done = await proposeWithdrawal(b.reviewer, one.reference);
  await carryOut(done, one).expect(201);
  await expect(b.sql(ending, [done, 'declined', second.accountId])).rejects.toThrow('proposal_ends_once');
});
