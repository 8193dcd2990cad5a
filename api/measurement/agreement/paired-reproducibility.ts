import { chiSquareQuantile } from '../distributions/chi-square-distribution.js';
import { MeasurementError } from '../errors.js';
import { requirePositive } from '../figures/require-positive.js';

export interface PairedReproducibility {
  /** relative standard deviation of a single result [1] */
  readonly relativeSd: number;
  readonly low95: number;
  readonly high95: number;
  /** pairs, each of which gives one degree of freedom */
  readonly pairs: number;
}

/**
 * How far two results of the same thing differ, by different people on different rigs: the standard deviation of one of them.
 *
 * Formula: s = √(Σ d²/2n), d = ln(again/first), n degrees of freedom; 95 % interval s·√(n/χ²)
 * @param pairs results found first and again, above 0 [any one unit a pair]
 * @returns relativeSd, low95, high95 [1], pairs
 * @throws MeasurementError 'measurement/too-few-readings' without a pair; 'figures/not-positive' unless all are finite and above 0
 * @see ISO-5725-2
 * @example pairedReproducibility([[100, 103], [50, 49]]).relativeSd // 0.0179…
 */
export function pairedReproducibility(pairs: readonly (readonly [first: number, again: number])[]): PairedReproducibility {
  if (pairs.length === 0) {
    throw new MeasurementError(
      'measurement/too-few-readings',
      'pairedReproducibility: found no pair, expected at least 1. Test something again.',
    );
  }
  const squares = pairs.map(([first, again]) => {
    requirePositive(first, 'first', 'pairedReproducibility');
    requirePositive(again, 'again', 'pairedReproducibility');
    return Math.log(again / first) ** 2;
  });
  const n = pairs.length;
  const relativeSd = Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / (2 * n));
  const end = (p: number) => relativeSd * Math.sqrt(n / chiSquareQuantile(p, n));
  return { relativeSd, low95: end(0.975), high95: end(0.025), pairs: n };
}
