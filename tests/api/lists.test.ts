import { CSV_COLUMNS } from '../../api/submissions/intake/csv-columns.js';
import { fillCatalogue, SPOOL, VARIANT } from '../support/catalogue-fixtures.js';
import { createTestApplication } from '../support/test-application.js';
import type { Caller, TestApplication } from '../support/test-application.js';

let t: TestApplication;
let editor: Caller;

beforeAll(async () => {
  t = await createTestApplication();
  editor = await t.caller(['editor']);
  await fillCatalogue(editor);
  for (let i = 0; i < 5; i += 1)
    await editor
      .call('post', '/v1/catalogue/spools')
      .send({ ...SPOOL, variant: VARIANT.slug })
      .expect(201);
});
afterAll(() => t.close());

test('a list links to what follows (RFC 8288), and the links lead through all of it once', async () => {
  const seen: string[] = [];
  let next: string | undefined = '/v1/catalogue/spools?limit=2';
  for (let pages = 0; next !== undefined && pages < 9; pages += 1) {
    const answer: any = await editor.call('get', next).expect(200);
    seen.push(...answer.body.items.map(({ blindCode }: any) => blindCode));
    next = /^<([^>]+)>; rel="next"$/.exec(answer.headers['link'] ?? '')?.[1];
    expect(next === undefined).toBe(answer.body.nextCursor === null);
    if (next !== undefined) expect(next).toContain('limit=2');
  }
  expect(seen).toHaveLength(5);
  expect(new Set(seen).size).toBe(5);
});

test('the columns of a hand-in file are told to anybody, as the parser knows them', async () => {
  const { items } = (await t.call('get', '/v1/submissions/csv-columns').expect(200)).body;
  expect(items.map(({ name }: any) => name)).toEqual(CSV_COLUMNS.map(({ name }) => name));
  expect(items.find(({ name }: any) => name === 'force')).toMatchObject({ carriesReading: true, isRequired: false, meaning: 'Peak force' });
});
