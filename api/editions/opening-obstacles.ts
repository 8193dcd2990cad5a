import { schemeRules } from '../contract/endpoints/editions.js';
import type { SchemeRules } from '../contract/endpoints/editions.js';
import type { Obstacle } from '../contract/obstacle.js';

interface PinnedVersion {
  readonly method: string;
  readonly number: number;
  /** Calendar days; no last day while it is the newest. */
  readonly effectiveFrom: string;
  readonly effectiveUntil: string | null;
}

/** What an edition is to open with. */
export interface Opening {
  readonly opensOn: string;
  readonly closesOn: string;
  readonly entries: number;
  readonly categories: SchemeRules['categories'];
  readonly pinned: readonly PinnedVersion[];
}

const PATCH_IT = 'Pin a version of each: PATCH /v1/editions/{edition} with methods.';

/** Everything that stands in the way of opening an edition, each with its way on. */
export function openingObstacles({ opensOn, closesOn, entries, categories, pinned }: Opening): Obstacle[] {
  const obstacle = (code: string, what: string, references: readonly string[], remedy: string, count = references.length): Obstacle[] =>
    count === 0 ? [] : [{ code, what, count, references: [...references], remedy }];
  const has = new Set(pinned.map(({ method }) => method));
  const unpinned = [...new Set(categories.map(({ method }) => method))].filter((method) => !has.has(method));
  const outside = pinned.filter((version) => version.effectiveFrom > closesOn || (version.effectiveUntil ?? opensOn) < opensOn);
  const names = outside.map(({ method, number }) => `${method} ${number}`);
  return [
    ...(entries > 0 ? [] : obstacle('no_entries', 'No variant is entered', [], 'Enter variants: POST /v1/editions/{edition}/entries.', 1)),
    ...obstacle('method_not_pinned', 'The scheme ranks by methods of which no version is pinned', unpinned, PATCH_IT),
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
  readonly scheme: { readonly rules: unknown };
  readonly methods: readonly {
    readonly methodVersion: {
      readonly number: number;
      readonly effectiveFrom: Date;
      readonly effectiveUntil: Date | null;
      readonly method: { readonly slug: string };
    };
  }[];
}

/** What an edition is to open with, from its row. */
export const toOpening = ({ opensOn, closesOn, scheme, methods }: OpeningRow, entries: number): Opening => ({
  opensOn: day(opensOn),
  closesOn: day(closesOn),
  entries,
  categories: schemeRules.parse(scheme.rules).categories,
  pinned: methods.map(({ methodVersion: { number, effectiveFrom, effectiveUntil, method } }) => ({
    method: method.slug,
    number,
    effectiveFrom: day(effectiveFrom),
    effectiveUntil: effectiveUntil && day(effectiveUntil),
  })),
});
