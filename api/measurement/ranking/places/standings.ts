import { breakTies } from './break-ties.js';
import { competitionPlaces } from './competition-places.js';
import type { Direction } from './competition-places.js';
import { overallScores, scoreDirection } from './overall-scores.js';
import type { Combination } from './overall-scores.js';

export interface StandingsEntry {
  readonly id: string;
  /** Category code → published decimal; null or absent without an accepted result. */
  readonly values: Readonly<Record<string, string | null>>;
  readonly exclusion: { readonly effect: 'closedUp' | 'shownUnplaced' } | null;
}

export interface StandingsInput {
  readonly categories: readonly {
    readonly code: string;
    readonly direction: Direction;
    readonly weight: string;
    /** whether it has values only, as nothing tells how far they may be off: nobody has a place in it, and the score leaves it out */
    readonly isUnplaced?: boolean;
  }[];
  readonly combine: Combination;
  readonly countPlaces: 'beforeExclusions' | 'afterExclusions';
  readonly tieBreak: 'none' | 'mostFirsts';
  readonly entries: readonly StandingsEntry[];
}

export interface CategoryStanding {
  readonly id: string;
  readonly value: string;
  /** null for an excluded entry, and in a category that is unplaced */
  readonly place: number | null;
  /** place that an excluded entry would have had */
  readonly placeIfIncluded: number | null;
}

export interface OverallStanding {
  readonly id: string;
  readonly score: string;
  readonly place: number | null;
  readonly placeIfIncluded: number | null;
  readonly categoryPlaces: Readonly<Record<string, number>>;
}

export interface Standings {
  readonly categories: Readonly<Record<string, readonly CategoryStanding[]>>;
  readonly overall: readonly OverallStanding[];
  readonly incomplete: readonly { readonly id: string; readonly missing: readonly string[] }[];
  readonly excluded: readonly string[];
}

/**
 * Standings of an edition: places by category, then overall through the scheme.
 *
 * Formula: place = 1 + number of rows that are better; the overall score as `overallScores` combines it.
 * Rules: equal published values share a place (1-2-2-4) and stay tied unless the scheme names a tie-break. An entry without a result in a category
 * is incomplete: placed where it has results, not overall. A category that is unplaced lists its values by id and takes no part in that; where all are, every entry is incomplete. An excluded entry that is closed up is in no table; one shown unplaced keeps its row and the
 * place that it would have had. Others' places close up in both cases, but category places that make up the score count every entry with a result
 * when the scheme counts places before exclusions, and only entries that are not excluded when it counts them after.
 * @param input published decimals of every entry, exclusions and the scheme's rules
 * @returns tables, best first; entries of equal place by id
 * @throws MeasurementError 'ranking/not-a-number' for a value that is not a finite decimal
 * @see COMMON-PRACTICE
 * @example computeStandings(input).overall[0] // { id: 'a', score: '2', place: 1, placeIfIncluded: null, categoryPlaces: { stress: 1, knot: 1 } }
 */
export function computeStandings(input: StandingsInput): Standings {
  const scored = input.categories.filter(({ isUnplaced = false }) => !isUnplaced);
  const missingOf = ({ values }: StandingsEntry): string[] =>
    (scored.length > 0 ? scored.filter(({ code }) => (values[code] ?? null) === null) : input.categories).map(({ code }) => code);
  const overallOf = (ranked: readonly StandingsEntry[]) => overallRows({ ...input, categories: scored }, ranked);
  const included = input.entries.filter(({ exclusion }) => exclusion === null);
  const complete = included.filter((entry) => missingOf(entry).length === 0);
  const shown = input.entries.filter((entry) => entry.exclusion?.effect === 'shownUnplaced');
  return {
    categories: Object.fromEntries(input.categories.map((category) => [category.code, categoryTable(category, included, shown)])),
    overall: sorted([
      ...overallOf(complete).map((row) => ({ ...row, placeIfIncluded: null })),
      ...shown
        .filter((entry) => missingOf(entry).length === 0)
        .flatMap((entry) => {
          const row = overallOf([...complete, entry]).find(({ id }) => id === entry.id);
          return row ? [{ ...row, place: null, placeIfIncluded: row.place }] : [];
        }),
    ]),
    incomplete: included.filter((entry) => missingOf(entry).length > 0).map((entry) => ({ id: entry.id, missing: missingOf(entry) })),
    excluded: input.entries.filter(({ exclusion }) => exclusion !== null).map(({ id }) => id),
  };
}

type Category = StandingsInput['categories'][number];

const withResult = (code: string, entries: readonly StandingsEntry[]) =>
  entries.flatMap(({ id, values }) => {
    const value = values[code] ?? null;
    return value === null ? [] : [{ id, value }];
  });

function placesIn({ code, direction, isUnplaced = false }: Category, entries: readonly StandingsEntry[]): Map<string, number> {
  if (isUnplaced) return new Map();
  const results = withResult(code, entries);
  const places = competitionPlaces(
    results.map(({ value }) => value),
    direction,
  );
  return new Map(results.map(({ id }, i) => [id, places[i] ?? 0]));
}

function categoryTable(category: Category, included: readonly StandingsEntry[], shown: readonly StandingsEntry[]): CategoryStanding[] {
  const places = placesIn(category, included);
  const placed = withResult(category.code, included).map(({ id, value }) => ({
    id,
    value,
    place: places.get(id) ?? null,
    placeIfIncluded: null,
  }));
  const unplaced = shown.flatMap((entry) =>
    withResult(category.code, [entry]).map(({ id, value }) => ({
      id,
      value,
      place: null,
      placeIfIncluded: placesIn(category, [...included, entry]).get(id) ?? null,
    })),
  );
  return sorted([...placed, ...unplaced]);
}

/** Scores and places the entries given; the score's category places are counted as the scheme says. */
function overallRows(input: StandingsInput, ranked: readonly StandingsEntry[]) {
  const counted =
    input.countPlaces === 'beforeExclusions'
      ? input.entries
      : [...input.entries.filter(({ exclusion }) => exclusion === null), ...ranked.filter(({ exclusion }) => exclusion !== null)];
  const categories = input.categories.map((category) => {
    const places = placesIn(category, counted);
    return {
      ...category,
      places: ranked.map(({ id }) => places.get(id) ?? 0),
      values: ranked.map(({ values }) => values[category.code] ?? '0'),
    };
  });
  const scores = overallScores(categories, input.combine);
  const places = competitionPlaces(scores, scoreDirection(input.combine));
  if (input.tieBreak === 'mostFirsts') breakTies({ places, categories, m: ranked.length, from: 0 });
  return ranked.map(({ id }, i) => ({
    id,
    score: scores[i] ?? '0',
    place: places[i] ?? 0,
    categoryPlaces: Object.fromEntries(categories.map((category) => [category.code, category.places[i] ?? 0])),
  }));
}

function sorted<T extends { id: string; place: number | null; placeIfIncluded: number | null }>(rows: T[]): T[] {
  const order = (row: T): number => row.place ?? row.placeIfIncluded ?? Infinity;
  return rows.sort((a, b) => order(a) - order(b) || (a.id < b.id ? -1 : 1));
}
