import type { ReleaseSummary } from '../../../api/contract/documents/release-documents.js';
import { loadReleases } from './load-releases.js';

/** Number of the revision that readers should use in place of this one; null of a current one. */
export async function replacedBy({ edition, status }: ReleaseSummary): Promise<number | null> {
  if (status !== 'superseded') return null;
  const { current } = await loadReleases();
  return current.find(({ summary }) => summary.edition === edition)?.summary.revision ?? null;
}
