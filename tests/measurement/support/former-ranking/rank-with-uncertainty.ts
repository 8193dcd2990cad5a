import { randomStream } from '../../../../api/measurement/random/random-stream.js';
import { seedFromDigest } from '../../../../api/measurement/random/seed-from-digest.js';
import { drawSources } from './draw-errors.js';
import type { Evidence } from './evidence.js';
import { orderSensitivity } from '../../../../api/measurement/ranking/order-sensitivity.js';
import type { OrderSensitivity } from '../../../../api/measurement/ranking/order-sensitivity.js';
import { rankCategory } from './rank-category.js';
import { publishedValue, weightOf } from '../../../../api/measurement/ranking/published-value.js';
import { rankOverall } from '../../../../api/measurement/ranking/rank-overall.js';
import type { RankedCategory } from '../../../../api/measurement/ranking/ranking-input.js';
import type { RankingInput } from './ranking-input.js';
import { FEWEST_DRAWS, requireRankingInput } from './require-ranking-input.js';
import { standOnce } from '../../../../api/measurement/ranking/stand-once.js';
import type { PointTable } from '../../../../api/measurement/ranking/stand-once.js';
import type { TableCertainty } from '../../../../api/measurement/ranking/table-certainty.js';

export interface RankingCertainty {
  readonly draws: number;
  readonly level: number;
  /** category code → how sure its places are */
  readonly categories: Readonly<Record<string, TableCertainty>>;
  readonly overall: TableCertainty;
  readonly sensitivity: OrderSensitivity;
}

/**
 * How sure every place of an edition is: simultaneous place intervals, groups that are too close to call, chances, and what the order hangs on.
 *
 * Formula: each value deviates by u·t(ν) of its own and by the drawn effects of its sources, one effect per source for all that share it; places of every draw
 * through the scheme; intervals by max-t with step-down. Draws are seeded by the digest and made in the order of the names, so the order of the input changes nothing
 * @param input evidence of every entry [each category its unit], shared sources, the scheme, and the digest of the inputs
 * @returns rows best first for each category and overall; chances in [0, 1]
 * @throws MeasurementError as `requireRankingInput`; 'random/not-a-digest'
 * @see MRSW-2023
 * @see JCGM-101
 * @example rankWithUncertainty(input).overall.rows[0] // { id: 'a', place: 1, low: 1, high: 1, group: 1, chanceOfFirst: 1, chanceOfFirstFive: 1, chanceAheadOfNext: 1 }
 */
export function rankWithUncertainty(input: RankingInput): RankingCertainty {
  requireRankingInput(input);
  const { draws = FEWEST_DRAWS, level = 0.95 } = input;
  const random = randomStream(seedFromDigest(input.digest));
  const sources = drawSources(input.sources, draws, random);
  const ordered = {
    ...input,
    entries: [...input.entries].sort((a, b) => (a.id < b.id ? -1 : 1)),
    categories: [...input.categories].sort((a, b) => (a.code < b.code ? -1 : 1)),
  };
  const table = pointTable(ordered);
  const standings = standOnce(table);
  const rankedIds = standings.ranked.map((i) => table.entries[i]!.id);
  const inCategories = ordered.categories.map((category) => ({
    code: category.code,
    ...rankCategory(category, ordered, { sources, draws, level, random, rankedIds }),
  }));
  return {
    draws,
    level,
    categories: Object.fromEntries(inCategories.map(({ code, certainty }) => [code, certainty])),
    overall: rankOverall(
      rankedIds,
      standings,
      inCategories.map(({ forOverall }) => forOverall),
      input,
      level,
    ),
    sensitivity: orderSensitivity(table, partiesWithout(ordered), random),
  };
}

/** Published values of all entries, in the order of the input. */
function pointTable(
  { entries, categories, combine, countPlaces, tieBreak }: RankingInput,
  valueOf: (evidence: Evidence) => number | null = ({ value }) => value,
): PointTable {
  const goodnessOf = (category: RankedCategory): Float64Array =>
    Float64Array.from(entries, ({ results }) => {
      const evidence = results[category.code];
      const value = evidence ? valueOf(evidence) : null;
      return value === null ? NaN : (category.direction === 'more' ? 1 : -1) * publishedValue(category, value);
    });
  return {
    combine,
    countPlaces,
    tieBreak,
    entries: entries.map(({ id, isExcluded }) => ({ id, isExcluded })),
    categories: categories.map((category) => ({ code: category.code, weight: weightOf(category), goodness: goodnessOf(category) })),
  };
}

/** For each party that made a part of the evidence, the published values that are left without it. */
function partiesWithout(input: RankingInput): { name: string; table: PointTable }[] {
  const parties = new Set(
    input.entries.flatMap(({ results }) => Object.values(results).flatMap((evidence) => Object.keys(evidence?.without ?? {}))),
  );
  return [...parties].sort().map((name) => ({
    name,
    table: pointTable(input, ({ value, without }) => {
      const left = without[name];
      return left === undefined ? value : left;
    }),
  }));
}
