import type { PairsDocument } from '../../contract/documents/release-documents.js';
import { headingOf } from './release-context.js';
import type { ReleaseContext } from './release-context.js';

/** Chances that one variant is ahead of another overall, for every pair that is placed; none where nothing is claimed. */
export function pairsDocument(context: ReleaseContext): PairsDocument {
  const { pairs } = context.certainty;
  const variants = pairs?.variants ?? [];
  const n = variants.length;
  return {
    ...headingOf(context),
    variants: [...variants],
    aheadPercent: variants.map((_, i) => variants.map((__, j) => Math.round(100 * (pairs?.chances[i * n + j] ?? 0.5)))),
  };
}
