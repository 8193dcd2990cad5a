import { requireFinite, requirePositive } from '../figures/require-positive.js';
import { findPeak } from './trace.js';
import type { ToeCompensation } from './toe-compensation.js';
import type { TracePoint } from './trace.js';

/** Which length the strain refers to: the gauge as set, or the gauge plus the slack that was taken up. */
export type GaugeBasis = 'nominal' | 'corrected';

/**
 * Elongation at the peak counted from the toe-compensated zero.
 *
 * Formula: 100 (x_peak − x₀)/L, or /(L + x₀) on the corrected gauge
 * @param points samples in order [mm, N]
 * @param gaugeLengthMm L > 0 [mm]
 * @param toe toe compensation of the same trace
 * @param basis 'nominal' for L, 'corrected' for L + x₀
 * @returns elongation [%]
 * @throws MeasurementError 'figures/not-positive' for L or L + x₀; errors of findPeak
 * @see ASTM-D638 annex on toe compensation (from memory)
 * @example elongationPercent([{ extensionMm: 0, forceN: 0 }, { extensionMm: 22, forceN: 114 }], 500, { stiffnessNPerMm: 6, toeOffsetMm: 3 }, 'nominal') // 3.8
 */
export function elongationPercent(points: readonly TracePoint[], gaugeLengthMm: number, toe: ToeCompensation, basis: GaugeBasis): number {
  requireFinite(toe.toeOffsetMm, 'toeOffsetMm', 'elongationPercent');
  requirePositive(gaugeLengthMm, 'gaugeLengthMm', 'elongationPercent');
  const lengthMm = basis === 'corrected' ? gaugeLengthMm + toe.toeOffsetMm : gaugeLengthMm;
  requirePositive(lengthMm, 'gaugeLengthMm + toeOffsetMm', 'elongationPercent');
  return (100 * (findPeak(points).extensionMm - toe.toeOffsetMm)) / lengthMm;
}
