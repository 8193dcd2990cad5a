import { requireFinite, requirePositive } from '../figures/require-positive.js';
import { MeasurementError } from '../errors.js';
import { requireReadings } from '../summary/require-readings.js';
import type { ControlLimits } from './individuals-chart.js';

export interface EwmaChart {
  /** starts with the centre, then one after each point */
  readonly ewma: readonly number[];
  readonly low: number;
  readonly high: number;
  /** position in the points of the first signal, counted from 0; null without one */
  readonly firstSignal: number | null;
}

/**
 * Exponentially weighted moving average chart: sees a slow drift that single points do not show.
 *
 * Formula: z₀ = centre, z = λx + (1 − λ)z₋₁; limits centre ± kσ√(λ/(2 − λ))
 * @param values points in order [any one unit]
 * @param limits centre and sigma above 0 [same unit]
 * @param lambda weight of the newest point in (0, 1] [1]
 * @param k width of the limits [1]
 * @returns ewma, low, high [same unit], firstSignal
 * @throws MeasurementError 'measurement/too-few-readings' for none; 'measurement/not-a-number'; 'figures/not-positive' for sigma; 'drift/bad-weight' for λ
 * @see NIST-EHANDBOOK 6.3.2.4
 * @example ewmaChart([52, 47], { centre: 50, sigma: 2 }, 0.3).ewma // [50, 50.6, 49.52]
 */
export function ewmaChart(values: readonly number[], limits: ControlLimits, lambda = 0.2, k = 3): EwmaChart {
  requireReadings(values, 1, 'ewmaChart');
  requireFinite(limits.centre, 'centre', 'ewmaChart');
  requirePositive(limits.sigma, 'sigma', 'ewmaChart');
  if (!(lambda > 0 && lambda <= 1)) {
    throw new MeasurementError(
      'drift/bad-weight',
      `ewmaChart: lambda is ${lambda}, expected above 0 and at most 1. Common values are 0.2 and 0.3.`,
    );
  }
  const ewma = [limits.centre];
  for (const value of values) ewma.push(lambda * value + (1 - lambda) * ewma.at(-1)!);
  const halfWidth = k * limits.sigma * Math.sqrt(lambda / (2 - lambda));
  const first = ewma.findIndex((value) => Math.abs(value - limits.centre) > halfWidth);
  return {
    ewma,
    low: limits.centre - halfWidth,
    high: limits.centre + halfWidth,
    firstSignal: first === -1 ? null : first - 1,
  };
}
