import { tQuantile } from '../distributions/t-distribution.js';
import { requireDegreesOfFreedom } from '../distributions/require-domain.js';
import { requireNotNegative } from '../figures/require-positive.js';
import { requireReadings } from '../summary/require-readings.js';

/** Where more degrees of freedom change no digit that is published. */
const MOST_DEGREES_OF_FREEDOM = 1e6;

/**
 * Two-sided 95 % interval of a value with a stated uncertainty.
 *
 * Formula: x ± t(0.975; ν_eff)·u, with ν_eff as it is (JCGM 100 lets it be interpolated), at least 1
 * @param value x [any one unit]
 * @param standardUncertainty u ≥ 0 [same unit]
 * @param degreesOfFreedom ν_eff > 0, Infinity allowed [1]
 * @returns low and high [same unit]
 * @throws MeasurementError 'figures/negative' for u below 0 or not finite; 'measurement/not-a-number' for x; 'distributions/out-of-domain' for ν_eff
 * @see JCGM-100 G.4.1
 * @example valueInterval(10, 1, 4) // { low: 7.223…, high: 12.776… }
 */
export function valueInterval(value: number, standardUncertainty: number, degreesOfFreedom: number): { low: number; high: number } {
  requireReadings([value], 1, 'valueInterval');
  requireNotNegative(standardUncertainty, 'standardUncertainty', 'valueInterval');
  requireDegreesOfFreedom(degreesOfFreedom, 'valueInterval');
  const halfWidth = standardUncertainty * tQuantile(0.975, Math.min(MOST_DEGREES_OF_FREEDOM, Math.max(1, degreesOfFreedom)));
  return { low: value - halfWidth, high: value + halfWidth };
}
