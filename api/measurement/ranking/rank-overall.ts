import type { RankingInput } from './ranking-input.js';
import { schemePlaces } from './scheme-places.js';
import { schemeScores } from './scheme-scores.js';
import type { ScoredCategory } from './scheme-scores.js';
import type { PointStandings } from './stand-once.js';
import { tableCertainty } from './table-certainty.js';
import type { TableCertainty } from './table-certainty.js';

/** Draws that the spread of score differences is taken from; it only scales the comparison, the critical value comes from all draws. */
const DRAWS_FOR_SPREAD = 2000;

/**
 * How sure the overall places are: the draws of the categories pushed through the scheme.
 *
 * Formula: scores of every draw, about their own mean, stand for the deviation of the score; s_ij is the root mean square of drawn differences
 * @param ids of the m entries ranked overall
 * @param standings published overall standings
 * @param categories drawn places and values of those entries
 * @param rules how the scheme combines and breaks ties
 * @param level joint level of the intervals in (0, 1) [1]
 * @returns rows best first
 * @throws nothing: the caller checks the input
 * @see JCGM-101
 * @example rankOverall(ids, standings, scored, input, 0.95).rows[0]?.place // 1
 */
export function rankOverall(
  ids: readonly string[],
  standings: PointStandings,
  categories: readonly ScoredCategory[],
  rules: Pick<RankingInput, 'combine' | 'tieBreak'>,
  level: number,
): TableCertainty {
  const m = ids.length;
  if (m === 0 || categories.length === 0) return { criticalValue: null, rows: [] };
  const scores = schemeScores(categories, m, rules.combine);
  const places = schemePlaces(scores, categories, m, rules.tieBreak);
  const errors = turnedAboutMean(scores, m);
  const goodness = standings.scores.map((score) => -score);
  return tableCertainty({
    ids,
    published: goodness,
    goodness,
    errors,
    places,
    differenceUncertainty: rootMeanSquareDifferences(errors, m),
    level,
    brokenPlaces: standings.places,
  });
}

function turnedAboutMean(scores: Float64Array, m: number): Float64Array {
  const draws = scores.length / m;
  const errors = new Float64Array(scores.length);
  for (let i = 0; i < m; i++) {
    let sum = 0;
    let isFlat = true;
    for (let at = i; at < scores.length; at += m) {
      sum += scores[at]!;
      isFlat &&= scores[at] === scores[i];
    }
    // The mean of equal numbers may differ from them in the last bit.
    const mean = isFlat ? scores[i]! : sum / draws;
    for (let at = i; at < scores.length; at += m) errors[at] = mean - scores[at]!;
  }
  return errors;
}

function rootMeanSquareDifferences(errors: Float64Array, m: number): Float64Array {
  const draws = Math.min(DRAWS_FOR_SPREAD, errors.length / m);
  const columns = Array.from({ length: m }, (_, i) => Float64Array.from({ length: draws }, (__, draw) => errors[draw * m + i]!));
  const result = new Float64Array(m * m);
  for (let i = 0; i < m; i++) {
    for (let j = 0; j < i; j++) {
      const [a, b] = [columns[i]!, columns[j]!];
      let squares = 0;
      for (let draw = 0; draw < draws; draw++) squares += (a[draw]! - b[draw]!) ** 2;
      result[i * m + j] = result[j * m + i] = Math.sqrt(squares / draws);
    }
  }
  return result;
}
