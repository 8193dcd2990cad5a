import { requireNotNegative, requirePositive } from './require-positive.js';
import { fiellerInterval } from './fieller-interval.js';
import type { FiellerInterval } from './fieller-interval.js';

/**
 * What a treatment (a knot, abrasion) leaves of the straight breaking force; above 100 % is reported as found.
 *
 * Formula: 100 F̄_treated/F̄_straight
 * @param treatedN mean breaking force after the treatment, 0 or more [N]
 * @param straightN mean breaking force without it, above 0 [N]
 * @returns retention [%]
 * @throws MeasurementError 'figures/negative' for the treated force; 'figures/not-positive' for the straight one
 * @see COMMON-PRACTICE
 * @example retentionPercent(50, 80) // 62.5
 */
export function retentionPercent(treatedN: number, straightN: number): number {
  requireNotNegative(treatedN, 'treatedN', 'retentionPercent');
  requirePositive(straightN, 'straightN', 'retentionPercent');
  return (100 * treatedN) / straightN;
}

/** Where a retention lies against 100 %: the whole interval below, 100 % inside, the whole interval above, or no interval to judge by. */
export type RetentionAgainstWhole = 'below' | 'holds-100' | 'above' | 'not-bounded';

/**
 * Places a confidence set of a retention against 100 %.
 *
 * Formula: high < 1, low ≤ 1 ≤ high, or low > 1
 * @param interval confidence set of the ratio treated/straight [1]
 * @returns 'below', 'holds-100' or 'above'; 'not-bounded' for the other two shapes, which lie on both sides
 * @throws nothing: any set has an answer
 * @see FIELLER-1954
 * @example retentionAgainstWhole(fiellerInterval([9, 10, 11], [19, 20, 21])) // 'below'
 */
export function retentionAgainstWhole(interval: FiellerInterval): RetentionAgainstWhole {
  if (interval.kind !== 'bounded') return 'not-bounded';
  if (interval.high < 1) return 'below';
  return interval.low > 1 ? 'above' : 'holds-100';
}

export interface RetentionFigures {
  retentionPercent: number;
  interval: FiellerInterval;
  againstWhole: RetentionAgainstWhole;
}

/**
 * Retention of two samples with its confidence set and where that lies against 100 %.
 *
 * Formula: 100 F̄_treated/F̄_straight with Fieller's set
 * @param treatedN readings after the treatment, n ≥ 2 [N]
 * @param straightN readings without it, n ≥ 2 [N]
 * @param level confidence level in (0, 1) [1]
 * @returns retentionPercent [%], interval of the ratio [1], againstWhole
 * @throws MeasurementError 'measurement/too-few-readings' when n < 2; 'figures/zero-denominator'; 'figures/negative'; 'figures/not-positive'
 * @see FIELLER-1954
 * @example retentionFigures([9, 10, 11], [19, 20, 21]).retentionPercent // 50
 */
export function retentionFigures(treatedN: readonly number[], straightN: readonly number[], level = 0.95): RetentionFigures {
  const interval = fiellerInterval(treatedN, straightN, { level });
  treatedN.forEach((forceN) => requireNotNegative(forceN, 'treatedN', 'retentionFigures'));
  straightN.forEach((forceN) => requirePositive(forceN, 'straightN', 'retentionFigures'));
  return { retentionPercent: 100 * interval.ratio, interval, againstWhole: retentionAgainstWhole(interval) };
}
