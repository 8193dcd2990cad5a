import { PLAN_DRAWS } from '../draws/draw-counts.js';
import type { BenchSubmission, Spreads } from '../../bench-model/bench-series.js';
import { designOf } from '../../bench-model/design.js';
import { drawSeries } from '../../bench-model/draw-series.js';
import { fitAt } from '../../bench-model/fit-series.js';
import { normalCdf } from '../../distributions/normal-distribution.js';
import { MeasurementError } from '../../errors.js';
import { requirePositive } from '../../figures/require-positive.js';
import { normalDeviate } from '../../random/normal-deviate.js';
import type { RandomStream } from '../../random/random-stream.js';
import { standardDeviation } from '../../summary/standard-deviation.js';
import { comparePairs } from '../pairs/compare-pairs.js';
import { couldBeFirst } from '../pairs/could-be-first.js';
import type { ModelEvidence } from '../model-evidence.js';
import { studentOfScore } from '../pairs/normal-score.js';
import { productTails } from '../product-tails.js';

/** What a season is made of. */
export interface SeasonDesign {
  readonly rigs: number;
  readonly testers: number;
  /** of each entry */
  readonly submissions: number;
  /** of each submission */
  readonly specimens: number;
}

/** What is known before the season. */
export interface SeasonBasis {
  /** true values of the entries as far as they are known [any one unit] */
  readonly values: readonly number[];
  /** equally likely sets of spreads, for example those of the last fit */
  readonly spreads: readonly Spreads[];
  /** spread of a specimen [%] */
  readonly cvPercent: number;
  readonly level: number;
}

/** What a season would show, on average over simulated ones. */
export interface ExpectedSeason {
  /** mean number of places in an interval */
  readonly width: number;
  /** of that mean, over the simulated seasons [1] */
  readonly widthStandardError: number;
  /** mean size of the set that could be first */
  readonly couldBeFirst: number;
  /** chance to tell two entries apart that differ by as much as was asked [1] */
  readonly power: number;
}

const SEASONS = 12;
const MOST_SPREADS = 20;
/** Fewest of each that make a season. */
const FEWEST = { rigs: 1, testers: 1, submissions: 1, specimens: 1 } as const;

/**
 * What a season would show if it were made so: how wide its places, how many could be first, and the chance to tell a difference at the table's own critical value.
 *
 * Formula: mean over 12 simulated seasons, each fitted over the likely spreads and compared in all pairs; power Φ((Δ/s) − t_c), mean over the pairs
 * @param design rigs, testers, submissions of each entry and specimens of each submission
 * @param basis values, likely spreads [1], spread of a specimen [%] and joint level
 * @param differencePercent Δ to be told [%]
 * @param random seeded stream
 * @returns width, size of the first set and power [1]
 * @throws MeasurementError 'ranking/bad-season' for a design or basis that makes none; 'figures/not-positive' for Δ or the spread of a specimen
 * @see WESTFALL-YOUNG-1993
 * @example expectSeason({ rigs: 2, testers: 2, submissions: 2, specimens: 8 }, { values: [100, 120], spreads: [{ rig: 0, tester: 0, submission: 0 }], cvPercent: 3, level: 0.95 }, 10, random).width // 1
 */
export function expectSeason(design: SeasonDesign, basis: SeasonBasis, differencePercent: number, random: RandomStream): ExpectedSeason {
  requireSeason(design, basis);
  requirePositive(differencePercent, 'differencePercent', 'expectSeason');
  requirePositive(basis.cvPercent, 'cvPercent', 'expectSeason');
  const every = Math.ceil(basis.spreads.length / MOST_SPREADS);
  const spreads = basis.spreads.filter((_, at) => at % every === 0);
  const sums = { width: 0, couldBeFirst: 0, power: 0 };
  const widths: number[] = [];
  for (let season = 0; season < SEASONS; season++) {
    const found = simulate(design, { ...basis, spreads }, differencePercent / 100, random);
    sums.width += found.width / SEASONS;
    widths.push(found.width);
    sums.couldBeFirst += found.couldBeFirst / SEASONS;
    sums.power += found.power / SEASONS;
  }
  return { ...sums, widthStandardError: standardDeviation(widths) / Math.sqrt(SEASONS) };
}

