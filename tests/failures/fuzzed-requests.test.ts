import { faultOf, fuzzHouse } from '../support/fuzz-house.js';

test('two thousand requests that fit the description, nearly fit it or do not, of every role and of nobody: each is answered, none with a failure', async () => {
  const faults: string[] = [];
  const statuses = new Map<number, number>();
  const asked = new Set<string>();
  const operations = await fuzzHouse(2000, 20_261, (answer) => {
    const fault = faultOf(answer);
    if (fault !== null) faults.push(fault);
    statuses.set(answer.status, (statuses.get(answer.status) ?? 0) + 1);
    asked.add(answer.what);
  });
  expect(faults).toEqual([]);
  // It reaches nearly every operation, and is let in often enough to go beyond the door.
  expect(asked.size).toBeGreaterThan(0.9 * operations);
  const taken = [...statuses].reduce((sum, [status, times]) => sum + (status < 300 ? times : 0), 0);
  expect(taken).toBeGreaterThan(100);
});
