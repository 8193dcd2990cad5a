import { requireFinite, requirePositive } from '../figures/require-positive.js';

/**
 * A tester's z score: distance from the assigned value in standard deviations for proficiency.
 *
 * Formula: z = (x − x_pt)/σ_pt; |z| ≤ 2 satisfactory, ≥ 3 an action signal
 * @param value the tester's result [any one unit]
 * @param assigned assigned value [same unit]
 * @param proficiencySd σ_pt above 0 [same unit]
 * @returns z [1]
 * @throws MeasurementError 'figures/not-positive' for σ_pt not above 0; 'measurement/not-a-number'
 * @see ISO-13528 9.4
 * @example zScore(12, 10, 1) // 2
 */
export function zScore(value: number, assigned: number, proficiencySd: number): number {
  requireFinite(value - assigned, 'distance from the assigned value', 'zScore');
  requirePositive(proficiencySd, 'proficiencySd', 'zScore');
  return (value - assigned) / proficiencySd;
}
