import { roundHalfEven } from '../units/round-half-even.js';
import type { RankedCategory } from './ranking-input.js';
import { WEIGHT_UNIT } from './stand-once.js';

/**
 * Weight of a category in whole millionths, so that weighted sums of places tie exactly.
 *
 * Formula: 10⁶·w
 * @param category with its weight as a decimal of at most 6 places
 * @returns whole number [10⁻⁶]
 * @throws nothing: the caller checks the weight
 * @see COMMON-PRACTICE
 * @example weightOf({ weight: '0.5' }) // 500000
 */
export function weightOf(category: Pick<RankedCategory, 'weight'>): number {
  return Math.round(Number(category.weight) * WEIGHT_UNIT);
}

/**
 * Value of an entry as it is published, as a number.
 *
 * Formula: x rounded half-even at the places of the category
 * @param category with the decimals that its values are published at
 * @param value x [unit of the category]
 * @returns rounded value [same unit]
 * @throws nothing: the caller checks the value
 * @see ISO-80000
 * @example publishedValue({ places: 1 }, 2.25) // 2.2
 */
export function publishedValue(category: Pick<RankedCategory, 'places'>, value: number): number {
  return Number(roundHalfEven(value, category.places));
}
