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
 * Quantile of the largest normal score of draws within groups of neighbours.
 *
 * Formula: Z_b = max over the pairs of ⌊m/p⌋ groups of p neighbours of z((e_bi − e_bj)/s_ij; ν_ij), groups laid from the top in one draw and from the bottom in the next; the quantile of Z at
 * level^(⌊m/p⌋p/m). A score is never above its difference, so a pair is looked at only where that could rise above the tail: the result is that of looking at all
 * @param errors B·n drawn deviations, draw by draw [any one unit]
 * @param pairs pairs with 1/s_ij and ν_ij
 * @param order positions of the m entries, neighbours next to each other
 * @param size p, 2 … m; m looks at all pairs [1]
 * @param level in (0, 1) [1]
 * @returns quantile, 0 or more [1]
 * @throws nothing: the caller checks the shapes
 * @see WESTFALL-YOUNG-1993
 * @example largestTileQuantile(Float64Array.of(1, 0), { n: 2, precision: Float64Array.of(0, 1, 1, 0), degreesOfFreedom: Float64Array.of(Infinity, Infinity, Infinity, Infinity) }, Int32Array.of(0, 1), 2, 0.5) // 1
 */
export function largestTileQuantile(errors: Float64Array, pairs: PairScales, order: Int32Array, size: number, level: number): number {
  const { n } = pairs;
  const draws = errors.length / n;
  const m = order.length;
  const tiles = Math.floor(m / size);
  const tail = new LargestSeen(tailOfDraws(draws, level ** ((tiles * size) / m)));
  const [fromTop, fromBottom] = [0, m - tiles * size].map((first) =>
    Array.from({ length: tiles }, (_, tile) => tileOf(pairs, order.subarray(first + tile * size, first + (tile + 1) * size))),
  );
  for (let draw = 0; draw < draws; draw++) {
    const own = errors.subarray(draw * n, draw * n + n);
    let largest = tail.smallest;
    for (const tile of draw % 2 === 0 ? fromTop! : fromBottom!) largest = largestOfTile(own, pairs, tile, largest);
    tail.add(largest);
  }
  return tail.smallest;
}

/** A group of neighbours, with the finest precision of each as the one above and as the one below. */
interface Tile {
  readonly members: Int32Array;
  readonly asFirst: Float64Array;
  readonly asSecond: Float64Array;
}

/** The largest score within a tile, or the floor where none is above it. */
function largestOfTile(own: Float64Array, { n, precision, degreesOfFreedom }: PairScales, tile: Tile, floor: number): number {
  const { members, asFirst, asSecond } = tile;
  const m = members.length;
  let [lowest, highest] = [0, 0];
  for (let a = 1; a < m; a++) {
    const value = own[members[a]!]!;
    if (value < own[members[lowest]!]!) lowest = a;
    if (value > own[members[highest]!]!) highest = a;
  }
  const [low, high] = [own[members[lowest]!]!, own[members[highest]!]!];
  let largest = floor;
  const look = (i: number, j: number): void => {
    const t = (own[i]! - own[j]!) * precision[i * n + j]!;
    if (t <= largest) return;
    const score = normalScore(t, degreesOfFreedom[i * n + j]!);
    if (score > largest) largest = score;
  };
  const lookFrom = (a: number): void => {
    const i = members[a]!;
    if ((own[i]! - low) * asFirst[a]! > largest) for (const j of members) look(i, j);
  };
  // Whoever is drawn highest and lowest makes the largest scores: after these most others need no look.
  lookFrom(highest);
  const j = members[lowest]!;
  if ((high - low) * asSecond[lowest]! > largest) for (const i of members) look(i, j);
  for (let a = 0; a < m; a++) lookFrom(a);
  return largest;
}

function tileOf({ n, precision }: PairScales, members: Int32Array): Tile {
  const asFirst = new Float64Array(members.length);
  const asSecond = new Float64Array(members.length);
  members.forEach((i, a) =>
    members.forEach((j, b) => {
      const p = precision[i * n + j]!;
      if (p > asFirst[a]!) asFirst[a] = p;
      if (p > asSecond[b]!) asSecond[b] = p;
    }),
  );
  return { members, asFirst, asSecond };
}
