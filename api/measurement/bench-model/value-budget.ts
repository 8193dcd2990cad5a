import type { Atom, FittedSeries } from './fit-series.js';
import { ownTail } from './own-tail.js';
import { pairMoments } from './pair-moments.js';
import { tailOf } from './tail.js';

/** Parts of the variance of a relative value; they add to its whole [1]. */
export interface VarianceParts {
  readonly repeatability: number;
  /** this spool, this day; with what a disagreement widens it by */
  readonly submission: number;
  readonly rig: number;
  readonly tester: number;
  readonly certificate: number;
  /** that the spreads themselves are not known */
  readonly spreads: number;
}

export interface ValueUncertainty {
  readonly variant: string;
  /** [unit of the series] */
  readonly value: number;
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
  /** whether its submissions disagree beyond the others */
  readonly isApart: boolean;
  readonly parts: VarianceParts;
}

/**
 * Value of every variant with its uncertainty and where that comes from.
 *
 * Formula: u and ν of the mixture as Student's t; parts: Σw²v, Σw²σ_s², a_c(FF′a)_c summed by kind, the spread of the means over the likely spreads
 * @param fit fitted series
 * @returns values and standard uncertainties [unit of the series], parts of the relative variance [1]
 * @throws nothing
 * @see JCGM-100 5.1
 * @see SATTERTHWAITE-1946
 * @example valueBudgets(fit)[0].variant // 'a'
 */
export function valueBudgets(fit: FittedSeries): ValueUncertainty[] {
  const { variants } = fit.design;
  const parts = variants.map((): Record<keyof VarianceParts, number> => ({
    repeatability: 0,
    submission: 0,
    rig: 0,
    tester: 0,
    certificate: 0,
    spreads: 0,
  }));
  for (const atom of fit.atoms) addParts(fit, atom, parts);
  return variants.map((variant, v) => {
    const { variance, fourth, welch } = pairMoments(fit, [v]);
    const { standardUncertainty, degreesOfFreedom } = tailOf(variance[0]!, fourth[0]!, welch[0]!);
    const value = fit.values[v]!;
    return {
      variant,
      value,
      standardUncertainty: value * standardUncertainty,
      degreesOfFreedom,
      isApart: fit.isApart[v] === 1,
      parts: parts[v]!,
    };
  });
}

function addParts(fit: FittedSeries, atom: Atom, parts: readonly Record<keyof VarianceParts, number>[]): void {
  const { starts, repeatability, columns, columnStarts, columnOf } = fit.design;
  const k = columns.length;
  const share = atom.count / fit.atomCount;
  const own = ownTail(fit, atom);
  const load = new Float64Array(k);
  parts.forEach((part, v) => {
    const scale = share / (1 + fit.means[v]!) ** 2;
    load.fill(0);
    let within = 0;
    for (let s = starts[v]!; s < starts[v + 1]!; s++) {
      within += atom.level.shares[s]! ** 2 * repeatability[s]!;
      for (let a = columnStarts[s]!; a < columnStarts[s + 1]!; a++) load[columnOf[a]!] = load[columnOf[a]!]! + atom.level.shares[s]!;
    }
    part.repeatability += scale * within;
    part.submission += scale * (own.variance[v]! - within);
    part.spreads += scale * (atom.means[v]! - fit.means[v]!) ** 2;
    // a′FF′a, each column's own share of it
    for (let c = 0; c < k; c++) {
      let along = 0;
      for (let i = 0; i <= c; i++) along += atom.factor[i * k + c]! * load[i]!;
      for (let i = 0; i <= c; i++) part[columns[i]!.kind] += scale * along * atom.factor[i * k + c]! * load[i]!;
    }
  });
}
