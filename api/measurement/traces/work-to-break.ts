import { requireNotNegative, requirePositive } from '../figures/require-positive.js';
import { compensatedSum } from '../summary/compensated-sum.js';
import { findPeak } from './trace.js';
import type { TracePoint } from './trace.js';

/**
 * Energy taken up to the peak force, from the trace as recorded.
 *
 * Formula: W = Σ(F_i + F_i+1)/2·(x_i+1 − x_i) up to the peak; 1 N·mm = 0.001 J
 * @param points samples in order [mm, N]
 * @returns W [J]
 * @throws MeasurementError 'traces/no-load'; 'traces/too-few-points'; 'traces/extension-runs-back'; 'measurement/not-a-number'
 * @see ASTM-D2256
 * @example workToBreakJ([{ extensionMm: 0, forceN: 0 }, { extensionMm: 20, forceN: 100 }]) // 1
 */
export function workToBreakJ(points: readonly TracePoint[]): number {
  const upToPeak = points.slice(0, findPeak(points).index + 1);
  const strips = upToPeak.slice(1).map((point, i) => {
    const before = upToPeak[i]!;
    return ((point.forceN + before.forceN) / 2) * (point.extensionMm - before.extensionMm);
  });
  return compensatedSum(strips) / 1000;
}

/**
 * Work to break per mass of the specimen.
 *
 * Formula: W/(T L), with T L = tex · mm · 10⁻⁶ g
 * @param workJ W ≥ 0 [J]
 * @param linearDensityTex T > 0 [tex]
 * @param gaugeLengthMm L > 0 [mm]
 * @returns toughness [J/g]
 * @throws MeasurementError 'figures/negative' for W; 'figures/not-positive' for T or L
 * @see ASTM-D2256
 * @example toughnessJPerG(1, 20, 500) // 100
 */
export function toughnessJPerG(workJ: number, linearDensityTex: number, gaugeLengthMm: number): number {
  requireNotNegative(workJ, 'workJ', 'toughnessJPerG');
  requirePositive(linearDensityTex, 'linearDensityTex', 'toughnessJPerG');
  requirePositive(gaugeLengthMm, 'gaugeLengthMm', 'toughnessJPerG');
  return workJ / (linearDensityTex * gaugeLengthMm * 1e-6);
}
