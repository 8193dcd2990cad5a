import type { CategoryRow, EditionDocument, OverallRow, VariantName } from '../../../api/contract/documents/release-documents.js';
import { Draws } from './draws.js';
import { inventTruth, inventedCategories, measureEdition, type SeasonFigures, type TrueStrength } from './measure-edition.js';
import { movementOf, placeRows, type Contender, type Placed } from './place-rows.js';

export interface Exclusion {
  reasonCode: 'notObtainable' | 'interest';
  words: string;
  effect: 'closedUp' | 'shownUnplaced';
}

/** One edition of the invented house, measured and placed. */
export interface Season {
  year: number;
  isFirst: boolean;
  hasIntervals: boolean;
  straightPullVersion: number;
  entries: VariantName[];
  figures: SeasonFigures;
  exclusions: Map<string, Exclusion>;
  incomplete: Map<string, string>;
  categoryRows: Map<string, CategoryRow[]>;
  overall: OverallRow[];
  before: Season | null;
}

/** Where in the list of variants the special cases stand. */
const ROLE = {
  mislabelled: 1,
  aboveHundred: 2,
  notObtainable: 3,
  interest: 5,
  incomplete: 7,
  lateComer: 9,
  skipsSecond: 10,
  tied: [11, 12],
} as const;

export function inventTruths(variants: VariantName[]): Map<string, TrueStrength> {
  const draws = new Draws(2207);
  const truths = new Map(variants.map((variant) => [variant.slug, inventTruth(draws)]));
  const above = variants[ROLE.aboveHundred];
  if (above) truths.get(above.slug)?.set('knot-retention', 1.63);
  return truths;
}

function entriesOf(variants: VariantName[], nth: number): VariantName[] {
  return variants.filter((_, index) => !(index === ROLE.lateComer && nth === 0) && !(index === ROLE.skipsSecond && nth === 1));
}

function exclusionsOf(variants: VariantName[]): Map<string, Exclusion> {
  const exclusions = new Map<string, Exclusion>();
  const gone = variants[ROLE.notObtainable];
  const linked = variants[ROLE.interest];
  if (gone)
    exclusions.set(gone.slug, {
      reasonCode: 'notObtainable',
      words: 'The maker stopped selling this size before the edition closed.',
      effect: 'closedUp',
    });
  if (linked)
    exclusions.set(linked.slug, {
      reasonCode: 'interest',
      words: 'One of the two testers advises the maker; the results are shown, the place is not counted.',
      effect: 'shownUnplaced',
    });
  return exclusions;
}

function contendersIn(season: Season, code: string): Contender[] {
  return season.entries
    .filter(({ slug }) => season.exclusions.get(slug)?.effect !== 'closedUp' && season.incomplete.get(slug) !== code)
    .flatMap(({ slug }) => {
      const figure = season.figures.get(code)?.get(slug);
      if (!figure) return [];
      return [
        {
          slug,
          value: figure.value,
          low: figure.low === null ? null : Number(figure.low),
          high: figure.high === null ? null : Number(figure.high),
        },
      ];
    });
}

/** Splits what is shown unplaced from what is placed, and keeps the place that it would have had. */
function placeWithout(season: Season, contenders: Contender[], direction: 'more' | 'less') {
  const isUnplaced = ({ slug }: { slug: string }) => season.exclusions.has(slug);
  const placed = placeRows(
    contenders.filter((one) => !isUnplaced(one)),
    direction,
  );
  const unplaced = placeRows(contenders, direction).filter(isUnplaced);
  return { placed, unplaced };
}

function rowHeading(season: Season, placed: Placed, isPlaced: boolean, before: { place: number; runAtTop: number } | null) {
  const variant = season.entries.find(({ slug }) => slug === placed.slug)!;
  return {
    variant,
    place: isPlaced ? placed.place : null,
    placeIfIncluded: isPlaced ? null : placed.place,
    isTied: isPlaced && placed.isTied,
    group: isPlaced ? placed.group : null,
    placeInterval: isPlaced ? placed.placeInterval : null,
    movement: movementOf(placed.place, before, season.isFirst),
  };
}

function before(rows: { variant: VariantName; place: number | null; movement: { runAtTop: number } }[] | undefined, slug: string) {
  const row = rows?.find(({ variant }) => variant.slug === slug);
  if (!row || row.place === null) return null;
  return { place: row.place, runAtTop: row.movement.runAtTop };
}

