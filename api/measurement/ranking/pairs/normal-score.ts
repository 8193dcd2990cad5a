/** As in `api/measurement/random/random-stream.ts`. */
const { expm1, log1p, sqrt } = Math;

/**
 * Normal score of a Student's t: where a normal variable would stand with the same probability beyond it.
 *
 * Formula: Wallace's z = (8ν + 1)/(8ν + 3)·√(ν ln(1 + t²/ν)), with the sign of t; t itself for ν = ∞. It never decreases with t and is never farther from 0 than t
 * @param t difference over its uncertainty [1]
 * @param degreesOfFreedom ν > 0; Infinity allowed [1]
 * @returns z [1]
 * @throws nothing: the caller checks ν once, not at each draw
 * @see WALLACE-1959
 * @example normalScore(2.2281, 10) // 1.9593…
 */
export function normalScore(t: number, degreesOfFreedom: number): number {
  if (degreesOfFreedom > MOST_DEGREES) return t;
  const z = ((8 * degreesOfFreedom + 1) / (8 * degreesOfFreedom + 3)) * sqrt(degreesOfFreedom * log1p((t * t) / degreesOfFreedom));
  return t < 0 ? -z : z;
}

/** From here on Student's t is the normal distribution to more digits than any draw shows. */
const MOST_DEGREES = 1e6;

/**
 * Student's t with a given normal score.
 *
 * Formula: t = √(ν(exp((z(8ν + 3)/(8ν + 1))²/ν) − 1)), with the sign of z
 * @param z normal score [1]
 * @param degreesOfFreedom ν > 0; Infinity allowed [1]
 * @returns t, the inverse of `normalScore` [1]
 * @throws nothing: the caller checks ν
 * @see WALLACE-1959
 * @example studentOfScore(normalScore(2.5, 7), 7) // 2.5
 */
export function studentOfScore(z: number, degreesOfFreedom: number): number {
  if (degreesOfFreedom > MOST_DEGREES) return z;
  const scaled = (z * (8 * degreesOfFreedom + 3)) / (8 * degreesOfFreedom + 1);
  const t = sqrt(degreesOfFreedom * expm1((scaled * scaled) / degreesOfFreedom));
  return z < 0 ? -t : t;
}
