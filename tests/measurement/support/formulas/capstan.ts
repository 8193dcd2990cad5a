import { requireNotNegative } from '../../../../api/measurement/figures/require-positive.js';

/**
 * Force that reaches the clamp behind the turns of a bollard or capstan grip.
 *
 * Formula: T_hold = T_load · exp(−2π μ turns)
 * @param loadForceN T_load ≥ 0 [N]
 * @param frictionCoefficient μ ≥ 0 [1]
 * @param turns full turns around the drum, 0 or more [1]
 * @returns T_hold [N]
 * @throws MeasurementError 'figures/negative' for any argument below 0 or not finite
 * @see EULER-EYTELWEIN
 * @example capstanHoldingForceN(300, 0.1, 3) // 45.55…
 */
export function capstanHoldingForceN(loadForceN: number, frictionCoefficient: number, turns: number): number {
  requireNotNegative(loadForceN, 'loadForceN', 'capstanHoldingForceN');
  requireNotNegative(frictionCoefficient, 'frictionCoefficient', 'capstanHoldingForceN');
  requireNotNegative(turns, 'turns', 'capstanHoldingForceN');
  return loadForceN * Math.exp(-2 * Math.PI * frictionCoefficient * turns);
}
