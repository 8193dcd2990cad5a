import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { MAKER, pointersOf } from '../support/catalogue-fixtures.js';
import { proposeWithdrawal } from '../support/propose.js';
import type { Caller } from '../support/test-application.js';

let b: Bench;
let everything: Caller;
let force = 40;
beforeAll(async () => {
  b = await setUpBench();
  everything = await b.t.caller(['tester', 'reviewer', 'editor'], 'A. Loan');
});
afterAll(() => b.t.close());

interface Found {
  id: string;
  severity: string;
}

/** A submitted submission with readings of its own; its only held finding is that of the rig. */
async function submitted(by: Caller = b.tester): Promise<{ reference: string; version: number; held: Found[] }> {
  force += 3;
  const { reference } = (
    await by
      .call('post', '/v1/submissions')
      .send(contentFor(b.spool, { specimens: pulls(force) }))
      .expect(201)
  ).body as { reference: string };
  const seen = await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200);
  return {
    reference,
    version: seen.body.version as number,
    held: (seen.body.findings as Found[]).filter(({ severity }) => severity === 'held'),
  };
}

const decide = (by: Caller, reference: string, version: number | null, body: object) => {
  const call = by.call('post', `/v1/submissions/${reference}/reviews`);
  return (version === null ? call : call.set('If-Match', `"${version}"`)).send(body);
};

const answersTo = (held: Found[]) => held.map(({ id }) => ({ finding: id, words: 'Looked at the display on the film of the day.' }));
const acceptance = (held: Found[], change: object = {}) => ({
  decision: 'accepted',
  reason: null,
  setAside: [],
  resolutions: answersTo(held),
  query: null,
  ...change,
});
const RETURN = { decision: 'returned', query: { specimens: [3], question: 'What does the film show for specimen 3?' } };

test('accepting moves the state, answers the findings and keeps who decided', async () => {
  const { reference, version, held } = await submitted();
  expect(held.length).toBeGreaterThan(0);
  const answer = await decide(b.reviewer, reference, version, acceptance(held)).expect(201);
  expect(answer.headers['etag']).toBe(`"${version + 1}"`);
  expect(answer.body).toMatchObject({ state: 'accepted', reviews: [{ revision: 1, decision: 'accepted', reviewer: 'R. Quill' }] });
  expect((answer.body.findings as { resolution: string | null }[]).filter(({ resolution }) => resolution !== null)).toHaveLength(
    held.length,
  );
  const events = await b.sql(`SELECT action FROM audit_event WHERE object_id = $1 ORDER BY id`, [reference]);
  expect(events.map(({ action }) => action)).toEqual(['submission.handedIn', 'submission.accepted']);
});

test('nobody reviews their own submission: neither by the program nor past it', async () => {
  const { reference, version, held } = await submitted(everything);
  for (const body of [acceptance(held), RETURN, { decision: 'refused', reason: 'no' }]) {
    const answer = await decide(everything, reference, version, body).expect(403);
    expect(answer.body.code).toBe('reviews/own-submission');
  }
  await expect(
    b.sql(
      `INSERT INTO review (id, revision_id, reviewer_id, decision, at) SELECT gen_random_uuid(), r.id, s.tester_id, 'accepted', now()
       FROM submission s JOIN submission_revision r ON r.submission_id = s.id WHERE s.reference = $1`,
      [reference],
    ),
  ).rejects.toThrow('reviewer_is_not_tester');
  await expect(b.sql(`UPDATE submission SET state = 'accepted' WHERE reference = $1`, [reference])).rejects.toThrow(
    'acceptance_has_a_review',
  );
  expect(await b.sql(`SELECT state FROM submission WHERE reference = $1`, [reference])).toEqual([{ state: 'submitted' }]);
});

test('the queue holds submissions of others, longest waiting first, and nothing that would unblind a tester', async () => {
  const own = await submitted(everything);
  const other = await submitted();
  const queue = await everything.call('get', '/v1/review-queue?limit=100').expect(200);
  const references = (queue.body.items as { reference: string }[]).map(({ reference }) => reference);
  expect(references).toContain(other.reference);
  expect(references).not.toContain(own.reference);
  expect([...references].sort()).toEqual(references);
  expect(queue.body.items[0]).toMatchObject({
    tester: expect.any(String),
    figures: { validSpecimens: 10 },
    specimens: expect.any(Array),
    findings: expect.any(Array),
  });
  const first = await everything.call('get', '/v1/review-queue?limit=1').expect(200);
  if (references.length > 1) {
    const second = await everything.call('get', `/v1/review-queue?limit=1&cursor=${first.body.nextCursor as string}`).expect(200);
    expect(second.body.items[0].reference).toBe(references[1]);
  }
  await b.tester.call('get', '/v1/review-queue').expect(403);
  const seen = await everything.call('get', `/v1/submissions/${own.reference}`).expect(200);
  expect((seen.body.findings as { detail: object | null }[]).every(({ detail }) => detail === null)).toBe(true);
});

