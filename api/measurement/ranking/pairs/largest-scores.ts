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
  if (larger.length > 0) addAbove(tails, errors, pairs, order, larger);
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

/** Looks once at the pairs whose score counts in any size, for tiles of all sizes. */
function addAbove(
  tails: readonly LargestSeen[],
  errors: Float64Array,
  pairs: PairScales,
  order: Int32Array,
  sizes: readonly number[],
): void {
  const m = order.length;
  const { precision, degreesOfFreedom, finest } = laidOut(pairs, order);
  const laid = [0, 1].map((turn) => sizes.map((size) => tilesOf(m, size, turn * (m % size))));
  const largest = new Float64Array(sizes.length);
  const floors = new Float64Array(m).fill(Infinity);
  const own = new Float64Array(m);
  for (let from = 0; from < errors.length; from += pairs.n) {
    let lowest = Infinity;
    for (let a = 0; a < m; a++) {
      own[a] = errors[from + order[a]!]!;
      if (own[a]! < lowest) lowest = own[a]!;
    }
    const tiles = laid[(from / pairs.n) % 2]!;
    for (let s = 0; s < tails.length; s++) largest[s] = tails[s]!.smallest;
    writeFloors(floors, largest, sizes);
    for (let a = 0; a < m; a++) {
      // A hair less than what counts, so that no rounding leaves out a pair.
      const farEnough = own[a]! - (floors[0]! / finest[a]!) * (1 - 1e-9);
      if (lowest > farEnough) continue;
      for (let b = 0; b < m; b++) {
        if (own[b]! > farEnough) continue;
        const distance = a < b ? b - a : a - b;
        const t = (own[a]! - own[b]!) * precision[a * m + b]!;
        if (t <= floors[distance]!) continue;
        const score = normalScore(t, degreesOfFreedom[a * m + b]!);
        if (score <= floors[distance]!) continue;
        for (let s = sizes.length - 1; s >= 0 && sizes[s]! > distance; s--)
          if (score > largest[s]! && tiles[s]![a] === tiles[s]![b]) largest[s] = score;
      }
    }
    for (let s = 0; s < tails.length; s++) tails[s]!.add(largest[s]!);
  }
}

/** What a score must pass to count in any size, by how far apart the two stand: only tiles larger than that hold both. */
function writeFloors(floors: Float64Array, smallest: Float64Array, sizes: readonly number[]): void {
  let lowest = Infinity;
  for (let s = sizes.length - 1; s >= 0; s--) {
    lowest = Math.min(lowest, smallest[s]!);
    floors.fill(lowest, sizes[s - 1] ?? 0, sizes[s]);
  }
}

/** The scales of the pairs in their order, m·m, and the finest precision of each as the one above. */
function laidOut({ n, precision, degreesOfFreedom }: PairScales, order: Int32Array) {
  const m = order.length;
  const inOrder = (all: Float64Array) =>
    Float64Array.from({ length: m * m }, (_, at) => all[order[Math.floor(at / m)]! * n + order[at % m]!]!);
  const own = inOrder(precision);
  const finest = Float64Array.from(order, (_, a) => own.subarray(a * m, a * m + m).reduce((most, one) => Math.max(most, one), 0));
  return { precision: own, degreesOfFreedom: inOrder(degreesOfFreedom), finest };
}

/** The tile of each position; one that no tile holds is alone. */
function tilesOf(m: number, size: number, first: number): Int32Array {
  const tiles = Math.floor(m / size);
  return Int32Array.from({ length: m }, (_, a) => {
    const tile = Math.floor((a - first) / size);
    return tile >= 0 && tile < tiles ? tile : -1 - a;
  });
}
