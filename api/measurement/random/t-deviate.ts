import type { RandomStream } from './random-stream.js';

const PER_UINT32 = 2 ** -31;
/** As in `random-stream.ts`. */
const { expm1, log, sqrt } = Math;
const NORMAL = Infinity;

/**
 * Draws from Student's t distribution with ν degrees of freedom; from the normal distribution for ν = ∞.
 *
 * Formula: u√(ν(w^(−2/ν) − 1)/w), w = u² + v² ≤ 1; its limit u√(−2 ln w/w) for ν = ∞
 * @param random seeded stream
 * @param degreesOfFreedom ν > 0; Infinity allowed [1]
 * @returns deviate [1]
 * @throws nothing: the caller checks ν once, not at each draw
 * @see BAILEY-1994
 * @example tDeviate(randomStream([1, 2, 3, 4]), 9)
 */
export function tDeviate(random: RandomStream, degreesOfFreedom: number): number {
  let u: number;
  let w: number;
  do {
    u = (random.nextUint32() + 0.5) * PER_UINT32 - 1;
    const v = (random.nextUint32() + 0.5) * PER_UINT32 - 1;
    w = u * u + v * v;
  } while (w > 1);
  // expm1 keeps the digits that w^(−2/ν) − 1 loses when ν is large.
  const square = degreesOfFreedom === NORMAL ? -2 * log(w) : degreesOfFreedom * expm1((-2 * log(w)) / degreesOfFreedom);
  return u * sqrt(square / w);
}
