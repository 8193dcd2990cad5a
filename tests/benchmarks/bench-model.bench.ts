/**
 * Does the model of the bench hold what it says, and how much does it tell? Invented seasons with a known truth, seeds fixed.
 * npm run bench -- bench-model [trials] [setting …]
 */
import { decideClaim } from '../../api/measurement/claims/decide-claim.js';
import type { FittedSeries } from '../../api/measurement/bench-model/fit-series.js';
import { valueBudgets } from '../../api/measurement/bench-model/value-budget.js';
import type { RandomStream } from '../../api/measurement/random/random-stream.js';
import {
  ALIKE,
  DRAWS,
  EQUAL,
  fitted,
  knowing,
  percent,
  RIGS_AND_TESTERS,
  STEPPED,
  streamOf,
  tablesOf,
  withError,
} from './bench-settings.js';
import { PLAIN, truthOf } from './invented-season.js';
import type { Season } from './invented-season.js';

const DIFFERENT: Readonly<Record<string, Partial<Season>>> = {
  'differ: no effects': { spread: 0.05 },
  'differ: rig 1 % + tester 1 %': { ...RIGS_AND_TESTERS, spread: 0.05 },
  'differ: spool/day 1.4 %': { submissionSd: 0.014, spread: 0.05 },
  'differ: N = 40': { entries: 40, spread: 0.05 },
  'differ: no effects, three seasons before': { spread: 0.05, before: ALIKE },
  'differ: rig 1 % + tester 1 %, a season before': { ...RIGS_AND_TESTERS, spread: 0.05, before: [{}] },
  'differ: rig 1 % + tester 1 %, three seasons before': { ...RIGS_AND_TESTERS, spread: 0.05, before: ALIKE },
  'differ: spool/day 1.4 %, three seasons before': { submissionSd: 0.014, spread: 0.05, before: ALIKE },
};

/** Whether every interval holds its true place: nobody is told to be ahead of one that is as good or better. */
function trial(season: Season, random: RandomStream) {
  const truth = truthOf(season, random);
  const n = truth.length;
  const fit = fitted(season, truth, random);
  const { isAhead, could, width, first } = tablesOf(fit, random);
  const isHeld = !isAhead.some((one, at) => one === 1 && truth[Math.floor(at / n)]! <= truth[at % n]!);
  const best = Math.max(...truth);
  const isBestHeld = truth.every((value, i) => value < best || could[i] === 1);
  const bound = season.spread === 0 ? { width: 0, first: 0 } : tablesOf(knowing(fit, season), random);
  return { isHeld, isBestHeld, width, first, bound, claims: claimsAt(fit) };
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
  const sums = { held: 0, best: 0, width: 0, first: 0, boundWidth: 0, boundFirst: 0, short: 0, shortSquares: 0 };
  for (let t = 0; t < trials; t++) {
    const found = trial(season, streamOf(`${name} ${t}`));
    const short = found.claims.short / found.claims.all;
    sums.held += Number(found.isHeld);
    sums.best += Number(found.isBestHeld);
    sums.width += found.width;
    sums.first += found.first;
    sums.boundWidth += found.bound.width;
    sums.boundFirst += found.bound.first;
    sums.short += short;
    sums.shortSquares += short * short;
  }
  const short = sums.short / trials;
  const error = Math.sqrt(Math.max(0, sums.shortSquares / trials - short * short) / trials);
  const isEqual = season.spread === 0 && !season.steps;
  const each = (sum: number): string => (sum / trials).toFixed(1);
  const bound = season.spread === 0 ? '–' : `${each(sums.boundWidth)} / ${each(sums.boundFirst)}`;
  console.log(
    `| ${name} | ${withError(sums.held / trials, trials)} | ${each(sums.width)} | ${each(sums.first)} | ${bound} | ${season.spread === 0 ? '–' : percent(sums.best / trials)} | ${isEqual ? `${percent(short)} ± ${percent(error)}` : '–'} |`,
  );
}

const [asked = '600', ...only] = process.argv.slice(2);
const trials = Number(asked);
const wanted = (name: string): boolean => only.length === 0 || only.some((part) => name.includes(part));
console.log(`${trials} trials a row, ${DRAWS} draws\n`);
console.log(
  '| setting | joint coverage, % | width | could be first | both by one who knows the spreads | holds the best, % | claims falsely short, % |\n|---|---|---|---|---|---|---|',
);
for (const [name, own] of Object.entries({ ...EQUAL, ...STEPPED, ...DIFFERENT })) if (wanted(name)) row(name, own, trials);
