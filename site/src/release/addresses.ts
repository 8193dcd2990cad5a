import { loadReleases } from './load-releases.js';

/** Where the pages of a release stand: the current revision of an edition, or a superseded one. */
export interface Addresses {
  edition: string;
  category: (code: string) => string;
  /** Null when the revision has no such variant. */
  variant: (slug: string) => string | null;
}

// Every page asks; with ten thousand variants the answer is made once.
const known = new Map<string, Promise<Addresses>>();

/** Addresses of the pages of an edition, or of one of its divisions; those of a superseded revision stand below it. */
export function addressesOf(edition: string, revision: number, division?: { slug: string } | null): Promise<Addresses> {
  const key = `${edition}/${revision}/${division?.slug ?? ''}`;
  const found = known.get(key) ?? look(edition, revision, division ? `${division.slug}/` : '');
  known.set(key, found);
  return found;
}

async function look(edition: string, revision: number, below: string): Promise<Addresses> {
  const { current, superseded } = await loadReleases();
  const replaced = superseded.find(({ summary }) => summary.edition === edition && summary.revision === revision);
  const page = replaced ? `/editions/${edition}/revisions/${revision}/` : `/editions/${edition}/`;
  const variants = new Set((replaced ?? current.find(({ summary }) => summary.edition === edition))?.variants);
  const isLatest = current[0]?.summary.edition === edition;
  const variant = (slug: string) =>
    replaced ? `${page}variants/${slug}/` : isLatest ? `/variants/${slug}/` : `/editions/${edition}/variants/${slug}/`;
  return {
    edition: page + below,
    category: (code) => `${page}${below}${code}/`,
    variant: (slug) => (variants.has(slug) ? variant(slug) : null),
  };
}
