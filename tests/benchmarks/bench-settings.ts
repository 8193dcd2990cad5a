import { createHash } from 'node:crypto';
import { drawSeries } from '../../api/measurement/bench-model/draw-series.js';
import { fitAt, fitSeries } from '../../api/measurement/bench-model/fit-series.js';
import type { FittedSeries } from '../../api/measurement/bench-model/fit-series.js';
import { seasonTells } from '../../api/measurement/bench-model/spread-atoms.js';
import { randomStream } from '../../api/measurement/random/random-stream.js';
import type { RandomStream } from '../../api/measurement/random/random-stream.js';
import { seedFromDigest } from '../../api/measurement/random/seed-from-digest.js';
import type { ModelEvidence } from '../../api/measurement/ranking/model-evidence.js';
import { comparePairs } from '../../api/measurement/ranking/pairs/compare-pairs.js';
import { couldBeFirst } from '../../api/measurement/ranking/pairs/could-be-first.js';
import { productTails } from '../../api/measurement/ranking/product-tails.js';
import { measureSeason, REPRODUCIBILITY, truthOf } from './invented-season.js';
import type { Season } from './invented-season.js';

/** Enough for a critical value; the noise of fewer draws than a release takes is in the figures. */
export const DRAWS = 2000;
const LEVEL = 0.95;

export const RIGS_AND_TESTERS = { rigSd: 0.01, testerSd: 0.01 };

const NO_EFFECTS = { rigSd: 0, testerSd: 0, submissionSd: 0 };
/** Three seasons before, each as the one that is looked at. */
export const ALIKE: readonly Partial<Season>[] = [{}, {}, {}];

const FIRST_SEASON: Readonly<Record<string, Partial<Season>>> = {
  'no effects': {},
  'rig 1 % + tester 1 %': RIGS_AND_TESTERS,
  'one rig +2 %': { rigShift: 0.02 },
  'one tester +2 %': { testerShift: 0.02 },
  'n 3 to 12': { specimens: (random) => 3 + Math.floor(10 * random.nextUniform()) },
  't(4) readings': { readingDegrees: 4 },
  'all rig 1.4 %': { rigSd: 0.014 },
  'all tester 1.4 %': { testerSd: 0.014 },
  'spool/day 1.4 %': { submissionSd: 0.014 },
  'spool/day 1 %': { submissionSd: 0.01 },
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

/** Settings in which all entries are equal, each as a first season and after three alike: whatever is told apart is wrong. */
export const EQUAL: Readonly<Record<string, Partial<Season>>> = {
  ...FIRST_SEASON,
  ...Object.fromEntries(Object.entries(FIRST_SEASON).map(([name, own]) => [`${name}, three seasons before`, { ...own, before: ALIKE }])),
  'rig 1 % + tester 1 %, three seasons before without': { ...RIGS_AND_TESTERS, before: [NO_EFFECTS, NO_EFFECTS, NO_EFFECTS] },
  'spool/day 1.4 %, three seasons before without': { submissionSd: 0.014, before: [NO_EFFECTS, NO_EFFECTS, NO_EFFECTS] },
};

/** Settings in which groups of equals lie beside each other: whoever is told apart within one, or the wrong way round, is wrong. */
export const STEPPED: Readonly<Record<string, Partial<Season>>> = {
  'two groups 3 % apart': { steps: { by: 0.03, size: 15 } },
  'three groups 5 % apart': { steps: { by: 0.05, size: 10 } },
  'three groups 5 % apart, spool/day 1.4 %': { submissionSd: 0.014, steps: { by: 0.05, size: 10 } },
  'six groups 5 % apart': { steps: { by: 0.05, size: 5 } },
  'fifteen pairs 5 % apart': { steps: { by: 0.05, size: 2 } },
  'each 0.05 % ahead of the next': { steps: { by: 0.0005, size: 1 } },
  'each 0.2 % ahead of the next': { steps: { by: 0.002, size: 1 } },
};

/** A stream of its own for every trial of every setting. */
export const streamOf = (seed: string): RandomStream => randomStream(seedFromDigest(createHash('sha256').update(seed).digest('hex')));
export const percent = (share: number): string => (100 * share).toFixed(1);
/** A share of n trials with its standard error. */
export const withError = (share: number, n: number): string => `${percent(share)} ± ${percent(Math.sqrt((share * (1 - share)) / n))}`;

/** One measured season, fitted with what the seasons before it tell. */
export function fitted(season: Season, truth: readonly number[], random: RandomStream): FittedSeries {
  const earlier = season.before.map((otherwise) => {
    const { design, isApart } = fitted({ ...season, ...otherwise, before: [] }, truthOf(season, random), random);
    return seasonTells(design, REPRODUCIBILITY, isApart);
  });
  const fit = fitSeries({ ...measureSeason(season, truth, random), earlier: earlier.flat() });
  if (fit.kind !== 'fitted') throw new Error('A season had values only, expected a fit. State a reproducibility.');
  return fit;
}

export const evidenceOf = (fit: FittedSeries, series = 'force'): ModelEvidence[] =>
  fit.design.variants.map((variant, v) => ({ value: fit.values[v]!, factors: [{ series, variant, power: 1 }], without: {} }));

/** Who knows the spreads themselves and nothing else: no procedure that has to find them can be narrower. */
export const knowing = ({ design, isApart }: FittedSeries, { rigSd, testerSd, submissionSd }: Season): FittedSeries =>
  fitAt(
    design,
    [{ rig: rigSd, tester: testerSd, submission: submissionSd }],
    isApart.map(() => 0),
  );

/** What the tables of a fitted season say, were all its uncertainties so many times as large. */
export function tablesOf(fit: FittedSeries, random: RandomStream, stretch = 1) {
  const tails = productTails(evidenceOf(fit), { force: fit });
  const table = {
    goodness: fit.values.map(Math.log),
    errors: drawSeries(fit, DRAWS, random).map((error) => stretch * error),
    differenceUncertainty: tails.standardUncertainty.map((one) => stretch * one),
    degreesOfFreedom: tails.degreesOfFreedom,
  };
  const comparison = comparePairs(table, LEVEL);
  const could = couldBeFirst(table, comparison, LEVEL);
  const n = could.length;
  const told = comparison.isAhead.reduce((sum, one) => sum + one, 0);
  return { isAhead: comparison.isAhead, could, width: n - (2 * told) / n, first: could.reduce((sum, one) => sum + one, 0) };
}
