import { DRAWS_FOR_SPREAD } from './draws/draw-counts.js';
import type { RankingRules } from './ranking-input.js';
import { schemePlaces } from './places/scheme-places.js';
import { schemeScores } from './places/scheme-scores.js';
import type { ScoredCategory } from './places/scheme-scores.js';
import type { PointStandings } from './stand-once.js';
import { tableCertainty } from './table-certainty.js';
import type { TableCertainty } from './table-certainty.js';

/** What a category gives to the overall table. */
export interface DrawnForOverall {
  /** draws about the values as found: what the true order may be */
  readonly found: ScoredCategory;
  /** draws about values as far apart as the truth is: how an order that is found may come about */
  readonly settled: ScoredCategory;
}

/**
 * How sure the overall places are: the draws of the categories pushed through the scheme.
 *
 * Formula: chances from scores of x + e; deviations of a score from scores of x̃ + e about their own mean, x̃ the settled values; s_ij is the root mean square of drawn differences
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
  categories: readonly DrawnForOverall[],
  rules: Pick<RankingRules, 'combine' | 'tieBreak'>,
  level: number,
): TableCertainty {
  const m = ids.length;
  if (m === 0 || categories.length === 0) return { criticalValue: null, rows: [], pairChances: null };
  const found = categories.map((category) => category.found);
  const places = schemePlaces(schemeScores(found, m, rules.combine), found, m, rules.tieBreak);
  const settled = categories.map((category) => category.settled);
  const errors = turnAboutMean(schemeScores(settled, m, rules.combine), m);
  const goodness = standings.scores.map((score) => -score);
  return tableCertainty({
    hasPairs: true,
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

/** Turns scores into deviations of which more is better, in their place. */
function turnAboutMean(scores: Float64Array, m: number): Float64Array {
  const draws = scores.length / m;
  for (let i = 0; i < m; i++) {
    let sum = 0;
    for (let at = i; at < scores.length; at += m) sum += scores[at]!;
    const mean = sum / draws;
    for (let at = i; at < scores.length; at += m) scores[at] = mean - scores[at]!;
  }
  return scores;
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
