import { tCdf, tQuantile } from '../../../../api/measurement/distributions/t-distribution.js';
import { MeasurementError } from '../../../../api/measurement/errors.js';
import { sampleSummary } from '../../../../api/measurement/summary/sample-summary.js';
import type { SampleSummary } from '../../../../api/measurement/summary/sample-summary.js';

export interface DifferenceTest {
  /** first less second */
  difference: number;
  standardError: number;
  t: number;
  degreesOfFreedom: number;
  /** two-sided */
  p: number;
  low: number;
  high: number;
}

/**
 * Difference of two means without assuming equal variances.
 *
 * Formula: t = (x̄ − ȳ)/√(s_x²/n_x + s_y²/n_y), ν by Welch–Satterthwaite
 * @param first readings, n ≥ 2, or their mean, sd and n [any one unit]
 * @param second the same of another sample [same unit]
 * @param level confidence level of the interval in (0, 1) [1]
 * @returns difference, standardError, low, high [same unit]; t, degreesOfFreedom, p [1]
 * @throws MeasurementError 'measurement/too-few-readings' when n < 2; 'measurement/no-spread' when neither sample has any spread; 'measurement/not-a-number'
 * @see WELCH-1947
 * @example welchTest([1, 2, 3], [2, 3, 4]).difference // -1
 */
export function welchTest(
  first: readonly number[] | SampleSummary,
  second: readonly number[] | SampleSummary,
  level = 0.95,
): DifferenceTest {
  const [x, y] = [sampleSummary(first, 'welchTest, first'), sampleSummary(second, 'welchTest, second')];
  const [varianceX, varianceY] = [x.sd ** 2 / x.n, y.sd ** 2 / y.n];
  const variance = varianceX + varianceY;
  requireSpread(variance, 'welchTest');
  const degreesOfFreedom = variance ** 2 / (varianceX ** 2 / (x.n - 1) + varianceY ** 2 / (y.n - 1));
  return differenceTest(x.mean - y.mean, Math.sqrt(variance), degreesOfFreedom, level);
}

/**
 * Mean difference of readings that belong together two by two.
 *
 * Formula: t = d̄/(s_d/√n), ν = n − 1
 * @param first n ≥ 2 readings [any one unit]
 * @param second their partners in the same order [same unit]
 * @param level confidence level of the interval in (0, 1) [1]
 * @returns difference, standardError, low, high [same unit]; t, degreesOfFreedom, p [1]
 * @throws MeasurementError 'comparison/unequal-length'; 'measurement/too-few-readings' when n < 2; 'measurement/no-spread' when all differences are equal
 * @see STUDENT-1908
 * @example pairedTest([1, 2, 4], [2, 3, 4]).difference // -0.6666…
 */
export function pairedTest(first: readonly number[], second: readonly number[], level = 0.95): DifferenceTest {
  if (first.length !== second.length) {
    throw new MeasurementError(
      'comparison/unequal-length',
      `pairedTest: found ${first.length} and ${second.length} readings, expected as many of each. Pair every reading.`,
    );
  }
  const differences = sampleSummary(
    first.map((value, i) => value - second[i]!),
    'pairedTest',
  );
  requireSpread(differences.sd, 'pairedTest');
  return differenceTest(differences.mean, differences.sd / Math.sqrt(differences.n), differences.n - 1, level);
}

function requireSpread(spread: number, where: string): void {
  if (!(spread > 0)) {
    throw new MeasurementError(
      'measurement/no-spread',
      `${where}: the readings show no spread, so no test is possible. Compare the means as they are.`,
    );
  }
}

function differenceTest(difference: number, standardError: number, degreesOfFreedom: number, level: number): DifferenceTest {
  const t = difference / standardError;
  const halfWidth = tQuantile((1 + level) / 2, degreesOfFreedom) * standardError;
  return {
    difference,
    standardError,
    t,
    degreesOfFreedom,
    p: Math.min(1, 2 * tCdf(-Math.abs(t), degreesOfFreedom)),
    low: difference - halfWidth,
    high: difference + halfWidth,
  };
}
