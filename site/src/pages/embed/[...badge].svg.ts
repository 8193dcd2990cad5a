import type { APIRoute } from 'astro';
import { badgeOf } from '../../embeds/badge.js';
import { badgePlaces } from '../../embeds/embed-places.js';
import { replacedBy } from '../../release/replaced-by.js';

export async function getStaticPaths() {
  const badges = (await badgePlaces()).map(async ({ place, tables, variant }) => ({
    params: { badge: place.replace(/\.svg$/, '') },
    props: { edition: await tables.edition(), variant, replacedBy: await replacedBy(tables.summary) },
  }));
  return Promise.all(badges);
}

export const GET: APIRoute<Parameters<typeof badgeOf>[0]> = ({ props }) =>
  new Response(badgeOf(props), { headers: { 'content-type': 'image/svg+xml' } });
