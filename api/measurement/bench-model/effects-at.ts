import { choleskyOf, solveLower, solveUpper } from './small-cholesky.js';
import type { WithinVariants } from './within-variants.js';

/** Effects of rigs, testers and certificates at given spreads, and how likely the differences within variants make these. */
export interface EffectsAt {
  /** −2·ln of the restricted likelihood, but for a constant [1] */
  readonly deviance: number;
  /** predicted relative effects, q of them [1] */
  readonly effects: Float64Array;
  /** q·q: R with R·Rᵀ the covariance of what the effects are off by; column by column [1] */
  readonly root: Float64Array;
}

/**
 * Predicts shared effects from the differences within variants (best linear unbiased prediction), and the restricted likelihood on the way.
 *
 * Formula: K = I + D·K₀·D; û = D·K⁻¹·D·b₀; −2ℓ = Σ ln(1/w) + Σ ln A + ln|K| + Σw(y − ȳ)² − (D·b₀)ᵀK⁻¹(D·b₀)
 * @param within sums at one spread between submissions
 * @param spreads D: relative standard deviation of each of the q effects [1]
 * @returns deviance, effects and the root of their covariance D·K⁻¹·D [1]
 * @throws MeasurementError 'bench-model/not-positive'
 * @see HENDERSON-1975
 * @see PATTERSON-THOMPSON-1971
 * @example effectsAt(within, Float64Array.of(0.01, 0.01)).effects
 */
export function effectsAt({ information, score, squares, logDeterminant }: WithinVariants, spreads: Float64Array): EffectsAt {
  const q = spreads.length;
  const k = new Float64Array(q * q);
  for (let c = 0; c < q; c++) {
    for (let d = 0; d < q; d++) k[c * q + d] = (c === d ? 1 : 0) + spreads[c]! * information[c * q + d]! * spreads[d]!;
  }
  const factored = choleskyOf(k, q);
  const half = solveLower(
    factored.lower,
    score.map((b, c) => b * spreads[c]!),
  );
  const explained = half.reduce((sum, value) => sum + value * value, 0);
  const effects = solveUpper(factored.lower, half).map((value, c) => value * spreads[c]!);
  return { deviance: logDeterminant + factored.logDeterminant + squares - explained, effects, root: rootOf(factored.lower, spreads) };
}

/** D·L⁻ᵀ, whose columns are the images of independent unit deviates. */
function rootOf(lower: Float64Array, spreads: Float64Array): Float64Array {
  const q = spreads.length;
  const root = new Float64Array(q * q);
  for (let column = 0; column < q; column++) {
    const unit = new Float64Array(q);
    unit[column] = 1;
    const image = solveUpper(lower, unit);
    for (let c = 0; c < q; c++) root[c * q + column] = spreads[c]! * image[c]!;
  }
  return root;
}
