import type { CategoryRow } from '../../../api/contract/documents/release-documents.js';
import { addressesOf } from '../release/addresses.js';
import { rowOf } from '../release/by-slug.js';
import type { Tables } from '../release/load-release.js';
import { loadReleases } from '../release/load-releases.js';
import type { ComparedFigure, ComparedRow, ComparedTables } from '../weigh/compared.js';
import { formatDate } from '../words/format-date.js';
import { fullName } from '../words/variant-words.js';

/** What the page of comparisons shows of the newest edition, division by division: finished figures, nothing is computed there. */
export async function GET(): Promise<Response> {
  const { current } = await loadReleases();
  return Response.json(await Promise.all(((await current[0]?.tables()) ?? []).map(comparedIn)));
}

async function comparedIn(tables: Tables): Promise<ComparedTables> {
  const { edition, division, revision, scheme, overall } = await tables.edition();
  const addresses = await addressesOf(edition.slug, revision, division);
  const categories = await Promise.all(scheme.categories.map(({ code }) => tables.category(code)));
  const { variants, aheadPercent } = await tables.pairs();
  const remarks = await tables.remarks();
  return {
    remarks: remarks.map(({ words, signedBy, on, variants: touched }) => ({ words, signedBy, on: formatDate(on), variants: touched })),
    name: division?.name ?? edition.name,
    categories: categories.map(({ category: { code, name, direction, unit, tradeUnit } }) => ({
      name,
      direction,
      unit,
      tradeUnit,
      href: addresses.category(code),
    })),
    variants: overall.map(({ variant, place, placeInterval, group }) => ({
      slug: variant.slug,
      name: fullName(variant),
      href: addresses.variant(variant.slug),
      overall: { place, placeInterval, group },
      categories: categories.map(({ rows }) => {
        const row = rowOf(rows, variant.slug);
        return row && comparedRow(row, nextPlaced(rows, row));
      }),
    })),
    pairs: { variants, aheadPercent },
  };
}

const figureOf = ({ value, low, high }: ComparedFigure): ComparedFigure => ({ value, low, high });

function comparedRow({ place, group, figure, chanceAheadOfNextPercent: percent }: CategoryRow, next: CategoryRow | undefined): ComparedRow {
  return {
    place,
    group,
    ...figureOf(figure),
    trade: figure.trade && figureOf(figure.trade),
    next: next && percent !== null ? { slug: next.variant.slug, percent } : null,
  };
}

/** The placed row below a placed row. */
function nextPlaced(rows: readonly CategoryRow[], row: CategoryRow): CategoryRow | undefined {
  return row.place === null ? undefined : rows.slice(rows.indexOf(row) + 1).find(({ place }) => place !== null);
}
