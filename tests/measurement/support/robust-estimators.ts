/** Robust estimators of textbooks that the core does not use; beside Algorithm A they show that all see the same data. */
import { median } from '../../../api/measurement/summary/median.js';

const MAD_FACTOR = 1.4826;

/** Median absolute deviation, scaled to the standard deviation of a normal distribution (Hampel 1974). */
export function scaledMad(values: readonly number[], factor = MAD_FACTOR): number {
  const centre = median(values);
  return factor * median(values.map((value) => Math.abs(value - centre)));
}

const winsorised = (values: readonly number[], centre: number, limit: number): number[] =>
  values.map((value) => Math.min(centre + limit, Math.max(centre - limit, value)));
const meanOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Huber's location with the scale of the scaled MAD (Huber 1981; k = 1.5). */
export function huberLocation(values: readonly number[], k = 1.5): number {
  const scale = scaledMad(values);
  let centre = median(values);
  for (let i = 0; i < 200; i += 1) centre = meanOf(winsorised(values, centre, k * scale));
  return centre;
}

/** Huber's proposal 2: location and scale together (Huber 1964; k = 1.5, constant of the normal distribution). */
export function huberProposal2(values: readonly number[], k = 1.5): { location: number; scale: number } {
  const phi = Math.exp(-(k * k) / 2) / Math.sqrt(2 * Math.PI);
  // Φ(1.5) by Abramowitz and Stegun, table 26.1.
  const below = 0.9331927987311419;
  const theta = 2 * below - 1;
  const beta = theta + k * k * (1 - theta) - 2 * k * phi;
  let [location, scale] = [median(values), scaledMad(values)];
  for (let i = 0; i < 500; i += 1) {
    const pulled = winsorised(values, location, k * scale);
    location = meanOf(pulled);
    const squares = pulled.reduce((sum, value) => sum + (value - location) ** 2, 0);
    scale = Math.sqrt(squares / (values.length - 1) / beta);
  }
  return { location, scale };
}

/** Rousseeuw and Croux 1993: the h(h − 1)/2-th smallest distance of pairs; constant 1/(√2·Φ⁻¹(5/8)), factor for even n ≥ 12 by M. Mächler (robustbase; from memory). */
export function qn(values: readonly number[]): number {
  const n = values.length;
  const h = Math.floor(n / 2) + 1;
  const distances = values.flatMap((one, i) => values.slice(i + 1).map((other) => Math.abs(one - other))).sort((a, b) => a - b);
  const correction = 1 + (3.67561 + (1.9654 + (6.987 - 77 / n) / n) / n) / n;
  return (2.21914 / correction) * distances[(h * (h - 1)) / 2 - 1]!;
}

/** Rousseeuw and Croux 1993: low median of the high medians of distances. */
export function sn(values: readonly number[]): number {
  const n = values.length;
  const highMedians = values.map((one) => values.map((other) => Math.abs(one - other)).sort((a, b) => a - b)[Math.floor(n / 2)]!);
  const low = highMedians.sort((a, b) => a - b)[Math.floor((n + 1) / 2) - 1]!;
  return 1.1926 * (n % 2 === 1 && n > 9 ? n / (n - 0.9) : 1) * low;
}
