/**
 * npm run bench -- fuzz [requests] [seed]: a seeded fuzzer over the description; failures, slowest answers, and memory: of what is
 * still in use after a full collection a row for each twentieth, and how much it grows with each 10 000 requests once half are asked
 * (least squares).
 */
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { faultOf, fuzzHouse } from '../support/fuzz-house.js';
import { startTestServer } from '../support/test-server.js';

const server = await startTestServer();
process.env['TEST_SERVER_URL'] = server.url;
const [requests, seed] = [Number(process.argv[2] ?? '100000'), Number(process.argv[3] ?? '1')];
const faults = new Map<string, number>();
const statuses = new Map<number, number>();
const slow: { what: string; ms: number; status: number }[] = [];
const times = new Float64Array(requests);
setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;
interface Row {
  readonly asked: number;
  readonly heap: number;
  readonly outside: number;
  readonly resident: number;
}
const rows: Row[] = [];
/** Growth over the second half [MB per 10 000 requests]. */
function growth(of: (row: Row) => number): string {
  const half = rows.filter(({ asked }) => asked > requests / 2);
  const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
  const [x, y] = [mean(half.map(({ asked }) => asked)), mean(half.map(of))];
  const slope = mean(half.map((row) => (row.asked - x) * (of(row) - y))) / mean(half.map(({ asked }) => (asked - x) ** 2));
  return (slope * 10_000).toFixed(2);
}
console.log('asked | heap, MB | outside the heap, MB | resident, MB');
const began = performance.now();
await fuzzHouse(requests, seed, (answer, asked) => {
  const fault = faultOf(answer);
  if (fault !== null) {
    const key = fault.slice(0, 240);
    if (!faults.has(key)) console.log(`FAULT ${fault}`);
    faults.set(key, (faults.get(key) ?? 0) + 1);
  }
  statuses.set(answer.status, (statuses.get(answer.status) ?? 0) + 1);
  times[asked] = answer.ms;
  if (answer.ms > 1000) slow.push({ what: answer.what, ms: Math.round(answer.ms), status: answer.status });
  if ((asked + 1) % Math.ceil(requests / 20) !== 0) return;
  collect();
  const { heapUsed, external, rss } = process.memoryUsage();
  const row = { asked: asked + 1, heap: heapUsed / 1e6, outside: external / 1e6, resident: rss / 1e6 };
  rows.push(row);
  console.log(`${row.asked} | ${row.heap.toFixed(1)} | ${row.outside.toFixed(1)} | ${row.resident.toFixed(0)}`);
});
console.log(
  `growth, MB per 10 000 requests: heap ${growth(({ heap }) => heap)}, outside ${growth(({ outside }) => outside)}, resident ${growth(({ resident }) => resident)}`,
);
times.sort();
const at = (share: number): string => (times[Math.floor(share * (times.length - 1))] ?? 0).toFixed(1);
console.log(`statuses: ${JSON.stringify(Object.fromEntries([...statuses].sort(([one], [other]) => one - other)))}`);
console.log(
  `answers, ms: median ${at(0.5)}, 99 % ${at(0.99)}, slowest ${at(1)}; over 1 s: ${slow.length} ${JSON.stringify(slow.slice(0, 20))}`,
);
console.log(
  `faults: ${[...faults.values()].reduce((sum, times_) => sum + times_, 0)} of ${faults.size} kinds; ${((performance.now() - began) / 1000).toFixed(0)} s`,
);
await server.stop();
process.exit(faults.size === 0 ? 0 : 1);
