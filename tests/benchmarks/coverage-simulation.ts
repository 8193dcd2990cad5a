/**
 * Does a place interval hold what it says? Invented editions with a known truth, measured again and again with seeded noise.
 * node --import @swc-node/register/esm-register tests/benchmarks/coverage-simulation.ts [trials]
 */
import { createHash } from 'node:crypto';
import { decideClaim } from '../../api/measurement/claims/decide-claim.js';
import { welchTest } from '../measurement/support/formulas/welch-test.js';
import { moderatedVariances } from '../../api/measurement/consensus/moderated-variances.js';
import { normalDeviate } from '../../api/measurement/random/normal-deviate.js';
import { randomStream } from '../../api/measurement/random/random-stream.js';
import type { RandomStream } from '../../api/measurement/random/random-stream.js';
import { seedFromDigest } from '../../api/measurement/random/seed-from-digest.js';
import { rankWithUncertainty } from '../measurement/support/former-ranking/rank-with-uncertainty.js';
import type { RankingInput } from '../measurement/support/former-ranking/ranking-input.js';
import type { TableCertainty } from '../../api/measurement/ranking/table-certainty.js';
import { mean } from '../../api/measurement/summary/mean.js';
import { standardDeviation } from '../../api/measurement/summary/standard-deviation.js';

const ENTRIES = 40;
const SPREAD_BETWEEN = 0.05;
const CV = 0.05;
const RIGS = 4;
const RIG_SD = 0.02;
const TRIALS = Number(process.argv[2] ?? 75);
/** Where nothing can be told apart the level itself is seen; that is worth more trials. */
const TRIALS_OF_EQUALS = 4 * TRIALS;

const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex');

/** One category measured once: n specimens of every entry, each entry on one rig; the truth stays, the rigs and specimens are new. */
function measured(truth: readonly number[], n: number, rigSd: number, statedRigSd: number, random: RandomStream) {
  const effects = Array.from({ length: RIGS }, () => rigSd * normalDeviate(random));
  const samples = truth.map((value, i) => Array.from({ length: n }, () => value * (1 + effects[i % RIGS]! + CV * normalDeviate(random))));
  const means = samples.map(mean);
  const { moderated } = moderatedVariances(
    samples.map((sample, i) => ({ variance: (standardDeviation(sample) / means[i]!) ** 2, degreesOfFreedom: n - 1 })),
  );
  return means.map((value, i) => ({
    value,
    standardUncertainty: value * Math.sqrt(moderated[i]!.variance / n),
    degreesOfFreedom: moderated[i]!.degreesOfFreedom,
    shared: statedRigSd > 0 ? [{ source: `rig:${i % RIGS}`, sensitivity: 1 }] : [],
    without: {},
  }));
}

interface Setting {
  readonly isEqual: boolean;
  readonly n: number;
  readonly rigSd: number;
  readonly statedRigSd: number;
  readonly categories: number;
}

/** Whether every interval of a table holds its true place, and how wide they are; equals share all places, so theirs must hold all. */
function judged({ rows }: TableCertainty, truePlaces: ReadonlyMap<string, number>, isEqual: boolean) {
  const isHeld = rows.every(({ id, low, high }) =>
    isEqual ? low === 1 && high === rows.length : low <= truePlaces.get(id)! && truePlaces.get(id)! <= high,
  );
  return { isHeld, width: mean(rows.map(({ low, high }) => high - low + 1)) };
}

const placesOf = (ids: readonly string[], values: readonly number[], sign: 1 | -1) =>
  new Map(ids.map((id, i) => [id, 1 + values.filter((other) => sign * other > sign * values[i]!).length]));

function trial(setting: Setting, seed: string) {
  const random = randomStream(seedFromDigest(sha256(seed)));
  const codes = Array.from({ length: setting.categories }, (_, c) => `c${c}`);
  const truths = codes.map(() =>
    Array.from({ length: ENTRIES }, () => 100 * (1 + (setting.isEqual ? 0 : SPREAD_BETWEEN) * normalDeviate(random))),
  );
  const evidence = truths.map((truth) => measured(truth, setting.n, setting.rigSd, setting.statedRigSd, random));
  const ids = Array.from({ length: ENTRIES }, (_, i) => `e${i}`);
  const rigs = Array.from({ length: RIGS }, (_, k) => `rig:${k}`);
  const input: RankingInput = {
    digest: sha256(`${seed} draws`),
    categories: codes.map((code) => ({ code, direction: 'more', weight: '1', places: 6 })),
    combine: 'sumOfPlaces',
    countPlaces: 'afterExclusions',
    tieBreak: 'none',
    sources: Object.fromEntries(rigs.map((rig) => [rig, { relativeStandardUncertainty: setting.statedRigSd, degreesOfFreedom: Infinity }])),
    entries: ids.map((id, i) => ({ id, isExcluded: false, results: Object.fromEntries(codes.map((code, c) => [code, evidence[c]![i]!])) })),
  };
  const found = rankWithUncertainty(input);
  const truePlaces = truths.map((truth) => placesOf(ids, truth, 1));
  const trueScores = ids.map((id) => truePlaces.reduce((sum, places) => sum + places.get(id)!, 0));
  return {
    category: judged(found.categories['c0']!, truePlaces[0]!, setting.isEqual),
    overall: judged(found.overall, placesOf(ids, trueScores, -1), setting.isEqual),
  };
}

