/** What an entry still needs to count in a category. Pure. */
import { FEWEST_CONTRASTS } from '../../measurement/bench-model/fit-series.js';
import type { Category } from '../../contract/documents/category-document.js';
import type { SchemeCategory } from '../../contract/endpoints/schemes.js';
import { diameterOf, forceOf, keyOf } from './quantity.js';
import type { QuantityNamed } from './quantity.js';
import type { EditionResults, Result } from './results.js';

/** Key of a measured quantity → whether it was fitted. */
export interface WithFits {
  readonly fits: Readonly<Record<string, Pick<EditionResults['fits'][string], 'kind'>>>;
}

type Computed = Pick<EditionResults, 'results'> & WithFits;
type Named = QuantityNamed & Pick<SchemeCategory, 'code'>;

/** One need of an entry in one category. */
export interface Shortfall {
  readonly category: string;
  readonly what: 'specimens' | 'testers' | 'rigs';
  readonly has: number;
  readonly needs: number;
}

const KINDS = ['specimens', 'testers', 'rigs'] as const;

/** What a variant lacks of the least evidence that a category asks for; empty when its result counts. */
export function shortfallsOf(
  category: QuantityNamed & Pick<SchemeCategory, 'code' | 'minimum'>,
  variant: string,
  results: EditionResults['results'],
): Shortfall[] {
  const { code, minimum } = category;
  const result = results.get(variant)?.get(keyOf(category));
  return KINDS.map((what) => ({ category: code, what, has: result?.[what] ?? 0, needs: minimum[what] })).filter(
    ({ has, needs }) => has < needs,
  );
}

/** A request for one more submission where those that are there disagree beyond the others; null where they do not. */
export function disagreementOf(
  category: QuantityNamed & Pick<SchemeCategory, 'code'>,
  variant: string,
  results: EditionResults['results'],
): string | null {
  const isApart = results.get(variant)?.get(keyOf(category))?.estimate.isApart ?? false;
  return isApart ? `one more submission in ${category.code}: those that are there disagree beyond the others` : null;
}

/** What nobody knows the scatter of behind a result; null where that is known, and where there is no result. */
function unknownScatter(category: QuantityNamed, found: ReadonlyMap<string, Result> | undefined): 'diameters' | 'readings' | null {
  const isUnknown = (one: QuantityNamed | null): boolean => one !== null && found?.get(keyOf(one))?.evidence === null;
  if (!isUnknown(category)) return null;
  return isUnknown(diameterOf(category)) ? 'diameters' : 'readings';
}

/** What would tell how the readings behind a result scatter; null where that is known, and where there is no result. Without it nobody can say what it is ahead of: it does not count. */
export function scatterNeed(category: Named, variant: string, computed: Computed): string | null {
  const what = unknownScatter(category, computed.results.get(variant));
  if (what === null || isUnplaced(category, computed)) return null;
  return `how ${what} scatter in ${category.code} (nothing tells it: more specimens do)`;
}

/** All that an entry lacks in a category, in words; none where its result counts and has a place. */
export const needsOf = (
  category: QuantityNamed & Pick<SchemeCategory, 'code' | 'minimum'>,
  variant: string,
  computed: Computed,
): string[] => [
  ...shortfallsOf(category, variant, computed.results).map(wordsOf),
  ...[scatterNeed(category, variant, computed), unplacedNeed(category, computed)].flatMap((need) => need ?? []),
];

/** Whether a result has the least evidence that its category asks for, and a scatter that is known. */
export const isEnough = (
  category: QuantityNamed & Pick<SchemeCategory, 'code' | 'minimum'>,
  variant: string,
  computed: Computed,
): boolean => shortfallsOf(category, variant, computed.results).length === 0 && scatterNeed(category, variant, computed) === null;

/** Whether a category has values alone, and no places: it makes no part of the score then. */
export const isUnplaced = (category: QuantityNamed, computed: Computed): boolean => unplacedBecause(category, computed) !== null;

/** Why a category has values and no places; null where it has them. */
export function unplacedBecause(category: QuantityNamed, { results, fits }: Computed): Category['unplaced'] | null {
  const isOfValues = (one: QuantityNamed | null): boolean => one !== null && fits[keyOf(one)]?.kind === 'values-only';
  if ([category, forceOf(category), diameterOf(category)].some(isOfValues)) return 'nothingKnownOfEffects';
  let hasResults = false;
  for (const found of results.values()) {
    if (!found.get(keyOf(category))) continue;
    hasResults = true;
    if (unknownScatter(category, found) === null) return null;
  }
  return hasResults ? 'nothingKnownOfScatter' : null;
}

/** What would give places to a category that is unplaced; null where it has them. */
export function unplacedNeed(category: Named, computed: Computed): string | null {
  const because = unplacedBecause(category, computed);
  if (because === 'nothingKnownOfEffects')
    return `what rigs and testers differ by in ${category.code}: nothing tells it; ${NUMBERS[FEWEST_CONTRASTS] ?? String(FEWEST_CONTRASTS)} second submissions do, or a reproducibility that the method states`;
  if (because === null) return null;
  const areReadings = [...computed.results.values()].some((found) => unknownScatter(category, found) === 'readings');
  return `how ${areReadings ? 'readings' : 'diameters'} scatter in ${category.code}: nothing tells it of any entry; more specimens of each do`;
}

const NOUNS = { specimens: ['specimen', 'specimens'], testers: ['tester', 'testers'], rigs: ['rig', 'rigs'] } as const;
const NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** A need in words: "one more rig in knot-retention". */
export function wordsOf({ category, what, has, needs }: Shortfall): string {
  const lacking = needs - has;
  const [one, many] = NOUNS[what];
  return `${NUMBERS[lacking] ?? String(lacking)} ${has === 0 ? '' : 'more '}${lacking === 1 ? one : many} in ${category}`;
}