function simulate(
  design: SeasonDesign,
  { values, spreads, cvPercent, level }: SeasonBasis,
  difference: number,
  random: RandomStream,
): Omit<ExpectedSeason, 'widthStandardError'> {
  const truth = spreads[Math.floor(random.nextUniform() * spreads.length)]!;
  const laidOut = designOf({ submissions: submissionsOf(design, values, truth, cvPercent / 100, random) });
  const fit = fitAt(laidOut, spreads, new Uint8Array(values.length));
  const n = values.length;
  const evidence = laidOut.variants.map((variant, v): ModelEvidence => ({
    value: fit.values[v]!,
    factors: [{ series: 'planned', variant, power: 1 }],
    without: {},
  }));
  const tails = productTails(evidence, { planned: fit });
  const table = {
    goodness: fit.values.map(Math.log),
    errors: drawSeries(fit, PLAN_DRAWS, random),
    differenceUncertainty: tails.standardUncertainty,
    degreesOfFreedom: tails.degreesOfFreedom,
  };
  const comparison = comparePairs(table, level);
  const told = comparison.isAhead.reduce((sum, one) => sum + one, 0);
  let power = 0;
  for (let i = 0; i < n; i++)
    for (let j = 0; j < i; j++) {
      const at = i * n + j;
      const critical = studentOfScore(comparison.criticalValue ?? 0, tails.degreesOfFreedom[at]!);
      power += normalCdf(Math.log1p(difference) / tails.standardUncertainty[at]! - critical) / ((n * (n - 1)) / 2);
    }
  return { width: n - (2 * told) / n, couldBeFirst: couldBeFirst(table, comparison, level).reduce((sum, one) => sum + one, 0), power };
}

function submissionsOf(
  { rigs, testers, submissions, specimens }: SeasonDesign,
  values: readonly number[],
  spreads: Spreads,
  cv: number,
  random: RandomStream,
): BenchSubmission[] {
  const effects = (count: number, sd: number): number[] => Array.from({ length: count }, () => sd * normalDeviate(random));
  const ofRigs = effects(rigs, spreads.rig);
  const ofTesters = effects(testers, spreads.tester);
  const relativeVariance = cv ** 2 / specimens;
  return values.flatMap((value, i) => {
    const [tester, rig] = [Math.floor(random.nextUniform() * testers), Math.floor(random.nextUniform() * rigs)];
    return Array.from({ length: submissions }, (_, s): BenchSubmission => {
      const [t, r] = [(tester + s) % testers, (rig + s) % rigs];
      const noise = Math.sqrt(spreads.submission ** 2 + relativeVariance) * normalDeviate(random);
      return {
        variant: String(i).padStart(4, '0'),
        value: value * (1 + ofRigs[r]! + ofTesters[t]! + noise),
        relativeVariance,
        degreesOfFreedom: Infinity,
        rig: `rig-${r}`,
        tester: `tester-${t}`,
        certificates: [],
      };
    });
  });
}

function requireSeason(design: SeasonDesign, { values, spreads }: SeasonBasis): void {
  const bad = Object.entries(FEWEST).find(
    ([key, fewest]) => !(Number.isInteger(design[key as keyof SeasonDesign]) && design[key as keyof SeasonDesign] >= fewest),
  );
  const isBasis = values.length >= 2 && values.every((value) => value > 0 && value < Infinity) && spreads.length > 0;
  if (!bad && isBasis) return;
  throw new MeasurementError(
    'ranking/bad-season',
    `expectSeason: found ${bad ? `${design[bad[0] as keyof SeasonDesign]} ${bad[0]}` : `${values.length} values and ${spreads.length} sets of spreads`}, expected whole numbers of at least 1, two or more values above 0 and one or more sets of spreads. Plan a season that can be made.`,
  );
}