test('only reviewers decide, only editors withdraw', async () => {
  const { reference, version, held } = await submitted();
  await decide(b.otherTester, reference, version, acceptance(held)).expect(403);
  await decide(b.editor, reference, version, acceptance(held)).expect(403);
  await decide(b.reviewer, reference, version, acceptance(held)).expect(201);
  await b.reviewer
    .call('post', `/v1/submissions/${reference}/withdrawal`)
    .set('If-Match', `"${version + 1}"`)
    .send({ proposal: await proposeWithdrawal(b.editor, reference) })
    .expect(403);
});

test('a reviewer with a tie to the maker is refused', async () => {
  const { reference, version, held } = await submitted();
  const tied = await b.t.caller(['reviewer', 'editor']);
  await tied.call('post', '/v1/interests').send({ maker: MAKER.slug, words: 'Owns shares.' }).expect(201);
  const answer = await decide(tied, reference, version, acceptance(held)).expect(403);
  expect(answer.body.code).toBe('reviews/declared-interest');
  await decide(b.reviewer, reference, version, acceptance(held)).expect(201);
  await tied
    .call('post', `/v1/submissions/${reference}/withdrawal`)
    .set('If-Match', `"${version + 1}"`)
    .send({ proposal: await proposeWithdrawal(b.reviewer, reference) })
    .expect(403);
});

test('a decision needs the version that was seen', async () => {
  const { reference, version, held } = await submitted();
  await decide(b.reviewer, reference, null, acceptance(held)).expect(428);
  await decide(b.reviewer, reference, version + 1, acceptance(held)).expect(412);
  await decide(b.reviewer, 'S-2026-9999', version, acceptance(held)).expect(404);
});

test('of two decisions at once one counts', async () => {
  const { reference, version, held } = await submitted();
  const second = await b.t.caller(['reviewer']);
  const answers = await Promise.all([
    decide(b.reviewer, reference, version, acceptance(held)),
    decide(second, reference, version, { decision: 'refused', reason: 'No film.' }),
  ]);
  expect(answers.map(({ status }) => status).sort()).toEqual([201, 412]);
});

test('a decision in the wrong state is refused', async () => {
  const { reference, version } = await submitted();
  await b.editor
    .call('post', `/v1/submissions/${reference}/withdrawal`)
    .set('If-Match', `"${version}"`)
    .send({ proposal: '00000000-0000-7000-8000-000000000000' })
    .expect(409);
  await decide(b.reviewer, reference, version, { decision: 'refused', reason: 'The grips slipped on film.' }).expect(201);
  const again = await decide(b.reviewer, reference, version + 1, acceptance([])).expect(409);
  expect(again.body.code).toBe('reviews/wrong-state');
});

test('accepting needs an answer to each held finding, and knows no strange ones', async () => {
  const { reference, version, held } = await submitted();
  const none = await decide(b.reviewer, reference, version, acceptance([])).expect(422);
  expect(none.body.errors).toEqual(held.map(() => expect.objectContaining({ code: 'finding_unanswered', pointer: '/resolutions' })));
  const empty = await decide(
    b.reviewer,
    reference,
    version,
    acceptance(held, { resolutions: held.map(({ id }) => ({ finding: id, words: '  ' })) }),
  ).expect(422);
  expect(pointersOf(empty)).toContain('/resolutions/0/words');
  const other = await submitted();
  const strange = await decide(
    b.reviewer,
    reference,
    version,
    acceptance(held, { resolutions: [...answersTo(held), ...answersTo(other.held)] }),
  ).expect(422);
  expect(strange.body.errors[0]).toMatchObject({ code: 'unknown_finding' });
  const twice = await decide(
    b.reviewer,
    reference,
    version,
    acceptance(held, { resolutions: [...answersTo(held), ...answersTo(held)] }),
  ).expect(422);
  expect(twice.body.errors[0]).toMatchObject({ code: 'duplicate' });
  expect(
    await b.sql(
      `SELECT count(*)::int AS n FROM review v JOIN submission_revision r ON r.id = v.revision_id JOIN submission s ON s.id = r.submission_id WHERE s.reference = $1`,
      [reference],
    ),
  ).toEqual([{ n: 0 }]);
});

test('a finding is answered once, also past the program', async () => {
  const { reference, version, held } = await submitted();
  await decide(b.reviewer, reference, version, acceptance(held)).expect(201);
  await expect(b.sql(`UPDATE finding SET resolution = 'other' WHERE id = $1`, [held[0]?.id])).rejects.toThrow('finding_stands');
});

