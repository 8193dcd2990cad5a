import { addressesOf } from '../release/addresses.js';
import { rowOf } from '../release/by-slug.js';
import { loadReleases } from '../release/load-releases.js';
import { fullName } from '../words/variant-words.js';

/** What the page of comparisons shows, of the newest edition: finished figures, nothing is computed there. */
export async function GET(): Promise<Response> {
  const { current } = await loadReleases();
  const release = current[0];
  if (!release) return Response.json({ edition: '', categories: [], variants: [], pairs: { variants: [], aheadPercent: [] } });
  const edition = await release.edition();
  const addresses = await addressesOf(edition.edition.slug, edition.revision);
  const categories = await Promise.all(edition.scheme.categories.map(({ code }) => release.category(code)));
  const { variants, aheadPercent } = await release.pairs();
  return Response.json({
    edition: edition.edition.name,
    categories: categories.map(({ category: { code, name, unit } }) => ({ code, name, unit, href: addresses.category(code) })),
    variants: edition.overall.map(({ variant, place, placeInterval, group, score }) => ({
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
  });
}
