/** npm run bench -- dishonest-tester [times]: attempts over each route, bytes that differ, and whether times tell the two lines apart. */
import { playDishonestTester } from '../support/dishonest-tester.js';

const times = Number(process.argv[2] ?? '40');

/** Median of the second over the first. */
const median = (values: readonly number[]): number => values.toSorted((one, other) => one - other)[Math.floor(values.length / 2)] ?? 0;

/** Standard score of the rank sum (Wilcoxon, Mann and Whitney, normal approximation): within 3 the two are not told apart. */
function rankScore(one: readonly number[], other: readonly number[]): number {
  const all = [...one.map((ms) => ({ ms, isFirst: true })), ...other.map((ms) => ({ ms, isFirst: false }))].sort((a, z) => a.ms - z.ms);
  const sum = all.reduce((total, { isFirst }, index) => total + (isFirst ? index + 1 : 0), 0);
  const [n, m] = [one.length, other.length];
  return (sum - (n * (n + m + 1)) / 2) / Math.sqrt((n * m * (n + m + 1)) / 12);
}

const play = await playDishonestTester(times);
console.log('route | attempts | bytes that differ | median, ms | of the other line, ms | rank score');
let [attempts, bytes] = [0, 0];
for (const [route, { tried, bytesThatDiffer, timesMs }] of play.byRoute) {
  if (route.startsWith('(')) continue;
  attempts += tried;
  bytes += bytesThatDiffer;
  const score = tried < 20 ? '–' : rankScore(...timesMs).toFixed(1);
  console.log(`${route} | ${tried} | ${bytesThatDiffer} | ${median(timesMs[0]).toFixed(1)} | ${median(timesMs[1]).toFixed(1)} | ${score}`);
}
console.log(`all | ${attempts} | ${bytes}`);
await play.close();
process.exit(bytes === 0 ? 0 : 1);
