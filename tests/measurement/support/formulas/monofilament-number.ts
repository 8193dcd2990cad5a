import { requirePositive } from '../../../../api/measurement/figures/require-positive.js';

const DIAMETER_OF_NUMBER_ONE_MM = 0.165;

/**
 * Diameter that a monofilament number (nylon, fluorocarbon) stands for by the square-root rule; a plausibility figure only.
 *
 * Formula: d = 0.165 √number
 * @param lineNumber monofilament number (gō), above 0 [1]
 * @returns d [mm]
 * @throws MeasurementError 'figures/not-positive' unless finite and above 0
 * @see COMMON-PRACTICE
 * @example monofilamentNumberDiameterMm(4) // 0.33
 */
export function monofilamentNumberDiameterMm(lineNumber: number): number {
  requirePositive(lineNumber, 'lineNumber', 'monofilamentNumberDiameterMm');
  return DIAMETER_OF_NUMBER_ONE_MM * Math.sqrt(lineNumber);
}
