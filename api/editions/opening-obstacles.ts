import { schemeRules } from '../contract/endpoints/schemes.js';
import type { SchemeRules } from '../contract/endpoints/schemes.js';
import { methodSeriesListSchema } from '../contract/method-series.js';
import type { Obstacle } from '../contract/obstacle.js';
import { categoryFaults } from './category-faults.js';
import { divisionObstacles } from './divisions.js';
import type { YieldingVersion } from './category-faults.js';

interface PinnedVersion extends YieldingVersion {
  /** Calendar days; no last day while it is the newest. */
  readonly effectiveFrom: string;
  readonly effectiveUntil: string | null;
}

/** What an edition is to open with. */
export interface Opening {
  readonly opensOn: string;
  readonly closesOn: string;
  readonly divisions: Parameters<typeof divisionObstacles>[0];
  readonly entries: Parameters<typeof divisionObstacles>[1];
  readonly categories: SchemeRules['categories'];
  /** Schemes, by slug and number, whose rules are none that this program knows. */
  readonly unreadable: readonly string[];
  readonly pinned: readonly PinnedVersion[];
}

const PATCH_IT = 'Pin versions that yield what is ranked: PATCH /v1/editions/{edition} with methods.';

const PLAN_IT = 'Plan it by another scheme: PATCH /v1/editions/{edition} with scheme or divisions.';

/** Of these nothing can be computed at any time; the others keep an edition from opening alone. */
export const NEVER_COMPUTED: readonly string[] = ['scheme_unreadable', 'cannot_count'];

/** Everything that stands in the way of opening an edition, each with its way on. */
export function openingObstacles({ opensOn, closesOn, divisions, entries, categories, unreadable, pinned }: Opening): Obstacle[] {
  const obstacle = (code: string, what: string, references: readonly string[], remedy: string, count = references.length): Obstacle[] =>
    count === 0 ? [] : [{ code, what, count, references: [...references], remedy }];
  const never = categoryFaults(categories, pinned, 'pin a version of it').map(({ detail }) => detail);
  const outside = pinned.filter((version) => version.effectiveFrom > closesOn || (version.effectiveUntil ?? opensOn) < opensOn);
  const names = outside.map(({ slug, number }) => `${slug} ${number}`);
  return [
    ...(entries.length > 0
      ? []
      : obstacle('no_entries', 'No variant is entered', [], 'Enter variants: POST /v1/editions/{edition}/entries.', 1)),
    ...divisionObstacles(divisions, entries),
    ...obstacle('scheme_unreadable', 'Schemes whose rules are none that this program reads', unreadable, PLAN_IT),
    ...obstacle('cannot_count', 'No result could ever count in categories of the scheme', never, PATCH_IT),
    ...obstacle(
      'method_not_in_force',
      'Pinned versions that are not in force on any day of the edition',
      names,
      `${PATCH_IT} Or move the days of the edition.`,
    ),
  ];
}

const day = (date: Date): string => date.toISOString().slice(0, 10);

interface OpeningRow {
  readonly opensOn: Date;
  readonly closesOn: Date;
  readonly divisions: readonly (Opening['divisions'][number] & {
    readonly scheme: { readonly slug: string; readonly number: number; readonly rules: unknown };
  })[];
  readonly entries: Opening['entries'];
}

interface PinnedRow {
  readonly number: number;
  readonly effectiveFrom: Date;
  readonly effectiveUntil: Date | null;
  readonly series: unknown;
  readonly parameters: unknown;
  readonly method: { readonly slug: string };
}

/** What an edition is to open with, from its row and those of the versions that it pins. */
export function toOpening({ opensOn, closesOn, divisions, entries }: OpeningRow, pinned: readonly PinnedRow[]): Opening {
  const schemes = divisions.map(({ scheme }) => ({ name: `${scheme.slug} ${scheme.number}`, read: schemeRules.safeParse(scheme.rules) }));
  return {
    opensOn: day(opensOn),
    closesOn: day(closesOn),
    divisions,
    entries,
    categories: schemes.flatMap(({ read }) => read.data?.categories ?? []),
    unreadable: schemes.filter(({ read }) => !read.success).map(({ name }) => name),
    pinned: pinned.map(({ number, effectiveFrom, effectiveUntil, method, series, parameters }) => ({
      slug: method.slug,
      number,
      effectiveFrom: day(effectiveFrom),
      effectiveUntil: effectiveUntil && day(effectiveUntil),
      series: methodSeriesListSchema.parse(series),
      parameters: parameters as YieldingVersion['parameters'],
    })),
  };
}
