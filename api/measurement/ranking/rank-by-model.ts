import { FEWEST_DRAWS } from './draws/draw-counts.js';
import { MeasurementError } from '../errors.js';
import { randomStream } from '../random/random-stream.js';
import { seedFromDigest } from '../random/seed-from-digest.js';
import { drawEverySeries, forgetDrawn } from './draws/drawn-series.js';
import { drawPlaces } from './draws/draw-places.js';
import type { ModelEvidence, ModelSeries } from './model-evidence.js';
import type { ModelRanking, ModelRankingInput, ModelTable } from './model-ranking.js';
import { orderSensitivity } from './sensitivity/order-sensitivity.js';
import { pickColumns } from './draws/pick-columns.js';
import { productErrors, productTails } from './product-tails.js';
import { publishedValue, weightOf } from './published-value.js';
import { rankOverall } from './rank-overall.js';
import type { DrawnForOverall } from './rank-overall.js';
import type { RankedCategory } from './ranking-input.js';
import type { ScoredCategory } from './places/scheme-scores.js';
import { settledValues } from './settled-values.js';
import { standOnce } from './stand-once.js';
import type { PointTable } from './stand-once.js';
import { tableCertainty } from './table-certainty.js';

const UNPLACED = { kind: 'unplaced', reason: 'nothing-known-of-effects' } as const;

/**
 * How sure every place is, from fitted series: who could be first, simultaneous place intervals, groups, chances, and what the order hangs on.
 *
 * Formula: draws of every series from its mixture of normals, combined to each category by its powers; pairs by their own tails; the same draws through the scheme. Seeded by the
 * digest, series and entries in the order of their names
 * @param input fitted series, evidence of every entry, the scheme, and the digest of the inputs
 * @returns rows best first for each category and overall; no places where a series has values only
 * @throws MeasurementError as `productTails`; 'ranking/bad-evidence' for a value that is not above 0; 'ranking/too-few-draws'; 'random/not-a-digest'
 * @see MRSW-2023
 * @see WESTFALL-YOUNG-1993
 * @example rankByModel(modelInput).categories['stress']?.kind // 'placed'
 */
export function rankByModel(input: ModelRankingInput): ModelRanking {
  const { draws = FEWEST_DRAWS, level = 0.95 } = input;
  requireInput(input, draws);
  const random = randomStream(seedFromDigest(input.digest));
  const ordered = {
    ...input,
    entries: [...input.entries].sort((a, b) => (a.id < b.id ? -1 : 1)),
    categories: [...input.categories].sort((a, b) => (a.code < b.code ? -1 : 1)),
  };
  const drawn = drawEverySeries(input.series, draws, random);
  const table = pointTable(ordered);
  const standings = standOnce(table);
  const rankedIds = standings.ranked.map((i) => table.entries[i]!.id);
  const ranked = ordered.categories.map((category, at) => {
    const one = { code: category.code, ...rankOne(category, ordered, { drawn, draws, level, rankedIds }) };
    forgetDrawn(drawn, ordered.categories.slice(at + 1), ordered.entries);
    return one;
  });
  const forOverall = ranked.flatMap((one) => one.forOverall ?? []);
  const isPlaced = forOverall.length === ranked.length;
  return {
    draws,
    level,
    categories: Object.fromEntries(ranked.map(({ code, certainty }) => [code, certainty])),
    overall: isPlaced ? { kind: 'placed', ...rankOverall(rankedIds, standings, forOverall, input, level) } : UNPLACED,
    sensitivity: orderSensitivity(table, partiesWithout(ordered), random),
  };
}

interface Drawing {
  readonly drawn: ReadonlyMap<string, Float32Array>;
  readonly draws: number;
  readonly level: number;
  readonly rankedIds: readonly string[];
}

