import type { Category } from '../../contract/documents/release-documents.js';
import type { ReleaseContext } from './release-context.js';

/**
 * Whether a category's figures compare with the edition before: the same method version, a changed one that still
 * compares, one that does not, or a category that is there for the first time.
 */
export function comparabilityOf(context: ReleaseContext, code: string): Category['comparability'] {
  const { edition } = context.evidence;
  const method = edition.scheme.rules.categories.find((category) => category.code === code)?.method ?? '';
  const now = edition.methods.find(({ slug }) => slug === method)?.number ?? 0;
  const before = context.earlier[0]?.categories.find((category) => category.code === code);
  if (!before) return 'first';
  if (before.method === method && before.methodVersion === now) return 'same';
  const versions = context.methods.filter(({ slug, number }) => slug === method && number > before.methodVersion && number <= now);
  const isComparable = before.method === method && versions.length > 0 && versions.every((version) => version.isComparableWithPrevious);
  return isComparable ? 'changed' : 'notComparable';
}
