import { loadReleases } from '../release/load-releases.js';
import type { Release, Tables } from '../release/load-release.js';

/** Where something to embed stands, below /embed/, and the release that it tells of. */
export interface EmbedPlace {
  /** `newest`, `editions/2026` or, pinned, `editions/2026/revisions/1`. */
  readonly path: string;
  readonly release: Release;
}

const pinned = ({ edition, revision }: Release['summary']): string => `editions/${edition}/revisions/${revision}`;

/** The newest edition, each edition by its current revision, and each revision for itself. */
export async function embedPlaces(): Promise<EmbedPlace[]> {
  const { current, superseded } = await loadReleases();
  return [
    ...current.slice(0, 1).map((release) => ({ path: 'newest', release })),
    ...current.map((release) => ({ path: `editions/${release.summary.edition}`, release })),
    ...[...current, ...superseded].map((release) => ({ path: pinned(release.summary), release })),
  ];
}

/** What a table is called in its address: its division, or `overall` where the edition has one. */
export const tableSlug = ({ division }: Tables): string => division?.slug ?? 'overall';
