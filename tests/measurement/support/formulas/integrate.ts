/**
 * Area under a smooth curve by Simpson's rule.
 *
 * Formula: h/3·(f₀ + 4f₁ + 2f₂ + … + 4fₙ₋₁ + fₙ)
 * @param f smooth function [any]
 * @param from lower end
 * @param to upper end
 * @param intervals even number of intervals [1]
 * @returns integral of f [unit of f times unit of its argument]
 * @throws nothing: what f throws passes through
 * @see MECHANICS
 * @example integrate((x) => x * x, 0, 3, 2) // 9
 */
export function integrate(f: (x: number) => number, from: number, to: number, intervals: number): number {
  const step = (to - from) / intervals;
  let sum = f(from) + f(to);
  for (let i = 1; i < intervals; i += 1) sum += (i % 2 === 1 ? 4 : 2) * f(from + i * step);
  return (sum * step) / 3;
}

/**
 * Finds where a rising function reaches a value, by halving.
 *
 * Formula: bisection, 80 halvings at most
 * @param rising function that never falls
 * @param target value to reach
 * @param from argument at which the function is below the target
 * @param to argument at which it is above
 * @returns argument at which the function reaches the target
 * @throws nothing: what the function throws passes through
 * @see MECHANICS
 * @example solveRising((x) => x ** 3, 8, 0, 10) // 2
 */
export function solveRising(rising: (x: number) => number, target: number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let i = 0; i < 80 && high - low > 1e-14 * Math.max(1, Math.abs(high)); i += 1) {
    const middle = (low + high) / 2;
    if (rising(middle) < target) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
