import pg from 'pg';
import { setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { csvFile, pullRows } from '../support/hand-in-csv.js';
import { listen, post, raceStateChanges, retriedPosts, submissionsToRace } from '../support/races.js';
import { waitForLock } from '../support/wait-for-lock.js';

let b: Bench;
let port: number;
beforeAll(async () => {
  b = await setUpBench();
  port = await listen(b);
});
afterAll(() => b.t.close());

const count = async (statement: string): Promise<number> => Number((await b.sql(statement))[0]!['count']);

test('of 50 clients who change the same submission at once exactly one wins; nothing is lost, nothing doubled', async () => {
  const references = await submissionsToRace(b, port, 12);
  const { requests, statuses, without } = await raceStateChanges(b, port, references, 50);
  expect(requests).toBe(600);
  expect(without).toEqual([]);
  expect(Object.keys(statuses).filter((status) => !['201', '409', '412'].includes(status))).toEqual([]);
  expect(await count('SELECT count(*) FROM submission WHERE version <> 2')).toBe(0);
  expect(await count('SELECT (SELECT count(*) FROM review) + (SELECT count(*) FROM trace) AS count')).toBe(12);
  expect(
    await count(
      `SELECT count(*) FROM audit_event WHERE action IN ('submission.accepted','submission.returned','submission.refused','traces.added')`,
    ),
  ).toBe(12);
});

test('posts that are sent five times over connections that break are taken once, and answered alike', async () => {
  const before = await count('SELECT count(*) FROM submission');
  const { without, torn } = await retriedPosts(b, port, 60);
  expect(without).toEqual([]);
  expect(torn).toBeGreaterThan(60);
  expect(await count('SELECT count(*) FROM submission')).toBe(before + 60);
});

describe('a file that is stored while it is examined', () => {
  const pulls = (count: number, day: number, last?: string) =>
    Array.from({ length: count }, (_, i) => ({
      number: i + 1,
      condition: 'untreated' as const,
      text: i === count - 1 && last !== undefined ? last : (80 + day + ((i * 37) % 97) / 100).toFixed(4),
    }));
  /** Two submissions, the first of which fills what is examined at once. */
  const longFile = (day: number, last?: string): string => {
    const about = { edition: '2026', instrument: 'R1', benchDay: `2026-02-${String(day).padStart(2, '0')}` };
    return csvFile([
      ...pullRows({ ...about, spool: b.spool }, 'straight-pull', pulls(2001, day)),
      ...pullRows({ ...about, spool: b.otherSpool }, 'straight-pull', pulls(6, day, last)),
    ]);
  };
  const send = (body: string, partial = false) =>
    post(port, { path: `/v1/submissions${partial ? '?partial=true' : ''}`, token: b.tester.token, body, type: 'text/csv' });
  const stored = () => Promise.all(['submission', 'specimen', 'reading'].map((table) => count(`SELECT count(*) FROM ${table}`)));

  test('stores nothing where its last row has a fault, and what is good of it when asked', async () => {
    const before = await stored();
    const answer = await send(longFile(1, '-1'));
    expect(answer?.status).toBe(422);
    expect((JSON.parse(answer!.text) as { errors: object[] }).errors).toEqual([expect.objectContaining({ row: 2008, found: '-1' })]);
    expect(await stored()).toEqual(before);
    expect((await send(longFile(1, '-1'), true))?.status).toBe(201);
    expect(await stored()).toEqual([1, 2001, 2001].map((more, i) => before[i]! + more));
  });

  test('locks nothing that others wait for until all of it is examined', async () => {
    const holder = new pg.Client(b.t.databaseUrl);
    await holder.connect();
    try {
      await holder.query('BEGIN; LOCK TABLE "reading" IN SHARE MODE');
      const answer = send(longFile(2));
      await waitForLock(b.t.databaseUrl);
      for (const table of ['edition', 'instrument', 'spool', 'method_version', 'account'])
        expect((await b.sql(`SELECT 1 FROM "${table}" FOR UPDATE NOWAIT`)).length).toBeGreaterThan(0);
      await holder.query('COMMIT');
      expect((await answer)?.status).toBe(201);
    } finally {
      await holder.end();
    }
  });

  test('leaves connections to others, however many come at once', async () => {
    const [before, days] = [await stored(), Array.from({ length: 11 }, (_, i) => i + 3)];
    const sendAll = (some: number[]) => Promise.all(some.map(async (day) => ({ day, status: (await send(longFile(day)))?.status })));
    // A machine with much else to do makes one or the other wait too long for its turn; where all keep connections from each other, most do.
    const busy = (await sendAll(days)).flatMap(({ day, status }) => (status === 503 ? [day] : []));
    expect(busy.length).toBeLessThanOrEqual(2);
    expect((await sendAll(busy)).map(({ status }) => status)).toEqual(busy.map(() => 201));
    expect(await stored()).toEqual([2, 2007, 2007].map((more, i) => before[i]! + more * days.length));
  });
});
