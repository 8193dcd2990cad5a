/** What an entry still needs to count in a category. Pure. */
import { FEWEST_CONTRASTS } from '../../measurement/bench-model/fit-series.js';
import type { SchemeCategory } from '../../contract/endpoints/schemes.js';
import { diameterOf, forceOf, keyOf } from './quantity.js';
import type { QuantityNamed } from './quantity.js';
import type { EditionResults } from './results.js';

/** Key of a measured quantity → whether it was fitted. */
export interface WithFits {
  readonly fits: Readonly<Record<string, Pick<EditionResults['fits'][string], 'kind'>>>;
}

type Computed = Pick<EditionResults, 'results'> & WithFits;

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

/** What would tell how the readings behind a result scatter; null where that is known, and where there is no result. Without it nobody can say what it is ahead of: it does not count. */
export function scatterNeed(
  category: QuantityNamed & Pick<SchemeCategory, 'code'>,
  variant: string,
  { results, fits }: Computed,
): string | null {
  const found = results.get(variant);
  if (!found?.get(keyOf(category)) || isUnplaced(category, { fits })) return null;
  const isUnknown = (one: QuantityNamed | null): boolean => one !== null && found.get(keyOf(one))?.evidence === null;
  if (!isUnknown(category)) return null;
  const what = isUnknown(diameterOf(category)) ? 'diameters' : 'readings';
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

/** Whether nothing tells what rigs and testers do to the results of a category: they are values then, and no places. */
export const isUnplaced = (category: QuantityNamed, { fits }: WithFits): boolean =>
  [category, forceOf(category), diameterOf(category)].some((one) => one !== null && fits[keyOf(one)]?.kind === 'values-only');

/** What would give places to a category that is unplaced; null where it has them. */
export const unplacedNeed = (category: QuantityNamed & Pick<SchemeCategory, 'code'>, results: WithFits): string | null =>
  isUnplaced(category, results)
    ? `what rigs and testers differ by in ${category.code}: nothing tells it; ${NUMBERS[FEWEST_CONTRASTS] ?? String(FEWEST_CONTRASTS)} second submissions do, or a reproducibility that the method states`
    : null;

const NOUNS = { specimens: ['specimen', 'specimens'], testers: ['tester', 'testers'], rigs: ['rig', 'rigs'] } as const;
const NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** A need in words: "one more rig in knot-retention". */
export function wordsOf({ category, what, has, needs }: Shortfall): string {
  const lacking = needs - has;
  const [one, many] = NOUNS[what];
  return `${NUMBERS[lacking] ?? String(lacking)} ${has === 0 ? '' : 'more '}${lacking === 1 ? one : many} in ${category}`;
}
