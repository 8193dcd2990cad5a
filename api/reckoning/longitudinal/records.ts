import { keyOf, plainQuantity } from '../results/quantity.js';
import type { RecordsDocument } from '../../contract/documents/release-documents.js';
import type { ReleaseContext } from '../documents/release-context.js';
import { printed } from './seasons.js';
import type { SeasonOf } from './seasons.js';

type PublishedRecord = RecordsDocument['records'][number];
type SchemeCategory = ReleaseContext['evidence']['edition']['scheme']['rules']['categories'][number];

/** Classes of measured breaking force [N], each from its number on (common practice: by what the line holds, not by its label). */
export const STRENGTH_CLASSES = [0, 50, 100, 200, 400];

const classOf = (forceN: number): number => STRENGTH_CLASSES.filter((from) => forceN >= from).at(-1) ?? 0;

/** A value that was published of a placed variant. */
interface Entry {
  readonly edition: string;
  readonly variant: string;
  readonly from: number;
  readonly value: string;
}

/** The best value ever published in each category and class of strength, since its method last changed beyond comparison. */
export function recordsOf(context: ReleaseContext, seasons: readonly SeasonOf[]): PublishedRecord[] {
  const strength = plainQuantity(context.computed.quantities, 'breakingForce')?.key ?? '';
  return context.evidence.edition.scheme.rules.categories.flatMap((category) => {
    const comparable = comparableSeasons(context, category, seasons);
    const entries = comparable.flatMap((season) => entriesOf(season, category, strength));
    return [...Map.groupBy(entries, ({ from }) => from)]
      .sort(([one], [other]) => one - other)
      .map(([from, ofClass]) => recordOf(category, from, ofClass, comparable[0]?.edition ?? '', context.evidence.edition.slug));
  });
}

/** Seasons from the last break of comparison on. */
function comparableSeasons({ methods }: ReleaseContext, { code, method }: SchemeCategory, seasons: readonly SeasonOf[]): SeasonOf[] {
  const measured = seasons.filter(({ methodVersions }) => methodVersions.has(code));
  const isBreak = (season: SeasonOf, before: SeasonOf): boolean => {
    const [old, now] = [before.methodVersions.get(code) ?? 0, season.methodVersions.get(code) ?? 0];
    return methods.some(
      (version) => version.slug === method && version.number > old && version.number <= now && !version.isComparableWithPrevious,
    );
  };
  const start = measured.findLastIndex((season, i) => i > 0 && isBreak(season, measured[i - 1] ?? season));
  return measured.slice(Math.max(0, start));
}

/** @param strength key of the breaking force that tells the class */
function entriesOf(season: SeasonOf, category: SchemeCategory, strength: string): Entry[] {
  const { code, places } = category;
  return (season.places.get(code) ?? []).flatMap(({ variant, place }) => {
    const [value, forceN] = [season.valueOf(variant, keyOf(category)), season.valueOf(variant, strength)];
    return place === null || value === undefined || forceN === undefined
      ? []
      : [{ edition: season.edition, variant, from: classOf(forceN), value: printed(value, places) }];
  });
}

function recordOf(
  { code, unit, direction }: SchemeCategory,
  from: number,
  entries: readonly Entry[],
  since: string,
  edition: string,
): PublishedRecord {
  const isBetter = (one: string, other: string) => (direction === 'more' ? Number(one) > Number(other) : Number(one) < Number(other));
  const best = entries.reduce((record, entry) => (isBetter(entry.value, record.value) ? entry : record));
  const equal = entries.filter(({ value }) => value === best.value);
  const [first = best, ...later] = equal;
  return {
    category: code,
    strengthFromN: from,
    strengthBelowN: STRENGTH_CLASSES[STRENGTH_CLASSES.indexOf(from) + 1] ?? null,
    value: first.value,
    unit,
    variant: first.variant,
    edition: first.edition,
    equalled: later.map(({ variant, edition: when }) => ({ variant, edition: when })),
    isNew: first.edition === edition,
    since,
  };
}
