import { tQuantile } from '../distributions/t-distribution.js';
import { MeasurementError } from '../errors.js';
import type { SampleSummary } from '../summary/sample-summary.js';
import { ratioInputs } from './ratio-inputs.js';
import type { RatioVariance } from './ratio-inputs.js';

interface FiellerCommon {
  /** numerator mean over denominator mean */
  ratio: number;
  degreesOfFreedom: number;
  /** below 1 where the denominator is told apart from zero */
  g: number;
}

/**
 * The three shapes of a confidence set for a ratio. Only 'bounded' is an interval with two limits;
 * 'exclusive' is everything outside (below, above); 'whole-line' excludes nothing.
 */
export type FiellerInterval = FiellerCommon &
  ({ kind: 'bounded'; low: number; high: number } | { kind: 'exclusive'; upTo: number; from: number } | { kind: 'whole-line' });

/**
 * Confidence set of the ratio of two independent means by Fieller's theorem.
 *
 * Formula: { ρ : (a − ρb)² ≤ t²(u_a² + ρ²u_b²) }, g = t²u_b²/b²; bounded for g < 1
 * @param numerator readings, n ≥ 2, or their mean, sd and n [any one unit]
 * @param denominator readings, n ≥ 2, or their mean, sd and n, of another sample [same unit]
 * @param options level in (0, 1), 0.95 by default; variance 'separate' (Satterthwaite's degrees of freedom at the found ratio, default) or 'pooled'
 * @returns kind and limits of the ratio [1], with ratio, degreesOfFreedom and g [1]; the border case g = 1 counts as 'whole-line'
 * @throws MeasurementError 'figures/zero-denominator' when the denominator's mean is 0; 'measurement/too-few-readings' when n < 2; 'measurement/not-a-number'
 * @see FIELLER-1954
 * @example fiellerInterval([9, 10, 11], [19, 20, 21]).kind // 'bounded'
 */
export function fiellerInterval(
  numerator: readonly number[] | SampleSummary,
  denominator: readonly number[] | SampleSummary,
  options: { level?: number; variance?: RatioVariance } = {},
): FiellerInterval {
  const { a, b, varianceA, varianceB, degreesOfFreedom, ratio } = ratioInputs(numerator, denominator, options.variance ?? 'separate');
  const t = tQuantile((1 + (options.level ?? 0.95)) / 2, degreesOfFreedom);
  const [marginA, marginB] = [t * t * varianceA, t * t * varianceB];
  const common: FiellerCommon = { ratio, degreesOfFreedom, g: marginB / (b * b) };
  const leading = b * b - marginB;
  // Written as a sum, not as (ab)² − leading·(a² − marginA): the difference of two large squares would lose the digits.
  const discriminant = marginA * leading + marginB * a * a;
  if (leading === 0 || discriminant < 0) return { ...common, kind: 'whole-line' };
  const root = Math.sqrt(discriminant);
  const limits = [(a * b - root) / leading, (a * b + root) / leading] as const;
  const [low, high] = [Math.min(...limits), Math.max(...limits)];
  if (!Number.isFinite(low) || !Number.isFinite(high)) {
    throw new MeasurementError(
      'measurement/not-a-number',
      'fiellerInterval: the squares of the readings leave the number range. Give the readings in a larger unit.',
    );
  }
  return leading > 0 ? { ...common, kind: 'bounded', low, high } : { ...common, kind: 'exclusive', upTo: low, from: high };
}
