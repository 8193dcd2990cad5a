import type { Estimate } from '../results/estimate.js';
import { movement } from '../../measurement/ranking/movement/movement.js';
import { roundHalfEven } from '../../measurement/units/round-half-even.js';
import type { Category, CategoryDocument, CategoryRow, Movement } from '../../contract/documents/release-documents.js';
import { chancesOf } from './chances-of.js';
import { competitionTies } from './competition-ties.js';
import { categoriesOf } from './edition-document.js';
import { toFigure } from './figure.js';
import { changedIn } from './changed-in.js';
import { movementOf } from './movement-of.js';
import { headingOf, nameOf } from './release-context.js';
import type { ReleaseContext } from './release-context.js';
import { spreadOf } from './spread-of.js';

/** The standings of every category, in the order of the scheme. */
export function categoryDocuments(context: ReleaseContext): CategoryDocument[] {
  return categoriesOf(context).map((category) => ({
    ...headingOf(context),
    category,
    spread: spreadOf(context, category.quantity),
    rows: rowsOf(context, category),
  }));
}

function rowsOf(context: ReleaseContext, category: Category): CategoryRow[] {
  const { standings, results, edition } = context.computed;
  const rule = edition.scheme.rules.categories.find(({ code }) => code === category.code);
  const standing = standings.categories[category.code] ?? [];
  const isTied = competitionTies(standing.map(({ place }) => place));
  const moves = movesIn(context, category, standing);
  const scored = new Map(standings.overall.map((row) => [row.id, row.categoryPlaces[category.code]]));
  const changed = changedIn(context, category.quantity);
  return standing.flatMap(({ id, place, placeIfIncluded }, i) => {
    const result = results.get(id)?.get(category.quantity);
    if (!result || !rule) return [];
    const variant = nameOf(context, id);
    const inScore = scored.get(id);
    const certain = context.certainty.categories.get(category.code)?.get(id);
    return [
      {
        variant,
        place,
        placeIfIncluded,
        isTied: isTied[i] ?? false,
        group: certain?.group ?? null,
        placeInterval: certain ? { low: certain.low, high: certain.high } : null,
        couldBeFirst: certain?.couldBeFirst ?? null,
        movement: movementOf(moves(variant.slug), place),
        ...chancesOf(certain),
        figure: toFigure(result, rule),
        ...(inScore !== undefined && place !== null && inScore !== place ? { placeInScore: inScore } : {}),
        change: changeOf(context, category, variant.slug, result.estimate, changed),
      },
    ];
  });
}

function movesIn(
  context: ReleaseContext,
  category: Category,
  standing: readonly { id: string; place: number | null }[],
): (slug: string) => Movement {
  const now = standing.map(({ id, place }) => ({ id: id, place }));
  const before = context.earlier.map(({ categories }) =>
    (categories.find(({ code }) => code === category.code)?.rows ?? []).map(({ variant, place }) => ({ id: variant, place })),
  );
  const moves = movement(now, before);
  return (slug) => {
    const move = moves.get(slug) ?? { kind: 'new' as const, places: null, runAtTop: 0 };
    return category.comparability === 'notComparable' && move.kind !== 'new' ? { ...move, kind: 'notComparable', places: null } : move;
  };
}

/** Change of the measured value against the edition before. */
function changeOf(
  context: ReleaseContext,
  category: Category,
  slug: string,
  now: Estimate,
  changed: ReadonlySet<string>,
): CategoryRow['change'] {
  const before = context.earlier[0]?.results.find(({ variant, quantity }) => variant === slug && quantity === category.quantity);
  if (!before) return { kind: 'first', percent: null };
  if (category.comparability === 'notComparable') return { kind: 'notComparable', percent: null };
  const percent = roundHalfEven((100 * (now.value - Number(before.value))) / Number(before.value), 1);
  return { kind: changed.has(slug) ? 'changed' : 'withinNoise', percent };
}
