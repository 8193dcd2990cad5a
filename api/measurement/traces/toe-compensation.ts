import { MeasurementError } from '../errors.js';
import { compensatedSum } from '../summary/compensated-sum.js';
import { mean } from '../summary/mean.js';
import { findPeak } from './trace.js';
import type { TracePoint } from './trace.js';

/** The part of the rise that the method calls linear, as fractions of the peak force. */
export interface LinearBand {
  fromFraction: number;
  toFraction: number;
}

/** The part that is taken as linear where nobody says otherwise (common practice). */
export const LINEAR_BAND: LinearBand = { fromFraction: 0.1, toFraction: 0.5 };

export interface ToeCompensation {
  stiffnessNPerMm: number;
  /** extension at which the linear part meets zero force; taken as zero strain */
  toeOffsetMm: number;
}

/**
 * Extends the linear part of the rise to zero force, which removes the slack taken up at the start.
 *
 * Formula: least-squares line F = k (x − x₀) through the points of the band before the peak
 * @param points samples in order [mm, N]
 * @param band fractions of the peak force, 0 ≤ from < to ≤ 1 [1]
 * @returns stiffnessNPerMm k [N/mm], toeOffsetMm x₀ [mm]
 * @throws MeasurementError 'traces/bad-band'; 'traces/no-linear-part' for fewer than three points in the band or no rise; errors of findPeak
 * @see ASTM-D638 annex on toe compensation (from memory)
 * @example toeCompensation(points, { fromFraction: 0.3, toFraction: 0.8 }).toeOffsetMm // 3
 */
export function toeCompensation(points: readonly TracePoint[], band: LinearBand): ToeCompensation {
  if (!(band.fromFraction >= 0 && band.fromFraction < band.toFraction && band.toFraction <= 1)) {
    throw new MeasurementError(
      'traces/bad-band',
      `toeCompensation: the band is ${band.fromFraction} to ${band.toFraction}, expected 0 ≤ from < to ≤ 1. Give fractions of the peak force.`,
    );
  }
  const peak = findPeak(points);
  const isInBand = ({ forceN }: TracePoint): boolean =>
    forceN >= band.fromFraction * peak.forceN && forceN <= band.toFraction * peak.forceN;
  const linear = points.slice(0, peak.index + 1).filter(isInBand);
  if (linear.length < 3) throw noLinearPart(`${linear.length} points in the band`);
  const [meanX, meanF] = [mean(linear.map((point) => point.extensionMm)), mean(linear.map((point) => point.forceN))];
  const squares = compensatedSum(linear.map((point) => (point.extensionMm - meanX) ** 2));
  const products = compensatedSum(linear.map((point) => (point.extensionMm - meanX) * (point.forceN - meanF)));
  if (!(squares > 0 && products > 0)) throw noLinearPart('no rise of force with extension in the band');
  const stiffnessNPerMm = products / squares;
  return { stiffnessNPerMm, toeOffsetMm: meanX - meanF / stiffnessNPerMm };
}

function noLinearPart(found: string): MeasurementError {
  return new MeasurementError(
    'traces/no-linear-part',
    `toeCompensation: found ${found}, expected at least 3 rising points. Widen the band or sample faster.`,
  );
}