test('setting aside needs a valid specimen, a reason, and leaves some', async () => {
  const { reference, version, held } = await submitted();
  const setting = (setAside: object[]) => decide(b.reviewer, reference, version, acceptance(held, { setAside }));
  expect((await setting([{ specimen: 99, reason: 'x' }]).expect(422)).body.errors[0]).toMatchObject({
    code: 'not_settable',
    pointer: '/setAside/0/specimen',
  });
  const doubled = [
    { specimen: 1, reason: 'x' },
    { specimen: 1, reason: 'y' },
  ];
  expect((await setting(doubled).expect(422)).body.errors[0]).toMatchObject({ pointer: '/setAside/1/specimen' });
  expect((await setting([{ specimen: 1, reason: ' ' }]).expect(422)).body.errors[0]).toMatchObject({ pointer: '/setAside/0/reason' });
  const all = Array.from({ length: 10 }, (_, index) => ({ specimen: index + 1, reason: 'x' }));
  expect((await setting(all).expect(422)).body.errors[0]).toMatchObject({ code: 'nothing_left' });
  const answer = await setting([{ specimen: 2, reason: 'Slack on film.' }]).expect(201);
  expect(answer.body.specimens[1]).toMatchObject({ number: 2, state: 'setAside', reason: 'Slack on film.' });
});

test('refusing needs a reason, returning a question; each takes only what belongs to it', async () => {
  const { reference, version, held } = await submitted();
  const pointers = async (body: object) => pointersOf(await decide(b.reviewer, reference, version, body).expect(422));
  expect(await pointers({ decision: 'refused' })).toEqual(['/reason']);
  expect(await pointers({ decision: 'returned', reason: 'look again' })).toEqual(['/query']);
  expect(await pointers({ ...acceptance(held), ...RETURN, decision: 'accepted' })).toEqual(['/query']);
  expect(await pointers({ ...RETURN, setAside: [{ specimen: 1, reason: 'x' }] })).toEqual(['/setAside']);
  expect(await pointers({ decision: 'approved' })).toEqual(['/decision']);
});

test('a question names specimens of the submission, never how far off they are', async () => {
  const { reference, version } = await submitted();
  const asking = (query: object) => decide(b.reviewer, reference, version, { decision: 'returned', query });
  expect((await asking({ specimens: [99], question: 'Look at it.' }).expect(422)).body.errors[0]).toMatchObject({
    code: 'unknown_specimen',
    pointer: '/query/specimens/0',
  });
  for (const question of ['Specimen 3 is 12 % too high.', 'Why 90.4 N?', 'Is it 20lbf?']) {
    expect((await asking({ specimens: [3], question }).expect(422)).body.errors[0]).toMatchObject({ code: 'question_tells_figures' });
  }
  await asking({ specimens: [3, 5], question: 'Were specimens 3 and 5 in the grips straight?' }).expect(201);
});

test('withdrawing takes an accepted one out, by an editor who did not test it', async () => {
  const { reference, version, held } = await submitted(everything);
  await decide(b.reviewer, reference, version, acceptance(held)).expect(201);
  const proposal = await proposeWithdrawal(b.reviewer, reference, 'The spool was mislabelled.');
  const withdraw = (by: Caller, seen: number, id: string = proposal) =>
    by.call('post', `/v1/submissions/${reference}/withdrawal`).set('If-Match', `"${seen}"`).send({ proposal: id });
  expect((await withdraw(everything, version + 1).expect(403)).body.code).toBe('reviews/own-submission');
  await withdraw(b.editor, version).expect(412);
  const own = await proposeWithdrawal(b.editor, reference);
  expect((await withdraw(b.editor, version + 1, own).expect(403)).body.code).toBe('proposals/own-proposal');
  const second = await submitted();
  await decide(b.reviewer, second.reference, second.version, acceptance(second.held)).expect(201);
  const other = await proposeWithdrawal(b.reviewer, second.reference);
  expect((await withdraw(b.editor, version + 1, other).expect(422)).body.code).toBe('proposals/other-matter');
  await withdraw(b.editor, version + 1, '00000000-0000-7000-8000-000000000000').expect(404);
  const answer = await withdraw(b.editor, version + 1).expect(201);
  expect(answer.body).toMatchObject({ state: 'withdrawn', withdrawal: { reason: 'The spool was mislabelled.' } });
  await expect(
    b.sql(
      `INSERT INTO withdrawal (submission_id, by_id, proposal_id, reason, at) SELECT id, tester_id, $1, 'x', now() FROM submission WHERE state = 'submitted' LIMIT 1`,
      [other],
    ),
  ).rejects.toThrow('withdrawer_is_not_tester');
  const alone = `INSERT INTO withdrawal (submission_id, by_id, proposal_id, reason, at) SELECT id, $1, $2, 'x', now() FROM submission WHERE state = 'submitted' LIMIT 1`;
  for (const proposed of [own, null]) await expect(b.sql(alone, [b.editor.accountId, proposed])).rejects.toThrow('two_persons_do_it');
  await expect(b.sql('DELETE FROM proposal')).rejects.toThrow(/append_only/);
  const { items } = (await b.editor.call('get', '/v1/proposals').expect(200)).body as { items: { id: string }[] };
  expect(items.find(({ id }) => id === proposal)).toMatchObject({ state: 'carriedOut', by: 'R. Quill', end: null });
  expect(items.find(({ id }) => id === own)).toMatchObject({ state: 'open' });
  await withdraw(b.editor, version + 2).expect(409);
});
