import { MeasurementError } from '../errors.js';

/** A mean with its standard uncertainty. */
export interface MeanWithUncertainty {
  readonly mean: number;
  readonly standardUncertainty: number;
}

export interface Consensus {
  readonly mean: number;
  /** between-submission variance τ² */
  readonly betweenVariance: number;
  readonly standardError: number;
}

const ITERATIONS = 200;

/**
 * Consensus of several means with a between-submission variance.
 *
 * Formula: w = 1/(u² + τ²), x̃ = Σwx/Σw, τ² ≥ 0 solves Σw(x − x̃)² = k − 1; standard error 1/√Σw
 * @param means k ≥ 2 means [one unit] with standard uncertainties above 0 [same unit]
 * @returns mean, standardError [same unit], betweenVariance [unit²]; τ² is 0 when the means agree within their uncertainties
 * @throws MeasurementError 'measurement/too-few-readings' for k < 2; 'consensus/no-uncertainty' for a standard uncertainty that is not above 0
 * @see MANDEL-PAULE-1970
 * @example mandelPaule([{ mean: 10, standardUncertainty: 1 }, { mean: 10, standardUncertainty: 1 }]).mean // 10
 */
export function mandelPaule(means: readonly MeanWithUncertainty[]): Consensus {
  if (means.length < 2)
    throw new MeasurementError(
      'measurement/too-few-readings',
      `mandelPaule: found ${means.length} means, expected at least 2. Use the one mean itself.`,
    );
  for (const { standardUncertainty } of means) {
    if (!(standardUncertainty > 0))
      throw new MeasurementError(
        'consensus/no-uncertainty',
        `mandelPaule: standard uncertainty is ${standardUncertainty}, expected above 0. Test more specimens.`,
      );
  }
  let [low, high] = [0, Math.max(...means.map(({ mean }) => mean)) - Math.min(...means.map(({ mean }) => mean))].map(
    (width) => width * width * means.length,
  ) as [number, number];
  if (weighted(means, 0).spread <= means.length - 1) high = 0;
  for (let i = 0; i < ITERATIONS && high - low > 0; i++) {
    const middle = (low + high) / 2;
    if (weighted(means, middle).spread > means.length - 1) low = middle;
    else high = middle;
  }
  const betweenVariance = high;
  const { mean, totalWeight } = weighted(means, betweenVariance);
  return { mean, betweenVariance, standardError: 1 / Math.sqrt(totalWeight) };
}

function weighted(means: readonly MeanWithUncertainty[], betweenVariance: number): { mean: number; totalWeight: number; spread: number } {
  const weights = means.map(({ standardUncertainty }) => 1 / (standardUncertainty ** 2 + betweenVariance));
  const totalWeight = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = means.reduce((sum, point, i) => sum + (weights[i] ?? 0) * point.mean, 0) / totalWeight;
  const spread = means.reduce((sum, point, i) => sum + (weights[i] ?? 0) * (point.mean - mean) ** 2, 0);
  return { mean, totalWeight, spread };
}