function changeOf(season: Season, code: string, slug: string): CategoryRow['change'] {
  const now = season.figures.get(code)?.get(slug);
  const then = season.before?.figures.get(code)?.get(slug);
  if (!now || !then) return { kind: 'first', percent: null };
  if (code === 'breaking-stress' && season.straightPullVersion !== season.before?.straightPullVersion)
    return { kind: 'notComparable', percent: null };
  const percent = 100 * (Number(now.value) / Number(then.value) - 1);
  return { kind: Math.abs(percent) > 3.5 ? 'changed' : 'withinNoise', percent: percent.toFixed(1) };
}

const NO_CHANCES = { chanceOfFirstPercent: null, chanceOfFirstFivePercent: null, chanceAheadOfNextPercent: null };

function rankCategory(season: Season, code: string, direction: 'more' | 'less'): CategoryRow[] {
  const { placed, unplaced } = placeWithout(season, contendersIn(season, code), direction);
  const toRow = (isPlaced: boolean) => (one: Placed) => ({
    ...rowHeading(season, one, isPlaced, before(season.before?.categoryRows.get(code), one.slug)),
    ...NO_CHANCES,
    figure: season.figures.get(code)!.get(one.slug)!,
    change: changeOf(season, code, one.slug),
  });
  return [...placed.map(toRow(true)), ...unplaced.map(toRow(false))];
}

function rankOverall(season: Season): OverallRow[] {
  const placesOf = (slug: string) =>
    [...season.categoryRows].map(([code, rows]) => {
      const row = rows.find(({ variant }) => variant.slug === slug);
      return { code, place: row?.place ?? row?.placeIfIncluded ?? 0 };
    });
  // One width for all scores keeps groups and intervals in step: the top group is every variant that may be first.
  const half = 4 + season.entries.length / 6;
  const contenders = season.entries
    .filter(({ slug }) => season.exclusions.get(slug)?.effect !== 'closedUp' && !season.incomplete.has(slug))
    .map(({ slug }) => {
      const places = placesOf(slug);
      const score = places.reduce((sum, { place }) => sum + place, 0);
      return {
        slug,
        value: String(score),
        low: season.hasIntervals ? score - half : null,
        high: season.hasIntervals ? score + half : null,
      };
    });
  const { placed, unplaced } = placeWithout(season, contenders, 'less');
  const inTop = placed.filter(({ group }) => group === 1).length;
  const toRow = (isPlaced: boolean) => (one: Placed, index: number) => ({
    ...rowHeading(season, one, isPlaced, before(season.before?.overall, one.slug)),
    score: contenders.find(({ slug }) => slug === one.slug)!.value,
    categoryPlaces: Object.fromEntries(placesOf(one.slug).map(({ code, place }) => [code, place])),
    ...NO_CHANCES,
    chanceOfFirstPercent:
      season.hasIntervals && isPlaced ? (index < inTop ? (100 * (inTop - index)) / ((inTop * (inTop + 1)) / 2) : 0).toFixed(1) : null,
  });
  return [...placed.map(toRow(true)), ...unplaced.map(toRow(false))];
}

/** Measures and places the nth edition (0 is the first); `isMislabelled` gives the figures before the spool was re-identified. */
export function inventSeason(
  variants: VariantName[],
  nth: number,
  year: number,
  before: Season | null,
  isLast: boolean,
  isMislabelled: boolean,
): Season {
  const entries = entriesOf(variants, nth);
  const truths = inventTruths(variants);
  const wrong = variants[ROLE.mislabelled];
  if (isMislabelled && wrong) truths.get(wrong.slug)?.set('breaking-stress', 0.78);
  const figures = measureEdition(entries, truths, new Draws(9000 + year), nth > 0);
  const [one, other] = ROLE.tied.map((index) => variants[index]?.slug ?? '');
  const tied = figures.get('breaking-stress')?.get(one ?? '');
  if (tied && other) figures.get('breaking-stress')?.set(other, tied);
  const missing = isLast ? variants[ROLE.incomplete] : undefined;
  const season: Season = {
    year,
    isFirst: nth === 0,
    hasIntervals: nth > 0,
    straightPullVersion: isLast && nth > 0 ? 2 : 1,
    entries,
    figures,
    exclusions: isLast ? exclusionsOf(variants) : new Map(),
    incomplete: new Map(missing ? [[missing.slug, 'abrasion-retention']] : []),
    categoryRows: new Map(),
    overall: [],
    before,
  };
  for (const { category } of inventedCategories)
    season.categoryRows.set(category.code, rankCategory(season, category.code, category.direction));
  season.overall = rankOverall(season);
  return season;
}

/** The top group of each category; where no group is stated, the first place. */
export function categoryTops(season: Season): EditionDocument['categoryTops'] {
  return [...season.categoryRows].map(([category, rows]) => ({
    category,
    variants: rows.filter((row) => (season.hasIntervals ? row.group === 1 : row.place === 1)).map(({ variant }) => variant),
  }));
}
