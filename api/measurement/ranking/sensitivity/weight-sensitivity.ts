import { WEIGHT_DRAWS } from '../draws/draw-counts.js';
import type { RandomStream } from '../../random/random-stream.js';
import type { Combination } from '../places/overall-scores.js';
import { schemeScores } from '../places/scheme-scores.js';
import type { PointStandings } from '../stand-once.js';

export interface WeightSensitivity {
  /** share of random weights under which each entry is first, those above 0, largest first */
  readonly firstPlaces: readonly { readonly id: string; readonly share: number }[];
  /** smallest part of all weight that has to move to another category for another entry to reach the first score; null when none can */
  readonly smallestChange: { readonly weightMoved: number; readonly id: string } | null;
}

/**
 * How much the first place owes to the weights.
 *
 * Formula: first places under weights from Dirichlet(1, …, 1), ties split; smallest Σ|w′ − w|/2 with another entry's score no worse than the first's, weight moved from where the first is farthest ahead to where it is least ahead
 * @param standings published standings of the entries ranked overall
 * @param ids theirs, in the same order
 * @param combine a sum of places or the mean standard score; equal weights under the plain sum
 * @param random seeded stream
 * @returns shares and the smallest change [1]; a first place that is shared changes with no weight moved
 * @throws nothing: the caller checks the input
 * @see COMMON-PRACTICE
 * @example weightSensitivity(standings, ids, 'sumOfPlaces', random).firstPlaces // [{ id: 'a', share: 1 }]
 */
export function weightSensitivity(
  standings: PointStandings,
  ids: readonly string[],
  combine: Combination,
  random: RandomStream,
): WeightSensitivity {
  const perCategory = standings.categories.map((category) =>
    schemeScores([{ ...category, weight: 1 }], ids.length, combine === 'meanStandardScore' ? combine : 'sumOfPlaces'),
  );
  const stated = standings.categories.map(({ weight }) => (combine === 'sumOfPlaces' ? 1 : weight));
  const total = stated.reduce((sum, weight) => sum + weight, 0);
  const weights = stated.map((weight) => (total === 0 ? 1 / stated.length : weight / total));
  return {
    firstPlaces: [...sharesOfFirst(perCategory, ids.length, random)]
      .map((share, i) => ({ id: ids[i]!, share }))
      .filter(({ share }) => share > 0)
      .sort((a, b) => b.share - a.share || (a.id < b.id ? -1 : 1)),
    smallestChange: smallestChange(perCategory, weights, ids, standings.places),
  };
}

function sharesOfFirst(perCategory: readonly Float64Array[], m: number, random: RandomStream): Float64Array {
  const shares = new Float64Array(m);
  const weights = new Float64Array(perCategory.length);
  const scores = new Float64Array(m);
  for (let draw = 0; draw < WEIGHT_DRAWS; draw++) {
    // Exponentials need no common divisor here: only the order of the scores counts.
    for (let c = 0; c < weights.length; c++) weights[c] = -Math.log(random.nextUniform());
    scores.fill(0);
    perCategory.forEach((own, c) => {
      for (let i = 0; i < m; i++) scores[i] = scores[i]! + weights[c]! * own[i]!;
    });
    let best = Infinity;
    for (let i = 0; i < m; i++) if (scores[i]! < best) best = scores[i]!;
    let tied = 0;
    for (let i = 0; i < m; i++) if (scores[i] === best) tied += 1;
    for (let i = 0; i < m; i++) if (scores[i] === best) shares[i] = shares[i]! + 1 / tied;
  }
  return shares.map((share) => share / WEIGHT_DRAWS);
}

function smallestChange(
  perCategory: readonly Float64Array[],
  weights: readonly number[],
  ids: readonly string[],
  places: Uint16Array,
): WeightSensitivity['smallestChange'] {
  const first = places.indexOf(1);
  let smallest: WeightSensitivity['smallestChange'] = null;
  ids.forEach((id, i) => {
    if (i === first) return;
    const weightMoved =
      places[i] === 1
        ? 0
        : weightToMove(
            perCategory.map((own) => own[i]! - own[first]!),
            weights,
          );
    if (weightMoved !== null && (smallest === null || weightMoved < smallest.weightMoved)) smallest = { weightMoved, id };
  });
  return smallest;
}

/** Part of all weight that closes a lead; moved from the category of the largest lead to that of the smallest, one after the other. */
function weightToMove(leads: readonly number[], weights: readonly number[]): number | null {
  let lead = leads.reduce((sum, value, c) => sum + weights[c]! * value, 0);
  if (lead <= 0) return 0;
  const least = Math.min(...leads);
  if (least > 0) return null;
  let moved = 0;
  for (const c of leads.map((_, i) => i).sort((a, b) => leads[b]! - leads[a]!)) {
    const gain = leads[c]! - least;
    if (gain <= 0) break;
    if (weights[c]! * gain >= lead) return moved + lead / gain;
    moved += weights[c]!;
    lead -= weights[c]! * gain;
  }
  // All weight is where the lead is smallest: it is closed there, or was lost to rounding.
  return moved;
}
