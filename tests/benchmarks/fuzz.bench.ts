/** npm run bench -- fuzz [requests] [seed]: a seeded fuzzer over the description; failures, slowest answers, memory from tenth to tenth. */
import { faultOf, fuzzHouse } from '../support/fuzz-house.js';
import { startTestServer } from '../support/test-server.js';

const server = await startTestServer();
process.env['TEST_SERVER_URL'] = server.url;
const [requests, seed] = [Number(process.argv[2] ?? '100000'), Number(process.argv[3] ?? '1')];
const faults = new Map<string, number>();
const statuses = new Map<number, number>();
const slow: { what: string; ms: number; status: number }[] = [];
const times: number[] = [];
console.log('asked | heap, MB | resident, MB');
const began = performance.now();
await fuzzHouse(requests, seed, (answer, asked) => {
  const fault = faultOf(answer);
  if (fault !== null) {
    const key = fault.slice(0, 240);
    if (!faults.has(key)) console.log(`FAULT ${fault}`);
    faults.set(key, (faults.get(key) ?? 0) + 1);
  }
  statuses.set(answer.status, (statuses.get(answer.status) ?? 0) + 1);
  times.push(answer.ms);
  if (answer.ms > 1000) slow.push({ what: answer.what, ms: Math.round(answer.ms), status: answer.status });
  if ((asked + 1) % Math.ceil(requests / 10) !== 0) return;
  globalThis.gc?.();
  const { heapUsed, rss } = process.memoryUsage();
  console.log(`${asked + 1} | ${(heapUsed / 1e6).toFixed(0)} | ${(rss / 1e6).toFixed(0)}`);
});
times.sort((one, other) => one - other);
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