/** Logarithms are compared: what two entries share then cancels whatever their size, and the order is the same. */
function rankOne(
  category: RankedCategory,
  { entries, series, countPlaces, combine }: ModelRankingInput,
  { drawn, draws, level, rankedIds }: Drawing,
): { certainty: ModelTable; forOverall: DrawnForOverall | null } {
  const counted = entries
    .filter(({ isExcluded }) => !isExcluded || countPlaces === 'beforeExclusions')
    .flatMap(({ id, isExcluded, results }) => (results[category.code] ? [{ id, isExcluded, evidence: results[category.code]! }] : []));
  const evidence = counted.map((one) => one.evidence);
  if (evidence.some((one) => isValueOnly(one, series))) return { certainty: UNPLACED, forOverall: null };
  const n = counted.length;
  const sign = category.direction === 'more' ? 1 : -1;
  const errors = productErrors(evidence, series, drawn, draws);
  if (sign < 0) for (let at = 0; at < errors.length; at++) errors[at] = -errors[at]!;
  const goodness = Float64Array.from(evidence, ({ value }) => sign * Math.log(value));
  const places = drawPlaces(goodness, errors);
  const tails = productTails(evidence, series);
  const included = counted.flatMap(({ isExcluded }, i) => (isExcluded ? [] : [i]));
  const square = (all: Float64Array): Float64Array => (included.length === n ? all : pickSquare(all, n, included));
  const ofIncluded = included.length === n ? { goodness, errors, places } : pickTable(goodness, errors, n, included);
  const certainty = tableCertainty({
    ids: included.map((i) => counted[i]!.id),
    published: Float64Array.from(included, (i) => sign * publishedValue(category, evidence[i]!.value)),
    ...ofIncluded,
    differenceUncertainty: square(tails.standardUncertainty),
    degreesOfFreedom: square(tails.degreesOfFreedom),
    level,
  });
  const ranked = rankedIds.map((id) => counted.findIndex((one) => one.id === id));
  const settled = settledValues(goodness, withoutDiagonal(tails.standardUncertainty, n));
  const forScore = (values: Float64Array, ownPlaces: Uint16Array): ScoredCategory => ({
    weight: weightOf(category),
    places: pickColumns(ownPlaces, n, ranked),
    goodness: combine === 'meanStandardScore' ? pickColumns(drawnValues(values, errors, sign), n, ranked) : new Float64Array(0),
  });
  return {
    certainty: { kind: 'placed', ...certainty },
    forOverall: { found: forScore(goodness, places), settled: forScore(settled, drawPlaces(settled, errors)) },
  };
}

const isValueOnly = ({ factors }: ModelEvidence, series: ModelSeries): boolean =>
  factors.some((factor) => series[factor.series]?.kind === 'values-only');

function pickTable(goodness: Float64Array, errors: Float64Array, n: number, included: readonly number[]) {
  const own = { goodness: pickColumns(goodness, n, included), errors: pickColumns(errors, n, included) };
  return { ...own, places: drawPlaces(own.goodness, own.errors) };
}

const pickSquare = (all: Float64Array, n: number, included: readonly number[]): Float64Array =>
  Float64Array.from(included.flatMap((i) => included.map((j) => all[i * n + j]!)));

function withoutDiagonal(all: Float64Array, n: number): Float64Array {
  const result = Float64Array.from(all);
  for (let i = 0; i < n; i++) result[i * n + i] = 0;
  return result;
}

/** Standard scores are of the values themselves, not of their logarithms. */
const drawnValues = (values: Float64Array, errors: Float64Array, sign: 1 | -1): Float64Array =>
  errors.map((error, at) => sign * Math.exp(sign * (error + values[at % values.length]!)));

/** Published values of all entries, in the order of the input. */
function pointTable(
  { entries, categories, combine, countPlaces, tieBreak }: ModelRankingInput,
  valueOf: (evidence: ModelEvidence) => number | null = ({ value }) => value,
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
function partiesWithout(input: ModelRankingInput): { name: string; table: PointTable }[] {
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

function requireInput({ entries }: ModelRankingInput, draws: number): void {
  if (!(Number.isInteger(draws) && draws >= FEWEST_DRAWS))
    throw new MeasurementError('ranking/too-few-draws', `rankByModel: found ${draws} draws, expected at least ${FEWEST_DRAWS}. Draw more.`);
  for (const { id, results } of entries) {
    const bad = Object.entries(results).find(([, evidence]) => evidence && !(evidence.value > 0 && evidence.value < Infinity));
    if (bad)
      throw new MeasurementError(
        'ranking/bad-evidence',
        `rankByModel: entry ${id} in category ${bad[0]} is ${bad[1]!.value}, expected above 0. Leave the entry out of the category.`,
      );
  }
}
