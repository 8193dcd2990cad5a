import { MeasurementError } from '../../../../api/measurement/errors.js';
import { compensatedSum } from '../../../../api/measurement/summary/compensated-sum.js';
import { mean } from '../../../../api/measurement/summary/mean.js';
import { requireReadings } from '../../../../api/measurement/summary/require-readings.js';

/**
 * How much each reading resembles the one before it; far from zero means that the order of the readings matters.
 *
 * Formula: r₁ = Σ(xᵢ − x̄)(xᵢ₊₁ − x̄) / Σ(xᵢ − x̄)²
 * @param values n ≥ 2 readings in the order they were taken [any one unit]
 * @returns r₁ in [−1, 1] [1]
 * @throws MeasurementError 'measurement/too-few-readings' when n < 2; 'measurement/no-spread' when all readings are equal
 * @see NIST-STRD
 * @example lag1Autocorrelation([1, 2, 3]) // 0
 */
export function lag1Autocorrelation(values: readonly number[]): number {
  requireReadings(values, 2, 'lag1Autocorrelation');
  const average = mean(values);
  const deviations = values.map((value) => value - average);
  const squares = compensatedSum(deviations.map((deviation) => deviation * deviation));
  if (squares === 0) {
    throw new MeasurementError(
      'measurement/no-spread',
      'lag1Autocorrelation: all readings are equal, expected at least two different ones. Leave the figure out.',
    );
  }
  return compensatedSum(deviations.slice(1).map((deviation, i) => deviation * deviations[i]!)) / squares;
}
