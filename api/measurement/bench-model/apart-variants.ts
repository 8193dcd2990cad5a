import { chiSquareCdf } from '../distributions/chi-square-distribution.js';
import type { BenchSeries, Spreads } from './bench-series.js';
import type { Design } from './design.js';
import { columnSds, sharedEffects } from './shared-effects.js';
import { spreadAtoms } from './spread-atoms.js';
import { submissionLevel } from './submission-level.js';
import type { SubmissionLevel } from './submission-level.js';

/** Chance, over a whole table, that a variant is said to disagree although it does as the others do (common practice). */
const FALSE_ALARM = 0.002;
/** Largest share of the variants with several submissions that may be set apart (common practice). */
const MOST_APART = 0.25;

/**
 * Variants whose submissions disagree beyond what the others show, so that a mixed-up spool does not widen everybody's interval.
 *
 * Formula: one at a time, the variant with the largest Q = Σw(y − zb̂ − β)² for its degrees of freedom; set apart where, fitted without it, the chance of such a Q is below 0.2 % over the number of variants; at most a quarter
 * @param design series as the model takes it
 * @param series what is stated and told of it
 * @returns 1 for each variant that is set apart, and the spreads that are likely without them
 * @throws nothing: the caller checks the series
 * @see COMMON-PRACTICE
 * @example apartVariants(designOf(series), series).isApart // [0, 0]
 */
export function apartVariants(design: Design, series: BenchSeries): { isApart: Uint8Array; spreads: Spreads[] } {
  const isApart = new Uint8Array(design.variants.length);
  const several = design.variants.flatMap((_, v) => (design.starts[v + 1]! - design.starts[v]! > 1 ? [v] : []));
  const most = Math.floor(MOST_APART * several.length);
  let spreads = spreadAtoms(design, series, isApart);
  for (let apart = 0; apart < most; apart++) {
    const kept = several.filter((v) => isApart[v] === 0);
    const chances = chancesOf(design, spreads, isApart, kept);
    const stranger = kept[chances.indexOf(Math.min(...chances))]!;
    isApart[stranger] = 1;
    const without = spreadAtoms(design, series, isApart);
    const [chance = 1] = chancesOf(design, without, isApart, [stranger]);
    if (chance < FALSE_ALARM / several.length) {
      spreads = without;
      continue;
    }
    isApart[stranger] = 0;
    break;
  }
  return { isApart, spreads };
}

/** Chance of a disagreement at least as large, for each variant, over the likely spreads. */
function chancesOf(design: Design, spreads: readonly Spreads[], isApart: Uint8Array, variants: readonly number[]): number[] {
  const sums = new Float64Array(variants.length);
  const levels = new Map<number, SubmissionLevel>();
  let [before, chances]: [Spreads | null, number[]] = [null, []];
  for (const one of spreads) {
    if (one !== before) {
      const level = levels.get(one.submission) ?? submissionLevel(design, one.submission, isApart);
      levels.set(one.submission, level);
      const { effects } = sharedEffects(level, columnSds(design, one), 0);
      chances = variants.map(
        (v) => 1 - chiSquareCdf(disagreement(design, level, effects, v), design.starts[v + 1]! - design.starts[v]! - 1),
      );
      before = one;
    }
    chances.forEach((chance, at) => (sums[at] = sums[at]! + chance));
  }
  return [...sums].map((sum) => sum / spreads.length);
}

/**
 * How far a variant's submissions lie apart once the effects are taken out.
 *
 * Formula: Q = Σw(r − r̄)², r = y − zb̂
 * @param design series as the model takes it
 * @param level spread of submissions
 * @param effects b̂ [1]
 * @param v position of the variant [1]
 * @returns Q [1]
 * @throws nothing
 * @see COCHRAN-1954
 * @example disagreement(designOf(series), level, new Float64Array(3), 0)
 */
export function disagreement(design: Design, level: SubmissionLevel, effects: Float64Array, v: number): number {
  const { starts, y, columnStarts, columnOf } = design;
  let [sum, squares] = [0, 0];
  for (let s = starts[v]!; s < starts[v + 1]!; s++) {
    let r = y[s]!;
    for (let a = columnStarts[s]!; a < columnStarts[s + 1]!; a++) r -= effects[columnOf[a]!]!;
    sum += level.shares[s]! * r;
    squares += level.shares[s]! * r * r;
  }
  return Math.max(0, squares - sum * sum) / level.ownVariance[v]!;
}
