import { MeasurementError } from '../errors.js';

/** One sample of a force–extension record. */
export interface TracePoint {
  extensionMm: number;
  forceN: number;
}

export interface TracePeak extends TracePoint {
  /** position in the trace */
  index: number;
}

/**
 * Refuses a trace that is too short, holds no numbers, or runs backwards in extension.
 *
 * Formula: at least two points, all finite, extension never falling
 * @param points samples in the order they were taken [mm, N]
 * @param where name of the calling function, for the message
 * @returns nothing
 * @throws MeasurementError 'traces/too-few-points'; 'measurement/not-a-number'; 'traces/extension-runs-back'
 * @see COMMON-PRACTICE
 * @example requireTrace([{ extensionMm: 0, forceN: 0 }, { extensionMm: 1, forceN: 8 }], 'findPeak')
 */
export function requireTrace(points: readonly TracePoint[], where: string): void {
  if (points.length < 2) {
    throw new MeasurementError(
      'traces/too-few-points',
      `${where}: found ${points.length} points, expected at least 2. Load the whole record.`,
    );
  }
  points.forEach(({ extensionMm, forceN }, i) => {
    if (!Number.isFinite(extensionMm) || !Number.isFinite(forceN)) {
      throw new MeasurementError(
        'measurement/not-a-number',
        `${where}: point ${i + 1} is (${extensionMm} mm, ${forceN} N), expected finite numbers. Correct it.`,
      );
    }
    if (i > 0 && extensionMm < points[i - 1]!.extensionMm) {
      throw new MeasurementError(
        'traces/extension-runs-back',
        `${where}: point ${i + 1} at ${extensionMm} mm follows one at ${points[i - 1]!.extensionMm} mm, expected no falling extension. Restore the order.`,
      );
    }
  });
}

/**
 * Highest force of a trace: the maximum of all samples, not the first local one.
 *
 * Formula: max F
 * @param points samples in order [mm, N]
 * @returns forceN [N], extensionMm [mm] and index of the first sample that reaches the maximum
 * @throws MeasurementError 'traces/no-load' when no force is above 0; 'traces/too-few-points'; 'traces/extension-runs-back'; 'measurement/not-a-number'
 * @see ASTM-D2256
 * @example findPeak([{ extensionMm: 0, forceN: 0 }, { extensionMm: 1, forceN: 8 }]).forceN // 8
 */
export function findPeak(points: readonly TracePoint[]): TracePeak {
  requireTrace(points, 'findPeak');
  const index = points.reduce((best, point, i) => (point.forceN > points[best]!.forceN ? i : best), 0);
  const { extensionMm, forceN } = points[index]!;
  if (!(forceN > 0)) {
    throw new MeasurementError(
      'traces/no-load',
      `findPeak: the highest force is ${forceN} N, expected more than 0. Check the sign and the zero.`,
    );
  }
  return { index, extensionMm, forceN };
}
