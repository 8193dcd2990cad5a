import { LargestSeen, tailOfDraws } from './largest-seen.js';
import { normalScore } from './normal-score.js';

/** Draws of n entries, with what bounds them, so that most need not be looked at. */
export interface BoundedErrors {
  readonly n: number;
  /** B·n drawn deviations, draw by draw [any one unit] */
  readonly errors: Float64Array;
  /** of each draw [same unit] */
  readonly lowest: Float64Array;
  readonly highest: Float64Array;
}

/** The others, as one entry is compared with them; n each. */
export interface OthersOfOne {
  /** 1/s_ij, 0 for one that is left out [1/unit] */
  readonly precision: Float64Array;
  /** ν_ij [1] */
  readonly degreesOfFreedom: Float64Array;
}

/**
 * Finds the bounds of draws.
 *
 * Formula: min e_b, max e_b
 * @param errors B·n drawn deviations, draw by draw [any one unit]
 * @param n number of entries [1]
 * @returns the draws with their bounds
 * @throws nothing: the caller checks the shapes
 * @see JCGM-101
 * @example boundedErrors(Float64Array.of(1, 0), 2).lowest // [0]
 */
export function boundedErrors(errors: Float64Array, n: number): BoundedErrors {
  const lowest = new Float64Array(errors.length / n);
  const highest = new Float64Array(errors.length / n);
  for (let draw = 0; draw < lowest.length; draw++) {
    const own = errors.subarray(draw * n, draw * n + n);
    let [low, high] = [own[0]!, own[0]!];
    for (let i = 1; i < n; i++) {
      if (own[i]! < low) low = own[i]!;
      if (own[i]! > high) high = own[i]!;
    }
    lowest[draw] = low;
    highest[draw] = high;
  }
  return { n, errors, lowest, highest };
}

/**
 * Quantile of the largest normal score by which one entry is drawn above any other.
 *
 * Formula: Z_b = max over j of z((e_bi − e_bj)/s_ij; ν_ij); the ⌈level·(B + 1)⌉-th smallest of the B largest
 * @param drawn draws with their bounds
 * @param i position of the entry [1]
 * @param others how it is compared with each
 * @param level in (0, 1) [1]
 * @returns quantile, 0 or more [1]
 * @throws nothing: the caller checks the shapes
 * @see WESTFALL-YOUNG-1993
 * @example farthestAbove(boundedErrors(Float64Array.of(1, 0), 2), 0, { precision: Float64Array.of(0, 1), degreesOfFreedom: Float64Array.of(9, Infinity) }, 0.5) // 1
 */
export function farthestAbove(drawn: BoundedErrors, i: number, others: OthersOfOne, level: number): number {
  const { n, errors, lowest } = drawn;
  const { precision, degreesOfFreedom } = others;
  const size = tailOfDraws(lowest.length, level);
  const tail = new LargestSeen(size);
  const finest = precision.reduce((most, one) => Math.max(most, one), 0);
  // A score is never above its difference over the uncertainty; the draws where that is largest come first, and most others need no look.
  const bounds = lowest.map((low, draw) => (errors[draw * n + i]! - low) * finest);
  const first = new LargestSeen(size);
  for (const bound of bounds) first.add(bound);
  const look = (draw: number) => {
    const own = errors.subarray(draw * n, draw * n + n);
    let largest = tail.smallest;
    for (let j = 0; j < n; j++) {
      const t = (own[i]! - own[j]!) * precision[j]!;
      if (t <= largest) continue;
      const score = normalScore(t, degreesOfFreedom[j]!);
      if (score > largest) largest = score;
    }
    tail.add(largest);
  };
  bounds.forEach((bound, draw) => bound >= first.smallest && look(draw));
  bounds.forEach((bound, draw) => bound < first.smallest && bound > tail.smallest && look(draw));
  return tail.smallest;
}

/**
 * Whether in enough draws some other is drawn so far above one entry as its reach says.
 *
 * Formula: the number of draws with e_bj − e_bi ≥ r_j for any j is at least B − ⌈level·(B + 1)⌉ + 1, which says that r lies at or below the quantile of the largest
 * @param drawn draws with their bounds
 * @param i position of the entry [1]
 * @param reach n values r_j; Infinity for one that is left out [unit of the draws]
 * @param level in (0, 1) [1]
 * @returns whether the quantile reaches so far
 * @throws nothing: the caller checks the shapes
 * @see WESTFALL-YOUNG-1993
 * @example isReached(boundedErrors(Float64Array.of(0, 1), 2), 0, Float64Array.of(Infinity, 1), 0.5) // true
 */
export function isReached(drawn: BoundedErrors, i: number, reach: Float64Array, level: number): boolean {
  const { n, errors, lowest, highest } = drawn;
  const rivals = Uint32Array.from(reach.keys())
    .filter((j) => reach[j]! < Infinity)
    .sort((a, b) => reach[a]! - reach[b]!);
  const nearest = rivals.length === 0 ? Infinity : reach[rivals[0]!]!;
  let missing = tailOfDraws(lowest.length, level);
  for (let draw = 0; draw < lowest.length && lowest.length - draw >= missing; draw++) {
    const from = draw * n;
    const value = errors[from + i]!;
    const most = highest[draw]! - value;
    if (most < nearest) continue;
    for (const j of rivals) {
      if (reach[j]! > most) break;
      if (errors[from + j]! - value < reach[j]!) continue;
      missing -= 1;
      break;
    }
    if (missing === 0) return true;
  }
  return false;
}
