import type { APIRoute } from 'astro';
import { socialPicture } from '../../../pictures/social-picture.js';
import { findRelease } from '../../../release/find-release.js';
import { loadReleases } from '../../../release/load-releases.js';
import { formatDate } from '../../../words/format-date.js';

export async function getStaticPaths() {
  const { current } = await loadReleases();
  return current.map(({ summary }) => ({ params: { edition: summary.edition } }));
}

/** What is shown where an edition is shared: its name, its size, its date. */
export const GET: APIRoute = async ({ params }) => {
  const release = await findRelease(params['edition']);
  const { house, edition, counts, isDemo } = await release.edition();
  const lines = [
    `${counts.entries} fishing lines, ${counts.specimens} specimens`,
    `Published ${formatDate(release.summary.publishedAt)}, revision ${release.summary.revision}`,
  ];
  return new Response(await socialPicture({ house, title: edition.name, lines, isDemo, span: null }), {
    headers: { 'Content-Type': 'image/png' },
  });
};
