/** How sure the places of an edition are: simultaneous place intervals, too-close-to-call groups, chances of being first. Pure. */
import { randomStream } from '../measurement/random/random-stream.js';
import type { RandomStream } from '../measurement/random/random-stream.js';
import { seedFromDigest } from '../measurement/random/seed-from-digest.js';
import { tDeviate } from '../measurement/random/t-deviate.js';
import { closeGroups } from '../measurement/ranking/close-groups.js';
import { placeIntervals } from '../measurement/ranking/place-intervals.js';
import type { PlaceInterval } from '../measurement/ranking/place-intervals.js';
import { chancesOfFirst, scoreDraws } from '../measurement/ranking/score-draws.js';
import type { ComputedEdition } from './compute-standings.js';
import type { SchemeCategory } from './editions.schemas.js';

const DRAWS = 10_000;
/** Below three degrees of freedom Student's t has no variance to compare by. */
const LEAST_DEGREES = 3;

export interface CertaintyOfRow {
  readonly group: number;
  readonly interval: PlaceInterval;
  /** null in a category */
  readonly chanceOfFirst: number | null;
}

/** Variant id → how sure its place is; empty where an uncertainty is not known, so that nothing is claimed. */
export interface Certainty {
  readonly categories: ReadonlyMap<string, ReadonlyMap<string, CertaintyOfRow>>;
  readonly overall: ReadonlyMap<string, CertaintyOfRow>;
}

/**
 * Computes the certainty of all placed rows with 10 000 draws.
 * @param seed SHA-256 of the inputs, hexadecimal
 */
export function certaintyOf(
  { edition, results, standings }: Pick<ComputedEdition, 'edition' | 'results' | 'standings'>,
  seed: string,
): Certainty {
  const random = randomStream(seedFromDigest(seed));
  const { categories, combine } = edition.scheme.rules;
  const deviations = new Map(categories.map((category) => [category.code, drawnDeviations(category, edition, results, random)]));
  const inCategories = categories.map((category) => {
    const ids = (standings.categories[category.code] ?? []).filter(({ place }) => place !== null).map(({ id }) => id);
    const values = ids.map((id) => results.get(id)?.get(category.quantity)?.estimate.value ?? 0);
    return [category.code, rowsOf(ids, values, deviations.get(category.code), category.direction)] as const;
  });
  const isSum = combine === 'sumOfPlaces' || combine === 'weightedSumOfPlaces';
  return { categories: new Map(inCategories), overall: isSum ? overallRows() : new Map<string, CertaintyOfRow>() };

  function overallRows(): Map<string, CertaintyOfRow> {
    const placed = standings.overall.filter(({ place }) => place !== null);
    const ids = placed.map(({ id }) => id);
    const drawn = categories.map((category) => {
      const own = ids.map((id) => deviations.get(category.code)?.get(id));
      const values = ids.map((id) => results.get(id)?.get(category.quantity)?.estimate.value ?? 0);
      return { direction: category.direction, weight: combine === 'sumOfPlaces' ? 1 : Number(category.weight), values, deviations: own };
    });
    if (drawn.some((category) => category.deviations.includes(undefined))) return new Map();
    const scores = scoreDraws(
      drawn.map((category) => ({ ...category, deviations: category.deviations.filter((draws) => draws !== undefined) })),
    );
    const centred = new Map(scores.map((own, i) => [ids[i] ?? '', centre(own)]));
    const chances = chancesOfFirst(scores);
    const rows = rowsOf(
      ids,
      placed.map(({ score }) => Number(score)),
      centred,
      'less',
    );
    return new Map([...rows].map(([id, row], i) => [id, { ...row, chanceOfFirst: chances[i] ?? 0 }]));
  }
}

function rowsOf(
  ids: readonly string[],
  values: readonly number[],
  deviations: ReadonlyMap<string, Float64Array> | undefined,
  direction: 'more' | 'less',
): Map<string, CertaintyOfRow> {
  const drawn = ids.flatMap((id) => deviations?.get(id) ?? []);
  if (ids.length === 0 || drawn.length < ids.length) return new Map();
  const intervals = placeIntervals(values, drawn, direction);
  const groups = closeGroups(intervals);
  return new Map(
    ids.flatMap((id, i) => (intervals[i] ? [[id, { group: groups[i] ?? 1, interval: intervals[i], chanceOfFirst: null }] as const] : [])),
  );
}

function drawnDeviations(
  category: SchemeCategory,
  edition: ComputedEdition['edition'],
  results: ComputedEdition['results'],
  random: RandomStream,
): Map<string, Float64Array> {
  const drawn = new Map<string, Float64Array>();
  for (const { variantId } of edition.entries) {
    const estimate = results.get(variantId)?.get(category.quantity)?.estimate;
    if (!estimate || estimate.standardUncertainty === null) continue;
    const { standardUncertainty, degreesOfFreedom } = estimate;
    const degrees = Math.max(LEAST_DEGREES, degreesOfFreedom);
    drawn.set(
      variantId,
      Float64Array.from({ length: DRAWS }, () => standardUncertainty * tDeviate(random, degrees)),
    );
  }
  return drawn;
}

function centre(draws: Float64Array): Float64Array {
  const mean = draws.reduce((sum, value) => sum + value, 0) / draws.length;
  return draws.map((value) => value - mean);
}
