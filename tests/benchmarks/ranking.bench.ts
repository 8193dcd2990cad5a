/**
 * Time and memory of fitting and ranking a whole edition, against the same algorithm in numpy (ranking.py), each in a process of its own.
 * node --import ./.config/load-typescript.mjs tests/benchmarks/ranking.bench.ts [entries …]
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { rankInvented } from './ranking-case.js';

interface Measured {
  entries: number;
  draws: number;
  /** processor time, which a busy machine does not stretch */
  seconds: number;
  megabytes: number;
}

const CATEGORIES = 5;
const DRAWS = 10_000;
const HERE = fileURLToPath(import.meta.url);
const ONE = '--one';

function measureHere(entries: number, draws: number): Measured {
  const before = process.cpuUsage();
  rankInvented(entries, CATEGORIES, draws);
  const { user, system } = process.cpuUsage(before);
  return { entries, draws, seconds: (user + system) / 1e6, megabytes: process.resourceUsage().maxRSS / 1024 };
}

/** Null when the program is not there or fails. */
function inAProcess(command: string, args: string[]): Measured | null {
  const { stdout, status } = spawnSync(command, args, { encoding: 'utf8' });
  return status === 0 ? (JSON.parse(stdout) as Measured) : null;
}

/** Slope of log y over log n: 1 linear, 2 quadratic. */
function exponent(results: readonly Measured[], of: 'seconds' | 'megabytes', over: 'entries' | 'draws' = 'entries'): number {
  const [first, last] = [results[0]!, results.at(-1)!];
  return Math.log(last[of] / first[of]) / Math.log(last[over] / first[over]);
}

function ownProcess(entries: number, draws: number): Measured {
  const own = inAProcess(process.execPath, [...process.execArgv, HERE, ONE, String(entries), String(draws)]);
  if (!own)
    throw new Error(`ranking.bench: the ranking of ${entries} entries failed. Run it alone: ranking.bench.ts ${ONE} ${entries} ${draws}.`);
  return own;
}

/** More draws of the same edition. */
function reportDraws(): void {
  const here = [10_000, 20_000, 40_000].map((draws) => ownProcess(100, draws));
  console.log('\n| draws, 100 entries | here, s | MB |\n|---|---|---|');
  for (const { draws, seconds, megabytes } of here) console.log(`| ${draws} | ${seconds.toFixed(2)} | ${megabytes.toFixed(0)} |`);
  console.log(
    `\nover draws: time n^${exponent(here, 'seconds', 'draws').toFixed(2)}, memory n^${exponent(here, 'megabytes', 'draws').toFixed(2)}`,
  );
}

function report(sizes: readonly number[]): void {
  console.log(`${CATEGORIES} categories, ${DRAWS} draws; processor seconds, peak megabytes\n`);
  console.log('| entries | here, s | MB | numpy, s | MB | numpy / here |\n|---|---|---|---|---|---|');
  const here: Measured[] = [];
  const numpy: Measured[] = [];
  for (const size of sizes) {
    const own = ownProcess(size, DRAWS);
    const other = inAProcess('python3', [HERE.replace('ranking.bench.ts', 'ranking.py'), String(size), String(CATEGORIES), String(DRAWS)]);
    here.push(own);
    if (other) numpy.push(other);
    const theirs = other
      ? `${other.seconds.toFixed(2)} | ${other.megabytes.toFixed(0)} | ${(other.seconds / own.seconds).toFixed(1)}`
      : '– | – | –';
    console.log(`| ${size} | ${own.seconds.toFixed(2)} | ${own.megabytes.toFixed(0)} | ${theirs} |`);
  }
  const slopes = (name: string, results: readonly Measured[]): string =>
    `${name}: time n^${exponent(results, 'seconds').toFixed(2)}, memory n^${exponent(results, 'megabytes').toFixed(2)}`;
  console.log(`\n${slopes('here', here)}`);
  if (numpy.length === sizes.length) console.log(slopes('numpy', numpy));
  else console.log('No comparison: python3 with numpy was not found.');
}

const [first, second, third] = process.argv.slice(2);
if (first === ONE) console.log(JSON.stringify(measureHere(Number(second), Number(third))));
else {
  report(first === undefined ? [50, 100, 200, 500] : process.argv.slice(2).map(Number));
  reportDraws();
}
