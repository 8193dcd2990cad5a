/**
 * Does the model of the bench hold what it says, and how much does it tell? Invented seasons with a known truth, seeds fixed.
 * npm run bench -- bench-model [trials] [setting …]
 */
import { createHash } from 'node:crypto';
import { decideClaim } from '../../api/measurement/claims/decide-claim.js';
import { drawSeries } from '../../api/measurement/bench-model/draw-series.js';
import { fitSeries } from '../../api/measurement/bench-model/fit-series.js';
import type { FittedSeries } from '../../api/measurement/bench-model/fit-series.js';
import { valueBudgets } from '../../api/measurement/bench-model/value-budget.js';
import { randomStream } from '../../api/measurement/random/random-stream.js';
import type { RandomStream } from '../../api/measurement/random/random-stream.js';
import { seedFromDigest } from '../../api/measurement/random/seed-from-digest.js';
import { comparePairs } from '../../api/measurement/ranking/compare-pairs.js';
import { couldBeFirst } from '../../api/measurement/ranking/could-be-first.js';
import type { ModelEvidence } from '../../api/measurement/ranking/model-evidence.js';
import { productTails } from '../../api/measurement/ranking/product-tails.js';
import { valueChanges } from '../../api/measurement/ranking/value-changes.js';
import { PLAIN, measureSeason, truthOf } from './invented-season.js';
import type { Season } from './invented-season.js';

/** Enough for a critical value; the noise of fewer draws than a release takes is in the figures. */
const DRAWS = 2000;
const LEVEL = 0.95;
const RIGS_AND_TESTERS = { rigSd: 0.01, testerSd: 0.01 };

const EQUAL: Readonly<Record<string, Partial<Season>>> = {
  'no effects': {},
  'rig 1 % + tester 1 %': RIGS_AND_TESTERS,
  'one rig +2 %': { rigShift: 0.02 },
  'one tester +2 %': { testerShift: 0.02 },
  'n 3 to 12': { specimens: (random) => 3 + Math.floor(10 * random.nextUniform()) },
  't(4) readings': { readingDegrees: 4 },
  'all rig 1.4 %': { rigSd: 0.014 },
  'all tester 1.4 %': { testerSd: 0.014 },
  'spool/day 1.4 %': { submissionSd: 0.014 },
  'spool/day 0.7 %': { submissionSd: 0.007 },
  'told 0.5/0.25, are 0.83/1.5 %': {
    rigSd: 0.0083,
    testerSd: 0.015,
    told: [
      { cause: 'rig', relativeSd: 0.005, degreesOfFreedom: 12 },
      { cause: 'tester', relativeSd: 0.0025, degreesOfFreedom: 12 },
    ],
  },
  'one submission each, rig 1 + tester 1': { ...RIGS_AND_TESTERS, singleShare: 1 },
  'two thirds with one submission': { ...RIGS_AND_TESTERS, singleShare: 2 / 3 },
};
const DIFFERENT: Readonly<Record<string, Partial<Season>>> = {
  'differ: no effects': { spread: 0.05 },
  'differ: rig 1 % + tester 1 %': { ...RIGS_AND_TESTERS, spread: 0.05 },
  'differ: spool/day 1.4 %': { submissionSd: 0.014, spread: 0.05 },
  'differ: N = 40': { entries: 40, spread: 0.05 },
};
const MOVED = ['no effects', 'rig 1 % + tester 1 %', 'one rig +2 %', 'one tester +2 %', 'all rig 1.4 %'];

const streamOf = (seed: string): RandomStream => randomStream(seedFromDigest(createHash('sha256').update(seed).digest('hex')));
const percent = (share: number): string => (100 * share).toFixed(1);
const withError = (share: number, n: number): string => `${percent(share)} ± ${percent(Math.sqrt((share * (1 - share)) / n))}`;

function fitted(season: Season, truth: readonly number[], random: RandomStream): FittedSeries {
  const fit = fitSeries(measureSeason(season, truth, random));
  if (fit.kind !== 'fitted') throw new Error('bench-model: a season had values only, expected a fit. State a reproducibility.');
  return fit;
}

const evidenceOf = (fit: FittedSeries): ModelEvidence[] =>
  fit.design.variants.map((variant, v) => ({ value: fit.values[v]!, factors: [{ series: 'force', variant, power: 1 }], without: {} }));

