/** How far a control pull reaches: rigs that were never pulled, days without a pull, pulls that were struck; and the air it was pulled in. */
import pg from 'pg';
import { ControlPullsReadModel } from '../../api/control-pulls/control-pulls.read-model.js';
import type { ControlPullOnRecord } from '../../api/control-pulls/control-pulls.read-model.js';
import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import type { Caller } from '../support/test-application.js';
import { waitForLock } from '../support/wait-for-lock.js';

let b: Bench;
let force = 50;
beforeAll(async () => {
  b = await setUpBench();
  await b.editor
    .call('post', '/v1/control-lines')
    .send({ code: 'C1', name: 'Reference braid', lot: 'K-7', words: 'Kept dark.' })
    .expect(201);
  const [gauge] = (await b.editor.call('get', '/v1/instruments').expect(200)).body.items.filter(
    ({ code }: { code: string }) => code === 'R1',
  );
  const { kind, name, capacity, resolution } = gauge as { kind: string; name: string; capacity: Quantity; resolution: Quantity };
  const range = ({ text, unit }: Quantity) => ({ text, unit });
  await b.editor
    .call('post', '/v1/instruments')
    .send({ code: 'R2', kind, name: `${name} two`, capacity: range(capacity), resolution: range(resolution) })
    .expect(201);
});
afterAll(() => b.t.close());

interface Quantity {
  readonly text: string;
  readonly unit: string;
}
const day = (number: number) => `2026-02-${String(number).padStart(2, '0')}`;
const handIn = (number: number, forceN: number, change: object = {}, by: Caller = b.tester) =>
  by.call('post', '/v1/control-pulls').send({
    controlLine: 'C1',
    instrument: 'R1',
    method: 'straight-pull',
    benchDay: day(number),
    readings: [{ text: forceN.toFixed(2), unit: 'N' }],
    ...change,
  });
const idOf = async (...pull: Parameters<typeof handIn>) => ((await handIn(...pull).expect(201)).body as { id: string }).id;
const strike = (id: string) => b.reviewer.call('post', `/v1/control-pulls/${id}/strike`).send({ reason: 'The grip was not closed.' });
const rigsOn = async (query = '') => (await b.tester.call('get', `/v1/rigs${query}`).expect(200)).body.items as object[];

async function submitted(number: number): Promise<string> {
  force += 2;
  const content = contentFor(b.spool, { specimens: pulls(force), benchDay: day(number) });
  return ((await b.tester.call('post', '/v1/submissions').send(content).expect(201)).body as { reference: string }).reference;
}
const doubtOf = async (reference: string): Promise<string[]> =>
  ((await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200)).body.findings as { code: string }[])
    .map(({ code }) => code)
    .filter((code) => code.startsWith('rig/'));

test('before any control pull there is nothing to say of rigs', async () => {
  expect(await rigsOn()).toEqual([]);
});

test('a rig is told with what is wanting until there are limits, one that was never pulled too', async () => {
  for (let i = 1; i <= 10; i++) await handIn(i, 84 + (i % 2)).expect(201);
  expect(await rigsOn()).toEqual([
    {
      instrument: 'R1',
      method: 'straight-pull',
      state: 'learning',
      since: day(1),
      lastPullOn: day(10),
      pullsToLimits: 0,
      signals: [],
      words: 'The control pulls so far give the limits; the next one is judged by them.',
    },
    {
      instrument: 'R2',
      method: 'straight-pull',
      state: 'noEvidence',
      since: null,
      lastPullOn: null,
      pullsToLimits: 10,
      signals: [],
      words: expect.stringMatching(/10 more/),
    },
  ]);
  expect(await rigsOn(`?day=${day(4)}`)).toMatchObject([
    { state: 'learning', pullsToLimits: 6, lastPullOn: day(4), words: expect.stringContaining('4 of the 10') },
    { state: 'noEvidence' },
  ]);
});

test('a day without a pull is without evidence, unless the rig went out before: it stays out until a good pull clears it', async () => {
  await handIn(11, 84.4).expect(201);
  expect((await rigsOn(`?day=${day(11)}`))[0]).toMatchObject({ state: 'inControl', since: day(11) });
  expect((await rigsOn(`?day=${day(12)}`))[0]).toMatchObject({
    state: 'noEvidence',
    since: null,
    words: expect.stringMatching(/no control pull/),
  });
  await handIn(13, 78).expect(201);
  const meanwhile = await submitted(14);
  expect(await doubtOf(meanwhile)).toEqual(['rig/out-of-control']);
  expect((await rigsOn(`?day=${day(14)}`))[0]).toMatchObject({ state: 'outOfControl', since: day(13), signals: ['oneBeyond3Sigma'] });
  await handIn(15, 84.6).expect(201);
  expect((await rigsOn())[0]).toMatchObject({ state: 'inControl', since: day(15), lastPullOn: day(15) });
  expect(await doubtOf(await submitted(16))).toEqual(['rig/no-evidence']);
});

