import type { Release, Tables } from './load-release.js';

/**
 * The tables of a division of a release; of an edition with one division those of the release.
 * @throws When there is no such division
 */
export async function findTables(release: Release, division: string | undefined): Promise<Tables> {
  const found = (await release.tables()).find((tables) => tables.division?.slug === division);
  if (!found) throw new Error(`${release.address} has no division ${division ?? 'without a name'}. Build the site again.`);
  return found;
}
