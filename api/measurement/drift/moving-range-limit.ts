import { requireFinite } from '../figures/require-positive.js';

/** d₂ of two readings, 2/√π, exactly. */
export const D2 = 2 / Math.sqrt(Math.PI);
/** D₄ of two readings, 1 + 3d₃/d₂ with d₃² = 2 − 4/π, exactly. */
const D4 = 1 + (3 * Math.sqrt(2 - 4 / Math.PI)) / D2;

/**
 * Largest distance between neighbouring pulls that chance explains.
 *
 * Formula: D₄·d₂·σ; d₂ = 2/√π, D₄ = 3.267
 * @param sigma standard deviation of the chart, 0 or more [any one unit]
 * @returns upper limit of the moving range [same unit]
 * @throws MeasurementError 'measurement/not-a-number' for a sigma that is not finite
 * @see NIST-EHANDBOOK 6.3.2.2
 * @example movingRangeLimit(1) // 3.685…
 */
export function movingRangeLimit(sigma: number): number {
  requireFinite(sigma, 'sigma', 'movingRangeLimit');
  return D4 * D2 * sigma;
}
