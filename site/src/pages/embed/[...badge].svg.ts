import type { APIRoute } from 'astro';
import { badgeOf } from '../../embeds/badge.js';
import { embedPlaces } from '../../embeds/embed-places.js';
import { loadReleases } from '../../release/load-releases.js';

/** A badge for each variant of the overall standings, wherever its release is embedded. */
export async function getStaticPaths() {
  const { current } = await loadReleases();
  const badges = (await embedPlaces()).map(async ({ path, release: { tables, summary } }) => {
    const newest = current.find((one) => one.summary.edition === summary.edition)?.summary.revision ?? summary.revision;
    const replacedBy = newest > summary.revision ? newest : null;
    const editions = await Promise.all((await tables()).map((one) => one.edition()));
    return editions.flatMap((edition) =>
      edition.overall.map((row) => ({ params: { badge: `${path}/variants/${row.variant.slug}` }, props: { edition, row, replacedBy } })),
    );
  });
  return (await Promise.all(badges)).flat();
}

export const GET: APIRoute<Parameters<typeof badgeOf>[0]> = ({ props }) =>
  new Response(badgeOf(props), { headers: { 'content-type': 'image/svg+xml' } });
