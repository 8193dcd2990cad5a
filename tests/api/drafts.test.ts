import { setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';

let b: Bench;
beforeAll(async () => {
  b = await setUpBench();
});
afterAll(() => b.t.close());

test('a draft begins from a spool and a method; edition, version and day are said for it, or asked for', async () => {
  const begin = (content: object) => b.tester.call('post', '/v1/drafts').send({ content });
  const { body } = await begin({ spool: b.spool, method: 'straight-pull' }).expect(201);
  expect(body).toMatchObject({ state: 'draft', edition: '2026', method: { slug: 'straight-pull', number: 1 }, benchDay: '2026-03-15' });
  const refusals = [
    [{ spool: b.spool }, '/content/method', ''],
    [{ spool: b.spool, method: 'weighing' }, '/content/method', 'expected one of: '],
    [{ spool: b.spool, method: 'straight-pull', edition: '2031' }, '/content/edition', 'is not open'],
  ] as const;
  for (const [content, pointer, words] of refusals) {
    const { errors } = (await begin(content).expect(422)).body as { errors: object[] };
    expect(errors).toContainEqual(expect.objectContaining({ pointer, detail: expect.stringContaining(words) }));
  }
});
