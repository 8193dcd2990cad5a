import { requireFinite } from '../../../../api/measurement/figures/require-positive.js';
import { requireReadings } from '../../../../api/measurement/summary/require-readings.js';

export interface CusumChart {
  readonly high: readonly number[];
  readonly low: readonly number[];
  /** first point at which a sum is above h, counted from 0; null without one */
  readonly firstSignal: { readonly index: number; readonly side: 'high' | 'low' } | null;
}

/**
 * Tabular cumulative sum chart: adds up what lies beyond the allowance, on each side.
 *
 * Formula: S⁺ = max(0, S⁺₋₁ + x − target − k), S⁻ = max(0, S⁻₋₁ + target − k − x); a signal above h
 * @param values n ≥ 1 points in order [any one unit]
 * @param design target, allowance k and decision limit h [same unit]
 * @returns both sums [same unit] and the first signal
 * @throws MeasurementError 'measurement/too-few-readings' for none; 'measurement/not-a-number'
 * @see NIST-EHANDBOOK 6.3.2.3
 * @example cusumChart([11, 12], { target: 10, k: 0.5, h: 1 }).high // [0.5, 2]
 */
export function cusumChart(values: readonly number[], design: { target: number; k: number; h: number }): CusumChart {
  requireReadings(values, 1, 'cusumChart');
  const { target, k, h } = design;
  requireFinite(target, 'target', 'cusumChart');
  requireFinite(k, 'k', 'cusumChart');
  requireFinite(h, 'h', 'cusumChart');
  const sums = (excess: (value: number) => number): number[] => {
    let sum = 0;
    return values.map((value) => (sum = Math.max(0, sum + excess(value))));
  };
  const high = sums((value) => value - target - k);
  const low = sums((value) => target - k - value);
  const index = values.findIndex((_, i) => high[i]! > h || low[i]! > h);
  return { high, low, firstSignal: index === -1 ? null : { index, side: high[index]! > h ? 'high' : 'low' } };
}
