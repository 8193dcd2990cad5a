/** Moments of an error: how wide it is, and how heavy its tail. */
export interface Moments {
  /** its variance over all likely spreads */
  readonly variance: number;
  /** its fourth cumulant over them: 0 for one normal */
  readonly fourth: number;
  /** Σu⁴/ν of the parts that were themselves estimated */
  readonly welch: number;
}

/** An error as a scaled Student's t. */
export interface Tail {
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
}

/**
 * Student's t that has the variance and the kurtosis of an error.
 *
 * Formula: γ = κ₄/σ⁴, ν₁ = 4 + 6/γ, u² = σ²(ν₁ − 2)/ν₁; then 1/ν = 1/ν₁ + Σu⁴/ν/σ⁴ by Welch–Satterthwaite
 * @param variance σ² of the mixture [any unit²]
 * @param fourth κ₄ of the mixture [unit⁴]
 * @param welch Σu⁴/ν of parts that were estimated themselves [unit⁴]
 * @returns u [unit] and ν [1]
 * @throws nothing
 * @see SATTERTHWAITE-1946
 * @example tailOf(1, 0, 0.1) // { standardUncertainty: 1, degreesOfFreedom: 10 }
 */
export function tailOf(variance: number, fourth: number, welch: number): Tail {
  if (!(variance > 0)) return { standardUncertainty: 0, degreesOfFreedom: Infinity };
  const square = variance * variance;
  const excess = Math.max(0, fourth / square);
  const mixture = 4 + 6 / excess;
  const share = excess === 0 ? 1 : (mixture - 2) / mixture;
  const inverse = (excess === 0 ? 0 : 1 / mixture) + welch / square;
  return { standardUncertainty: Math.sqrt(variance * share), degreesOfFreedom: inverse === 0 ? Infinity : 1 / inverse };
}
