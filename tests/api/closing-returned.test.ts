import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { pointersOf } from '../support/catalogue-fixtures.js';
import type { Caller } from '../support/test-application.js';

let b: Bench;
let everything: Caller;
let force = 40;
beforeAll(async () => {
  b = await setUpBench();
  everything = await b.t.caller(['tester', 'reviewer', 'editor'], 'A. Loan');
});
afterAll(() => b.t.close());

async function submitted(by: Caller = b.tester) {
  force += 3;
  const sent = contentFor(b.spool, { specimens: pulls(force) });
  const { reference } = (await by.call('post', '/v1/submissions').send(sent).expect(201)).body as { reference: string };
  const { version, findings } = (await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200)).body as {
    version: number;
    findings: { id: string }[];
  };
  return { reference, version, resolutions: findings.map(({ id }) => ({ finding: id, words: 'Looked at.' })) };
}
const decide = (reference: string, version: number, body: object) =>
  b.reviewer.call('post', `/v1/submissions/${reference}/reviews`).set('If-Match', `"${version}"`).send(body);
const RETURN = { decision: 'returned', query: { specimens: [3], question: 'What does the film show for specimen 3?' } };

describe('a returned one that will not come back', () => {
  const close = (by: Caller, reference: string, version: number, body: object = { reason: 'Its tester has left.' }) =>
    by.call('post', `/v1/submissions/${reference}/closure`).set('If-Match', `"${version}"`).send(body);
  const returned = async (by: Caller = b.tester) => {
    const { reference, version } = await submitted(by);
    await decide(reference, version, RETURN).expect(201);
    return { reference, version: version + 1 };
  };

  test.each(['reviewer', 'editor'] as const)('is closed by a %s with the reason, and both decisions stand', async (who) => {
    const { reference, version } = await returned();
    expect(pointersOf(await close(b[who], reference, version, { reason: ' ' }).expect(422))).toEqual(['/reason']);
    await close(b[who], reference, version - 1).expect(412);
    const { body } = await close(b[who], reference, version).expect(201);
    expect(body).toMatchObject({
      state: 'refused',
      reviews: [{ decision: 'returned' }, { decision: 'refused', reason: 'Its tester has left.' }],
    });
    expect((await close(b[who], reference, version + 1).expect(409)).body.code).toBe('reviews/wrong-state');
  });

  test('is not closed by its tester, whatever their roles, nor by other testers', async () => {
    const own = await returned(everything);
    expect((await close(everything, own.reference, own.version).expect(403)).body.code).toBe('reviews/own-submission');
    await close(b.otherTester, own.reference, own.version).expect(403);
    const waiting = await submitted();
    expect((await close(b.reviewer, waiting.reference, waiting.version).expect(409)).body.code).toBe('reviews/wrong-state');
  });

  test('a revision is decided once, and refused only by a review, in the record as well', async () => {
    const { reference } = await returned();
    const again = `INSERT INTO review (id, revision_id, reviewer_id, decision, reason, at) SELECT gen_random_uuid(), r.id, $2, $3, 'x', now()
       FROM submission s JOIN submission_revision r ON r.submission_id = s.id WHERE s.reference = $1`;
    for (const decision of ['accepted', 'returned'])
      await expect(b.sql(again, [reference, b.reviewer.accountId, decision])).rejects.toThrow('review_follows_a_return');
    await expect(b.sql(`UPDATE submission SET state = 'refused' WHERE reference = $1`, [reference])).rejects.toThrow(
      'refusal_has_a_review',
    );
    const { reference: other, version, resolutions } = await submitted();
    await decide(other, version, { decision: 'accepted', resolutions }).expect(201);
    await expect(b.sql(again, [other, b.reviewer.accountId, 'refused'])).rejects.toThrow('review_follows_a_return');
  });
});
