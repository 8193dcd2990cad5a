import { requirePositive } from './require-positive.js';

/**
 * Mass of a measured length, per kilometre.
 *
 * Formula: T = 1000 m/L
 * @param massG m > 0 [g]
 * @param lengthM L > 0, at the method's preload [m]
 * @returns T [tex]
 * @throws MeasurementError 'figures/not-positive' unless both are finite and above 0
 * @see ISO-1144
 * @example linearDensityTex(0.5, 10) // 50
 */
export function linearDensityTex(massG: number, lengthM: number): number {
  requirePositive(massG, 'massG', 'linearDensityTex');
  requirePositive(lengthM, 'lengthM', 'linearDensityTex');
  return (1000 * massG) / lengthM;
}
