import { cochranTest } from '../outliers/cochran-c.js';
import type { CochranResult } from '../outliers/cochran-c.js';
import { doubleGrubbsTest } from '../outliers/double-grubbs.js';
import type { DoubleGrubbsResult } from '../outliers/double-grubbs.js';
import { grubbsTest } from '../outliers/grubbs.js';
import type { GrubbsResult } from '../outliers/grubbs.js';
import { mandelHCritical, mandelKCritical } from './mandel-critical.js';
import type { RoundRobin } from './round-robin.js';

export interface RoundRobinScreen {
  /** testers by index whose |h| is above the critical value; null for fewer than 3 testers */
  readonly farMeans: readonly number[] | null;
  /** testers by index whose k is above the critical value */
  readonly wideSpreads: readonly number[];
  readonly cochran: CochranResult;
  /** of the cell means; null for fewer than 3 testers */
  readonly grubbs: GrubbsResult | null;
  /** of the cell means; null outside 4 to 20 testers */
  readonly doubleGrubbs: DoubleGrubbsResult | null;
}

/**
 * Looks at a round robin for testers that stand apart; nothing is removed.
 *
 * Formula: |h| > h_crit(p), k > k_crit(p, n), Cochran's C of the spreads, Grubbs' single and double test of the cell means; n the most common cell size
 * @param robin result of `roundRobin`
 * @param alpha level of h and k: 0.005 in E691, 0.01 in ISO 5725-2; Cochran and Grubbs are taken at 5 % [1]
 * @returns testers and test results by index
 * @throws MeasurementError 'distributions/out-of-domain' for a bad level
 * @see ISO-5725-2 7.3
 * @example screenRoundRobin(roundRobin([[1, 2], [1, 2], [9, 8]])).wideSpreads // []
 */
export function screenRoundRobin(robin: RoundRobin, alpha = 0.005): RoundRobinScreen {
  const testers = robin.cellMeans.length;
  const size = mostCommon(robin.cellSizes);
  const beyond = (values: readonly (number | null)[], critical: number): number[] =>
    values.flatMap((value, i) => (value !== null && Math.abs(value) > critical ? [i] : []));
  return {
    farMeans: testers < 3 ? null : beyond(robin.h, mandelHCritical(testers, alpha)),
    wideSpreads: beyond(robin.k, mandelKCritical(testers, size, alpha)),
    cochran: cochranTest(robin.cellSds, size),
    grubbs: testers < 3 ? null : grubbsTest(robin.cellMeans),
    doubleGrubbs: testers < 4 || testers > 20 ? null : doubleGrubbsTest(robin.cellMeans),
  };
}

/** The size that most cells have; the smaller of two as common (ISO 5725-2 7.3.3.3 speaks of the majority, the tie is common practice). */
function mostCommon(sizes: readonly number[]): number {
  const count = (size: number): number => sizes.filter((other) => other === size).length;
  return sizes.reduce((best, size) => (count(size) > count(best) || (count(size) === count(best) && size < best) ? size : best));
}
