import { requirePositive } from '../figures/require-positive.js';

/**
 * Stiffness of the line per unit of strain and cross-section.
 *
 * Formula: k L/A
 * @param stiffnessNPerMm k > 0, slope of the linear part [N/mm]
 * @param gaugeLengthMm L > 0 [mm]
 * @param areaMm2 A > 0 [mm²]
 * @returns initial modulus [MPa]
 * @throws MeasurementError 'figures/not-positive' unless all are finite and above 0
 * @see MECHANICS
 * @example initialModulusMPa(8, 500, 0.05) // 80000
 */
export function initialModulusMPa(stiffnessNPerMm: number, gaugeLengthMm: number, areaMm2: number): number {
  requirePositive(stiffnessNPerMm, 'stiffnessNPerMm', 'initialModulusMPa');
  requirePositive(gaugeLengthMm, 'gaugeLengthMm', 'initialModulusMPa');
  requirePositive(areaMm2, 'areaMm2', 'initialModulusMPa');
  return (stiffnessNPerMm * gaugeLengthMm) / areaMm2;
}