test('a good pull that is struck lets the doubt of a bad one reach further back', async () => {
  const early = await submitted(15);
  const good = await idOf(17, 84.5);
  expect((await handIn(19, 78).expect(201)).body).toMatchObject({ state: 'outOfControl', doubted: 0 });
  expect(await doubtOf(early)).toEqual([]);
  await strike(good).expect(201);
  expect(await doubtOf(early)).toEqual(['rig/out-of-control']);
  const { items } = (await b.t.caller(['admin']).then((admin) => admin.call('get', '/v1/audit?limit=100').expect(200))).body as {
    items: { action: string; objectId: string }[];
  };
  expect(items.filter(({ action, objectId }) => action === 'submission.doubted' && objectId === early)).toHaveLength(1);
});

test('a pull that was struck before it was found out does not stop the doubt either', async () => {
  await handIn(20, 84.4).expect(201);
  const early = await submitted(20);
  await strike(await idOf(21, 84.4)).expect(201);
  expect((await handIn(22, 78).expect(201)).body).toMatchObject({ doubted: 1 });
  expect(await doubtOf(early)).toEqual(['rig/out-of-control']);
});

test('the air at the bench is kept as displayed and in degrees Celsius, whole or not at all', async () => {
  const ambient = { temperature: { text: '68', unit: '°F' }, humidityPercent: '55' };
  const told = { ...ambient, temperatureC: '20', humidityPercent: '55' };
  expect((await handIn(23, 84.4, { ambient }).expect(201)).body).toMatchObject({ ambient: told });
  expect((await handIn(23, 84.5).expect(201)).body).toMatchObject({ ambient: null });
  const damp = await handIn(23, 84.4, { ambient: { ...ambient, humidityPercent: '101' } }).expect(422);
  expect(damp.body.errors).toMatchObject([{ pointer: '/ambient/humidityPercent' }]);
  const columns = 'control_line_id, instrument_id, method_id, tester_id, bench_day, handed_in_at';
  const put = (more: string, values: string) =>
    b.sql(
      `INSERT INTO "control_pull" (id, ${columns}, ${more}) SELECT gen_random_uuid(), ${columns.replace('bench_day', `'${day(25)}'`)}, ${values} FROM "control_pull" LIMIT 1`,
    );
  await expect(put('humidity_percent', '50')).rejects.toThrow(/control_pull_air_is_whole/);
  await expect(put('temperature_text, temperature_unit, temperature_c, humidity_percent', `'20', '°C', 20, 101`)).rejects.toThrow(
    /control_pull_humidity_is_a_share/,
  );
});

test('what was checked before a control pull came in is not stored after it: a first hand-in, nor a draft', async () => {
  const columns = 'control_line_id, instrument_id, method_id, tester_id, bench_day, handed_in_at';
  /** Sends the request while a control pull is being put on record, which is done as soon as the request waits for it. */
  const meanwhile = async (request: () => PromiseLike<{ status: number; body: { code?: string; detail?: string } }>) => {
    const other = new pg.Client({ connectionString: b.t.databaseUrl });
    await other.connect();
    await other.query(`BEGIN; SELECT 1 FROM "instrument" WHERE "code" = 'R1' FOR UPDATE;
      INSERT INTO "control_pull" (id, ${columns}) SELECT gen_random_uuid(), ${columns} FROM "control_pull" ORDER BY bench_day DESC LIMIT 1;
      INSERT INTO "control_reading" SELECT id, 1, '84.4', 'N', 84.4 FROM "control_pull" p
        WHERE NOT EXISTS (SELECT 1 FROM "control_reading" r WHERE r.control_pull_id = p.id)`);
    const answer = Promise.resolve(request());
    await waitForLock(b.t.databaseUrl);
    await other.query('COMMIT');
    await other.end();
    return answer;
  };
  force += 2;
  const content = contentFor(b.spool, { specimens: pulls(force), benchDay: day(23) });
  const first = await meanwhile(() => b.tester.call('post', '/v1/submissions').send(content));
  expect(first).toMatchObject({ status: 409, body: { code: 'submissions/rig-watched', detail: expect.stringContaining('R1') } });
  const draft = (await b.tester.call('post', '/v1/drafts').send({ content }).expect(201)).body as { reference: string; version: number };
  const revision = await meanwhile(() =>
    b.tester.call('post', `/v1/submissions/${draft.reference}/revisions`).set('If-Match', `"${draft.version}"`).send(content),
  );
  expect(revision).toMatchObject({ status: 409, body: { code: 'submissions/rig-watched' } });
  await b.tester.call('post', '/v1/submissions').send(content).expect(201);
});

test('a hand-in reads the pulls of the lots around its days; those of lots that are used up stay unread', async () => {
  await b.editor
    .call('post', '/v1/control-lines')
    .send({ code: 'C2', name: 'Reference braid', lot: 'K-8', words: 'Kept dark.' })
    .expect(201);
  for (const number of [25, 26]) await handIn(number, 84.4, { controlLine: 'C2' }).expect(201);
  const read = jest.spyOn(ControlPullsReadModel.prototype, 'pulls');
  const lotsFor = async (number: number) => {
    read.mockClear();
    await submitted(number);
    const found = (await Promise.all(read.mock.results.map(({ value }) => value as Promise<ControlPullOnRecord[]>))).flat();
    return [...new Set(found.map(({ controlLine }) => controlLine.code))];
  };
  expect(await lotsFor(27)).toEqual(['C2']);
  // The last pull before the day is of one lot, the next one of the other, and both may decide.
  expect(await lotsFor(24)).toEqual(['C1', 'C2']);
  expect(await lotsFor(12)).toEqual(['C1']);
  read.mockRestore();
});
