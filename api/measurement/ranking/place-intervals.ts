import type { Direction } from './competition-places.js';

export interface PlaceInterval {
  readonly low: number;
  readonly high: number;
}

/**
 * Places that the evidence allows, simultaneously over a whole table.
 *
 * Formula: every pair j, k is compared by |x_j − x_k|/s_jk with s_jk the root mean square of the drawn differences; the critical value is the level's quantile
 * of the largest drawn |d_j − d_k|/s_jk; pairs that exceed it are told apart and left out, and it is taken again over the rest until no more are told apart
 * (step-down). low = 1 + number told apart that are better; high = entries − number told apart that are worse
 * @param values value of each entry [any one unit]
 * @param deviations draws of each entry's deviation from its true value, one array of equal length an entry [same unit]
 * @param direction which values are better
 * @param level joint confidence in (0, 1) [1]
 * @returns interval of each entry [1]; that every interval holds its true place has at least the level's probability
 * @throws nothing
 * @see MRSW-2023
 * @example placeIntervals([10, 1], [Float64Array.of(-0.1, 0.1), Float64Array.of(0.1, -0.1)], 'more') // [{ low: 1, high: 1 }, { low: 2, high: 2 }]
 */
export function placeIntervals(
  values: readonly number[],
  deviations: readonly Float64Array[],
  direction: Direction,
  level = 0.95,
): PlaceInterval[] {
  const pairs = pairsOf(values, deviations);
  let open = pairs;
  for (;;) {
    const critical = criticalValue(open, deviations, level);
    const left = open.filter(({ statistic }) => statistic <= critical);
    if (left.length === open.length) break;
    open = left;
  }
  const undecided = new Set(open);
  const sign = direction === 'more' ? 1 : -1;
  const better = new Array<number>(values.length).fill(0);
  const worse = new Array<number>(values.length).fill(0);
  for (const pair of pairs) {
    if (undecided.has(pair)) continue;
    const isFirstBetter = sign * ((values[pair.j] ?? 0) - (values[pair.k] ?? 0)) > 0;
    const [winner, loser] = isFirstBetter ? [pair.j, pair.k] : [pair.k, pair.j];
    better[loser] = (better[loser] ?? 0) + 1;
    worse[winner] = (worse[winner] ?? 0) + 1;
  }
  return values.map((_, i) => ({ low: 1 + (better[i] ?? 0), high: values.length - (worse[i] ?? 0) }));
}

interface Pair {
  readonly j: number;
  readonly k: number;
  /** 1/s_jk; 0 for a pair without spread, which never decides the critical value */
  readonly precision: number;
  readonly statistic: number;
}

function pairsOf(values: readonly number[], deviations: readonly Float64Array[]): Pair[] {
  return values.flatMap((value, j) =>
    values.slice(j + 1).map((other, offset) => {
      const k = j + 1 + offset;
      const spread = rootMeanSquareDifference(deviations[j] ?? new Float64Array(), deviations[k] ?? new Float64Array());
      const difference = Math.abs(value - other);
      if (spread === 0) return { j, k, precision: 0, statistic: difference === 0 ? 0 : Infinity };
      return { j, k, precision: 1 / spread, statistic: difference / spread };
    }),
  );
}

function rootMeanSquareDifference(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += ((a[i] ?? 0) - (b[i] ?? 0)) ** 2;
  return Math.sqrt(sum / Math.max(1, a.length));
}

function criticalValue(pairs: readonly Pair[], deviations: readonly Float64Array[], level: number): number {
  const draws = deviations[0]?.length ?? 0;
  const largest = new Float64Array(draws);
  for (const { j, k, precision } of pairs) {
    const [a, b] = [deviations[j], deviations[k]];
    if (!a || !b || precision === 0) continue;
    for (let i = 0; i < draws; i++) {
      const t = Math.abs((a[i] ?? 0) - (b[i] ?? 0)) * precision;
      if (t > (largest[i] ?? 0)) largest[i] = t;
    }
  }
  largest.sort();
  return largest[Math.min(draws - 1, Math.ceil(level * draws) - 1)] ?? 0;
}
