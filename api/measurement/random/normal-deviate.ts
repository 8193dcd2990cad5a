import { tDeviate } from './t-deviate.js';
import type { RandomStream } from './random-stream.js';

/**
 * Draws from the standard normal distribution.
 *
 * Formula: polar method: u√(−2 ln w/w), w = u² + v² ≤ 1
 * @param random seeded stream
 * @returns deviate with mean 0 and standard deviation 1 [1]
 * @throws nothing
 * @see MARSAGLIA-BRAY-1964
 * @example normalDeviate(randomStream([1, 2, 3, 4]))
 */
export function normalDeviate(random: RandomStream): number {
  return tDeviate(random, Infinity);
}
