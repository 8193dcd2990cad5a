import { contentFor, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { SPOOL, VARIANT } from '../support/catalogue-fixtures.js';
import { countStatements } from '../support/count-statements.js';
import { csvFile, pullRows } from '../support/hand-in-csv.js';

const MOST = 50;
let b: Bench;
const spools: string[] = [];
beforeAll(async () => {
  b = await setUpBench();
  for (let i = 0; i < MOST; i++) {
    const made = await b.editor
      .call('post', '/v1/catalogue/spools')
      .send({ ...SPOOL, variant: VARIANT.slug })
      .expect(201);
    spools.push(made.body.blindCode as string);
  }
}, 60_000);
afterAll(() => b.t.close());

/** Five pulls of each of so many spools. */
const fileOf = (count: number, forceN: number) =>
  csvFile(
    spools.slice(0, count).flatMap((spool, s) =>
      pullRows(
        { edition: '2026', spool, instrument: 'R1' },
        'straight-pull',
        [0, 1, 2, 3, 4].map((i) => ({ number: i + 1, condition: 'untreated', text: (forceN + s / 100 + ((i * 3) % 5) / 2).toFixed(2) })),
      ),
    ),
  );
const send = (path: string, body: string) => b.tester.call('post', path).set('Content-Type', 'text/csv').send(body);

test.each([
  ['/v1/submissions/preview', 200],
  ['/v1/submissions', 201],
])('%s asks the database as often for fifty spools as for two', async (path, status) => {
  // The first request of a kind asks more of the database: what is prepared then is kept.
  await send(path, fileOf(1, 60)).expect(status);
  const two = await countStatements(async () => send(path, fileOf(2, 70)).expect(status));
  const fifty = await countStatements(async () => send(path, fileOf(MOST, 80)).expect(status));
  expect(two).toBeGreaterThan(10);
  expect(fifty).toBe(two);
});

test('what is looked up once for a file is right for each of its submissions', async () => {
  const { body } = await b.tester.call('post', '/v1/submissions/preview').send(contentFor(spools[0]!.toLowerCase())).expect(200);
  expect(body.spool).toBe(spools[0]);
});
