import type { RandomStream } from '../../../../api/measurement/random/random-stream.js';
import { differenceUncertainties, drawErrors } from './draw-errors.js';
import type { DrawnSources } from './draw-errors.js';
import { drawPlaces } from '../../../../api/measurement/ranking/draw-places.js';
import { pickColumns } from '../../../../api/measurement/ranking/pick-columns.js';
import type { DrawnForOverall } from '../../../../api/measurement/ranking/rank-overall.js';
import type { RankedCategory } from '../../../../api/measurement/ranking/ranking-input.js';
import type { RankingInput } from './ranking-input.js';
import type { ScoredCategory } from '../../../../api/measurement/ranking/scheme-scores.js';
import { settledValues } from '../../../../api/measurement/ranking/settled-values.js';
import { publishedValue, weightOf } from '../../../../api/measurement/ranking/published-value.js';
import { tableCertainty } from '../../../../api/measurement/ranking/table-certainty.js';
import type { TableCertainty } from '../../../../api/measurement/ranking/table-certainty.js';

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

const sumOfRows = (goodness: Float64Array, errors: Float64Array): Float64Array =>
  errors.map((error, at) => error + goodness[at % goodness.length]!);
