import type { RandomStream } from '../../random/random-stream.js';
import { standOnce } from '../stand-once.js';
import type { PointStandings, PointTable } from '../stand-once.js';
import { weightSensitivity } from './weight-sensitivity.js';
import type { WeightSensitivity } from './weight-sensitivity.js';

/** What the overall order is when something is left out. */
export interface LeftOut {
  readonly kind: 'category' | 'party' | 'entry';
  readonly name: string;
  /** ids in first place then */
  readonly first: readonly string[];
  /** pairs whose order turns round */
  readonly swappedPairs: number;
  /** the first of them, the one that is then ahead first */
  readonly swaps: readonly (readonly [ahead: string, behind: string])[];
  /** ids that are no longer ranked, without what was left out itself */
  readonly dropped: readonly string[];
}

export interface OrderSensitivity {
  /** every category and party, and those entries whose leaving turns a pair round */
  readonly leftOut: readonly LeftOut[];
  /** null under pairwise wins, which know no weights, and without a category or an entry */
  readonly weights: WeightSensitivity | null;
}

const MOST_SWAPS_LISTED = 50;

/**
 * What the overall order hangs on: each category, party (tester, rig) and entry left out in turn, and the weights.
 *
 * Formula: standings without it, compared with those with it; weights as `weightSensitivity`
 * @param table published values and the scheme
 * @param parties the same without each party's evidence
 * @param random seeded stream for the weights
 * @returns what changes
 * @throws nothing: the caller checks the input
 * @see COMMON-PRACTICE
 * @example orderSensitivity(table, [], random).leftOut[0]?.first // ['a']
 */
export function orderSensitivity(
  table: PointTable,
  parties: readonly { readonly name: string; readonly table: PointTable }[],
  random: RandomStream,
): OrderSensitivity {
  const whole = standOnce(table);
  const compare = (kind: LeftOut['kind'], name: string, without: PointTable): LeftOut => ({
    kind,
    name,
    ...difference(table, whole, without, standOnce(without), kind === 'entry' ? name : null),
  });
  const categories = table.categories.length < 2 ? [] : table.categories;
  const leftOut = [
    ...categories.map(({ code }) =>
      compare('category', code, { ...table, categories: table.categories.filter((category) => category.code !== code) }),
    ),
    ...parties.map((party) => compare('party', party.name, party.table)),
    ...table.entries
      .flatMap(({ id, isExcluded }, i) => (isExcluded ? [] : [compare('entry', id, withoutEntry(table, i))]))
      .filter(({ swappedPairs }) => swappedPairs > 0),
  ];
  const hasWeights = table.combine !== 'pairwiseWins' && whole.ranked.length > 0 && table.categories.length > 0;
  return {
    leftOut,
    weights: hasWeights
      ? weightSensitivity(
          whole,
          whole.ranked.map((i) => table.entries[i]!.id),
          table.combine,
          random,
        )
      : null,
  };
}

function withoutEntry(table: PointTable, position: number): PointTable {
  return {
    ...table,
    entries: table.entries.filter((_, i) => i !== position),
    categories: table.categories.map((category) => ({ ...category, goodness: category.goodness.filter((_, i) => i !== position) })),
  };
}

function difference(table: PointTable, whole: PointStandings, without: PointTable, left: PointStandings, leftOut: string | null) {
  const placesLeft = new Map(left.ranked.map((i, at) => [without.entries[i]!.id, left.places[at]!]));
  const both = whole.ranked.flatMap((i, at) => {
    const id = table.entries[i]!.id;
    const now = placesLeft.get(id);
    return now === undefined ? [] : [{ id, before: whole.places[at]!, now }];
  });
  const farthestBefore = farthestOfThoseBefore(both);
  let swappedPairs = 0;
  const swaps: [string, string][] = [];
  for (const a of both) {
    if (farthestBefore.get(a.before)! <= a.now) continue;
    for (const b of both) {
      if (!(a.before > b.before && a.now < b.now)) continue;
      swappedPairs += 1;
      if (swaps.length < MOST_SWAPS_LISTED) swaps.push([a.id, b.id]);
    }
  }
  return {
    first: [...placesLeft].flatMap(([id, place]) => (place === 1 ? [id] : [])),
    swappedPairs,
    swaps,
    dropped: whole.ranked.map((i) => table.entries[i]!.id).filter((id) => !placesLeft.has(id) && id !== leftOut),
  };
}

/** For each place, the last place now of those who were before it: whoever stands behind that now has lost to nobody. */
function farthestOfThoseBefore(both: readonly { readonly before: number; readonly now: number }[]): Map<number, number> {
  const farthest = new Map<number, number>();
  let [place, atPlace, before] = [0, 0, 0];
  for (const one of [...both].sort((a, b) => a.before - b.before)) {
    if (one.before !== place) [place, before, atPlace] = [one.before, Math.max(before, atPlace), 0];
    atPlace = Math.max(atPlace, one.now);
    farthest.set(place, before);
  }
  return farthest;
}
