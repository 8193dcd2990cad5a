import { addressesOf } from '../release/addresses.js';
import { rowOf } from '../release/by-slug.js';
import type { Tables } from '../release/load-release.js';
import { loadReleases } from '../release/load-releases.js';
import { formatDate } from '../words/format-date.js';
import { fullName } from '../words/variant-words.js';

/** What the page of comparisons shows of the newest edition, division by division: finished figures, nothing is computed there. */
export async function GET(): Promise<Response> {
  const { current } = await loadReleases();
  return Response.json(await Promise.all(((await current[0]?.tables()) ?? []).map(comparedIn)));
}

async function comparedIn(tables: Tables) {
  const { edition, division, revision, scheme, overall } = await tables.edition();
  const addresses = await addressesOf(edition.slug, revision, division);
  const categories = await Promise.all(scheme.categories.map(({ code }) => tables.category(code)));
  const { variants, aheadPercent } = await tables.pairs();
  const remarks = await tables.remarks();
  return {
    remarks: remarks.map(({ words, signedBy, on, variants: touched }) => ({ words, signedBy, on: formatDate(on), variants: touched })),
    name: division?.name ?? edition.name,
    categories: categories.map(({ category: { code, name, unit } }) => ({ code, name, unit, href: addresses.category(code) })),
    variants: overall.map(({ variant, place, placeInterval, group, score }) => ({
      slug: variant.slug,
      name: fullName(variant),
      href: addresses.variant(variant.slug),
      overall: { place, placeInterval, group, score },
      categories: categories.map(({ rows }) => {
        const row = rowOf(rows, variant.slug);
        return row && { place: row.place, value: row.figure.value, low: row.figure.low, high: row.figure.high };
      }),
    })),
    pairs: { variants, aheadPercent },
  };
}
