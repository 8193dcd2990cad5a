import type { EditionDocument } from '../../../api/contract/documents/release-documents.js';
import type { Release } from '../release/load-release.js';
import { formatDate } from '../words/format-date.js';
import { fullName } from '../words/variant-words.js';
import type { Picture } from './picture.js';

/** What is shown where an edition is shared: its name, its size, its date. */
export async function editionPicture({ edition: document, summary }: Release): Promise<Picture> {
  const { house, edition, counts, isDemo } = await document();
  const lines = [
    `${counts.entries} fishing lines, ${counts.specimens} specimens`,
    `Published ${formatDate(summary.publishedAt)}, revision ${summary.revision}`,
  ];
  return { address: addressOfEdition(edition.slug), house, title: edition.name, lines, isDemo, span: null };
}

/** What is said of each variant of an edition: its name, its place and the places that the evidence allows, no more than its page says. */
export async function variantPictures(release: Release): Promise<Map<string, Picture>> {
  const documents = await Promise.all((await release.tables()).map(({ edition }) => edition()));
  return new Map(documents.flatMap(picturesOf));
}

function picturesOf({ house, edition, division, overall, excluded, incomplete, isDemo }: EditionDocument): [string, Picture][] {
  const of = overall.filter(({ place }) => place !== null).length;
  const bare = [...excluded, ...incomplete].map(({ variant }) => ({ variant, place: null, placeInterval: null }));
  return [...bare, ...overall].map(({ variant, place, placeInterval }): [string, Picture] => {
    const allowed = placeInterval ? `; the evidence allows ${placeInterval.low} to ${placeInterval.high}` : '';
    const lines = [
      division ? `${division.name}, ${edition.name}` : edition.name,
      place === null ? 'Tested, without a place' : `Place ${place} of ${of}${allowed}`,
    ];
    const span = place !== null && placeInterval ? { ...placeInterval, place, of } : null;
    return [variant.slug, { address: addressOfVariant(variant.slug), house, title: fullName(variant), lines, isDemo, span }];
  });
}

export const addressOfEdition = (slug: string): string => `/pictures/editions/${slug}.png`;
export const addressOfVariant = (slug: string): string => `/pictures/variants/${slug}.png`;
