import { digamma, inverseTrigamma, trigamma } from '../distributions/polygamma.js';
import { MeasurementError } from '../errors.js';
import { mean } from '../summary/mean.js';
import { median } from '../summary/median.js';
import { standardDeviation } from '../summary/standard-deviation.js';

/** A variance with the degrees of freedom behind it; 0 degrees when one reading shows none. */
export interface OwnVariance {
  readonly variance: number;
  readonly degreesOfFreedom: number;
}

export interface ModeratedVariances {
  /** s₀², the category's own spread; null when too few variances are known to tell */
  readonly priorVariance: number | null;
  /** d₀: Infinity when the variances differ by no more than chance, 0 when nothing is borrowed */
  readonly priorDegreesOfFreedom: number;
  /** null where neither the entry nor the category shows a spread */
  readonly moderated: readonly (OwnVariance | null)[];
}

/** Fewest variances from which a category's spread is learned: their own variance has to be seen (common practice). */
const FEWEST = 3;
/** A variance of exactly 0 has no logarithm; it counts as this share of the median (common practice). */
const SMALLEST_SHARE = 1e-5;

/**
 * Variances that borrow strength from one another, so that five specimens do not pretend to know their own spread.
 *
 * Formula: e = ln s² − ψ(d/2) + ln(d/2); ψ′(d₀/2) = var(e) − mean ψ′(d/2); s₀² = exp(ē + ψ(d₀/2) − ln(d₀/2)); s̃² = (d₀s₀² + d·s²)/(d₀ + d)
 * @param own variances ≥ 0 [one unit², relative ones dimensionless] with degrees of freedom ≥ 0
 * @returns prior and moderated variances [same unit²] with d₀ + d degrees of freedom; fewer than 3 known variances borrow nothing
 * @throws MeasurementError 'consensus/bad-variance' for a variance that is not 0 or more, or degrees of freedom that are not 0 or more
 * @see SMYTH-2004 section 6.2
 * @example moderatedVariances([1, 1.2, 0.9, 1.1].map((variance) => ({ variance, degreesOfFreedom: 4 }))).priorDegreesOfFreedom // Infinity
 */
export function moderatedVariances(own: readonly OwnVariance[]): ModeratedVariances {
  own.forEach(requireVariance);
  const known = own.filter(({ degreesOfFreedom }) => degreesOfFreedom > 0);
  const prior = known.length < FEWEST ? null : priorOf(known);
  if (!prior) {
    return {
      priorVariance: null,
      priorDegreesOfFreedom: 0,
      moderated: own.map((one) => (one.degreesOfFreedom > 0 ? { ...one } : null)),
    };
  }
  return {
    priorVariance: prior.variance,
    priorDegreesOfFreedom: prior.degreesOfFreedom,
    moderated: own.map((one) => moderate(one, prior)),
  };
}

function moderate({ variance, degreesOfFreedom }: OwnVariance, prior: OwnVariance): OwnVariance {
  if (prior.degreesOfFreedom === Infinity) return { variance: prior.variance, degreesOfFreedom: Infinity };
  const total = prior.degreesOfFreedom + degreesOfFreedom;
  return { variance: (prior.degreesOfFreedom * prior.variance + degreesOfFreedom * variance) / total, degreesOfFreedom: total };
}

function priorOf(known: readonly OwnVariance[]): OwnVariance {
  const middle = median(known.map(({ variance }) => variance));
  const smallest = SMALLEST_SHARE * (middle > 0 ? middle : Math.max(...known.map(({ variance }) => variance)));
  if (smallest === 0) return { variance: 0, degreesOfFreedom: Infinity };
  const halves = known.map(({ degreesOfFreedom }) => degreesOfFreedom / 2);
  const e = known.map(({ variance }, i) => Math.log(Math.max(variance, smallest)) - digamma(halves[i]!) + Math.log(halves[i]!));
  const excess = standardDeviation(e) ** 2 - mean(halves.map(trigamma));
  if (excess <= 0) return { variance: Math.exp(mean(e)), degreesOfFreedom: Infinity };
  const half = inverseTrigamma(excess);
  return { variance: Math.exp(mean(e) + digamma(half) - Math.log(half)), degreesOfFreedom: 2 * half };
}

function requireVariance({ variance, degreesOfFreedom }: OwnVariance, i: number): void {
  if (!(variance >= 0 && variance < Infinity && degreesOfFreedom >= 0 && degreesOfFreedom < Infinity)) {
    throw new MeasurementError(
      'consensus/bad-variance',
      `moderatedVariances: variance ${i + 1} is ${variance} with ${degreesOfFreedom} degrees of freedom, expected both finite and 0 or more. Correct that entry.`,
    );
  }
}
