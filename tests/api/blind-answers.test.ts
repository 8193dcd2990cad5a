import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { CLAIM, LINE, MAKER, VARIANT } from '../support/catalogue-fixtures.js';

let b: Bench;
beforeAll(async () => {
  b = await setUpBench();
});
afterAll(() => b.t.close());

const NAMES = [MAKER.name, MAKER.slug, LINE.name, LINE.slug, VARIANT.slug, VARIANT.size, CLAIM.printed.text, '88.96'];

interface FoundAnswer {
  code: string;
  message: string;
  detail: object | null;
}

test('a tester reads no maker, line, claim or ratio anywhere, a reviewer reads the whole finding', async () => {
  // 90 N over the 20 lbf of the label is 1.01; a slip from newtons to pounds makes it 4.448 times as much (NIST SP 811).
  const answer = await b.tester
    .call('post', '/v1/submissions')
    .send(contentFor(b.spool, { specimens: pulls(395) }))
    .expect(201);
  const { reference } = answer.body as { reference: string };
  const preview = await b.tester
    .call('post', '/v1/submissions/preview')
    .send(contentFor(b.spool, { specimens: pulls(395) }))
    .expect(200);
  const read = await b.tester.call('get', `/v1/submissions/${reference}`).expect(200);
  const list = await b.tester.call('get', '/v1/submissions').expect(200);
  for (const { text } of [answer, preview, read, list]) {
    for (const name of NAMES) expect(text).not.toContain(name);
    expect(text).not.toContain('claim');
    expect(text).not.toContain('unit-slip');
  }
  expect((read.body.findings as FoundAnswer[]).every(({ detail }) => detail === null)).toBe(true);

  const seen = await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200);
  const slip = (seen.body.findings as FoundAnswer[]).find(({ code }) => code === 'figures/unit-slip');
  expect(slip).toMatchObject({ message: expect.stringContaining('4.4'), detail: { actual: expect.stringMatching(/^4\.4/) } });
});

/** Everything of an answer but the code of the spool. */
const withoutSpool = (answer: { text: string }) => answer.text.replaceAll(b.spool, 'SPOOL').replaceAll(b.otherSpool, 'SPOOL');

// The labels of the two: 20 lbf (88.96 N), and none.
test.each([10, 20.2, 44, 45, 88.96, 177, 179, 392, 400])(
  'a preview of %d N says the same of two very different lines, and of a third time as of the first',
  async (forceN) => {
    const preview = (spool: string) =>
      b.otherTester
        .call('post', '/v1/submissions/preview')
        .send(contentFor(spool, { specimens: pulls(forceN) }))
        .expect(200);
    const own = await preview(b.spool);
    expect(withoutSpool(await preview(b.otherSpool))).toBe(withoutSpool(own));
    expect((await preview(b.spool)).text).toBe(own.text);
    expect(own.text).not.toContain('look-again');
  },
);

test('of what is seen beside the label the tester is told nothing, however often it is handed in; the reviewer is, and of the number', async () => {
  let reference = '';
  for (let time = 1; time <= 4; time++) {
    const answer = await b.otherTester
      .call('post', '/v1/submissions')
      .send(contentFor(b.spool, { specimens: pulls(395 + time) }))
      .expect(201);
    ({ reference } = answer.body as { reference: string });
    const codes = (answer.body.findings as FoundAnswer[]).map(({ code }) => code);
    expect(codes).toEqual(['rig/no-evidence']);
  }
  const seen = await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200);
  expect((seen.body.findings as FoundAnswer[]).map(({ code }) => code)).toEqual(
    expect.arrayContaining(['figures/unit-slip', 'tester/many-hand-ins']),
  );
});

test('a tester with a tie to the maker does not learn from the findings whose spool it is', async () => {
  await b.tester.call('post', '/v1/interests').send({ maker: MAKER.slug, words: 'Used to work there.' }).expect(201);
  const content = contentFor(b.spool, { specimens: pulls(70) });
  const preview = await b.tester.call('post', '/v1/submissions/preview').send(content).expect(200);
  const answer = await b.tester.call('post', '/v1/submissions').send(content).expect(201);
  const seen = await b.reviewer.call('get', `/v1/submissions/${answer.body.reference as string}`).expect(200);
  expect((seen.body.findings as FoundAnswer[]).map(({ code }) => code)).toContain('tester/declared-interest');
  for (const { text } of [preview, answer]) expect(text).not.toContain('interest');
});

test('the same readings are recognised in other units and in another order', async () => {
  const content = contentFor(b.spool, { specimens: pulls(60) });
  const { reference } = (await b.tester.call('post', '/v1/submissions').send(content).expect(201)).body as { reference: string };
  const specimens = [...pulls(60)].reverse().map((specimen) => ({
    ...specimen,
    readings: specimen.readings
      .map((reading) => (reading.unit === 'N' ? { ...reading, value: (Number(reading.value) / 1000).toFixed(5), unit: 'kN' } : reading))
      .reverse(),
  }));
  const again = await b.otherTester
    .call('post', '/v1/submissions')
    .send({ ...content, specimens })
    .expect(201);
  const seen = await b.reviewer.call('get', `/v1/submissions/${again.body.reference as string}`).expect(200);
  expect((seen.body.findings as FoundAnswer[]).find(({ code }) => code === 'readings/same-as-earlier')?.message).toContain(reference);
  expect(again.text).not.toContain(reference);
});

test('a tester sees the own submissions only; a reviewer sees all but drafts', async () => {
  const { reference } = (
    await b.tester
      .call('post', '/v1/submissions')
      .send(contentFor(b.spool, { specimens: pulls(50) }))
      .expect(201)
  ).body as { reference: string };
  await b.otherTester.call('get', `/v1/submissions/${reference}`).expect(404);
  const others = await b.otherTester.call('get', '/v1/submissions?limit=200').expect(200);
  expect(others.text).not.toContain(reference);
  const draft = await b.tester
    .call('post', '/v1/drafts')
    .send({ content: contentFor(b.spool) })
    .expect(201);
  const { reference: draftReference } = draft.body as { reference: string };
  await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200);
  await b.reviewer.call('get', `/v1/submissions/${draftReference}`).expect(404);
  const all = await b.editor.call('get', '/v1/submissions?limit=200').expect(200);
  expect(all.text).toContain(reference);
  expect(all.text).not.toContain(draftReference);
});

test('lists go on by cursor, newest first, and filter by state and edition', async () => {
  const first = await b.tester.call('get', '/v1/submissions?limit=2').expect(200);
  const next = await b.tester.call('get', `/v1/submissions?limit=2&cursor=${first.body.nextCursor as string}`).expect(200);
  const references = [...first.body.items, ...next.body.items].map(({ reference }: { reference: string }) => reference);
  expect(new Set(references).size).toBe(references.length);
  expect([...references].sort().reverse()).toEqual(references);
  const drafts = await b.tester.call('get', '/v1/submissions?state=draft&edition=2026').expect(200);
  expect(drafts.body.items.map(({ state }: { state: string }) => state)).toEqual(['draft']);
  expect((await b.tester.call('get', '/v1/submissions?edition=1999').expect(200)).body.items).toEqual([]);
  await b.tester.call('get', '/v1/submissions?state=lost').expect(422);
});
