import type { BenchSeries, Cause, SeasonTold } from './bench-series.js';

/** Degrees of freedom of the prior of a spread: heavy enough in its tail to give way to what the season shows. */
const PRIOR_DEGREES = 4;
/** Relative reproducibility where the method states none (common practice). */
const USUAL_REPRODUCIBILITY = 0.01;

/** What is thought of a cause before the season: nothing at all with some chance, else a half-t of a scale. */
interface CausePrior {
  /** scale in reproducibilities: wide, so that it does not draw a large spread towards 0 */
  readonly scale: number;
  /** chance that the cause adds nothing: without it a season without effects would be widened by effects that it could have */
  readonly chanceOfNone: number;
}

/** Found by simulation: joint coverage near 95 % with equal entries whatever the cause (tests/benchmarks/README.md). */
const PRIORS: Readonly<Record<Cause, CausePrior>> = {
  rig: { scale: 1.5, chanceOfNone: 0.4 },
  tester: { scale: 1.5, chanceOfNone: 0.4 },
  submission: { scale: 2, chanceOfNone: 0.2 },
};

/** ∫(1 + x²/4)^(−5/2) from 0 to ∞. */
const HALF_T_MASS = 4 / 3;

/**
 * Scale of the prior of a cause.
 *
 * Formula: A = 1.5·s_R for rigs and testers, 2·s_R for submissions
 * @param reproducibility s_R [1]; null where the method states none
 * @param cause rig, tester or submission
 * @returns A [1]
 * @throws nothing
 * @see GELMAN-2006
 * @example priorScale(0.02, 'rig') // 0.03
 */
export function priorScale(reproducibility: number | null, cause: Cause): number {
  return PRIORS[cause].scale * (reproducibility ?? USUAL_REPRODUCIBILITY);
}

/**
 * Width that the value 0 counts with on a grid of spreads beside its own cell.
 *
 * Formula: p/(1 − p)·A·4/3, so that exactly no effect has the chance p
 * @param reproducibility s_R [1]; null where the method states none
 * @param cause rig, tester or submission
 * @returns width [1]
 * @throws nothing
 * @see GELMAN-2006
 * @example widthOfNone(0.01, 'rig') // 0.0133…
 */
export function widthOfNone(reproducibility: number | null, cause: Cause): number {
  const { chanceOfNone } = PRIORS[cause];
  return (chanceOfNone / (1 - chanceOfNone)) * priorScale(reproducibility, cause) * HALF_T_MASS;
}

/** Density of ln s² where what is told is of other days or people and says nothing: even over a factor of seven either way in s, as likely as not. */
const DENSITY_WHERE_OFF = 1 / 8;

/** Chance that rigs, testers and spools of a season differ as those before it did; found by simulation, so that coverage holds where they do not. */
const CHANCE_OF_THE_SAME = 1 / 4;

/**
 * Log density of the spread of a cause before the season is looked at.
 *
 * Formula: −5/2·ln(1 + (σ/A)²/4) + Σ told ln(√(h/2π)·(r·e^(1 − r))^h + ⅛), h = d/2, r = s²/σ²: half-t of four degrees of freedom times the density of ln s² with d degrees each (Stirling's
 * constant), mixed with an even one, and Σ earlier ln(¼L + ¾) likewise, so that what the season contradicts gives way to it
 * @param cause rig, tester or submission
 * @param sd σ [1]
 * @param series the reproducibility that gives A, told standard deviations s [1] with degrees of freedom d, and likelihoods L of earlier seasons
 * @returns log density but for a constant
 * @throws nothing
 * @see GELMAN-2006
 * @see SCHMIDLI-2014
 * @example logPrior('rig', 0, { reproducibility: 0.01, told: [] }) // 0
 */
export function logPrior(
  cause: Cause,
  sd: number,
  { reproducibility, told, earlier = [] }: Pick<BenchSeries, 'reproducibility' | 'told' | 'earlier'>,
): number {
  let sum = -((PRIOR_DEGREES + 1) / 2) * Math.log1p((sd / priorScale(reproducibility, cause)) ** 2 / PRIOR_DEGREES);
  for (const { relativeSd, degreesOfFreedom } of told.filter((one) => one.cause === cause)) {
    const half = degreesOfFreedom / 2;
    sum += Math.log(Math.sqrt(half / (2 * Math.PI)) * likelihoodOf(sd ** 2, relativeSd ** 2) ** half + DENSITY_WHERE_OFF);
  }
  for (const season of earlier) if (season.cause === cause) sum += Math.log1p(CHANCE_OF_THE_SAME * (likelihoodAt(season, sd) - 1));
  return sum;
}

