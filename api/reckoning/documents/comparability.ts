import type { SchemeCategory } from '../../contract/endpoints/schemes.js';
import { keyOf } from '../results/quantity.js';
import type { Category } from '../../contract/documents/release-documents.js';
import type { ReleaseContext } from './release-context.js';

/**
 * Whether a category's figures compare with the edition before: the same method version, a changed one that still
 * compares, one that does not (another quantity of the same name neither), or a category that is there for the first time.
 */
export function comparabilityOf(context: ReleaseContext, ranked: SchemeCategory): Category['comparability'] {
  const { edition } = context.evidence;
  const { code, method } = ranked;
  const now = edition.methods.find(({ slug }) => slug === method)?.number ?? 0;
  const before = context.earlier[0]?.categories.find((category) => category.code === code);
  if (!before) return 'first';
  if (before.quantity !== keyOf(ranked)) return 'notComparable';
  if (before.methodVersion === now) return 'same';
  const versions = context.methods.filter(({ slug, number }) => slug === method && number > before.methodVersion && number <= now);
  const isComparable = versions.length > 0 && versions.every((version) => version.isComparableWithPrevious);
  return isComparable ? 'changed' : 'notComparable';
}
