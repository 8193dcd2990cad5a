import { drawPlaces, placeChances } from '../../../api/measurement/ranking/draws/draw-places.js';
import { schemePlaces } from '../../../api/measurement/ranking/places/scheme-places.js';
import { schemeScores, type ScoredCategory } from '../../../api/measurement/ranking/places/scheme-scores.js';
import { WEIGHT_UNIT } from '../../../api/measurement/ranking/stand-once.js';
import { weightSensitivity } from '../../../api/measurement/ranking/sensitivity/weight-sensitivity.js';
import { randomStream } from '../../../api/measurement/random/random-stream.js';
import { seedFromDigest } from '../../../api/measurement/random/seed-from-digest.js';
import { tDeviate } from '../../../api/measurement/random/t-deviate.js';
import { roundHalfEven } from '../../../api/measurement/units/round-half-even.js';
import type { Weighed } from './weighed.js';

/** Enough for whole per cents: a chance near one half is off by 1 % (JCGM 101, 7.2). */
const DRAWS = 2000;
const DECIMALS_OF_SCORE = 3;
/** A 95 % interval reaches so many standard deviations to each side (ISO 3534-1, normal distribution). */
const REACH = 1.959964;

/** A line under weights of a reader. */
export interface Stood {
  /** Position among the lines of the division. */
  readonly line: number;
  readonly place: number;
  /** Whether it shares its place. */
  readonly isTied: boolean;
  readonly score: string;
  /** Chance of first place [0 to 1]; null where an interval is not stated. */
  readonly chanceOfFirst: number | null;
}

export interface Standing {
  /** Best first. */
  readonly rows: readonly Stood[];
  /** Smallest part of all weight that brings another line to the first score [0 to 1]; null when none can. */
  readonly change: { readonly line: number; readonly weightMoved: number } | null;
}

/** Weights as the core takes them: whole millionths. */
const unitsOf = (weights: readonly string[]): number[] => weights.map((weight) => Math.round(Number(weight) * WEIGHT_UNIT));

/** How a score is put together with weights: a plain sum of places and wins know none, so places are weighed and added. */
export const weighing = ({ combine }: Pick<Weighed, 'combine'>) =>
  combine === 'meanStandardScore' ? combine : ('weightedSumOfPlaces' as const);

/** The weights of the published score; equal ones where it knows none. */
export const publishedWeights = ({ combine, categories }: Weighed): string[] =>
  categories.map(({ weight }) => (combine === 'weightedSumOfPlaces' || combine === 'meanStandardScore' ? weight : '1'));

/** Readies a division for weights: its values are drawn once, each within its interval by itself, and weighed again and again. */
export function weigher(weighed: Weighed): (weights: readonly string[]) => Standing {
  const { lines, categories, tieBreak } = weighed;
  const combine = weighing(weighed);
  const m = lines.length;
  const ids = lines.map(({ slug }) => slug);
  const found = categories.map(({ direction }, at) => publishedIn(weighed, at, direction === 'more' ? 1 : -1));
  const drawn = drawnIn(weighed);
  return (weights) => {
    const units = unitsOf(weights);
    const withWeights = (all: readonly Unweighed[]): ScoredCategory[] => all.map((one, at) => ({ ...one, weight: units[at] ?? 0 }));
    const total = Math.max(
      1,
      units.reduce((sum, unit) => sum + unit, 0),
    );
    const published = withWeights(found);
    const scores = schemeScores(published, m, combine);
    const rounded = scores.map((score) => Number(roundHalfEven(score / total, DECIMALS_OF_SCORE)));
    const places = schemePlaces(combine === 'meanStandardScore' ? rounded : scores, published, m, tieBreak);
    const chances = drawn && placeChances(schemePlaces(schemeScores(withWeights(drawn), m, combine), withWeights(drawn), m, tieBreak), m);
    const { smallestChange } = weightSensitivity(
      { ranked: ids.map((_, i) => i), categories: published, scores, places },
      ids,
      combine,
      randomStream(seedFromDigest(weighed.digest)),
    );
    const rows = ids.map((_, line) => ({
      line,
      place: places[line]!,
      isTied: places.indexOf(places[line]!) !== places.lastIndexOf(places[line]!),
      score: roundHalfEven((combine === 'meanStandardScore' ? -scores[line]! : scores[line]!) / total, DECIMALS_OF_SCORE),
      chanceOfFirst: chances?.[line]?.ofFirst ?? null,
    }));
    return {
      rows: rows.sort((one, other) => one.place - other.place || one.line - other.line),
      change: smallestChange && { line: ids.indexOf(smallestChange.id), weightMoved: smallestChange.weightMoved },
    };
  };
}

type Unweighed = Omit<ScoredCategory, 'weight'>;

function publishedIn({ lines }: Weighed, at: number, sign: 1 | -1): Unweighed {
  return {
    places: Uint16Array.from(lines, ({ results }) => results[at]!.place),
    goodness: Float64Array.from(lines, ({ results }) => sign * Number(results[at]!.value)),
  };
}

/** Draws of every category from its published intervals, as logarithms as the program does; null where one is not stated. */
function drawnIn({ lines, categories, digest }: Weighed): Unweighed[] | null {
  const m = lines.length;
  const random = randomStream(seedFromDigest(digest));
  const drawn = categories.map(({ direction }, at) => {
    const sign = direction === 'more' ? 1 : -1;
    const results = lines.map((line) => line.results[at]!);
    if (results.some(({ low, high }) => low === null || high === null)) return null;
    const spreads = results.map(({ low, high }) => Math.log(Number(high) / Number(low)) / (2 * REACH));
    const centres = results.map(({ value }) => Math.log(Number(value)));
    const logs = Float64Array.from({ length: DRAWS * m }, (_, i) => centres[i % m]! + spreads[i % m]! * tDeviate(random, Infinity));
    return {
      places: drawPlaces(
        new Float64Array(m),
        logs.map((log) => sign * log),
      ),
      goodness: logs.map((log) => sign * Math.exp(log)),
    };
  });
  return drawn.every((one) => one !== null) ? drawn : null;
}
