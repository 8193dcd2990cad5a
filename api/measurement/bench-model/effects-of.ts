import type { Cause } from './bench-series.js';
import type { SharedColumn } from './design.js';
import type { FittedSeries } from './fit-series.js';
import { tailOf } from './tail.js';

/** What a rig, a tester or a certificate adds to what it touches, as the season shows it. */
export interface FoundEffect extends Pick<SharedColumn, 'name' | 'kind'> {
  /** relative, taken out of the values [1] */
  readonly effect: number;
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
}

/** What a cause differs by in general. */
export interface FoundSpread {
  readonly cause: Cause;
  /** mean of its likely relative standard deviations [1] */
  readonly relativeSd: number;
  /** 95 of 100 of them lie between [1] */
  readonly low: number;
  readonly high: number;
}

/**
 * Effects of rigs, testers and certificates with how sure they are.
 *
 * Formula: mean of b̂ over the likely spreads; variance and kurtosis of that mixture as a Student's t
 * @param fit fitted series
 * @returns effects [1], by kind and name
 * @throws nothing
 * @see ROBINSON-1991
 * @example effectsOf(fit).map(({ name }) => name) // ['R1', 'T1', 'T2']
 */
export function effectsOf(fit: FittedSeries): FoundEffect[] {
  const { design, atoms, atomCount } = fit;
  const k = design.columns.length;
  return design.columns.map(({ name, kind }, i) => {
    const effect = atoms.reduce((sum, { effects, count }) => sum + (count / atomCount) * effects[i]!, 0);
    let [variance, fourth] = [0, 0];
    for (const { effects, factor, count } of atoms) {
      let v = 0;
      for (let c = i; c < k; c++) v += factor[i * k + c]! ** 2;
      const square = (effects[i]! - effect) ** 2;
      variance += (count / atomCount) * (v + square);
      fourth += (count / atomCount) * (3 * v * v + 6 * v * square + square * square);
    }
    return { name, kind, effect, ...tailOf(variance, Math.max(0, fourth - 3 * variance ** 2), 0) };
  });
}

/**
 * What rigs, testers and submissions differ by in general, as the season and all that was told leave likely.
 *
 * Formula: mean, and the 2.5 and 97.5 % points, of the likely spreads
 * @param fit fitted series
 * @returns relative standard deviations [1]
 * @throws nothing
 * @see GELMAN-2006
 * @example spreadsOf(fit).map(({ cause }) => cause) // ['rig', 'tester', 'submission']
 */
export function spreadsOf(fit: FittedSeries): FoundSpread[] {
  const { atoms, atomCount } = fit;
  return (['rig', 'tester', 'submission'] as const).map((cause) => {
    const all = atoms.flatMap(({ spreads, count }) => Array.from({ length: count }, () => spreads[cause])).sort((a, b) => a - b);
    const at = (share: number): number => all[Math.min(all.length - 1, Math.floor(share * all.length))]!;
    return { cause, relativeSd: all.reduce((sum, sd) => sum + sd, 0) / atomCount, low: at(0.025), high: at(0.975) };
  });
}
