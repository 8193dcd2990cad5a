import { tCdf } from '../../../../api/measurement/distributions/t-distribution.js';
import { requireProbability } from '../../../../api/measurement/distributions/require-domain.js';
import { MeasurementError } from '../../../../api/measurement/errors.js';
import type { SampleSummary } from '../../../../api/measurement/summary/sample-summary.js';
import { welchTest } from './welch-test.js';

export interface EquivalenceTest {
  difference: number;
  degreesOfFreedom: number;
  /** against a difference at or below the lower margin */
  pLower: number;
  /** against a difference at or above the upper margin */
  pUpper: number;
  /** limits of the 1 − 2α interval */
  low: number;
  high: number;
  isEquivalent: boolean;
}

/**
 * Two one-sided Welch tests: is the difference of two means shown to lie within stated margins?
 *
 * Formula: t_low = (d − m_low)/u, t_high = (d − m_high)/u; equivalent when both p < α
 * @param first readings, n ≥ 2, or their mean, sd and n [any one unit]
 * @param second the same of another sample [same unit]
 * @param margins lower and upper margin of the difference, lower < upper [same unit]
 * @param alpha significance level in (0, 0.5) [1]
 * @returns difference, low, high [same unit]; degreesOfFreedom, pLower, pUpper [1]; isEquivalent
 * @throws MeasurementError 'comparison/bad-margins'; 'distributions/out-of-domain' for a bad level; 'measurement/too-few-readings'; 'measurement/no-spread'
 * @see SCHUIRMANN-1987
 * @example equivalenceTest([1, 2, 3, 2], [2, 2, 3, 1], [-5, 5]).isEquivalent // true
 */
export function equivalenceTest(
  first: readonly number[] | SampleSummary,
  second: readonly number[] | SampleSummary,
  margins: readonly [low: number, high: number],
  alpha = 0.05,
): EquivalenceTest {
  requireProbability(2 * alpha, 'equivalenceTest');
  const [lowMargin, highMargin] = margins;
  if (!(lowMargin < highMargin)) {
    throw new MeasurementError(
      'comparison/bad-margins',
      `equivalenceTest: found margins ${lowMargin} and ${highMargin}, expected the lower one first. Order the margins.`,
    );
  }
  const { difference, standardError, degreesOfFreedom, low, high } = welchTest(first, second, 1 - 2 * alpha);
  const pLower = tCdf(-(difference - lowMargin) / standardError, degreesOfFreedom);
  const pUpper = tCdf((difference - highMargin) / standardError, degreesOfFreedom);
  return { difference, degreesOfFreedom, pLower, pUpper, low, high, isEquivalent: Math.max(pLower, pUpper) < alpha };
}
