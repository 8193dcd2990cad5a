import { valueChanges } from '../../measurement/ranking/movement/value-changes.js';
import type { ValueInTable } from '../../measurement/ranking/movement/value-changes.js';
import type { PublishedResult } from './published-result.js';
import type { ReleaseContext } from './release-context.js';

/** Slugs of the variants whose measured value changed beyond noise, judged by the model of both editions over the whole table. */
export function changedIn({ earlier, computed: { results, besideTable } }: ReleaseContext, quantity: string): ReadonlySet<string> {
  const now = new Map(
    [...(besideTable.get(quantity) ?? [])].flatMap(([variant, tail]) => {
      const value = results.get(variant)?.get(quantity)?.estimate.value;
      return value === undefined ? [] : [[variant, { value, ...tail }] as const];
    }),
  );
  const before = new Map(
    (earlier[0]?.results ?? []).filter((result) => result.quantity === quantity).flatMap((result) => publishedInTable(result)),
  );
  return new Set(
    valueChanges(now, before)
      .filter(({ isChange }) => isChange)
      .map(({ id }) => id),
  );
}

/** A release from before uncertainties beside the table were told has its whole ones to go by, which are wider. */
function publishedInTable(result: PublishedResult): (readonly [string, ValueInTable])[] {
  const value = Number(result.value);
  if (result.besideTable) {
    const { standardUncertainty, degreesOfFreedom } = result.besideTable;
    return [[result.variant, { value, standardUncertainty: Number(standardUncertainty), degreesOfFreedom: Number(degreesOfFreedom) }]];
  }
  if (result.standardUncertainty === null) return [];
  const relative = Number(result.standardUncertainty) / value;
  return [[result.variant, { value, standardUncertainty: relative, degreesOfFreedom: Number(result.degreesOfFreedom) }]];
}
