import type { Release, Tables } from '../release/load-release.js';
import { loadReleases } from '../release/load-releases.js';
import { newestOf } from '../release/newest-of.js';
import { tellSamePage } from '../release/same-pages.js';

const ALL = '/embed/';
const ofEdition = ({ edition }: Release['summary']): string => `${ALL}editions/${edition}/`;
const pinned = ({ edition, revision }: Release['summary']): string => `${ALL}editions/${edition}/revisions/${revision}/`;

/** Addresses of something to embed: of whichever edition has it last, of one edition by its current revision, of one revision for ever. */
export interface EmbedAddresses {
  readonly newest: string;
  readonly edition: string;
  readonly pinned: string;
}

/** @param below what it is called below each of them, e.g. `braided/` or `variants/brinewickel-pe-1-0.svg` */
export const embedAddresses = ({ summary }: Release, below: string): EmbedAddresses => ({
  newest: `${ALL}newest/${below}`,
  edition: ofEdition(summary) + below,
  pinned: pinned(summary) + below,
});

/** What a table is called in its address: its division, or `overall` where the edition has one. */
export const tableBelow = ({ division }: Tables): string => `${division?.slug ?? 'overall'}/`;
export const badgeBelow = (variant: string): string => `variants/${variant}.svg`;

/**
 * The address at which it is rendered, without what all begin with; to its other addresses it is copied.
 * @param isNewest whether no later edition has it
 */
export function placeOf(release: Release, below: string, isNewest: boolean): string {
  const at = embedAddresses(release, below);
  if (release.summary.status === 'superseded') return at.pinned.slice(ALL.length);
  if (import.meta.env.PROD) {
    tellSamePage({ of: at.edition, at: at.pinned });
    if (isNewest) tellSamePage({ of: at.edition, at: at.newest });
  }
  return at.edition.slice(ALL.length);
}

/** Every table of every revision, with its address. */
export async function tablePlaces(): Promise<{ place: string; tables: Tables }[]> {
  const { current, superseded } = await loadReleases();
  const seen = new Set<string>();
  const places: { place: string; tables: Tables }[] = [];
  for (const release of [...current, ...superseded])
    for (const tables of await release.tables()) {
      const below = tableBelow(tables);
      places.push({ place: placeOf(release, below, !seen.has(below)), tables });
      if (release.summary.status !== 'superseded') seen.add(below);
    }
  return places;
}

/** A badge for each entry of every revision, placed or not, with its address. */
export async function badgePlaces(): Promise<{ place: string; tables: Tables; variant: string }[]> {
  const { current, superseded } = await loadReleases();
  const newest = await newestOf('variants');
  const places = [...current, ...superseded].map(async (release) => {
    const all = await release.tables();
    return release.variants.flatMap((variant) => {
      const place = placeOf(release, badgeBelow(variant), newest.get(variant) === release.summary.edition);
      return all.filter(({ hasEntry }) => hasEntry(variant)).map((tables) => ({ place, tables, variant }));
    });
  });
  return (await Promise.all(places)).flat();
}
