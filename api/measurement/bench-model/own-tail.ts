import { disagreement } from './apart-variants.js';
import type { Atom, FittedSeries } from './fit-series.js';

/** Degrees of freedom that what the other variants show is worth beside a disagreement of one's own (common practice). */
const LENT_DEGREES = 4;

/** What no other variant shares, at one set of spreads. */
export interface OwnTail {
  readonly variance: Float64Array;
  readonly degreesOfFreedom: Float64Array;
}

/**
 * Variance of each variant that it shares with nobody, with its degrees of freedom.
 *
 * Formula: 1/Σw, ν by Welch–Satterthwaite of the repeatability in it; for a variant that is set apart (4 + Q)/(4 + k − 1)·1/Σw with ν = 4 + k − 1
 * @param fit fitted series
 * @param atom set of spreads
 * @returns variances, relative to the values [1], and degrees of freedom
 * @throws nothing
 * @see SMYTH-2004
 * @see JCGM-100 G.4.1
 * @example ownTail(fit, fit.atoms[0]).variance.length // 2
 */
export function ownTail(fit: Pick<FittedSeries, 'design' | 'isApart'>, atom: Atom): OwnTail {
  const known = remembered.get(atom);
  if (known?.design === fit.design && known.isApart === fit.isApart) return known;
  const found = { ...tailsOf(fit, atom), design: fit.design, isApart: fit.isApart };
  remembered.set(atom, found);
  return found;
}

/** Each variant in turn asks for the tails of all. */
const remembered = new WeakMap<Atom, OwnTail & Pick<FittedSeries, 'design' | 'isApart'>>();

function tailsOf({ design, isApart }: Pick<FittedSeries, 'design' | 'isApart'>, { level, effects }: Atom): OwnTail {
  const { starts, repeatability, degreesOfFreedom: known } = design;
  const variance = Float64Array.from(level.ownVariance);
  const degreesOfFreedom = new Float64Array(variance.length);
  for (let v = 0; v < variance.length; v++) {
    if (isApart[v] === 1) {
      const total = LENT_DEGREES + starts[v + 1]! - starts[v]! - 1;
      variance[v] = (variance[v]! * (LENT_DEGREES + disagreement(design, level, effects, v))) / total;
      degreesOfFreedom[v] = total;
      continue;
    }
    let welch = 0;
    for (let s = starts[v]!; s < starts[v + 1]!; s++) welch += (level.shares[s]! ** 2 * repeatability[s]!) ** 2 / known[s]!;
    degreesOfFreedom[v] = welch === 0 ? Infinity : variance[v]! ** 2 / welch;
  }
  return { variance, degreesOfFreedom };
}
