import { equivalentSolidDiameterMm } from '../figures/cross-section.js';
import { requirePositive } from '../figures/require-positive.js';

/** Linear density that PE number 1 states (trade association table, from memory). */
export const DENIER_PER_PE_NUMBER = 200;

/** Density of gel-spun UHMWPE fibre. */
export const UHMWPE_DENSITY_G_PER_CM3 = 0.97;

/**
 * Linear density that a braid's PE number states.
 *
 * Formula: 200 · number
 * @param peNumber PE number (gō), above 0 [1]
 * @returns linear density [denier]
 * @throws MeasurementError 'figures/not-positive' unless finite and above 0
 * @see PE-NUMBER-TABLE
 * @example peNumberDenier(1.5) // 300
 */
export function peNumberDenier(peNumber: number): number {
  requirePositive(peNumber, 'peNumber', 'peNumberDenier');
  return DENIER_PER_PE_NUMBER * peNumber;
}

/**
 * Linear density that a braid's PE number states, in tex.
 *
 * Formula: 200 · number/9
 * @param peNumber PE number (gō), above 0 [1]
 * @returns linear density [tex]
 * @throws MeasurementError 'figures/not-positive' unless finite and above 0
 * @see PE-NUMBER-TABLE
 * @example peNumberTex(0.9) // 20
 */
export function peNumberTex(peNumber: number): number {
  return peNumberDenier(peNumber) / 9;
}

export interface LabelPlausibility {
  solidDiameterMm: number;
  /** false where the label contradicts itself */
  isPossible: boolean;
}

/**
 * Checks a label against itself: no line is thinner than the solid rod of its own PE number.
 *
 * Formula: possible when claimed d ≥ √(4T/πρ), T from the PE number
 * @param claimedDiameterMm diameter on the label, above 0 [mm]
 * @param peNumber PE number on the label, above 0 [1]
 * @param densityGPerCm3 density of the fibre, above 0 [g/cm³]
 * @returns solidDiameterMm [mm], isPossible
 * @throws MeasurementError 'figures/not-positive' unless all are finite and above 0
 * @see PE-NUMBER-TABLE
 * @example labelPlausibility(0.12, 1).isPossible // false
 */
export function labelPlausibility(
  claimedDiameterMm: number,
  peNumber: number,
  densityGPerCm3 = UHMWPE_DENSITY_G_PER_CM3,
): LabelPlausibility {
  requirePositive(claimedDiameterMm, 'claimedDiameterMm', 'labelPlausibility');
  const solidDiameterMm = equivalentSolidDiameterMm(peNumberTex(peNumber), densityGPerCm3);
  return { solidDiameterMm, isPossible: claimedDiameterMm >= solidDiameterMm };
}
