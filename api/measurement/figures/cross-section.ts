import { mean } from '../summary/mean.js';
import { requireStations } from './diameter.js';
import type { DiameterStation } from './diameter.js';
import { requirePositive } from './require-positive.js';

/**
 * Area of the circle with the mean diameter.
 *
 * Formula: A = π d²/4
 * @param diameterMm d > 0 [mm]
 * @returns A [mm²]
 * @throws MeasurementError 'figures/not-positive' unless 0 < d < ∞
 * @see COMMON-PRACTICE
 * @example circleAreaMm2(0.256) // 0.05147…
 */
export function circleAreaMm2(diameterMm: number): number {
  requirePositive(diameterMm, 'diameterMm', 'circleAreaMm2');
  return (Math.PI * diameterMm * diameterMm) / 4;
}

/**
 * Mean area of the ellipses through the widest and narrowest readings.
 *
 * Formula: A = π/4 · mean(w·n)
 * @param stations one or more stations, each with w ≥ n > 0 [mm]
 * @returns A [mm²]
 * @throws MeasurementError 'measurement/too-few-readings' for none; 'figures/not-positive'; 'figures/wide-below-narrow'
 * @see MECHANICS
 * @example ellipseAreaMm2([{ wideMm: 0.4, narrowMm: 0.1 }]) // 0.0314…
 */
export function ellipseAreaMm2(stations: readonly DiameterStation[]): number {
  requireStations(stations, 'ellipseAreaMm2');
  return (Math.PI / 4) * mean(stations.map(({ wideMm, narrowMm }) => wideMm * narrowMm));
}

/**
 * Area of the material alone, without the air that a braid's outline holds.
 *
 * Formula: A = T/ρ; with T in g/km and ρ in g/cm³, A = T/(1000 ρ) mm²
 * @param linearDensityTex T > 0 [tex]
 * @param densityGPerCm3 ρ > 0 [g/cm³]
 * @returns A [mm²]
 * @throws MeasurementError 'figures/not-positive' unless both are finite and above 0
 * @see ISO-1144
 * @example solidAreaMm2(97, 0.97) // 0.1
 */
export function solidAreaMm2(linearDensityTex: number, densityGPerCm3: number): number {
  requirePositive(linearDensityTex, 'linearDensityTex', 'solidAreaMm2');
  requirePositive(densityGPerCm3, 'densityGPerCm3', 'solidAreaMm2');
  return linearDensityTex / (1000 * densityGPerCm3);
}

/**
 * Diameter of the solid round rod with the same linear density and material.
 *
 * Formula: d = √(4T/πρ) = √(4A/π) with A the solid area
 * @param linearDensityTex T > 0 [tex]
 * @param densityGPerCm3 ρ > 0; 0.97 for UHMWPE [g/cm³]
 * @returns d [mm]
 * @throws MeasurementError 'figures/not-positive' unless both are finite and above 0
 * @see MECHANICS
 * @example equivalentSolidDiameterMm(200 / 9, 0.97) // 0.1707…
 */
export function equivalentSolidDiameterMm(linearDensityTex: number, densityGPerCm3: number): number {
  return Math.sqrt((4 * solidAreaMm2(linearDensityTex, densityGPerCm3)) / Math.PI);
}
