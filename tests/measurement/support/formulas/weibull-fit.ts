import { requirePositive } from '../../../../api/measurement/figures/require-positive.js';
import { logGamma } from './log-gamma.js';
import { requireProbability } from '../../../../api/measurement/distributions/require-domain.js';
import { MeasurementError } from '../../../../api/measurement/errors.js';
import { compensatedSum } from '../../../../api/measurement/summary/compensated-sum.js';
import { mean as meanOf } from '../../../../api/measurement/summary/mean.js';
import { requireReadings } from '../../../../api/measurement/summary/require-readings.js';

export interface WeibullFit {
  n: number;
  /** Weibull modulus; biased upward for few readings, so n belongs beside it */
  shape: number;
  scale: number;
  logLikelihood: number;
  mean: number;
}

/**
 * Two-parameter Weibull fit by maximum likelihood, without bias correction.
 *
 * Formula: Σxᵏ ln x/Σxᵏ − 1/k = mean(ln x); scale = (Σxᵏ/n)^(1/k); mean = scale·Γ(1 + 1/k)
 * @param values n ≥ 3 strengths, all above 0 [any one unit]
 * @returns n, shape, logLikelihood [1]; scale and mean [same unit]
 * @throws MeasurementError 'measurement/too-few-readings' when n < 3; 'fitting/not-positive'; 'measurement/no-spread' when all are equal; 'measurement/not-a-number'
 * @see WEIBULL-1951
 * @example weibullFit([3.03, 5.53, 5.6, 9.3, 9.92, 12.51, 12.95, 15.21, 16.04, 16.84]).shape // 2.588…
 */
export function weibullFit(values: readonly number[]): WeibullFit {
  requireReadings(values, 3, 'weibullFit');
  const largest = values.reduce((a, b) => Math.max(a, b));
  const bad = values.findIndex((value) => value <= 0);
  if (bad >= 0) {
    throw new MeasurementError(
      'fitting/not-positive',
      `weibullFit: reading ${bad + 1} is ${String(values[bad])}, expected more than 0. A strength is positive.`,
    );
  }
  if (values.every((value) => value === largest)) {
    throw new MeasurementError(
      'measurement/no-spread',
      'weibullFit: all readings are equal, expected a spread to fit. Show the mean alone.',
    );
  }
  // Relative to the largest reading no power can overflow.
  const logs = values.map((value) => Math.log(value / largest));
  const shape = solveShape(logs);
  const n = values.length;
  const scale = largest * (compensatedSum(logs.map((log) => Math.exp(shape * log))) / n) ** (1 / shape);
  // At the optimum Σ(x/scale)ᵏ = n.
  const logLikelihood =
    n * Math.log(shape) - n * Math.log(scale) + (shape - 1) * compensatedSum(values.map((value) => Math.log(value / scale))) - n;
  return { n, shape, scale, logLikelihood, mean: scale * Math.exp(logGamma(1 + 1 / shape)) };
}

/**
 * Strength that the stated share of a Weibull population stays below.
 *
 * Formula: x_p = scale·(−ln(1 − p))^(1/shape); p = 0.1 gives B10
 * @param fit shape and scale of the population
 * @param share p in (0, 1) [1]
 * @returns x_p [unit of the scale]
 * @throws MeasurementError 'distributions/out-of-domain' for a share outside (0, 1); 'figures/not-positive' for shape or scale
 * @see WEIBULL-1951
 * @example weibullQuantile({ shape: 1, scale: 1 }, 0.5) // 0.6931…
 */
export function weibullQuantile(fit: Pick<WeibullFit, 'shape' | 'scale'>, share: number): number {
  requirePositive(fit.shape, 'shape', 'weibullQuantile');
  requirePositive(fit.scale, 'scale', 'weibullQuantile');
  requireProbability(share, 'weibullQuantile');
  return fit.scale * (-Math.log1p(-share)) ** (1 / fit.shape);
}

function solveShape(logs: readonly number[]): number {
  const averageLog = meanOf(logs);
  const excess = (shape: number): number => {
    const powers = logs.map((log) => Math.exp(shape * log));
    return compensatedSum(powers.map((power, i) => power * logs[i]!)) / compensatedSum(powers) - 1 / shape - averageLog;
  };
  let [low, high] = [1e-6, 1];
  while (excess(high) < 0) [low, high] = [high, high * 2];
  while (high - low > 1e-15 * high) {
    const middle = (low + high) / 2;
    if (excess(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
