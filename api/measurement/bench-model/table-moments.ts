import type { Atom, FittedSeries } from './fit-series.js';
import { ownTail } from './own-tail.js';
import { loadsOf } from './pair-moments.js';
import type { PairMoments } from './pair-moments.js';

/**
 * Moments of the error of every relative value beside the mean of its table, over all likely spreads: what all values share is not in them.
 *
 * Formula: V_i = (1 − 1/m)²u_i² + Σ_{j≠i}u_j²/m² + |F′(a_i − ā)|², δ_i − δ̄ the shift at a set of spreads; σ² and κ₄ as of a difference
 * @param fit fitted series
 * @param positions of the m variants of the table
 * @returns m moments of relative errors [1]
 * @throws nothing
 * @see SATTERTHWAITE-1946
 * @example tableMoments(fit, [0, 1]).variance.length // 2
 */
export function tableMoments(fit: FittedSeries, positions: readonly number[]): PairMoments {
  const m = positions.length;
  const result = { variance: new Float64Array(m), fourth: new Float64Array(m), welch: new Float64Array(m) };
  for (const atom of fit.atoms) addAtom(fit, atom, positions, result);
  result.fourth.forEach((raw, i) => (result.fourth[i] = Math.max(0, raw - 3 * result.variance[i]! ** 2)));
  return result;
}

function addAtom(fit: FittedSeries, atom: Atom, positions: readonly number[], { variance, fourth, welch }: PairMoments): void {
  const m = positions.length;
  const k = fit.design.columns.length;
  const share = atom.count / fit.atomCount;
  const own = ownTail(fit, atom);
  const loads = loadsOf(fit, atom, positions);
  const u = Float64Array.from(positions, (v) => own.variance[v]! / (1 + fit.means[v]!) ** 2);
  const w = Float64Array.from(positions, (v, i) => u[i]! ** 2 / own.degreesOfFreedom[v]!);
  const shift = Float64Array.from(positions, (v) => (atom.means[v]! - fit.means[v]!) / (1 + fit.means[v]!));
  const [ofOwn, ofOthers] = [1 - 1 / m, 1 / m];
  const total = (all: Float64Array): number => all.reduce((sum, one) => sum + one, 0);
  const [allU, allW, meanShift] = [total(u), total(w), total(shift) / m];
  const meanLoad = new Float64Array(k);
  for (let i = 0; i < m; i++) for (let c = 0; c < k; c++) meanLoad[c] = meanLoad[c]! + loads[i * k + c]! / m;
  for (let i = 0; i < m; i++) {
    let v = ofOwn ** 2 * u[i]! + ofOthers ** 2 * (allU - u[i]!);
    for (let c = 0; c < k; c++) v += (loads[i * k + c]! - meanLoad[c]!) ** 2;
    const square = (shift[i]! - meanShift) ** 2;
    variance[i] = variance[i]! + share * (v + square);
    fourth[i] = fourth[i]! + share * (3 * v * v + 6 * v * square + square * square);
    welch[i] = welch[i]! + share * (ofOwn ** 4 * w[i]! + ofOthers ** 4 * (allW - w[i]!));
  }
}
