import { methodSeriesListSchema } from '../contract/method-series.js';
import { Problem } from '../platform/errors/problem.js';
import { editionProblems } from './editions.errors.js';

export type EditionState = 'planned' | 'open' | 'closed' | 'published';

/**
 * Refuses what an edition's state does not allow.
 * @throws Problem editions/wrong-state that says where it stands and where it should
 */
export function requireState(
  edition: { readonly slug: string; readonly state: string },
  allowed: readonly EditionState[],
  wayOn = '',
): void {
  if (allowed.some((state) => state === edition.state)) return;
  throw new Problem(
    editionProblems['editions/wrong-state'],
    `Edition ${edition.slug} is ${edition.state}; this needs it to be ${allowed.join(' or ')}.${wayOn && ` ${wayOn}`}`,
  );
}

interface PinnedRow {
  readonly number: number;
  readonly series: unknown;
  readonly parameters: unknown;
  readonly method: { readonly slug: string };
}

/** A pinned version with what it yields, and what it states of its own reproducibility; a version from before that was asked states none. */
export const toPinnedMethod = ({ number, series, parameters, method }: PinnedRow) => ({
  slug: method.slug,
  number,
  series: methodSeriesListSchema.parse(series),
  reproducibilityPercent: (parameters as { reproducibilityPercent?: number | null }).reproducibilityPercent ?? null,
});

interface VersionOfMethod {
  readonly number: number;
  readonly method: { readonly slug: string };
}

/** Versions by the slugs of their methods, then by number. */
export const bySlug = <Version extends VersionOfMethod>(versions: readonly Version[]): Version[] =>
  versions.toSorted((one, other) =>
    one.method.slug === other.method.slug ? one.number - other.number : one.method.slug < other.method.slug ? -1 : 1,
  );
