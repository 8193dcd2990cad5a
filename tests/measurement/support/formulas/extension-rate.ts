import { requirePositive } from '../../../../api/measurement/figures/require-positive.js';

/**
 * Time to break at a constant rate of extension; a low-stretch braid breaks within seconds at 100 % per minute.
 *
 * Formula: t = 60 ε/rate
 * @param elongationPercent ε > 0 [%]
 * @param ratePercentPerMin rate of extension, above 0 [%/min]
 * @returns t [s]
 * @throws MeasurementError 'figures/not-positive' unless both are finite and above 0
 * @see MECHANICS
 * @example timeToBreakS(4, 100) // 2.4
 */
export function timeToBreakS(elongationPercent: number, ratePercentPerMin: number): number {
  requirePositive(elongationPercent, 'elongationPercent', 'timeToBreakS');
  requirePositive(ratePercentPerMin, 'ratePercentPerMin', 'timeToBreakS');
  return (60 * elongationPercent) / ratePercentPerMin;
}

/**
 * Crosshead speed that brings a specimen to break in a wanted time.
 *
 * Formula: v = 60 · L ε/100 / t
 * @param gaugeLengthMm L > 0 [mm]
 * @param elongationPercent ε > 0 [%]
 * @param timeS t > 0 [s]
 * @returns v [mm/min]
 * @throws MeasurementError 'figures/not-positive' unless all are finite and above 0
 * @see MECHANICS
 * @example crossheadSpeedMmPerMin(500, 4, 20) // 60
 */
export function crossheadSpeedMmPerMin(gaugeLengthMm: number, elongationPercent: number, timeS: number): number {
  requirePositive(gaugeLengthMm, 'gaugeLengthMm', 'crossheadSpeedMmPerMin');
  requirePositive(elongationPercent, 'elongationPercent', 'crossheadSpeedMmPerMin');
  requirePositive(timeS, 'timeS', 'crossheadSpeedMmPerMin');
  return (60 * gaugeLengthMm * (elongationPercent / 100)) / timeS;
}
