import { loadReleases } from './load-releases.js';

interface Ranked {
  readonly place: number | null;
  readonly variant: { readonly slug: string };
}

/** What a row of a table is compared with: the first of its order, and the first with the next; nothing where the page of comparisons has no such edition. */
export async function rivalsIn(edition: string, rows: readonly Ranked[]): Promise<(slug: string) => string | undefined> {
  const { current } = await loadReleases();
  if (current[0]?.summary.edition !== edition) return () => undefined;
  const placed = rows.filter(({ place }) => place !== null).map(({ variant }) => variant.slug);
  return (slug) => placed.find((other) => other !== slug);
}
