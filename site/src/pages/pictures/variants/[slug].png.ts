import type { APIRoute } from 'astro';
import { socialPicture, type PictureWords } from '../../../pictures/social-picture.js';
import { findRelease } from '../../../release/find-release.js';
import { newestOf } from '../../../release/newest-of.js';
import { fullName } from '../../../words/variant-words.js';

export async function getStaticPaths() {
  return [...(await newestOf('variants'))].map(([slug, edition]) => ({ params: { slug }, props: { edition } }));
}

const known = new Map<string, Promise<Map<string, PictureWords>>>();

/** What is said of each variant of an edition: its name, its place and the places that the evidence allows, no more than its page says. */
async function wordsIn(slug: string): Promise<Map<string, PictureWords>> {
  const { house, edition, overall, excluded, incomplete, isDemo } = await (await findRelease(slug)).edition();
  const of = overall.filter(({ place }) => place !== null).length;
  const bare = [...excluded, ...incomplete].map(({ variant }) => ({ variant, place: null, placeInterval: null }));
  return new Map(
    [...bare, ...overall].map(({ variant, place, placeInterval }) => {
      const allowed = placeInterval ? `; the evidence allows ${placeInterval.low} to ${placeInterval.high}` : '';
      const lines = [edition.name, place === null ? 'Tested, without a place' : `Place ${place} of ${of}${allowed}`];
      const span = place !== null && placeInterval ? { ...placeInterval, place, of } : null;
      return [variant.slug, { house, title: fullName(variant), lines, isDemo, span }];
    }),
  );
}

/** What is shown where the page of a variant is shared. */
export const GET: APIRoute<{ edition: string }> = async ({ params, props: { edition } }) => {
  const words = known.get(edition) ?? wordsIn(edition);
  known.set(edition, words);
  const own = (await words).get(params['slug'] ?? '');
  if (!own) throw new Error(`Edition ${edition} tells nothing of the variant ${params['slug']}, of which it has a document.`);
  return new Response(await socialPicture(own), { headers: { 'Content-Type': 'image/png' } });
};
