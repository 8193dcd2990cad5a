import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { SPOOL, VARIANT } from '../support/catalogue-fixtures.js';
import { countStatements } from '../support/count-statements.js';
import { csvFile, pullRows } from '../support/hand-in-csv.js';
import { plansOf, statementsOf } from '../support/plans.js';
import { runSql } from '../support/run-sql.js';

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
});
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

/** As many as it took in November 2026, on a rig without control pulls: whoever needs one more says for what. */
test.each([
  ['/v1/submissions/preview', 200, 20],
  ['/v1/submissions', 201, 44],
])('%s asks the database as often for fifty spools as for two', async (path, status, most) => {
  // The first request of a kind asks more of the database: what is prepared then is kept.
  await send(path, fileOf(1, 60)).expect(status);
  const two = await countStatements(async () => send(path, fileOf(2, 70)).expect(status));
  const fifty = await countStatements(async () => send(path, fileOf(MOST, 80)).expect(status));
  expect(two).toBeGreaterThan(10);
  expect(fifty).toBe(two);
  expect(fifty).toBeLessThanOrEqual(most);
});

test('a decision, and a control pull, ask no oftener either', async () => {
  const review = async () => {
    const { body } = await b.tester.call('post', '/v1/submissions').send(contentFor(spools[1]!, { specimens: pulls((force += 3)) }));
    const path = `/v1/submissions/${body.reference as string}`;
    const { version, findings } = (await b.reviewer.call('get', path).expect(200)).body as {
      version: number;
      findings: { id: string; severity: string }[];
    };
    const resolutions = findings.flatMap(({ id, severity }) => (severity === 'held' ? [{ finding: id, words: 'Stands.' }] : []));
    const decision = { decision: 'accepted', resolutions };
    const count = await countStatements(() =>
      b.reviewer.call('post', `${path}/reviews`).set('If-Match', `"${version}"`).send(decision).expect(201),
    );
    return count - resolutions.length;
  };
  let force = 50;
  await review();
  expect(await review()).toBeLessThanOrEqual(25);

  await b.editor
    .call('post', '/v1/control-lines')
    .send({ code: 'C1', name: 'Reference braid', lot: 'K-7', words: 'One spool, kept dark.' });
  const pull = (text: string) =>
    b.tester
      .call('post', '/v1/control-pulls')
      .send({ controlLine: 'C1', instrument: 'R1', method: 'straight-pull', benchDay: '2026-02-01', readings: [{ text, unit: 'N' }] })
      .expect(201);
  await pull('84.1');
  expect(await countStatements(() => pull('84.3'))).toBeLessThanOrEqual(17);
});

test('what is looked up once for a file is right for each of its submissions', async () => {
  const { body } = await b.tester.call('post', '/v1/submissions/preview').send(contentFor(spools[0]!.toLowerCase())).expect(200);
  expect(body.spool).toBe(spools[0]);
});

/** Tables that grow with every season; what else there is, a house has some dozens of. */
const GROWING = [
  'submission',
  'submission_revision',
  'submission_instrument',
  'specimen',
  'reading',
  'finding',
  'spool',
  'entry',
  'audit_event',
];

describe('what is asked for most finds its rows by an index', () => {
  const throughGrowing = async (work: () => PromiseLike<unknown>): Promise<string[]> => {
    const statements = await statementsOf(work);
    expect(statements.length).toBeGreaterThan(0);
    return (await plansOf(b.t.databaseUrl, statements, true)).flatMap(({ text, readThrough }) =>
      readThrough.filter((table) => GROWING.includes(table)).map((table) => `${table}: ${text}`),
    );
  };
  let reference: string;
  beforeAll(async () => {
    const { body } = await b.tester.call('get', '/v1/submissions').expect(200);
    reference = body.items[0].reference as string;
  });

  test.each([
    ['a hand-in', () => send('/v1/submissions', fileOf(2, 90)).expect(201)],
    ['a list of submissions', () => b.tester.call('get', '/v1/submissions').expect(200)],
    ['a submission', () => b.tester.call('get', `/v1/submissions/${reference}`).expect(200)],
    ['what waits for a reviewer', () => b.reviewer.call('get', '/v1/submissions?state=submitted').expect(200)],
    ['the board', () => b.editor.call('get', '/v1/editions/2026/board').expect(200)],
  ])('%s', async (_what, work) => {
    expect(await throughGrowing(work)).toEqual([]);
  });

  test('of methods a list of submissions loads no wording', async () => {
    const statements = await statementsOf(() => b.tester.call('get', '/v1/submissions').expect(200));
    expect(statements.filter(({ text }) => text.includes('"method_version"')).length).toBeGreaterThan(0);
    expect(statements.filter(({ text }) => text.includes('"wording"'))).toEqual([]);
  });

  test('a table that is read from end to end is seen, as it lies or along an index that leads nowhere', async () => {
    const through = async (text: string, values: readonly unknown[] = []) =>
      (await plansOf(b.t.databaseUrl, [{ text, values }], true))[0]?.readThrough;
    expect(await through('SELECT * FROM "submission" WHERE "version" = $1', [7])).toEqual(['submission']);
    expect(await through('SELECT * FROM "submission" WHERE "version" = $1 ORDER BY "id"', [7])).toEqual(['submission']);
    expect(await through('SELECT * FROM "submission" WHERE "version" = $1 ORDER BY "id" LIMIT 3', [7])).toEqual(['submission']);
    expect(await through('SELECT * FROM "submission" ORDER BY "id" LIMIT 3')).toEqual([]);
    expect(await through('SELECT * FROM "submission" WHERE "reference" = $1', ['2026-1'])).toEqual([]);
  });

  test('an index that is missed is missed here', async () => {
    await runSql(b.t.databaseUrl, 'DROP INDEX "submission_reference_key"');
    expect(await throughGrowing(() => b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200))).not.toEqual([]);
  });
});
