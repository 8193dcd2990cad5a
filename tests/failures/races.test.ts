import { setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { listen, raceStateChanges, retriedPosts, submissionsToRace } from '../support/races.js';

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
