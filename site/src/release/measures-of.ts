import type { Figure, PublishedClaim } from '../../../api/contract/documents/release-documents.js';
import type { Release } from './load-release.js';

/** What a reader looks a line up by, whether a category ranks it or not. */
export interface Measures {
  force: Figure | null;
  diameter: Figure | null;
  /** What the label claims [N] and [mm], as text. */
  claimedForce: string | null;
  claimedDiameter: string | null;
  /** Why a spool of it was found to hold another variant than its label says, spool by spool. */
  reidentified: string[];
}

const known = new Map<string, Promise<Map<string, Measures>>>();
const isOf = (kind: string) => (figure: { quantity: string }) => figure.quantity === kind || figure.quantity.startsWith(`${kind}/`);

const claimAsShown = (claim: PublishedClaim | undefined) => claim?.shown ?? claim?.value ?? null;

/** Breaking force and diameter of every variant of a release, by slug; each document is read once. */
export function measuresOf(release: Release): Promise<Map<string, Measures>> {
  const found = known.get(release.address) ?? look(release);
  known.set(release.address, found);
  return found;
}

async function look(release: Release): Promise<Map<string, Measures>> {
  const entries = release.variants.map(async (slug): Promise<[string, Measures]> => {
    const { figures, claims, spools } = await release.variant(slug);
    const claimOf = (quantity: string) => claimAsShown(claims.find((claim) => claim.quantity === quantity));
    return [
      slug,
      {
        // By kind the scheme's own comes first; knotted and abraded forces are no figures.
        force: figures.find(isOf('breakingForce')) ?? null,
        diameter: figures.find(isOf('diameter')) ?? null,
        claimedForce: claimOf('breakingForce'),
        claimedDiameter: claimOf('diameter'),
        reidentified: spools.flatMap(({ reidentified }) => reidentified ?? []),
      },
    ];
  });
  return new Map(await Promise.all(entries));
}
