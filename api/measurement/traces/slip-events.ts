import { requireProbability } from '../distributions/require-domain.js';
import { findPeak } from './trace.js';
import type { TracePoint } from './trace.js';

export interface SlipEvent {
  /** where the drop begins */
  atExtensionMm: number;
  fromForceN: number;
  toForceN: number;
  /** part of the running peak that was lost */
  relativeDrop: number;
}

/**
 * Drops of force before the break: signs of slip in the grip or a knot that seats itself. The fall after the peak is the break, not a slip.
 *
 * Formula: a drop counts when (running peak − lowest force until that peak is passed)/running peak > threshold
 * @param points samples in order [mm, N]
 * @param thresholdFraction smallest drop that counts, in (0, 1) [1]
 * @returns the drops in order: atExtensionMm [mm], fromForceN and toForceN [N], relativeDrop [1]
 * @throws MeasurementError 'distributions/out-of-domain' for a threshold outside (0, 1); errors of findPeak
 * @see COMMON-PRACTICE
 * @example slipEvents([{ extensionMm: 0, forceN: 0 }, { extensionMm: 1, forceN: 50 }, { extensionMm: 2, forceN: 40 }, { extensionMm: 3, forceN: 60 }])[0] // { atExtensionMm: 1, fromForceN: 50, toForceN: 40, relativeDrop: 0.2 }
 */
export function slipEvents(points: readonly TracePoint[], thresholdFraction = 0.05): SlipEvent[] {
  requireProbability(thresholdFraction, 'slipEvents, thresholdFraction');
  const upToPeak = points.slice(0, findPeak(points).index + 1);
  const events: SlipEvent[] = [];
  let top = upToPeak[0]!;
  let lowestN = top.forceN;
  for (const point of upToPeak) {
    if (point.forceN < top.forceN) {
      lowestN = Math.min(lowestN, point.forceN);
      continue;
    }
    const relativeDrop = top.forceN > 0 ? (top.forceN - lowestN) / top.forceN : 0;
    if (relativeDrop > thresholdFraction) {
      events.push({ atExtensionMm: top.extensionMm, fromForceN: top.forceN, toForceN: lowestN, relativeDrop });
    }
    top = point;
    lowestN = point.forceN;
  }
  return events;
}
