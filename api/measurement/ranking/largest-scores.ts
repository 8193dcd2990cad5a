import { LargestSeen, tailOfDraws } from './largest-seen.js';
import { normalScore } from './normal-score.js';

/** The pairs that are open, and how the difference of each is judged; n·n. */
export interface PairScales {
  readonly n: number;
  /** 1/s_ij, 0 for a pair that is left out [1/unit] */
  readonly precision: Float64Array;
  /** ν_ij [1] */
  readonly degreesOfFreedom: Float64Array;
}

/**
 * Quantile of the largest normal score of draws over a set of ordered pairs.
 *
 * Formula: Z_b = max over pairs (i, j) of z((e_bi − e_bj)/s_ij; ν_ij); the ⌈level·(B + 1)⌉-th smallest of the B largest. A score is never above its difference, so a pair is looked at only where
 * that could rise above the tail: the result is that of looking at all
 * @param errors B·n drawn deviations, draw by draw [any one unit]
 * @param pairs open pairs with 1/s_ij and ν_ij
 * @param level in (0, 1) [1]
 * @returns quantile, 0 or more [1]
 * @throws nothing: the caller checks the shapes
 * @see WESTFALL-YOUNG-1993
 * @example largestScoreQuantile(Float64Array.of(1, 0), { n: 2, precision: Float64Array.of(0, 1, 1, 0), degreesOfFreedom: Float64Array.of(Infinity, Infinity, Infinity, Infinity) }, 0.5) // 1
 */
export function largestScoreQuantile(errors: Float64Array, { n, precision, degreesOfFreedom }: PairScales, level: number): number {
  const draws = errors.length / n;
  const tail = new LargestSeen(tailOfDraws(draws, level));
  const [asFirst, asSecond] = finestPrecisions(precision, n);
  const ahead = new Uint16Array(n);
  const behind = new Uint16Array(n);
  for (let from = 0; from < errors.length; from += n) {
    let [low, high] = [Infinity, -Infinity];
    for (let i = from; i < from + n; i++) {
      const value = errors[i]!;
      if (value < low) low = value;
      if (value > high) high = value;
    }
    const floor = tail.smallest;
    let [firsts, seconds] = [0, 0];
    for (let i = 0; i < n; i++) {
      if ((errors[from + i]! - low) * asFirst[i]! > floor) ahead[firsts++] = i;
      if ((high - errors[from + i]!) * asSecond[i]! > floor) behind[seconds++] = i;
    }
    let largest = floor;
    for (let a = 0; a < firsts; a++) {
      const i = ahead[a]!;
      const value = errors[from + i]!;
      if ((value - low) * asFirst[i]! <= largest) continue;
      for (let b = 0; b < seconds; b++) {
        const at = i * n + behind[b]!;
        const t = (value - errors[from + behind[b]!]!) * precision[at]!;
        if (t <= largest) continue;
        const score = normalScore(t, degreesOfFreedom[at]!);
        if (score > largest) largest = score;
      }
    }
    tail.add(largest);
  }
  return tail.smallest;
}

function finestPrecisions(precision: Float64Array, n: number): [asFirst: Float64Array, asSecond: Float64Array] {
  const asFirst = new Float64Array(n);
  const asSecond = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      const p = precision[i * n + j]!;
      if (p > asFirst[i]!) asFirst[i] = p;
      if (p > asSecond[j]!) asSecond[j] = p;
    }
  }
  return [asFirst, asSecond];
}
