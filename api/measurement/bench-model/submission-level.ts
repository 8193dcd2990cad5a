import type { Design } from './design.js';

/** All that depends on the spread of submissions alone: shared effects are left as K columns. */
export interface SubmissionLevel {
  readonly submissionSd: number;
  /** weight of a submission in its variant [1] */
  readonly shares: Float64Array;
  /** 1/Σw: variance of a variant about its shared effects */
  readonly ownVariance: Float64Array;
  /** generalised mean of a variant before shared effects are taken out */
  readonly means: Float64Array;
  /** K·K: Z′(W − WX(X′WX)⁻¹X′W)Z */
  readonly m: Float64Array;
  /** K: Z′W(y − Xβ̃) */
  readonly q: Float64Array;
  readonly squares: number;
  /** ln|D| + ln|X′D⁻¹X| */
  readonly logDeterminant: number;
}

/**
 * Reduces a series to matrices of its rigs, testers and certificates, for one spread of submissions.
 *
 * Formula: D = diag(σ_s² + v), W = D⁻¹; M = Z′(W − WX(X′WX)⁻¹X′W)Z, q = Z′W(y − Xβ̃)
 * @param design series
 * @param submissionSd σ_s ≥ 0 [1]
 * @param isApart variants whose submissions disagree: they tell nothing of the effects
 * @returns matrices and per-variant sums
 * @throws nothing: the caller checks the series
 * @see SEARLE-1992
 * @example submissionLevel(designOf(series), 0, new Uint8Array(2)).squares // 0
 */
export function submissionLevel(design: Design, submissionSd: number, isApart: Uint8Array): SubmissionLevel {
  const { variants, starts, y, repeatability, columns } = design;
  const k = columns.length;
  const shares = new Float64Array(y.length);
  const ownVariance = new Float64Array(variants.length);
  const means = new Float64Array(variants.length);
  const m = new Float64Array(k * k);
  const q = new Float64Array(k);
  const total = new Float64Array(k);
  let [squares, logDeterminant] = [0, 0];
  for (let v = 0; v < variants.length; v++) {
    const [from, to] = [starts[v]!, starts[v + 1]!];
    let [weight, sum, logs] = [0, 0, 0];
    for (let s = from; s < to; s++) {
      const w = 1 / (submissionSd * submissionSd + repeatability[s]!);
      shares[s] = w;
      weight += w;
      sum += w * y[s]!;
      logs -= Math.log(w);
    }
    ownVariance[v] = 1 / weight;
    means[v] = sum / weight;
    if (isApart[v] === 0) {
      logDeterminant += logs + Math.log(weight);
      squares += addVariant(design, shares, means[v]!, from, to, m, q, total);
      takeOut(m, total, weight, design, from, to);
    }
    for (let s = from; s < to; s++) shares[s] = shares[s]! / weight;
  }
  return { submissionSd, shares, ownVariance, means, m, q, squares, logDeterminant };
}

/** Adds the rows of a variant to Z′WZ and Z′Wr, collects Z′w in total; gives Σwr². */
function addVariant(
  design: Design,
  weights: Float64Array,
  mean: number,
  from: number,
  to: number,
  m: Float64Array,
  q: Float64Array,
  total: Float64Array,
): number {
  const { y, columnStarts, columnOf } = design;
  const k = total.length;
  let squares = 0;
  total.fill(0);
  for (let s = from; s < to; s++) {
    const w = weights[s]!;
    const residual = y[s]! - mean;
    squares += w * residual * residual;
    for (let a = columnStarts[s]!; a < columnStarts[s + 1]!; a++) {
      const column = columnOf[a]!;
      q[column] = q[column]! + w * residual;
      total[column] = total[column]! + w;
      for (let b = columnStarts[s]!; b < columnStarts[s + 1]!; b++) m[column * k + columnOf[b]!] = m[column * k + columnOf[b]!]! + w;
    }
  }
  return squares;
}

/** Takes out what the mean of the variant explains; only the columns of its own rows are looked at. */
function takeOut(m: Float64Array, total: Float64Array, weight: number, design: Design, from: number, to: number): void {
  const k = total.length;
  const own = [...new Set(design.columnOf.subarray(design.columnStarts[from], design.columnStarts[to]))];
  for (const a of own) for (const b of own) m[a * k + b] = m[a * k + b]! - (total[a]! * total[b]!) / weight;
}
