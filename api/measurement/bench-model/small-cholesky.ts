import { MeasurementError } from '../errors.js';

/** Lower triangle of a factored matrix with what is asked of it most. */
export interface Factored {
  /** q·q, row by row; L with L·Lᵀ the matrix */
  readonly lower: Float64Array;
  readonly logDeterminant: number;
}

/**
 * Factors a small symmetric positive definite matrix.
 *
 * Formula: A = L·Lᵀ; ln|A| = 2·Σ ln L_ii
 * @param matrix q·q, row by row [1]
 * @param q rows [1]
 * @returns lower triangle and ln|A| [1]
 * @throws MeasurementError 'bench-model/not-positive' when a pivot is not above 0
 * @see GOLUB-VAN-LOAN-2013
 * @example choleskyOf(Float64Array.of(4, 2, 2, 5), 2).lower // [2, 0, 1, 2]
 */
export function choleskyOf(matrix: Float64Array, q: number): Factored {
  const lower = new Float64Array(q * q);
  let logDeterminant = 0;
  for (let i = 0; i < q; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * q + j]!;
      for (let k = 0; k < j; k++) sum -= lower[i * q + k]! * lower[j * q + k]!;
      if (i > j) lower[i * q + j] = sum / lower[j * q + j]!;
      else {
        if (!(sum > 0)) {
          throw new MeasurementError(
            'bench-model/not-positive',
            `choleskyOf: pivot ${i + 1} is ${sum}, expected above 0. Look for an uncertainty that is not a number.`,
          );
        }
        lower[i * q + i] = Math.sqrt(sum);
        logDeterminant += Math.log(sum);
      }
    }
  }
  return { lower, logDeterminant };
}

/**
 * Solves L·x = b by substitution from the top.
 *
 * Formula: x_i = (b_i − Σ_{k<i} L_ik·x_k)/L_ii
 * @param lower q·q, row by row, lower triangle [1]
 * @param b q numbers [any one unit]
 * @returns q numbers [same unit]
 * @throws nothing: the triangle comes from `choleskyOf`
 * @see GOLUB-VAN-LOAN-2013
 * @example solveLower(Float64Array.of(2, 0, 1, 2), Float64Array.of(2, 3)) // [1, 1]
 */
export function solveLower(lower: Float64Array, b: Float64Array): Float64Array {
  const q = b.length;
  const x = Float64Array.from(b);
  for (let i = 0; i < q; i++) {
    for (let k = 0; k < i; k++) x[i] = x[i]! - lower[i * q + k]! * x[k]!;
    x[i] = x[i]! / lower[i * q + i]!;
  }
  return x;
}

/**
 * Solves Lᵀ·x = b by substitution from the bottom.
 *
 * Formula: x_i = (b_i − Σ_{k>i} L_ki·x_k)/L_ii
 * @param lower q·q, row by row, lower triangle [1]
 * @param b q numbers [any one unit]
 * @returns q numbers [same unit]
 * @throws nothing: the triangle comes from `choleskyOf`
 * @see GOLUB-VAN-LOAN-2013
 * @example solveUpper(Float64Array.of(2, 0, 1, 2), Float64Array.of(3, 2)) // [1, 1]
 */
export function solveUpper(lower: Float64Array, b: Float64Array): Float64Array {
  const q = b.length;
  const x = Float64Array.from(b);
  for (let i = q - 1; i >= 0; i--) {
    for (let k = i + 1; k < q; k++) x[i] = x[i]! - lower[k * q + i]! * x[k]!;
    x[i] = x[i]! / lower[i * q + i]!;
  }
  return x;
}
