/**
 * A t statistic as the normal score of the same tail, so that differences known with few and with many degrees of freedom are measured alike.
 *
 * Formula: z = (8ν + 1)/(8ν + 3)·√(ν·ln(1 + t²/ν)), within 0.02 of the exact score up to z = 5 for ν ≥ 2; never above t
 * @param t statistic, 0 or more [1]
 * @param degreesOfFreedom ν > 0; Infinity allowed [1]
 * @returns z [1]
 * @throws nothing
 * @see WALLACE-1959
 * @example tailScore(3, Infinity) // 3
 */
export function tailScore(t: number, degreesOfFreedom: number): number {
  if (degreesOfFreedom > 1e6) return t;
  return ((8 * degreesOfFreedom + 1) / (8 * degreesOfFreedom + 3)) * Math.sqrt(degreesOfFreedom * Math.log1p((t * t) / degreesOfFreedom));
}
