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
  const finest = finestPrecisions(precision, n);
  for (let draw = 0; draw < draws; draw++) {
    const own = errors.subarray(draw * n, draw * n + n);
    tail.add(largestOfDraw(own, { n, precision, degreesOfFreedom }, finest, tail.smallest));
  }
  return tail.smallest;
}

/** The largest score of a draw, or the floor where none is above it. */
function largestOfDraw(own: Float64Array, { n, precision, degreesOfFreedom }: PairScales, finest: FinestPrecisions, floor: number): number {
  let [lowest, highest] = [0, 0];
  for (let i = 1; i < n; i++) {
    if (own[i]! < own[lowest]!) lowest = i;
    if (own[i]! > own[highest]!) highest = i;
  }
  const [low, high] = [own[lowest]!, own[highest]!];
  const { asFirst, asSecond } = finest;
  let largest = floor;
  const lookFrom = (i: number) => {
    const value = own[i]!;
    if ((value - low) * asFirst[i]! <= largest) return;
    for (let j = 0; j < n; j++) {
      const t = (value - own[j]!) * precision[i * n + j]!;
      if (t <= largest) continue;
      const score = normalScore(t, degreesOfFreedom[i * n + j]!);
      if (score > largest) largest = score;
    }
  };
  const lookAt = (j: number) => {
    if ((high - own[j]!) * asSecond[j]! <= largest) return;
    for (let i = 0; i < n; i++) {
      const t = (own[i]! - own[j]!) * precision[i * n + j]!;
      if (t <= largest) continue;
      const score = normalScore(t, degreesOfFreedom[i * n + j]!);
      if (score > largest) largest = score;
    }
  };
  // Whoever is drawn highest and lowest makes the largest scores: after these most others need no look.
  lookFrom(highest);
  lookAt(lowest);
  for (let i = 0; i < n; i++) lookFrom(i);
  return largest;
}

/** The finest precision of each entry as the one above, and as the one below. */
interface FinestPrecisions {
  readonly asFirst: Float64Array;
  readonly asSecond: Float64Array;
}

function finestPrecisions(precision: Float64Array, n: number): FinestPrecisions {
  const asFirst = new Float64Array(n);
  const asSecond = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      const p = precision[i * n + j]!;
      if (p > asFirst[i]!) asFirst[i] = p;
      if (p > asSecond[j]!) asSecond[j] = p;
    }
  }
  return { asFirst, asSecond };
}
