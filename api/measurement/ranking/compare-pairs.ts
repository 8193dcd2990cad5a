import { criticalScores } from './critical-scores.js';
import type { PairScales } from './largest-scores.js';
import { normalScore } from './normal-score.js';

/** Values of n entries with the tail of each difference. */
export interface ComparedTable {
  /** n values, more is better [any one unit] */
  readonly goodness: Float64Array;
  /** B·n drawn deviations from the truth, draw by draw [same unit] */
  readonly errors: Float64Array;
  /** n·n: s_ij at i·n + j, 0 for a pair without uncertainty [same unit] */
  readonly differenceUncertainty: Float64Array;
  /** n·n: ν_ij [1] */
  readonly degreesOfFreedom: Float64Array;
}

export interface PairComparison {
  /** n·n: 1 at i·n + j when i is told to be better than j */
  readonly isAhead: Uint8Array;
  /** normal score that a pair had to pass in the first step, and in the last; null without a pair to compare */
  readonly firstCritical: number | null;
  readonly criticalValue: number | null;
}

/**
 * Tells which entries differ, all pairs at once, each judged by its own tail, with one joint error rate.
 *
 * Formula: i is ahead of j when z((g_i − g_j)/s_ij; ν_ij) > c_p, p the largest number of entries that could all be equal, i and j among them: at most those that lie within c_p of both. A group of p equals is
 * judged by the share p/n of the error rate, so that all groups together keep it. What follows from two of the statements is told too. Pairs without uncertainty are told apart by any difference
 * @param table values, draws and tails
 * @param level joint level in (0, 1) [1]
 * @returns isAhead, and the critical scores of the whole table and of the largest group left [1]
 * @throws nothing: the caller checks the shapes
 * @see EINOT-GABRIEL-1975
 * @see MARCUS-PERITZ-GABRIEL-1976
 * @see GAMES-HOWELL-1976
 * @see MRSW-2023
 * @example comparePairs(compared, 0.95).isAhead.length // 4
 */
export function comparePairs(table: ComparedTable, level: number): PairComparison {
  const { goodness, differenceUncertainty, degreesOfFreedom } = table;
  const n = goodness.length;
  const isAhead = new Uint8Array(n * n);
  const pairs = { n, precision: differenceUncertainty.map((s, at) => (s > 0 && at % (n + 1) !== 0 ? 1 / s : 0)), degreesOfFreedom };
  for (let at = 0; at < n * n; at++)
    if (pairs.precision[at] === 0 && goodness[Math.floor(at / n)]! > goodness[at % n]!) isAhead[at] = 1;
  if (pairs.precision.every((one) => one === 0)) return { isAhead, firstCritical: null, criticalValue: null };
  const { sizes, scores } = criticalScores(table, pairs, level);
  const distances = distancesOf(goodness, pairs, scores.at(-1)!);
  let criticalValue = 0;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      const score = distances[i * n + j]!;
      if (score <= 0 || pairs.precision[i * n + j] === 0) continue;
      const critical = criticalOf(distances, n, i, j, score, sizes, scores);
      if (score > critical) isAhead[i * n + j] = 1;
      else criticalValue = Math.max(criticalValue, critical);
    }
  }
  addWhatFollows(isAhead, n);
  return { isAhead, firstCritical: scores.at(-1)!, criticalValue: criticalValue || scores[0]! };
}

/** z_ij of every pair, with its sign; nobody is within any distance of one that is told apart without uncertainty. */
function distancesOf(goodness: Float64Array, { n, precision, degreesOfFreedom }: PairScales, most: number): Float64Array {
  const distances = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < i; j++) {
      const at = i * n + j;
      const difference = goodness[i]! - goodness[j]!;
      const t = difference * precision[at]!;
      let score = precision[at] === 0 && difference !== 0 ? Infinity * difference : t;
      // Farther than that a pair is told apart in any group; a score is never above its difference, and close to it nowhere needed.
      if (precision[at] !== 0) score = normalScore(t, degreesOfFreedom[at]!);
      distances[at] = score;
      distances[j * n + i] = -score;
    }
  }
  return distances;
}

/** Critical score of the largest group of equals that could hold both i and j. */
function criticalOf(distances: Float64Array, n: number, i: number, j: number, score: number, sizes: readonly number[], scores: readonly number[]): number {
  const surely = scores.at(-1)!;
  if (score > surely) return surely;
  for (let at = sizes.length - 1; at > 0; at--) {
    const critical = scores[at]!;
    if (score > critical) continue;
    let within = 0;
    for (let k = 0; k < n; k++) if (Math.abs(distances[i * n + k]!) <= critical && Math.abs(distances[j * n + k]!) <= critical) within += 1;
    if (within > sizes[at - 1]!) return critical;
  }
  return scores[0]!;
}

/** Whoever is ahead of one that is ahead of a third is ahead of the third. */
function addWhatFollows(isAhead: Uint8Array, n: number): void {
  for (let k = 0; k < n; k++)
    for (let i = 0; i < n; i++)
      if (isAhead[i * n + k] === 1) for (let j = 0; j < n; j++) if (isAhead[k * n + j] === 1) isAhead[i * n + j] = 1;
}
