import { tDeviate } from '../random/t-deviate.js';
import type { RandomStream } from '../random/random-stream.js';
import type { BenchFit } from './fit-bench-model.js';

/**
 * Draws how far the truth of each variant may lie from its fitted value, relative; what variants share moves them together.
 *
 * Formula: e = x̂_k/x̂ − 1 + u_k·t(ν) − h_k·R_k·z, k one of the fit's equally likely settings in turn
 * @param fit of n variants
 * @param draws B [1]
 * @param random seeded stream
 * @returns B·n relative deviations of the truth, draw by draw [1]
 * @throws nothing
 * @see JCGM-101
 * @example drawBenchErrors(fit, 10_000, random).length // 10_000 times the variants
 */
export function drawBenchErrors(fit: BenchFit, draws: number, random: RandomStream): Float32Array {
  const { table, settings, values, widening, ownDegreesOfFreedom } = fit;
  const [n, q] = [table.variants.length, table.columns.length];
  const errors = new Float32Array(draws * n);
  const shared = new Float64Array(q);
  const deviates = new Float64Array(q);
  for (let draw = 0; draw < draws; draw++) {
    const { within, root, values: relative } = settings[draw % settings.length]!;
    for (let c = 0; c < q; c++) deviates[c] = tDeviate(random, Infinity);
    for (let c = 0; c < q; c++) {
      let sum = 0;
      for (let d = 0; d < q; d++) sum += root[c * q + d]! * deviates[d]!;
      shared[c] = sum;
    }
    for (let v = 0; v < n; v++) {
      const centre = values[v]! / table.plainMeans[v]!;
      let error = relative[v]! - centre + Math.sqrt(1 / within.totals[v]! + widening[v]!) * tDeviate(random, ownDegreesOfFreedom[v]!);
      for (let c = 0; c < q; c++) error -= within.shares[v * q + c]! * shared[c]!;
      errors[draw * n + v] = error / centre;
    }
  }
  return errors;
}
