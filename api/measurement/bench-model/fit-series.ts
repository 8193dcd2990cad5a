import type { BenchSeries, Spreads } from './bench-series.js';
import type { Design } from './design.js';
import { contrastsOf, designOf } from './design.js';
import { columnSds, sharedEffects } from './shared-effects.js';
import { apartVariants } from './apart-variants.js';
import { submissionLevel } from './submission-level.js';
import type { SubmissionLevel } from './submission-level.js';

/** The model at one set of spreads; the variants' values given that set are normal about `means`. */
export interface Atom {
  readonly spreads: Spreads;
  /** how many of the equally likely sets are this one */
  readonly count: number;
  readonly level: SubmissionLevel;
  readonly effects: Float64Array;
  readonly factor: Float64Array;
  /** n values relative to the centres, with the effects taken out [1] */
  readonly means: Float64Array;
}

/** What a series says of its variants. */
export interface FittedSeries {
  readonly kind: 'fitted';
  readonly design: Design;
  readonly atoms: readonly Atom[];
  readonly atomCount: number;
  /** n values [unit of the series] */
  readonly values: Float64Array;
  /** n values relative to the centres [1] */
  readonly means: Float64Array;
  /** variants whose submissions disagree beyond the others */
  readonly isApart: Uint8Array;
}

/** Values without a word on how far they may be off. */
export interface ValuesOnly {
  readonly kind: 'values-only';
  readonly reason: 'nothing-known-of-effects';
  readonly variants: readonly string[];
  readonly values: Float64Array;
}

/** Fewest differences within variants that tell of effects without anything stated or told (common practice). */
export const FEWEST_CONTRASTS = 4;

/**
 * Fits the model of the bench to one series: value of each variant with the effects of rigs and testers taken out.
 *
 * Formula: x = μ(1 + rig + tester + submission) + repeatability; over the likely spreads, generalised least squares for μ and best linear unbiased prediction of the effects
 * @param series submissions [any one unit], the reproducibility that the method states [1], and what is told of the causes
 * @returns values [same unit] with all that their uncertainties need; values alone where nothing is known of the effects
 * @throws MeasurementError 'bench-model/bad-submission'; 'bench-model/not-positive'
 * @see ROBINSON-1991
 * @see SEARLE-1992
 * @example fitSeries(series).kind // 'fitted'
 */
export function fitSeries(series: BenchSeries): FittedSeries | ValuesOnly {
  const design = designOf(series);
  const isTold = series.told.length > 0 || (series.earlier ?? []).length > 0;
  if (series.reproducibility === null && !isTold && contrastsOf(design) < FEWEST_CONTRASTS)
    return { kind: 'values-only', reason: 'nothing-known-of-effects', variants: design.variants, values: design.centres };
  const { isApart, spreads } = apartVariants(design, series);
  return fitAt(design, spreads, isApart);
}

/**
 * The model at given sets of spreads.
 *
 * Formula: β = β̃ − A·b̂, A the mean loads of a variant on the shared effects
 * @param design series as the model takes it
 * @param spreads equally likely sets, equal ones next to each other [1]
 * @param isApart variants that tell nothing of the effects
 * @returns fitted series
 * @throws nothing
 * @see ROBINSON-1991
 * @example fitAt(designOf(series), [{ rig: 0, tester: 0, submission: 0 }], new Uint8Array(2)).atomCount // 1
 */
export function fitAt(design: Design, spreads: readonly Spreads[], isApart: Uint8Array): FittedSeries {
  const levels = new Map<number, SubmissionLevel>();
  const atoms: Atom[] = [];
  for (let at = 0; at < spreads.length;) {
    const one = spreads[at]!;
    let count = 1;
    while (spreads[at + count] === one) count += 1;
    const level = levels.get(one.submission) ?? submissionLevel(design, one.submission, isApart);
    levels.set(one.submission, level);
    const { effects, factor } = sharedEffects(level, columnSds(design, one), 0);
    atoms.push({ spreads: one, count, level, effects, factor, means: withoutEffects(design, level, effects) });
    at += count;
  }
  const means = new Float64Array(design.variants.length);
  for (const atom of atoms) for (let v = 0; v < means.length; v++) means[v] = means[v]! + (atom.count / spreads.length) * atom.means[v]!;
  const values = means.map((mean, v) => design.centres[v]! * (1 + mean));
  return { kind: 'fitted', design, atoms, atomCount: spreads.length, values, means, isApart };
}

function withoutEffects(design: Design, { means, shares }: SubmissionLevel, effects: Float64Array): Float64Array {
  return means.map((mean, v) => {
    let sum = mean;
    for (let s = design.starts[v]!; s < design.starts[v + 1]!; s++) {
      for (let a = design.columnStarts[s]!; a < design.columnStarts[s + 1]!; a++) sum -= shares[s]! * effects[design.columnOf[a]!]!;
    }
    return sum;
  });
}
