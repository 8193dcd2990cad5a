import { loadReleases } from './load-releases.js';
import type { Release } from './load-release.js';

/**
 * The current release of an edition, or a superseded revision of it.
 * @throws When no such release was published
 */
export async function findRelease(edition: string, revision?: number): Promise<Release> {
  const { current, superseded } = await loadReleases();
  const found =
    revision === undefined
      ? current.find(({ summary }) => summary.edition === edition)
      : superseded.find(({ summary }) => summary.edition === edition && summary.revision === revision);
  if (!found)
    throw new Error(
      `No release of edition ${edition}${revision === undefined ? '' : `, revision ${revision}`}, in /v1/releases. Build the site again.`,
    );
  return found;
}
