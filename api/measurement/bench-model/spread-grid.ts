import type { ToldSpread } from './observation.js';

/** A spread that may be, with the weight that it has before the season is looked at. */
export interface GridPoint {
  /** relative standard deviation [1] */
  readonly sd: number;
  /** ln of the weight, but for a constant [1] */
  readonly logWeight: number;
}

/** Points of the grid; ten tell as much as forty in trials. */
const POINTS = 10;
/** ν of the half-t prior (Gelman 2006): heavy enough to give way to a season that says otherwise. */
const PRIOR_DEGREES_OF_FREEDOM = 4;
/** How far the grid goes, in scales of the prior. */
const TOP = 5;

/**
 * Spreads that may be, closer to one another near 0, with half-t prior weights and what is told from elsewhere.
 *
 * Formula: σ_m = top·(m/9)²; weight = width·(1 + (σ/s)²/4)^(−5/2)·Π L(σ | told); ln L = −ν/2·(ln(σ² + ε) + t²/(σ² + ε)), ε the square of the first step
 * @param scale s, scale of the prior, above 0 [1]
 * @param reach a spread that the grid has to reach [1]
 * @param told what is known from elsewhere, each with its own weight
 * @returns ten points [1]
 * @throws nothing
 * @see GELMAN-2006
 * @example spreadGrid(0.01, 0, []).length // 10
 */
export function spreadGrid(scale: number, reach: number, told: readonly ToldSpread[]): GridPoint[] {
  const top = Math.max(TOP * scale, reach);
  const sds = Array.from({ length: POINTS }, (_, m) => top * (m / (POINTS - 1)) ** 2);
  const floor = sds[1]! ** 2 / 4;
  const slab = sds.map((sd, m) => (((sds[m + 1] ?? sd) - (sds[m - 1] ?? sd)) / 2) * (1 + (sd / scale) ** 2 / PRIOR_DEGREES_OF_FREEDOM) ** (-(PRIOR_DEGREES_OF_FREEDOM + 1) / 2));
  const whole = slab.reduce((sum, one) => sum + one, 0);
  return sds.map((sd, m) => {
    const weight = ((1 - W0) * slab[m]!) / whole + (m === 0 ? W0 : 0);
    return { sd, logWeight: Math.log(weight) + told.reduce((sum, one) => sum + logLikelihood(sd ** 2 + floor, one), 0) };
  });
}
const W0 = Number(process.env['W0'] ?? 0.3);

/** ln of how likely a spread makes what was found of it: ν·t²/σ² is χ²(ν). */
const logLikelihood = (variance: number, { relativeSd, degreesOfFreedom }: ToldSpread): number =>
  (-degreesOfFreedom / 2) * (Math.log(variance) + relativeSd ** 2 / variance);
