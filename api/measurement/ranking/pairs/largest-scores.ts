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
 * Quantiles of the largest normal score of draws within groups of neighbours, for groups of every size.
 *
 * Formula: Z_bp = max over the pairs of ⌊m/p⌋ groups of p neighbours of z((e_bi − e_bj)/s_ij; ν_ij), groups laid from the top in one draw and from the bottom in the next; the quantile of Z_p at
 * level^(⌊m/p⌋p/m), or that of a smaller p where it is larger. So no pair counts whose score is not above the first quantile, and a score is never above its difference: the result is that of
 * looking at all pairs
 * @param errors B·n drawn deviations, draw by draw [any one unit]
 * @param pairs pairs with 1/s_ij and ν_ij
 * @param order positions of the m entries, neighbours next to each other
 * @param sizes p, rising, 2 … m; m looks at all pairs [1]
 * @param level in (0, 1) [1]
 * @returns quantile of each size, never falling, 0 or more [1]
 * @throws nothing: the caller checks the shapes
 * @see WESTFALL-YOUNG-1993
 * @example largestTileQuantiles(Float64Array.of(1, 0), { n: 2, precision: Float64Array.of(0, 1, 1, 0), degreesOfFreedom: Float64Array.of(Infinity, Infinity, Infinity, Infinity) }, Int32Array.of(0, 1), [2], 0.5) // [1]
 */
export function largestTileQuantiles(
  errors: Float64Array,
  pairs: PairScales,
  order: Int32Array,
  sizes: readonly number[],
  level: number,
): number[] {
  const draws = errors.length / pairs.n;
  const tailOf = (size: number, floor: number): LargestSeen => {
    const share = (Math.floor(order.length / size) * size) / order.length;
    return new LargestSeen(tailOfDraws(draws, level ** share), floor);
  };
  const first = tailOf(sizes[0]!, 0);
  addWithinTiles(first, errors, pairs, order, sizes[0]!);
  const larger = sizes.slice(1);
  const tails = larger.map((size) => tailOf(size, first.smallest));
  if (larger.length > 0) addAbove(first.smallest, tails, errors, pairs, order, larger);
  let most = first.smallest;
  return [most, ...tails.map(({ smallest }) => (most = Math.max(most, smallest)))];
}

/** Looks at each pair of each tile. */
function addWithinTiles(tail: LargestSeen, errors: Float64Array, pairs: PairScales, order: Int32Array, size: number): void {
  const { n, precision, degreesOfFreedom } = pairs;
  const left = order.length % size;
  for (let from = 0; from < errors.length; from += n) {
    const start = (from / n) % 2 === 0 ? 0 : left;
    let largest = tail.smallest;
    for (let tile = start; tile + size <= order.length; tile += size) {
      for (let a = tile; a < tile + size; a++) {
        const i = order[a]!;
        for (let b = tile; b < tile + size; b++) {
          const j = order[b]!;
          const t = (errors[from + i]! - errors[from + j]!) * precision[i * n + j]!;
          if (t > largest) largest = Math.max(largest, normalScore(t, degreesOfFreedom[i * n + j]!));
        }
      }
    }
    tail.add(largest);
  }
}

/** Looks once at the pairs whose score is above the floor, for tiles of all sizes. */
function addAbove(
  floor: number,
  tails: readonly LargestSeen[],
  errors: Float64Array,
  pairs: PairScales,
  order: Int32Array,
  sizes: readonly number[],
): void {
  const { n, precision, degreesOfFreedom } = pairs;
  const m = order.length;
  const finest = finestOf(pairs, order);
  const laid = [0, 1].map((turn) => sizes.map((size) => tilesOf(m, size, turn * (m % size))));
  const largest = new Float64Array(sizes.length);
  for (let from = 0; from < errors.length; from += n) {
    let lowest = Infinity;
    for (let a = 0; a < m; a++) lowest = Math.min(lowest, errors[from + order[a]!]!);
    const tiles = laid[(from / n) % 2]!;
    largest.fill(floor);
    for (let a = 0; a < m; a++) {
      const i = order[a]!;
      const own = errors[from + i]!;
      if ((own - lowest) * finest[a]! <= floor) continue;
      for (let b = 0; b < m; b++) {
        const at = i * n + order[b]!;
        const t = (own - errors[from + order[b]!]!) * precision[at]!;
        if (t <= floor) continue;
        const score = normalScore(t, degreesOfFreedom[at]!);
        if (score <= floor) continue;
        for (let s = sizes.length - 1; s >= 0 && sizes[s]! > Math.abs(a - b); s--)
          if (score > largest[s]! && tiles[s]![a] === tiles[s]![b]) largest[s] = score;
      }
    }
    for (let s = 0; s < tails.length; s++) tails[s]!.add(largest[s]!);
  }
}

/** The finest precision of each as the one above. */
function finestOf({ n, precision }: PairScales, order: Int32Array): Float64Array {
  return Float64Array.from(order, (i) => order.reduce((most, j) => Math.max(most, precision[i * n + j]!), 0));
}

/** The tile of each position; one that no tile holds is alone. */
function tilesOf(m: number, size: number, first: number): Int32Array {
  const tiles = Math.floor(m / size);
  return Int32Array.from({ length: m }, (_, a) => {
    const tile = Math.floor((a - first) / size);
    return tile >= 0 && tile < tiles ? tile : -1 - a;
  });
}
