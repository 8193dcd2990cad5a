import { requireNotNegative, requirePositive } from '../../../../api/measurement/figures/require-positive.js';
import { findPeak } from '../../../../api/measurement/traces/trace.js';
import type { TracePoint } from '../../../../api/measurement/traces/trace.js';

/**
 * Elongation at the peak without any correction.
 *
 * Formula: 100 x_peak/L
 * @param points samples in order [mm, N]
 * @param gaugeLengthMm L > 0 [mm]
 * @returns elongation [%]
 * @throws MeasurementError 'figures/not-positive' for L; errors of findPeak
 * @see ASTM-D2256
 * @example rawElongationPercent([{ extensionMm: 0, forceN: 0 }, { extensionMm: 20, forceN: 80 }], 500) // 4
 */
export function rawElongationPercent(points: readonly TracePoint[], gaugeLengthMm: number): number {
  requirePositive(gaugeLengthMm, 'gaugeLengthMm', 'rawElongationPercent');
  return (100 * findPeak(points).extensionMm) / gaugeLengthMm;
}

/**
 * Stiffness of the line per unit of strain and linear density.
 *
 * Formula: 100 k L/T
 * @param stiffnessNPerMm k > 0, slope of the linear part [N/mm]
 * @param gaugeLengthMm L > 0 [mm]
 * @param linearDensityTex T > 0 [tex]
 * @returns initial modulus [cN/tex]
 * @throws MeasurementError 'figures/not-positive' unless all are finite and above 0
 * @see ASTM-D2256
 * @example initialModulusCNPerTex(8, 500, 20) // 20000
 */
export function initialModulusCNPerTex(stiffnessNPerMm: number, gaugeLengthMm: number, linearDensityTex: number): number {
  requirePositive(stiffnessNPerMm, 'stiffnessNPerMm', 'initialModulusCNPerTex');
  requirePositive(gaugeLengthMm, 'gaugeLengthMm', 'initialModulusCNPerTex');
  requirePositive(linearDensityTex, 'linearDensityTex', 'initialModulusCNPerTex');
  return (100 * stiffnessNPerMm * gaugeLengthMm) / linearDensityTex;
}

/**
 * Work to break per mass of the specimen.
 *
 * Formula: W/(T L), with T L = tex · mm · 10⁻⁶ g
 * @param workJ W ≥ 0 [J]
 * @param linearDensityTex T > 0 [tex]
 * @param gaugeLengthMm L > 0 [mm]
 * @returns toughness [J/g]
 * @throws MeasurementError 'figures/negative' for W; 'figures/not-positive' for T or L
 * @see ASTM-D2256
 * @example toughnessJPerG(1, 20, 500) // 100
 */
export function toughnessJPerG(workJ: number, linearDensityTex: number, gaugeLengthMm: number): number {
  requireNotNegative(workJ, 'workJ', 'toughnessJPerG');
  requirePositive(linearDensityTex, 'linearDensityTex', 'toughnessJPerG');
  requirePositive(gaugeLengthMm, 'gaugeLengthMm', 'toughnessJPerG');
  return workJ / (linearDensityTex * gaugeLengthMm * 1e-6);
}
