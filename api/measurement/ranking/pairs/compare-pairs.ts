import { criticalScores } from './critical-scores.js';
import type { CriticalScore } from './critical-scores.js';
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
  /** normal score that a pair had to pass were all entries equal, and the largest that one left open had to; null without a pair to compare */
  readonly firstCritical: number | null;
  readonly criticalValue: number | null;
}

/**
 * Tells which entries differ, all pairs at once, each judged by its own tail, with one joint error rate.
 *
 * Formula: i is ahead of j when z((g_i − g_j)/s_ij; ν_ij) > c_p, p the largest number of entries that could be equal to each other with i and j among them: no more than lie within c_p of both and are told
 * apart from neither. A group of p equals has the share p/m of the error rate, m the entries with a pair left open, so that all groups together keep it; again until none leaves. Who is ahead of one
 * that is ahead of a third is ahead of that. Pairs without uncertainty are told apart by any difference
 * @param table values, draws and tails
 * @param level joint level in (0, 1) [1]
 * @returns isAhead with the critical scores of the whole table and of what is left [1]
 * @throws nothing: the caller checks the shapes
 * @see MARCUS-PERITZ-GABRIEL-1976
 * @see EINOT-GABRIEL-1975
 * @see GAMES-HOWELL-1976
 * @see MRSW-2023
 * @example comparePairs(compared, 0.95).isAhead.length // 4
 */
export function comparePairs(table: ComparedTable, level: number): PairComparison {
  const { goodness, errors, differenceUncertainty, degreesOfFreedom } = table;
  const n = goodness.length;
  const precision = differenceUncertainty.map((s, at) => (s > 0 && at % (n + 1) !== 0 ? 1 / s : 0));
  const isAhead = precision.map((one, at) => Number(one === 0 && goodness[Math.floor(at / n)]! > goodness[at % n]!));
  const pairs = { n, precision, degreesOfFreedom };
  const compared = { n, scores: scoresOf(goodness, pairs), isAhead: Uint8Array.from(isAhead) };
  const best = Int32Array.from(goodness.keys()).sort((a, b) => goodness[b]! - goodness[a]! || a - b);
  let order = best.filter((i) => hasOpen(compared, precision, i));
  if (order.length === 0) return { isAhead: compared.isAhead, firstCritical: null, criticalValue: null };
  let critical = criticalScores(errors, pairs, order, level);
  const firstCritical = critical.at(-1)!.score;
  for (;;) {
    const { told, largest } = tellApart(compared, precision, critical);
    const left = best.filter((i) => hasOpen(compared, precision, i));
    if (told === 0 || left.length === 0) return { isAhead: compared.isAhead, firstCritical, criticalValue: largest };
    if (left.length < order.length) critical = criticalScores(errors, pairs, left, level);
    order = left;
  }
}

/** Scores of all differences, and what is told of them so far; n·n. */
interface Told {
  readonly n: number;
  readonly scores: Float64Array;
  readonly isAhead: Uint8Array;
}

function scoresOf(goodness: Float64Array, { n, precision, degreesOfFreedom }: PairScales): Float64Array {
  return precision.map((one, at) =>
    one === 0 ? 0 : normalScore((goodness[Math.floor(at / n)]! - goodness[at % n]!) * one, degreesOfFreedom[at]!),
  );
}

const isTold = ({ isAhead, n }: Told, i: number, j: number): boolean => isAhead[i * n + j] === 1 || isAhead[j * n + i] === 1;

function hasOpen(told: Told, precision: Float64Array, i: number): boolean {
  for (let j = 0; j < told.n; j++) if (precision[i * told.n + j]! > 0 && !isTold(told, i, j)) return true;
  return false;
}

/** Tells apart whose score is above what their largest group must pass; gives how many, and the largest critical score of the others. */
function tellApart(table: Told, precision: Float64Array, critical: readonly CriticalScore[]): { told: number; largest: number } {
  const { n, scores, isAhead } = table;
  const found: number[] = [];
  let largest = critical[0]!.score;
  for (let at = 0; at < n * n; at++) {
    const [i, j] = [Math.floor(at / n), at % n];
    if (precision[at] === 0 || scores[at]! <= 0 || isTold(table, i, j)) continue;
    const own = criticalOf(table, i, j, critical);
    if (scores[at]! > own) found.push(at);
    else largest = Math.max(largest, own);
  }
  for (const at of found) isAhead[at] = 1;
  return { told: found.length + addWhatFollows(isAhead, n), largest };
}

/** What a pair must pass: the score of the largest group of equals that could hold both. */
function criticalOf(table: Told, i: number, j: number, critical: readonly CriticalScore[]): number {
  const { n, scores } = table;
  const own = scores[i * n + j]!;
  let at = critical.length - 1;
  while (at > 0 && own <= critical[at]!.score) {
    const { score } = critical[at]!;
    let size = 0;
    for (let k = 0; k < n; k++) {
      const isNear = Math.abs(scores[i * n + k]!) <= score && Math.abs(scores[j * n + k]!) <= score;
      if (isNear && !isTold(table, i, k) && !isTold(table, j, k)) size += 1;
    }
    if (size > critical[at - 1]!.size) return score;
    // No more lie within a smaller score: groups that are larger than these need no look.
    while (at > 0 && critical[at - 1]!.size >= size) at -= 1;
  }
  return critical[0]!.score;
}

/** Closes what is told under "is ahead of"; gives how many that adds. */
function addWhatFollows(isAhead: Uint8Array, n: number): number {
  let added = 0;
  for (let k = 0; k < n; k++) {
    for (let i = 0; i < n; i++) {
      if (isAhead[i * n + k] === 0) continue;
      for (let j = 0; j < n; j++) {
        if (isAhead[k * n + j] === 0 || isAhead[i * n + j] === 1) continue;
        isAhead[i * n + j] = 1;
        added += 1;
      }
    }
  }
  return added;
}
