/**
 * Adds numbers while carrying the rounding error of each step, so that the order of the readings hardly matters.
 *
 * Formula: Neumaier's variant of Kahan summation.
 * @param values numbers to add [any one unit]
 * @returns their sum [same unit]; 0 for an empty list
 * @throws nothing: the caller checks its readings first
 * @see NEUMAIER-1974
 * @example compensatedSum([1, 1e100, 1, -1e100]) // 2
 */
export function compensatedSum(values: readonly number[]): number {
  let sum = 0;
  let carried = 0;
  for (const value of values) {
    const next = sum + value;
    carried += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  return sum + carried;
}
