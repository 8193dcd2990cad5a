import { requirePositive } from '../../../../api/measurement/figures/require-positive.js';

const DIAMETER_OF_NUMBER_ONE_MM = 0.165;

/** Nominal diameters of the monofilament numbers in use [mm]; common practice, from memory. */
export const MONOFILAMENT_DIAMETERS_MM: ReadonlyMap<number, number> = new Map([
  [0.1, 0.053],
  [0.2, 0.074],
  [0.3, 0.09],
  [0.4, 0.104],
  [0.5, 0.117],
  [0.6, 0.128],
  [0.8, 0.148],
  [1, 0.165],
  [1.2, 0.185],
  [1.5, 0.205],
  [1.75, 0.22],
  [2, 0.235],
  [2.25, 0.248],
  [2.5, 0.26],
  [2.75, 0.274],
  [3, 0.285],
  [3.5, 0.31],
  [4, 0.33],
  [4.5, 0.35],
  [5, 0.37],
  [6, 0.405],
  [7, 0.435],
  [8, 0.47],
  [10, 0.52],
  [12, 0.57],
  [14, 0.62],
  [16, 0.66],
  [18, 0.7],
  [20, 0.74],
  [22, 0.78],
  [24, 0.81],
  [26, 0.84],
  [28, 0.87],
  [30, 0.91],
  [40, 1.05],
  [50, 1.17],
  [60, 1.28],
  [70, 1.39],
  [80, 1.48],
  [100, 1.65],
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
