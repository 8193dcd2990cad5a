import { say } from './say.js';
import type { PairsDocument } from '../../../api/contract/documents/pairs-document.js';
import type { Marked } from './marks.js';

interface Row extends Marked {
  readonly variant: { readonly slug: string };
}

/** Whole per cents of 99.9 and more. */
const CERTAIN = 100;

/**
 * Of the rows that stand too close to call with a row, those that a published chance of 99.9 % or more tells from it when the two are looked at alone.
 * @returns slug → how many; a row without any is not there
 */
export function apartAlone(
  rows: readonly Row[],
  { variants, aheadPercent }: Pick<PairsDocument, 'variants' | 'aheadPercent'>,
): Map<string, number> {
  const byRow = new Map(rows.map((row) => [row.variant.slug, row]));
  const isTogether = (one: Row | undefined, other: Row | undefined) =>
    one && other && ((one.group !== null && one.group === other.group) || (one.couldBeFirst && other.couldBeFirst));
  const counts = variants.map((slug, i) => {
    const mates = variants.filter((other, j) => i !== j && isTogether(byRow.get(slug), byRow.get(other)));
    // Each way round is rounded by itself: 99.5 and 0.5 can stand as 100 and 1.
    const certain = mates.filter((other) => {
      const j = variants.indexOf(other);
      return [aheadPercent[i]?.[j] ?? 50, aheadPercent[j]?.[i] ?? 50].some((percent) => percent >= CERTAIN || percent <= 0);
    });
    return [slug, certain.length] as const;
  });
  return new Map(counts.filter(([, count]) => count > 0));
}

/** What such a row says, so that its group and the chances of its pairs do not contradict each other. */
export const apartAloneWords = (count: number): string => say`by itself told from ${count} of its group; not among all pairs at once`;
