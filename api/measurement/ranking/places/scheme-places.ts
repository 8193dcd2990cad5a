import { breakTies } from './break-ties.js';
import type { ScoredCategory } from './scheme-scores.js';
import { sortedPlaces } from './sorted-places.js';

/**
 * Overall places of many draws from their scores, ties broken as the scheme says.
 *
 * Formula: competition places of the scores, less is better; under 'mostFirsts' ties are broken
 * @param scores B·m scores, draw by draw [1]
 * @param categories the categories that made them
 * @param m number of entries ranked overall [1]
 * @param tieBreak rule of the scheme
 * @returns B·m places, draw by draw [1]
 * @throws nothing: the caller checks the shapes
 * @see COMMON-PRACTICE
 * @example schemePlaces(Float64Array.of(2, 4), categories, 2, 'none') // [1, 2]
 */
export function schemePlaces(
  scores: Float64Array,
  categories: readonly ScoredCategory[],
  m: number,
  tieBreak: 'none' | 'mostFirsts',
): Uint16Array {
  const places = new Uint16Array(scores.length);
  const sorter = sortedPlaces(m);
  for (let from = 0; from < scores.length; from += m) {
    for (let i = 0; i < m; i++) sorter.keys[i] = scores[from + i]!;
    sorter.writePlaces(places, from);
    if (tieBreak === 'mostFirsts') breakTies({ places, categories, m, from });
  }
  return places;
}
