import { saysMaker } from '../../../api/contract/line-name.js';
import type { Weighed } from '../weigh/weighed.js';
import { fullName } from '../words/variant-words.js';
import { addressesOf } from './addresses.js';
import { rowOf } from './by-slug.js';
import type { Release, Tables } from './load-release.js';

/** What a reader may weigh of a release, division by division: published figures alone. */
export const weighedOf = async (release: Release): Promise<Weighed[]> => Promise.all((await release.tables()).map(weighedIn));

async function weighedIn(tables: Tables): Promise<Weighed> {
  const { edition, division, revision, scheme, overall } = await tables.edition();
  const addresses = await addressesOf(edition.slug, revision, division);
  const counted = scheme.categories.filter(({ unplaced }) => !unplaced);
  const categories = await Promise.all(counted.map(({ code }) => tables.category(code)));
  return {
    division: division?.slug ?? '',
    name: division?.name ?? edition.name,
    href: addresses.edition,
    combine: scheme.combine,
    tieBreak: scheme.tieBreak,
    digest: tables.summary.digest,
    categories: categories.map(({ category: { code, name, direction, weight } }) => ({ code, name, direction, weight })),
    lines: overall.flatMap(({ variant, place, categoryPlaces }) => {
      if (place === null) return [];
      const results = categories.flatMap(({ category: { code }, rows }) => {
        const figure = rowOf(rows, variant.slug)?.figure;
        const place = categoryPlaces[code];
        return figure && place !== undefined ? [{ place, value: figure.value, low: figure.low, high: figure.high }] : [];
      });
      if (results.length < categories.length) return [];
      const maker = saysMaker(variant.maker, variant.line) ? '' : variant.maker.name;
      const href = addresses.variant(variant.slug) ?? addresses.edition;
      return [{ slug: variant.slug, name: fullName(variant), maker, href, place, results }];
    }),
  };
}