/** Whether every interval holds its true place: nobody is told to be ahead of one that is as good or better. */
function trial(season: Season, random: RandomStream) {
  const truth = truthOf(season, random);
  const n = truth.length;
  const fit = fitted(season, truth, random);
  const tails = productTails(evidenceOf(fit), { force: fit });
  const table = {
    goodness: fit.values.map(Math.log),
    errors: drawSeries(fit, DRAWS, random),
    differenceUncertainty: tails.standardUncertainty,
    degreesOfFreedom: tails.degreesOfFreedom,
  };
  const comparison = comparePairs(table, LEVEL);
  const could = couldBeFirst(table, comparison, LEVEL);
  let [told, isHeld] = [0, true];
  comparison.isAhead.forEach((isAhead, at) => {
    told += isAhead;
    if (isAhead === 1 && truth[Math.floor(at / n)]! <= truth[at % n]!) isHeld = false;
  });
  const best = Math.max(...truth);
  const isBestHeld = truth.every((value, i) => value < best || could[i] === 1);
  return { isHeld, isBestHeld, width: n - (2 * told) / n, first: could.reduce((sum, one) => sum + one, 0), claims: claimsAt(fit) };
}

/** Claims that are exactly true and found to fall short, of all claims; true values are 100 where entries are equal. */
function claimsAt(fit: FittedSeries): { short: number; all: number } {
  const budgets = valueBudgets(fit);
  const short = budgets.filter(
    ({ value, standardUncertainty, degreesOfFreedom }) =>
      decideClaim(value, standardUncertainty, 1, { low: 100 }, degreesOfFreedom).verdict === 'falls short',
  );
  return { short: short.length, all: budgets.length };
}

function row(name: string, own: Partial<Season>, trials: number): void {
  const season = { ...PLAIN, ...own };
  const sums = { held: 0, best: 0, width: 0, first: 0, short: 0, shortSquares: 0 };
  for (let t = 0; t < trials; t++) {
    const found = trial(season, streamOf(`${name} ${t}`));
    const short = found.claims.short / found.claims.all;
    sums.held += Number(found.isHeld);
    sums.best += Number(found.isBestHeld);
    sums.width += found.width;
    sums.first += found.first;
    sums.short += short;
    sums.shortSquares += short * short;
  }
  const short = sums.short / trials;
  const error = Math.sqrt(Math.max(0, sums.shortSquares / trials - short * short) / trials);
  const isEqual = season.spread === 0;
  console.log(
    `| ${name} | ${withError(sums.held / trials, trials)} | ${(sums.width / trials).toFixed(1)} | ${(sums.first / trials).toFixed(1)} | ${isEqual ? '–' : percent(sums.best / trials)} | ${isEqual ? `${percent(short)} ± ${percent(error)}` : '–'} |`,
  );
}

/** Two seasons of the same lines with rigs and testers of their own; five of thirty changed by five per cent in one half of the trials, none in the other. */
function movedRow(name: string, trials: number): void {
  const season = { ...PLAIN, ...EQUAL[name], spread: 0.05 };
  const sums = { noise: 0, power: 0, falseAlone: 0 };
  const changed = Math.round(season.entries / 6);
  for (let t = 0; t < trials; t++) {
    const random = streamOf(`moved ${name} ${t}`);
    const truth = truthOf(season, random);
    const moved = truth.map((value, i) => (i < changed ? value * (i % 2 === 0 ? 1.05 : 1 / 1.05) : value));
    const [before, now, still] = [truth, moved, truth].map((values) => {
      const fit = fitted(season, values, random);
      return { series: { force: fit }, evidence: new Map(evidenceOf(fit).map((one, v) => [fit.design.variants[v]!, one])) };
    });
    const named = valueChanges(now!, before!).flatMap(({ isChange }, i) => (isChange ? [i] : []));
    const right = named.filter((i) => i < changed).length;
    sums.noise += named.length === 0 ? 0 : (named.length - right) / named.length;
    sums.power += right / changed;
    sums.falseAlone += Number(valueChanges(still!, before!).some(({ isChange }) => isChange));
  }
  console.log(
    `| ${name} | ${percent(sums.noise / trials)} | ${percent(sums.power / trials)} | ${withError(sums.falseAlone / trials, trials)} |`,
  );
}

const [asked = '600', ...only] = process.argv.slice(2);
const trials = Number(asked);
const wanted = (name: string): boolean => only.length === 0 || only.some((part) => name.includes(part));
console.log(`${trials} trials a row, ${DRAWS} draws\n`);
console.log(
  '| setting | joint coverage, % | width | could be first | holds the best, % | claims falsely short, % |\n|---|---|---|---|---|---|',
);
for (const [name, own] of Object.entries({ ...EQUAL, ...DIFFERENT })) if (wanted(name)) row(name, own, trials);
console.log(
  '\n| movement, 5 of 30 changed by 5 % | noise among those named, % | power, % | any named where none changed, % |\n|---|---|---|---|',
);
for (const name of MOVED) if (wanted(`movement ${name}`)) movedRow(name, trials);
