import { requireNotNegative } from '../../../../api/measurement/figures/require-positive.js';

/**
 * Standard uncertainty of a quantity known only to lie within limits.
 *
 * Formula: u = a/√3 (every value alike, rectangular) or a/√6 (middle likelier, triangular), a half the width
 * @param halfWidth a ≥ 0 [any one unit]
 * @param shape 'rectangular' or 'triangular'
 * @returns u [same unit]
 * @throws MeasurementError 'figures/negative' for a half-width below 0 or not finite
 * @see JCGM-100 4.3.7
 * @example limitsUncertainty(0.1, 'triangular') // 0.0408…
 */
export function limitsUncertainty(halfWidth: number, shape: 'rectangular' | 'triangular'): number {
  requireNotNegative(halfWidth, 'halfWidth', 'limitsUncertainty');
  return halfWidth / Math.sqrt(shape === 'rectangular' ? 3 : 6);
}