function coverage(name: string, setting: Setting): void {
  const trials = setting.isEqual ? TRIALS_OF_EQUALS : TRIALS;
  const results = Array.from({ length: trials }, (_, i) => trial(setting, `${name} ${i}`));
  const percent = (of: 'category' | 'overall'): string => ((100 * results.filter((one) => one[of].isHeld).length) / trials).toFixed(1);
  const width = (of: 'category' | 'overall'): string => mean(results.map((one) => one[of].width)).toFixed(1);
  const overall = setting.categories > 1 ? ` | ${percent('overall')} | ${width('overall')}` : ' | – | –';
  console.log(`| ${name} | ${percent('category')} | ${width('category')}${overall} |`);
}

/** Labels at the truth ± 5 %, claims at the lower limit: how often a false claim is said to be met. */
function falseAcceptance(n: number): void {
  const random = randomStream(seedFromDigest(sha256(`conformity ${n}`)));
  let [accepted, wrongly, atLimit] = [0, 0, 0];
  const trials = 100 * TRIALS;
  for (let i = 0; i < trials; i++) {
    const verdictFor = (truth: number): string => {
      const sample = Array.from({ length: n }, () => truth * (1 + CV * normalDeviate(random)));
      return decideClaim(mean(sample), standardDeviation(sample) / Math.sqrt(n), 1, { low: 100 }, n - 1).verdict;
    };
    const truth = 100 * (1 + SPREAD_BETWEEN * normalDeviate(random));
    if (verdictFor(truth) === 'meets') {
      accepted += 1;
      if (truth < 100) wrongly += 1;
    }
    if (verdictFor(100) === 'meets') atLimit += 1;
  }
  const share = (count: number, of: number): string => ((100 * count) / of).toFixed(2);
  console.log(`| ${n} | ${share(wrongly, trials)} | ${share(wrongly, accepted)} | ${share(atLimit, trials)} |`);
}

/** The same line measured in two editions: how often noise alone is called a change. */
function falseAlarms(n: number): void {
  const random = randomStream(seedFromDigest(sha256(`movement ${n}`)));
  const trials = 200_000;
  let alarms = 0;
  for (let i = 0; i < trials; i++) {
    const edition = () => Array.from({ length: n }, () => 100 * (1 + CV * normalDeviate(random)));
    if (welchTest(edition(), edition()).p < 0.05) alarms += 1;
  }
  console.log(`| ${n} | ${((100 * alarms) / trials).toFixed(2)} |`);
}

console.log(`${ENTRIES} entries, ${TRIALS} trials (${TRIALS_OF_EQUALS} of equals); joint coverage in %, mean width in places\n`);
console.log('| setting | category | width | overall of 5 | width |\n|---|---|---|---|---|');
for (const isEqual of [true, false]) {
  const lines = isEqual ? 'equals' : 'entries';
  for (const n of [5, 10, 20]) {
    coverage(`${lines}, n = ${n}`, { isEqual, n, rigSd: 0, statedRigSd: 0, categories: 1 });
    coverage(`${lines}, n = ${n}, rigs 2 %`, { isEqual, n, rigSd: RIG_SD, statedRigSd: RIG_SD, categories: 1 });
  }
  coverage(`${lines}, n = 10, rigs 2 % but ignored`, { isEqual, n: 10, rigSd: RIG_SD, statedRigSd: 0, categories: 1 });
  coverage(`${lines}, n = 10, five categories, rigs 2 %`, { isEqual, n: 10, rigSd: RIG_SD, statedRigSd: RIG_SD, categories: 5 });
}
console.log('\n| n | claims falsely met, % of all | % of those met | at the limit itself, % |\n|---|---|---|---|');
[5, 10, 20].forEach(falseAcceptance);
console.log('\n| n | unchanged lines called changed, % |\n|---|---|');
[5, 10, 20].forEach(falseAlarms);
