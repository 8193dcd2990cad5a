import { MeasurementError } from '../errors.js';
import { compensatedSum } from '../summary/compensated-sum.js';
import { mean } from '../summary/mean.js';
import { requireReadings } from '../summary/require-readings.js';
import { standardDeviation } from '../summary/standard-deviation.js';

export interface RoundRobin {
  readonly cellSizes: readonly number[];
  readonly cellMeans: readonly number[];
  readonly cellSds: readonly number[];
  /** mean of all readings */
  readonly mean: number;
  /** standard deviation of the cell means */
  readonly sdOfMeans: number;
  /** repeatability: one tester, one rig */
  readonly repeatabilitySd: number;
  /** between testers */
  readonly betweenSd: number;
  /** reproducibility: another tester, another rig */
  readonly reproducibilitySd: number;
  /** Mandel's between-tester statistic of each tester; null when all cell means are equal */
  readonly h: readonly (number | null)[];
  /** Mandel's within-tester statistic of each tester; null when no cell shows any spread */
  readonly k: readonly (number | null)[];
}

/**
 * Precision of a method from a round robin of one variant.
 *
 * Formula: s_r² = Σ(n−1)s²/Σ(n−1); s_d² = [Σn·x̄² − x̿²Σn]/(p−1); n̿ = [Σn − Σn²/Σn]/(p−1); s_L² = max(0, (s_d² − s_r²)/n̿); s_R² = s_L² + s_r²; h = (x̄ − mean)/s_x̄; k = s/s_r
 * @param cells readings of each of p ≥ 2 testers, n ≥ 2 each, not necessarily as many [any one unit]
 * @returns means and standard deviations [same unit]; h, k [1]
 * @throws MeasurementError 'agreement/too-few-testers' for p < 2; 'measurement/too-few-readings' for n < 2; 'measurement/not-a-number'
 * @see ISO-5725-2 7.4 (E691 gives the same for equal n)
 * @example roundRobin([[1, 2, 3], [2, 3, 4]]).repeatabilitySd // 1
 */
export function roundRobin(cells: readonly (readonly number[])[]): RoundRobin {
  if (cells.length < 2) {
    throw new MeasurementError(
      'agreement/too-few-testers',
      `roundRobin: found ${cells.length} testers, expected at least 2. Invite another tester.`,
    );
  }
  cells.forEach((cell, i) => requireReadings(cell, 2, `roundRobin, tester ${i + 1}`));
  const cellSizes = cells.map((cell) => cell.length);
  const cellMeans = cells.map((cell) => mean(cell));
  const cellSds = cells.map((cell) => standardDeviation(cell));
  const grandMean = mean(cells.flat());
  const within = withinVariance(cellSizes, cellSds);
  const between = betweenVariance(cellSizes, cellMeans, grandMean, within);
  const sdOfMeans = standardDeviation(cellMeans);
  const repeatabilitySd = Math.sqrt(within);
  return {
    cellSizes,
    cellMeans,
    cellSds,
    mean: grandMean,
    sdOfMeans,
    repeatabilitySd,
    betweenSd: Math.sqrt(between),
    reproducibilitySd: Math.sqrt(between + within),
    h: cellMeans.map((value) => (sdOfMeans === 0 ? null : (value - grandMean) / sdOfMeans)),
    k: cellSds.map((value) => (repeatabilitySd === 0 ? null : value / repeatabilitySd)),
  };
}

function withinVariance(sizes: readonly number[], sds: readonly number[]): number {
  const degrees = sizes.reduce((sum, n) => sum + n - 1, 0);
  return compensatedSum(sds.map((sd, i) => (sizes[i]! - 1) * sd * sd)) / degrees;
}

function betweenVariance(sizes: readonly number[], means: readonly number[], grandMean: number, within: number): number {
  const others = sizes.length - 1;
  const total = sizes.reduce((sum, n) => sum + n, 0);
  const ofMeans = compensatedSum(means.map((value, i) => sizes[i]! * (value - grandMean) ** 2)) / others;
  const typicalSize = (total - sizes.reduce((sum, n) => sum + n * n, 0) / total) / others;
  return Math.max(0, (ofMeans - within) / typicalSize);
}
