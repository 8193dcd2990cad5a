import { chiSquareCdf } from '../../../../api/measurement/distributions/chi-square-distribution.js';
import { MeasurementError } from '../../../../api/measurement/errors.js';

export interface Concordance {
  /** sum of mean ranks of each object, smallest value ranked first */
  readonly rankSums: readonly number[];
  /** Kendall's W: 0 no agreement, 1 the same order by all; null when every judge ties all objects */
  readonly w: number | null;
  readonly chiSquare: number | null;
  readonly degreesOfFreedom: number;
  readonly p: number | null;
}

/**
 * How far several testers, or several categories, order the same objects alike.
 *
 * Formula: S = Σ(R − R̄)²; W = 12S/(b²(k³ − k) − bΣ(t³ − t)), ties take mean ranks; χ² = b(k − 1)W with k − 1 degrees of freedom (Friedman)
 * @param judges for each of b ≥ 2 judges its values of the same k ≥ 2 objects [any one unit per judge]
 * @returns rankSums, w, chiSquare, degreesOfFreedom, p [1]
 * @throws MeasurementError 'agreement/bad-table' for fewer than 2 judges or objects, rows of unequal length, or a value that is not finite
 * @see KENDALL-1948
 * @example concordance([[1, 2, 3], [1, 2, 3]]).w // 1
 */
export function concordance(judges: readonly (readonly number[])[]): Concordance {
  const objects = judges[0]?.length ?? 0;
  if (judges.length < 2 || objects < 2 || judges.some((row) => row.length !== objects || !row.every(Number.isFinite))) {
    throw new MeasurementError(
      'agreement/bad-table',
      `concordance: found ${judges.length} rows, the first of ${objects} values; expected at least 2 rows of as many finite values, 2 or more. Leave out objects that not all have.`,
    );
  }
  const ranks = judges.map(meanRanks);
  const rankSums = Array.from({ length: objects }, (_, j) => ranks.reduce((sum, row) => sum + row[j]!, 0));
  const centre = (judges.length * (objects + 1)) / 2;
  const spread = rankSums.reduce((sum, rankSum) => sum + (rankSum - centre) ** 2, 0);
  const most = judges.length ** 2 * (objects ** 3 - objects) - judges.length * judges.reduce((sum, row) => sum + tieTerm(row), 0);
  const degreesOfFreedom = objects - 1;
  if (most === 0) return { rankSums, w: null, chiSquare: null, degreesOfFreedom, p: null };
  const w = (12 * spread) / most;
  const chiSquare = judges.length * degreesOfFreedom * w;
  return { rankSums, w, chiSquare, degreesOfFreedom, p: 1 - chiSquareCdf(chiSquare, degreesOfFreedom) };
}

const meanRanks = (row: readonly number[]): number[] =>
  row.map((value) => row.filter((other) => other < value).length + (row.filter((other) => other === value).length + 1) / 2);

const tieTerm = (row: readonly number[]): number =>
  row.reduce((sum, value) => sum + row.filter((other) => other === value).length ** 2 - 1, 0);
