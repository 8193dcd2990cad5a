import { requirePositive } from '../figures/require-positive.js';

const DIAMETER_OF_NUMBER_ONE_MM = 0.165;

/** Nominal diameters of the monofilament numbers in common use [mm]; trade convention, from memory. */
export const MONOFILAMENT_DIAMETERS_MM: ReadonlyMap<number, number> = new Map([
  [1, 0.165],
  [2, 0.235],
  [3, 0.285],
  [4, 0.33],
  [5, 0.37],
  [6, 0.405],
  [8, 0.47],
  [10, 0.52],
  [12, 0.57],
  [16, 0.66],
  [20, 0.74],
]);

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
