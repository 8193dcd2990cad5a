import { mean } from '../summary/mean.js';

/**
 * Values drawn together until they are as far apart as the truth is: what was found is farther apart, by its own noise.
 *
 * Formula: x̃ = x̄ + √B·(x − x̄), B = max(0, 1 − s̄²/2s_x²), s_x² the variance of the values and s̄² the mean square of the uncertainties of their differences
 * @param values n found values [any one unit]
 * @param differenceUncertainty n·n: s_ij at i·n + j [same unit]
 * @returns n settled values [same unit]; the values themselves for n < 2 and when they are known without uncertainty
 * @throws MeasurementError 'measurement/not-a-number' for a value that is not finite
 * @see LOUIS-1984
 * @example settledValues(Float64Array.of(0, 2), Float64Array.of(0, 1, 1, 0)) // [1 − √¾, 1 + √¾]
 */
export function settledValues(values: Float64Array, differenceUncertainty: Float64Array): Float64Array {
  const n = values.length;
  if (n < 2) return values;
  let noise = 0;
  for (const s of differenceUncertainty) noise += s * s;
  if (noise === 0) return values;
  const centre = mean([...values]);
  let spread = 0;
  for (const value of values) spread += (value - centre) ** 2;
  // Both are sums over pairs: Σ_ij s_ij² = n(n − 1)·s̄², Σ(x − x̄)² = (n − 1)·s_x².
  const share = spread === 0 ? 0 : Math.max(0, 1 - noise / (2 * n * spread));
  return values.map((value) => centre + Math.sqrt(share) * (value - centre));
}
