import type { RandomStream } from '../random/random-stream.js';
import { roundHalfEven } from '../units/round-half-even.js';
import { differenceUncertainties, drawErrors } from './draw-errors.js';
import type { DrawnSources } from './draw-errors.js';
import { drawPlaces } from './draw-places.js';
import { pickColumns } from './pick-columns.js';
import type { DrawnForOverall } from './rank-overall.js';
import type { RankedCategory, RankingInput } from './ranking-input.js';
import type { ScoredCategory } from './scheme-scores.js';
import { settledValues } from './settled-values.js';
import { WEIGHT_UNIT } from './stand-once.js';
import { tableCertainty } from './table-certainty.js';
import type { TableCertainty } from './table-certainty.js';

/** What all categories of an edition share. */
export interface Drawing {
  readonly sources: DrawnSources;
  readonly draws: number;
  readonly level: number;
  readonly random: RandomStream;
  /** ids of the entries ranked overall */
  readonly rankedIds: readonly string[];
}

/**
 * How sure the places of one category are, and what it gives to the overall table.
 *
 * Formula: places of x + e for the chances, of x̃ + e for the deviations of the overall score; all entries that count, then those in the table
 * @param category quantity with its direction and weight
 * @param input scheme, sources and evidence; the entries in the order in which they are drawn
 * @param drawing drawn sources, seeded stream, and who is ranked overall
 * @returns table of the category, and draws of the entries ranked overall
 * @throws nothing: the caller checks the input
 * @see MRSW-2023
 * @example rankCategory(category, input, drawing).certainty.rows[0]?.place // 1
 */
export function rankCategory(
  category: RankedCategory,
  input: Pick<RankingInput, 'entries' | 'countPlaces' | 'sources' | 'combine'>,
  { sources, draws, level, random, rankedIds }: Drawing,
): { certainty: TableCertainty; forOverall: DrawnForOverall } {
  const counted = input.entries
    .filter(({ isExcluded }) => !isExcluded || input.countPlaces === 'beforeExclusions')
    .flatMap(({ id, isExcluded, results }) => (results[category.code] ? [{ id, isExcluded, evidence: results[category.code]! }] : []));
  const evidence = counted.map((one) => one.evidence);
  const n = counted.length;
  const sign = category.direction === 'more' ? 1 : -1;
  const errors = drawErrors(evidence, sources, draws, random).map((error) => sign * error);
  const goodness = Float64Array.from(evidence, ({ value }) => sign * value);
  const places = drawPlaces(goodness, errors);
  const included = counted.flatMap(({ isExcluded }, i) => (isExcluded ? [] : [i]));
  const certainty = tableCertainty({
    ids: included.map((i) => counted[i]!.id),
    published: Float64Array.from(included, (i) => sign * publishedValue(category, evidence[i]!.value)),
    goodness: pickColumns(goodness, n, included),
    errors: pickColumns(errors, n, included),
    places: included.length === n ? places : drawPlaces(pickColumns(goodness, n, included), pickColumns(errors, n, included)),
    differenceUncertainty: differenceUncertainties(
      included.map((i) => evidence[i]!),
      input.sources,
    ),
    level,
  });
  const ranked = rankedIds.map((id) => counted.findIndex((one) => one.id === id));
  const settled = settledValues(goodness, differenceUncertainties(evidence, input.sources));
  const forScore = (values: Float64Array, drawn: Uint16Array): ScoredCategory => ({
    weight: weightOf(category),
    places: pickColumns(drawn, n, ranked),
    goodness: input.combine === 'meanStandardScore' ? pickColumns(sumOfRows(values, errors), n, ranked) : new Float64Array(0),
  });
  return { certainty, forOverall: { found: forScore(goodness, places), settled: forScore(settled, drawPlaces(settled, errors)) } };
}

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
  return Number(roundHalfEven(String(value), category.places));
}

const sumOfRows = (goodness: Float64Array, errors: Float64Array): Float64Array =>
  errors.map((error, at) => error + goodness[at % goodness.length]!);
