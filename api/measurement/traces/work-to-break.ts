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
