import { chiSquareCdf, chiSquareQuantile } from '../../../../api/measurement/distributions/chi-square-distribution.js';
import { normalCdf, normalQuantile } from '../../../../api/measurement/distributions/normal-distribution.js';
import { requireProbability } from '../../../../api/measurement/distributions/require-domain.js';
import { MeasurementError } from '../../../../api/measurement/errors.js';
import { integrate, solveRising } from './integrate.js';
import { logGamma } from './log-gamma.js';

const LARGEST_FACTOR = 1e5;

/**
 * One-sided tolerance factor: mean − k s lies below the stated share of a normal population with the stated confidence.
 *
 * Formula: k = t'(confidence; n − 1, z_coverage √n)/√n with noncentral t', by integration over s/σ
 * @param n number of readings, at least 2 [1]
 * @param coverage share of the population in (0, 1) [1]
 * @param confidence in (0, 1) [1]
 * @returns k [1]
 * @throws MeasurementError 'measurement/too-few-readings' when n < 2; 'distributions/out-of-domain' for a coverage or confidence outside (0, 1)
 * @see ISO-16269-6
 * @example oneSidedToleranceFactor(10, 0.9, 0.95) // 2.3546…
 */
export function oneSidedToleranceFactor(n: number, coverage: number, confidence: number): number {
  requireArguments(n, coverage, confidence, 'oneSidedToleranceFactor');
  const degrees = n - 1;
  const z = normalQuantile(coverage);
  const widest = Math.sqrt(chiSquareQuantile(1 - 1e-14, degrees) / degrees);
  const logConstant = Math.LN2 + (degrees / 2) * Math.log(degrees / 2) - logGamma(degrees / 2);
  // Density of w = s/σ; at w = 0 the logarithm is avoided, and only one degree of freedom has a density there.
  const density = (w: number): number => {
    if (w === 0) return degrees === 1 ? Math.exp(logConstant) : 0;
    return Math.exp(logConstant + (degrees - 1) * Math.log(w) - (degrees * w * w) / 2);
  };
  const confidenceOf = (k: number): number => integrate((w) => density(w) * normalCdf(Math.sqrt(n) * (k * w - z)), 0, widest, 1200);
  return solveRising(confidenceOf, confidence, -LARGEST_FACTOR, LARGEST_FACTOR);
}

/**
 * Two-sided tolerance factor: mean ± k s holds the stated share of a normal population with the stated confidence.
 *
 * Formula: ∫P[χ² ≥ ν R²(m)/k²]·φ(m√n)√n dm = confidence, with Φ(m + R) − Φ(m − R) = coverage
 * @param n number of readings, at least 2 [1]
 * @param coverage share of the population in (0, 1) [1]
 * @param confidence in (0, 1) [1]
 * @returns k, exact to integration error [1]
 * @throws MeasurementError 'measurement/too-few-readings' when n < 2; 'distributions/out-of-domain' for a coverage or confidence outside (0, 1)
 * @see ISO-16269-6
 * @example twoSidedToleranceFactor(10, 0.95, 0.95) // 3.3934…
 */
export function twoSidedToleranceFactor(n: number, coverage: number, confidence: number): number {
  requireArguments(n, coverage, confidence, 'twoSidedToleranceFactor');
  const degrees = n - 1;
  const farthest = 8 / Math.sqrt(n);
  const intervals = 120;
  const halfWidthAt = new Map<number, number>();
  const halfWidth = (m: number): number => {
    const known = halfWidthAt.get(m);
    if (known !== undefined) return known;
    const found = solveRising((r) => normalCdf(m + r) - normalCdf(m - r), coverage, 0, m + 10);
    halfWidthAt.set(m, found);
    return found;
  };
  const weight = (m: number): number => Math.sqrt((2 * n) / Math.PI) * Math.exp((-n * m * m) / 2);
  const confidenceOf = (k: number): number =>
    integrate((m) => (1 - chiSquareCdf((degrees * halfWidth(m) ** 2) / (k * k), degrees)) * weight(m), 0, farthest, intervals);
  return solveRising(confidenceOf, confidence, 0, LARGEST_FACTOR);
}

/**
 * Howe's approximation of the two-sided tolerance factor; within about 1 % of the exact one from n = 5.
 *
 * Formula: k = z((1 + coverage)/2)·√[(n − 1)(1 + 1/n)/χ²(1 − confidence; n − 1)]
 * @param n number of readings, at least 2 [1]
 * @param coverage share of the population in (0, 1) [1]
 * @param confidence in (0, 1) [1]
 * @returns k, approximate [1]
 * @throws MeasurementError 'measurement/too-few-readings' when n < 2; 'distributions/out-of-domain' for a coverage or confidence outside (0, 1)
 * @see HOWE-1969
 * @example howeToleranceFactor(43, 0.9, 0.99) // 2.2173…
 */
export function howeToleranceFactor(n: number, coverage: number, confidence: number): number {
  requireArguments(n, coverage, confidence, 'howeToleranceFactor');
  return normalQuantile((1 + coverage) / 2) * Math.sqrt(((n - 1) * (1 + 1 / n)) / chiSquareQuantile(1 - confidence, n - 1));
}

/**
 * Readings needed for the smallest one to be a one-sided tolerance limit, whatever the distribution.
 *
 * Formula: smallest n with 1 − coverageⁿ ≥ confidence
 * @param coverage share of the population in (0, 1) [1]
 * @param confidence in (0, 1) [1]
 * @returns n [1]
 * @throws MeasurementError 'distributions/out-of-domain' for a coverage or confidence outside (0, 1)
 * @see WILKS-1941
 * @example readingsForMinimumAsLimit(0.9, 0.95) // 29
 */
export function readingsForMinimumAsLimit(coverage: number, confidence: number): number {
  requireProbability(coverage, 'readingsForMinimumAsLimit, coverage');
  requireProbability(confidence, 'readingsForMinimumAsLimit, confidence');
  return Math.ceil(Math.log1p(-confidence) / Math.log(coverage) - 1e-12);
}

function requireArguments(n: number, coverage: number, confidence: number, where: string): void {
  requireProbability(coverage, `${where}, coverage`);
  requireProbability(confidence, `${where}, confidence`);
  if (!(Number.isInteger(n) && n >= 2)) {
    throw new MeasurementError('measurement/too-few-readings', `${where}: n is ${n}, expected a whole number of at least 2. Add readings.`);
  }
}
