import { requireFinite, requirePositive } from '../../../../api/measurement/figures/require-positive.js';

/**
 * A tester's ζ score: distance from the assigned value in combined standard uncertainties.
 *
 * Formula: ζ = (x − x_pt)/√(u²(x) + u²(x_pt))
 * @param value the tester's result [any one unit] with its standard uncertainty
 * @param assigned assigned value [same unit] with its standard uncertainty; not both uncertainties 0
 * @returns ζ [1]
 * @throws MeasurementError 'figures/not-positive' when both uncertainties are 0; 'measurement/not-a-number'
 * @see ISO-13528 9.6
 * @example zetaScore({ value: 12, u: 0.6 }, { value: 10, u: 0.8 }) // 2
 */
export function zetaScore(value: { value: number; u: number }, assigned: { value: number; u: number }): number {
  const combined = Math.hypot(value.u, assigned.u);
  requireFinite(value.value - assigned.value, 'distance from the assigned value', 'zetaScore');
  requirePositive(combined, 'combined standard uncertainty', 'zetaScore');
  return (value.value - assigned.value) / combined;
}

/**
 * A tester's E_n score: distance from the assigned value in combined expanded uncertainties.
 *
 * Formula: E_n = (x − x_pt)/√(U²(x) + U²(x_pt)), both at k = 2; |E_n| ≤ 1 agrees
 * @param value the tester's result [any one unit] with its expanded uncertainty
 * @param assigned assigned value [same unit] with its expanded uncertainty; not both uncertainties 0
 * @returns E_n [1]
 * @throws MeasurementError 'figures/not-positive' when both uncertainties are 0; 'measurement/not-a-number'
 * @see ISO-13528 9.7
 * @example eNScore({ value: 12, expanded: 1.2 }, { value: 10, expanded: 1.6 }) // 1
 */
export function eNScore(value: { value: number; expanded: number }, assigned: { value: number; expanded: number }): number {
  const combined = Math.hypot(value.expanded, assigned.expanded);
  requireFinite(value.value - assigned.value, 'distance from the assigned value', 'eNScore');
  requirePositive(combined, 'combined expanded uncertainty', 'eNScore');
  return (value.value - assigned.value) / combined;
}
