import { requireProbability } from '../../../../api/measurement/distributions/require-domain.js';
import { MeasurementError } from '../../../../api/measurement/errors.js';
import { mean } from '../../../../api/measurement/summary/mean.js';
import { standardDeviation } from '../../../../api/measurement/summary/standard-deviation.js';

/** Draws one value of an input from a source of numbers uniform in (0, 1). */
export type InputSampler = (nextUniform: () => number) => number;

export interface PropagatedResult {
  mean: number;
  standardUncertainty: number;
  low: number;
  high: number;
}

const FEWEST_DRAWS = 10_000;

/**
 * Propagates whole distributions through a model by drawing from them; randomness is handed in, never taken.
 *
 * Formula: y_r = f(x_1r, …, x_Nr); mean, standard deviation and the probabilistically symmetric interval of the sorted y
 * @param samplers one per input of the model
 * @param model the measurement function [result unit]
 * @param nextUniform source of numbers uniform in (0, 1), for example a seeded generator
 * @param options draws ≥ 10 000 [1]; level of the interval in (0, 1) [1]
 * @returns mean, standardUncertainty, low, high [result unit]
 * @throws MeasurementError 'uncertainty/too-few-draws' below 10 000; 'distributions/out-of-domain' for a bad level; 'measurement/not-a-number' when the model gives one
 * @see JCGM-101 7
 * @example propagateDistributions([(next) => next()], ([x = 0]) => x, () => 0.5, { draws: 10_000 }).mean // 0.5
 */
export function propagateDistributions(
  samplers: readonly InputSampler[],
  model: (inputs: readonly number[]) => number,
  nextUniform: () => number,
  options: { draws: number; level?: number },
): PropagatedResult {
  const { draws, level = 0.95 } = options;
  if (!(Number.isInteger(draws) && draws >= FEWEST_DRAWS)) {
    throw new MeasurementError(
      'uncertainty/too-few-draws',
      `propagateDistributions: found ${draws} draws, expected a whole number of at least ${FEWEST_DRAWS}. Draw more.`,
    );
  }
  requireProbability(level, 'propagateDistributions');
  const results = Array.from({ length: draws }, () => model(samplers.map((draw) => draw(nextUniform))));
  const average = mean(results);
  const sorted = Float64Array.from(results).sort();
  const within = Math.floor(level * draws + 0.5);
  const first = Math.min(Math.floor((draws - within + 1) / 2), draws - within - 1);
  const low = sorted[Math.max(0, first)]!;
  return {
    mean: average,
    standardUncertainty: standardDeviation(results),
    low,
    high: sorted[Math.min(draws - 1, Math.max(0, first) + within)]!,
  };
}