/**
 * Chance of a value of a spread on a grid before any season, in its cell.
 *
 * Formula: p at 0, else (1 − p)·¾/A·(1 + (σ/A)²/4)^(−5/2)·width, p the chance that the cause adds nothing
 * @param sd σ [1]
 * @param width of its cell [1]
 * @param reproducibility s_R that gives A [1]; null where the method states none
 * @param cause rig, tester or submission
 * @returns chance [1]
 * @throws nothing
 * @see GELMAN-2006
 * @example priorMass(0, 0, 0.01, 'rig') // 0.4
 */
export function priorMass(sd: number, width: number, reproducibility: number | null, cause: Cause): number {
  const scale = priorScale(reproducibility, cause);
  const cell = width + (sd === 0 ? widthOfNone(reproducibility, cause) : 0);
  return (
    ((1 - PRIORS[cause].chanceOfNone) * cell * (1 + (sd / scale) ** 2 / PRIOR_DEGREES) ** (-(PRIOR_DEGREES + 1) / 2)) /
    (scale * HALF_T_MASS)
  );
}

/**
 * What several seasons tell of each cause, as one: taken apart they would outvote the season that contradicts them all.
 *
 * Formula: ΠL over its mean before any season, on the points of all of them
 * @param earlier likelihoods of seasons, and of re-tests
 * @param reproducibility s_R [1]; null where the method states none
 * @returns one likelihood a cause; none of a cause that they rule out together
 * @throws nothing
 * @see SCHMIDLI-2014
 * @example toldTogether([], 0.01) // []
 */
export function toldTogether(earlier: readonly SeasonTold[], reproducibility: number | null): SeasonTold[] {
  return [...Map.groupBy(earlier, ({ cause }) => cause)].flatMap(([cause, told]) => {
    const axis = [...new Set(told.flatMap(({ points }) => points.map(({ relativeSd }) => relativeSd)))].sort((a, b) => a - b);
    const likelihoods = axis.map((sd) => told.reduce((product, season) => product * likelihoodAt(season, sd), 1));
    const mean = axis.reduce((sum, sd, at) => sum + likelihoods[at]! * priorMass(sd, cellWidth(axis, at), reproducibility, cause), 0);
    return mean > 0 ? [{ cause, points: axis.map((relativeSd, at) => ({ relativeSd, likelihood: likelihoods[at]! / mean })) }] : [];
  });
}

/**
 * Width of the cell of a point on a grid.
 *
 * Formula: half the distance to the neighbours on either side; 1 where there are none
 * @param axis rising values [1]
 * @param at position of the point [1]
 * @returns width [1]
 * @throws nothing
 * @see COMMON-PRACTICE
 * @example cellWidth([0, 1, 3], 1) // 1.5
 */
export function cellWidth(axis: readonly number[], at: number): number {
  return axis.length === 1 ? 1 : (axis[Math.min(at + 1, axis.length - 1)]! - axis[Math.max(at - 1, 0)]!) / 2;
}

/** Straight between the points that are told. */
function likelihoodAt({ points }: SeasonTold, sd: number): number {
  const above = points.findIndex(({ relativeSd }) => relativeSd >= sd);
  const [high, low] = [points[above], points[above - 1]];
  if (!high || (!low && high.relativeSd > sd)) return 0;
  if (!low) return high.likelihood;
  const share = (sd - low.relativeSd) / (high.relativeSd - low.relativeSd);
  return low.likelihood + share * (high.likelihood - low.likelihood);
}

/** r·e^(1 − r) of what was found against what is: 1 where they are the same, also where both are none. */
function likelihoodOf(variance: number, told: number): number {
  if (variance === 0) return told === 0 ? 1 : 0;
  return (told / variance) * Math.exp(1 - told / variance);
}
