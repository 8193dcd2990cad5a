import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';

let b: Bench;
let force = 40;
beforeAll(async () => {
  b = await setUpBench();
});
afterAll(() => b.t.close());

const handIn = async () => {
  const answer = await b.tester.call('post', '/v1/submissions').send(contentFor(b.spool, { specimens: pulls((force += 2)) }));
  return answer.body as { reference: string };
};
const takeBack = (reference: string, version = 1) =>
  b.tester.call('post', `/v1/submissions/${reference}/taking-back`).set('If-Match', `"${version}"`);
const claim = (reference: string, version = 1) =>
  b.reviewer.call('post', `/v1/submissions/${reference}/claim`).set('If-Match', `"${version}"`);
const inReview = { code: 'submissions/in-review' };

test('a tester takes back what nobody looks at yet: it stays on record, nobody reviews it, and it is in no queue', async () => {
  const { reference } = await handIn();
  const answer = await takeBack(reference).expect(201);
  expect(answer.body).toMatchObject({ reference, state: 'takenBack', version: 2 });
  expect((await claim(reference, 2)).status).toBe(409);
  const { body } = await b.reviewer.call('get', `/v1/submissions?state=takenBack`).expect(200);
  expect((body.items as { reference: string }[]).map((item) => item.reference)).toContain(reference);
  expect(await b.sql(`SELECT after FROM audit_event WHERE object_id = $1 AND action = 'submission.takenBack'`, [reference])).toEqual([
    { after: { state: 'takenBack' } },
  ]);
});

test('not after a reviewer claimed it; again after the claim was given back', async () => {
  const { reference } = await handIn();
  await claim(reference).expect(201);
  expect((await takeBack(reference).expect(409)).body).toMatchObject(inReview);
  await b.reviewer.call('delete', `/v1/submissions/${reference}/claim`).set('If-Match', '"1"');
  await takeBack(reference).expect(201);
});

test('not after a reviewer judged it, nor on a version that was not the last seen', async () => {
  const { reference } = await handIn();
  await takeBack(reference, 7).expect(412);
  await b.sql(
    `INSERT INTO judgement (revision_id, reviewer_id, verdict, words, at)
     SELECT r.id, $2, 'plausible', 'w', now() FROM submission s JOIN submission_revision r ON r.submission_id = s.id WHERE s.reference = $1`,
    [reference, b.reviewer.accountId],
  );
  expect((await takeBack(reference).expect(409)).body).toMatchObject(inReview);
});

test('the record itself keeps these rules', async () => {
  const { reference } = await handIn();
  await claim(reference).expect(201);
  const set = (state: string) => b.sql(`UPDATE submission SET state = $2 WHERE reference = $1`, [reference, state]);
  await expect(set('takenBack')).rejects.toThrow('taken_back_before_review');
  const other = (await handIn()).reference;
  await b.sql(`UPDATE submission SET state = 'takenBack' WHERE reference = $1`, [other]);
  await expect(b.sql(`UPDATE submission SET state = 'submitted' WHERE reference = $1`, [other])).rejects.toThrow(
    'submission_moves_lawfully',
  );
  await expect(
    b.sql(`UPDATE submission SET content_digest = (SELECT content_digest FROM submission WHERE reference = $1) WHERE reference = $2`, [
      reference,
      (await handIn()).reference,
    ]),
  ).rejects.toThrow('submission_is_handed_in_once');
});

test('a bad bench day goes on record with the reason why fewer count, and its reviewer reads it', async () => {
  const specimens = pulls(61).map((specimen, i) => (i < 7 ? { ...specimen, validity: 'invalid', invalidReason: 'slipped' } : specimen));
  const content = contentFor(b.spool, { specimens });
  expect((await b.tester.call('post', '/v1/submissions').send(content).expect(422)).text).toContain('say why fewer count');
  const words = 'The grip slipped until its jaws were cleaned.';
  const answer = await b.tester
    .call('post', '/v1/submissions')
    .send({ ...content, fewerBecause: words })
    .expect(201);
  expect(answer.body).toMatchObject({ fewerBecause: words, figures: { validSpecimens: 3 } });
  const seen = await b.reviewer.call('get', `/v1/submissions/${answer.body.reference as string}`).expect(200);
  expect(seen.body.findings).toContainEqual(
    expect.objectContaining({ code: 'specimens/fewer-explained', severity: 'held', message: expect.stringContaining(words) }),
  );
});
