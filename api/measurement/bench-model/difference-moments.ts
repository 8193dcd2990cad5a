import type { BenchFit } from './fit-bench-model.js';

/** How every two of n values differ by chance: what they share cancels. */
export interface DifferenceMoments {
  /** n·n: relative variance of the difference at i·n + j [1] */
  readonly variance: Float64Array;
  /** n·n: variance of that variance, for its degrees of freedom 2·variance²/this [1] */
  readonly varianceOfVariance: Float64Array;
}

/**
 * Variance of the difference of every two variants under a fit, and how well it is known.
 *
 * Formula: s² = mean over settings of u_i² + u_j² + |Rᵀ(h_i − h_j)|² + (x̂_ik − x̂_jk − x̂_i + x̂_j)²; its variance that over the settings plus 2u⁴/ν of either
 * @param fit of the variants
 * @param positions of n variants in the fit
 * @returns n·n relative variances and their variances [1]
 * @throws nothing
 * @see JCGM-100 5.2
 * @see SATTERTHWAITE-1946
 * @example differenceMoments(fit, [0, 1]).variance[1]
 */
export function differenceMoments(fit: BenchFit, positions: readonly number[]): DifferenceMoments {
  const n = positions.length;
  const variance = new Float64Array(n * n);
  const squares = new Float64Array(n * n);
  for (const setting of fit.settings) addSetting(fit, setting, positions, variance, squares);
  const varianceOfVariance = new Float64Array(n * n);
  const count = fit.settings.length;
  const ownSpread = positions.map((v) => (2 * fit.ownVariances[v]! ** 2) / fit.ownDegreesOfFreedom[v]!);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < i; j++) {
      const at = i * n + j;
      const mean = variance[at]! / count;
      const spread = Math.max(0, squares[at]! / count - mean * mean) + ownSpread[i]! + ownSpread[j]!;
      variance[at] = variance[j * n + i] = mean;
      varianceOfVariance[at] = varianceOfVariance[j * n + i] = spread;
    }
  }
  return { variance, varianceOfVariance };
}

function addSetting(
  { table, values, widening }: BenchFit,
  { within, root, values: relative }: BenchFit['settings'][number],
  positions: readonly number[],
  variance: Float64Array,
  squares: Float64Array,
): void {
  const n = positions.length;
  const q = table.columns.length;
  const width = q + 1;
  const own = new Float64Array(n);
  // Shared effects as seen by each variant, and how far this setting moves it: their differences, squared, are the shared variance.
  const seen = new Float64Array(n * width);
  positions.forEach((v, i) => {
    own[i] = 1 / within.totals[v]! + widening[v]!;
    for (let d = 0; d < q; d++) {
      let sum = 0;
      for (let c = 0; c < q; c++) sum += within.shares[v * q + c]! * root[c * q + d]!;
      seen[i * width + d] = sum;
    }
    seen[i * width + q] = relative[v]! - values[v]! / table.plainMeans[v]!;
  });
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < i; j++) {
      let sum = own[i]! + own[j]!;
      for (let d = 0; d < width; d++) sum += (seen[i * width + d]! - seen[j * width + d]!) ** 2;
      variance[i * n + j] = variance[i * n + j]! + sum;
      squares[i * n + j] = squares[i * n + j]! + sum * sum;
    }
  }
}
