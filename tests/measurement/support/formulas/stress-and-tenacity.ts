import { requireNotNegative, requirePositive } from '../../../../api/measurement/figures/require-positive.js';

/**
 * Breaking force over cross-section. "Apparent", because a braid's outline holds air.
 *
 * Formula: σ = F/A (1 N/mm² = 1 MPa)
 * @param forceN F ≥ 0 [N]
 * @param areaMm2 A > 0 [mm²]
 * @returns σ [MPa]
 * @throws MeasurementError 'figures/negative' for F; 'figures/not-positive' for A
 * @see MECHANICS
 * @example apparentStressMPa(100, 0.05) // 2000
 */
export function apparentStressMPa(forceN: number, areaMm2: number): number {
  requireNotNegative(forceN, 'forceN', 'apparentStressMPa');
  requirePositive(areaMm2, 'areaMm2', 'apparentStressMPa');
  return forceN / areaMm2;
}

/**
 * Breaking force over linear density.
 *
 * Formula: τ = 100 F/T
 * @param forceN F ≥ 0 [N]
 * @param tex T > 0 [tex]
 * @returns τ [cN/tex]
 * @throws MeasurementError 'figures/negative' for F; 'figures/not-positive' for T
 * @see ISO-1144
 * @example tenacityCNPerTex(100, 50) // 200
 */
export function tenacityCNPerTex(forceN: number, tex: number): number {
  requireNotNegative(forceN, 'forceN', 'tenacityCNPerTex');
  requirePositive(tex, 'tex', 'tenacityCNPerTex');
  return (100 * forceN) / tex;
}

/**
 * Stress in the material alone, from tenacity and density.
 *
 * Formula: σ_solid = 10 τ ρ
 * @param tenacity τ ≥ 0 [cN/tex]
 * @param densityGPerCm3 ρ > 0 [g/cm³]
 * @returns σ_solid [MPa]
 * @throws MeasurementError 'figures/negative' for τ; 'figures/not-positive' for ρ
 * @see ISO-1144
 * @example solidStressMPa(300, 0.97) // 2910
 */
export function solidStressMPa(tenacity: number, densityGPerCm3: number): number {
  requireNotNegative(tenacity, 'tenacity', 'solidStressMPa');
  requirePositive(densityGPerCm3, 'densityGPerCm3', 'solidStressMPa');
  return 10 * tenacity * densityGPerCm3;
}

/**
 * Tenacity that a stress in the material alone stands for.
 *
 * Formula: τ = σ_solid/(10 ρ)
 * @param stressMPa σ_solid ≥ 0 [MPa]
 * @param densityGPerCm3 ρ > 0 [g/cm³]
 * @returns τ [cN/tex]
 * @throws MeasurementError 'figures/negative' for σ; 'figures/not-positive' for ρ
 * @see ISO-1144
 * @example tenacityOfSolidStress(4000, 0.97) // 412.37…
 */
export function tenacityOfSolidStress(stressMPa: number, densityGPerCm3: number): number {
  requireNotNegative(stressMPa, 'stressMPa', 'tenacityOfSolidStress');
  requirePositive(densityGPerCm3, 'densityGPerCm3', 'tenacityOfSolidStress');
  return stressMPa / (10 * densityGPerCm3);
}
