import type { Direction } from './competition-places.js';

/** Values of a category for the entries that are ranked overall, with draws of their deviations. */
export interface DrawnCategory {
  readonly direction: Direction;
  readonly weight: number;
  readonly values: readonly number[];
  readonly deviations: readonly Float64Array[];
}

/**
 * Pushes the draws of every category through the scheme: the weighted sum of competition places, drawn again and again.
 *
 * Formula: score_j = Σ w · place_j(x + d), one for each draw
 * @param categories same entries in the same order, each with as many draws
 * @returns drawn scores of each entry [1]
 * @throws nothing
 * @see JCGM-101
 * @example scoreDraws([{ direction: 'more', weight: 1, values: [2, 1], deviations: [Float64Array.of(0), Float64Array.of(0)] }]) // [[1], [2]]
 */
export function scoreDraws(categories: readonly DrawnCategory[]): Float64Array[] {
  const count = categories[0]?.values.length ?? 0;
  const draws = categories[0]?.deviations[0]?.length ?? 0;
  const scores = Array.from({ length: count }, () => new Float64Array(draws));
  const drawn = new Float64Array(count);
  const order = Array.from({ length: count }, (_, i) => i);
  for (const { direction, weight, values, deviations } of categories) {
    const sign = direction === 'more' ? -1 : 1;
    for (let draw = 0; draw < draws; draw++) {
      for (let i = 0; i < count; i++) drawn[i] = sign * ((values[i] ?? 0) + (deviations[i]?.[draw] ?? 0));
      order.sort((a, b) => (drawn[a] ?? 0) - (drawn[b] ?? 0));
      addPlaces(scores, order, drawn, draw, weight);
    }
  }
  return scores;
}

function addPlaces(scores: readonly Float64Array[], order: readonly number[], drawn: Float64Array, draw: number, weight: number): void {
  let place = 0;
  let last = NaN;
  order.forEach((entry, position) => {
    const value = drawn[entry] ?? 0;
    if (value !== last) place = position + 1;
    last = value;
    const own = scores[entry];
    if (own) own[draw] = (own[draw] ?? 0) + weight * place;
  });
}

/**
 * Chance of each entry to have the lowest score; draws that several share are split among them.
 *
 * Formula: mean over draws of [score is the least] / number that have the least
 * @param scores drawn scores of each entry [1]
 * @returns chance of each entry [1]; they sum to 1
 * @throws nothing
 * @see JCGM-101
 * @example chancesOfFirst([Float64Array.of(1, 2), Float64Array.of(2, 2)]) // [0.75, 0.25]
 */
export function chancesOfFirst(scores: readonly Float64Array[]): number[] {
  const draws = scores[0]?.length ?? 0;
  const chances = new Array<number>(scores.length).fill(0);
  for (let draw = 0; draw < draws; draw++) {
    const least = scores.reduce((low, own) => Math.min(low, own[draw] ?? Infinity), Infinity);
    const first = scores.flatMap((own, i) => (own[draw] === least ? [i] : []));
    for (const i of first) chances[i] = (chances[i] ?? 0) + 1 / (first.length * draws);
  }
  return chances;
}
