import type { Atom, FittedSeries } from './fit-series.js';
import { ownTail } from './own-tail.js';

/** Moments of the error of every difference of two relative values; n·n, those of a value itself on the diagonal. */
export interface PairMoments {
  readonly variance: Float64Array;
  readonly fourth: Float64Array;
  readonly welch: Float64Array;
}

/**
 * Moments of the errors of values and of their differences, over all likely spreads.
 *
 * Formula: V = u_i² + u_j² + |F′(a_i − a_j)|², δ the shift of the difference at a set of spreads; σ² = E(V + δ²), κ₄ = E(3V² + 6Vδ² + δ⁴) − 3σ⁴
 * @param fit fitted series
 * @param positions of the m variants that are wanted
 * @returns m·m moments of relative errors [1]: of the difference i − j at i·m + j, of the value i at i·m + i
 * @throws nothing
 * @see SATTERTHWAITE-1946
 * @example pairMoments(fit, [0, 1]).variance.length // 4
 */
export function pairMoments(fit: FittedSeries, positions: readonly number[]): PairMoments {
  const m = positions.length;
  const result = { variance: new Float64Array(m * m), fourth: new Float64Array(m * m), welch: new Float64Array(m * m) };
  for (const atom of fit.atoms) addAtom(fit, atom, positions, result);
  for (let i = 0; i < m; i++) {
    for (let j = 0; j <= i; j++) {
      const at = i * m + j;
      const mirrored = j * m + i;
      result.fourth[at] = result.fourth[mirrored] = Math.max(0, result.fourth[at]! - 3 * result.variance[at]! ** 2);
      result.variance[mirrored] = result.variance[at]!;
      result.welch[mirrored] = result.welch[at]!;
    }
  }
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
  for (let i = 0; i < m; i++) {
    for (let j = 0; j <= i; j++) {
      const isPair = i !== j;
      let v = isPair ? u[i]! + u[j]! : u[i]!;
      for (let c = 0; c < k; c++) {
        const load = isPair ? loads[i * k + c]! - loads[j * k + c]! : loads[i * k + c]!;
        v += load * load;
      }
      const delta = isPair ? shift[i]! - shift[j]! : shift[i]!;
      const square = delta * delta;
      const at = i * m + j;
      variance[at] = variance[at]! + share * (v + square);
      fourth[at] = fourth[at]! + share * (3 * v * v + 6 * v * square + square * square);
      welch[at] = welch[at]! + share * (isPair ? w[i]! + w[j]! : w[i]!);
    }
  }
}

/**
 * How each variant hangs on the shared effects.
 *
 * Formula: F′a, a the mean loads of a variant, relative to its value
 * @param fit fitted series
 * @param atom set of spreads
 * @param positions of the m variants that are wanted
 * @returns m·K loads [1]
 * @throws nothing
 * @see ROBINSON-1991
 * @example loadsOf(fit, fit.atoms[0], [0]).length // 3
 */
export function loadsOf(fit: FittedSeries, atom: Atom, positions: readonly number[]): Float64Array {
  const { design, means } = fit;
  const { level, factor } = atom;
  const { starts, columns, columnStarts, columnOf } = design;
  const k = columns.length;
  const loads = new Float64Array(positions.length * k);
  positions.forEach((v, i) => {
    const scale = 1 / (1 + means[v]!);
    for (let s = starts[v]!; s < starts[v + 1]!; s++) {
      for (let a = columnStarts[s]!; a < columnStarts[s + 1]!; a++) {
        const row = columnOf[a]! * k;
        for (let c = columnOf[a]!; c < k; c++) loads[i * k + c] = loads[i * k + c]! + scale * level.shares[s]! * factor[row + c]!;
      }
    }
  });
  return loads;
}
