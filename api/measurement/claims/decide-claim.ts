import { tCdf } from '../distributions/t-distribution.js';
import { MeasurementError } from '../errors.js';
import { requireNotNegative, requirePositive } from '../figures/require-positive.js';

/** What conforms: values at or above low, at or below high, or between both. */
export interface ToleranceLimits {
  low?: number;
  high?: number;
}

export type ClaimVerdict = 'meets' | 'probably meets' | 'cannot say' | 'probably falls short' | 'falls short';

export interface ClaimDecision {
  conformityProbability: number;
  verdict: ClaimVerdict;
}

/**
 * Limits that a claim with a tolerance stands for.
 *
 * Formula: claimed·(1 ∓ tolerance/100) on the side or sides that the claim bounds
 * @param claimed claimed value, above 0 [any one unit]
 * @param tolerancePercent tolerance, 0 or more [%]
 * @param sense 'at-least' for a strength, 'at-most' for a diameter, 'within' for a class
 * @returns low and high as the sense asks [same unit]
 * @throws MeasurementError 'figures/not-positive' for the claim; 'figures/negative' for the tolerance
 * @see JCGM-106 3.3.5
 * @example claimLimits(100, 5, 'at-least') // { low: 95 }
 */
export function claimLimits(claimed: number, tolerancePercent: number, sense: 'at-least' | 'at-most' | 'within'): ToleranceLimits {
  requirePositive(claimed, 'claimed', 'claimLimits');
  requireNotNegative(tolerancePercent, 'tolerancePercent', 'claimLimits');
  const allowance = (claimed * tolerancePercent) / 100;
  return {
    ...(sense !== 'at-most' && { low: claimed - allowance }),
    ...(sense !== 'at-least' && { high: claimed + allowance }),
  };
}

/**
 * Probability that the true value conforms, given the measured one and its standard uncertainty.
 *
 * Formula: p = F((T_U − y)/u) − F((T_L − y)/u), F Student's t with ν degrees of freedom, which for ν = ∞ is Φ; for u = 0 it is 1 within
 * the limits, else 0. An uncertainty from few repeats is itself uncertain: with a normal F it would pass for more than is known.
 * @param measured y [any one unit]
 * @param standardUncertainty u = U/k ≥ 0 [same unit]
 * @param limits low T_L and high T_U, at least one of them [same unit]
 * @param degreesOfFreedom ν > 0 of u; Infinity where u is known [1]
 * @returns p in [0, 1] [1]
 * @throws MeasurementError 'claims/no-limit'; 'claims/bad-limits' when low is above high; 'measurement/not-a-number'; 'figures/negative' for u;
 * 'distributions/out-of-domain' for ν
 * @see JCGM-106 7.3
 * @see JCGM-101 6.4.9.4
 * @example conformityProbability(-5.47, 0.05, { high: -5.4 }) // 0.9192…
 */
export function conformityProbability(
  measured: number,
  standardUncertainty: number,
  limits: ToleranceLimits,
  degreesOfFreedom = Infinity,
): number {
  requireLimits(measured, limits);
  requireNotNegative(standardUncertainty, 'standardUncertainty', 'conformityProbability');
  const { low = -Infinity, high = Infinity } = limits;
  if (standardUncertainty === 0) return measured >= low && measured <= high ? 1 : 0;
  const [toLow, toHigh] = [(low - measured) / standardUncertainty, (high - measured) / standardUncertainty];
  // In the upper tail both probabilities are close to 1; the mirrored difference keeps its digits.
  const below = (x: number) => tCdf(x, degreesOfFreedom);
  return toLow > 0 ? below(-toLow) - below(-toHigh) : below(toHigh) - below(toLow);
}

/**
 * Says in one of five words whether a measured value meets a claim.
 *
 * Formula: p ≥ 0.95 meets, ≥ 0.80 probably meets, ≤ 0.05 falls short, ≤ 0.20 probably falls short, between them cannot say
 * @param measured y [any one unit]
 * @param expandedUncertainty U ≥ 0 [same unit]
 * @param coverageFactor k > 0 of that U [1]
 * @param limits low and high, at least one of them [same unit]
 * @param degreesOfFreedom ν > 0 of U/k; Infinity where it is known [1]
 * @returns conformityProbability [1] and verdict
 * @throws MeasurementError 'claims/no-limit'; 'claims/bad-limits'; 'measurement/not-a-number'; 'figures/negative' for U;
 * 'figures/not-positive' for k; 'distributions/out-of-domain' for ν
 * @see JCGM-106 7.3
 * @example decideClaim(100, 2, 2, { low: 95 }).verdict // 'meets'
 */
export function decideClaim(
  measured: number,
  expandedUncertainty: number,
  coverageFactor: number,
  limits: ToleranceLimits,
  degreesOfFreedom = Infinity,
): ClaimDecision {
  requireNotNegative(expandedUncertainty, 'expandedUncertainty', 'decideClaim');
  requirePositive(coverageFactor, 'coverageFactor', 'decideClaim');
  const probability = conformityProbability(measured, expandedUncertainty / coverageFactor, limits, degreesOfFreedom);
  return { conformityProbability: probability, verdict: claimVerdict(probability) };
}

/**
 * The word for a probability of conformity.
 *
 * Formula: ≥ 0.95, ≥ 0.80, between, ≤ 0.20, ≤ 0.05
 * @param probability p in [0, 1] [1]
 * @returns one of the five words
 * @throws MeasurementError 'distributions/out-of-domain' for p outside [0, 1]
 * @see JCGM-106 7.3
 * @example claimVerdict(0.5) // 'cannot say'
 */
export function claimVerdict(probability: number): ClaimVerdict {
  if (!(probability >= 0 && probability <= 1)) {
    throw new MeasurementError('distributions/out-of-domain', `claimVerdict: p is ${probability}, expected 0 ≤ p ≤ 1. Give a probability.`);
  }
  if (probability >= 0.95) return 'meets';
  if (probability >= 0.8) return 'probably meets';
  if (probability <= 0.05) return 'falls short';
  return probability <= 0.2 ? 'probably falls short' : 'cannot say';
}

function requireLimits(measured: number, { low, high }: ToleranceLimits): void {
  if (low === undefined && high === undefined) {
    throw new MeasurementError(
      'claims/no-limit',
      'conformityProbability: found no limit, expected low, high or both. State what the claim bounds.',
    );
  }
  const bad = [measured, low, high].find((value) => value !== undefined && !Number.isFinite(value));
  if (bad !== undefined) {
    throw new MeasurementError(
      'measurement/not-a-number',
      `conformityProbability: found ${bad}, expected finite numbers. Leave out a limit that is not there.`,
    );
  }
  if (low !== undefined && high !== undefined && low > high) {
    throw new MeasurementError(
      'claims/bad-limits',
      `conformityProbability: low is ${low} and high is ${high}, expected low ≤ high. Swap the limits.`,
    );
  }
}
