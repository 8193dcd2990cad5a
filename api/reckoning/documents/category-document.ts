import type { Estimate } from '../results/estimate.js';
import { tCdf } from '../../measurement/distributions/t-distribution.js';
import { movement } from '../../measurement/ranking/movement.js';
import { roundHalfEven } from '../../measurement/units/round-half-even.js';
import type { Category, CategoryDocument, CategoryRow, Movement } from '../../contract/documents/release-documents.js';
import { chancesOf } from './chances-of.js';
import { competitionTies } from './competition-ties.js';
import { categoriesOf } from './edition-document.js';
import { toFigure } from './figure.js';
import { movementOf } from './movement-of.js';
import { headingOf, nameOf } from './release-context.js';
import type { ReleaseContext } from './release-context.js';
import { spreadOf } from './spread-of.js';

const SIGNIFICANCE = 0.05;

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
  return standing.flatMap(({ id, place, placeIfIncluded }, i) => {
    const result = results.get(id)?.get(category.quantity);
    if (!result || !rule) return [];
    const variant = nameOf(context, id);
    const certain = context.certainty.categories.get(category.code)?.get(id);
    return [
      {
        variant,
        place,
        placeIfIncluded,
        isTied: isTied[i] ?? false,
        group: certain?.group ?? null,
        placeInterval: certain ? { low: certain.low, high: certain.high } : null,
        movement: movementOf(moves(variant.slug), place),
        ...chancesOf(certain),
        figure: toFigure(result, rule),
        change: changeOf(context, category, variant.slug, result.estimate),
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

/** Change of the measured value against the edition before, by Welch's test on the two estimates (measured values apart by noise alone are told so). */
function changeOf(context: ReleaseContext, category: Category, slug: string, now: Estimate): CategoryRow['change'] {
  const before = context.earlier[0]?.results.find(({ variant, quantity }) => variant === slug && quantity === category.quantity);
  if (!before) return { kind: 'first', percent: null };
  if (category.comparability === 'notComparable') return { kind: 'notComparable', percent: null };
  const value = Number(before.value);
  const percent = roundHalfEven((100 * (now.value - value)) / value, 1);
  if (now.standardUncertainty === null || before.standardUncertainty === null) return { kind: 'withinNoise', percent };
  const [mine, theirs] = [now.standardUncertainty ** 2, Number(before.standardUncertainty) ** 2];
  const degreesOfFreedom = (mine + theirs) ** 2 / (mine ** 2 / now.degreesOfFreedom + theirs ** 2 / Number(before.degreesOfFreedom));
  const t = Math.abs(now.value - value) / Math.sqrt(mine + theirs);
  const p = 2 * (1 - tCdf(t, Math.min(1e6, degreesOfFreedom)));
  return { kind: p < SIGNIFICANCE ? 'changed' : 'withinNoise', percent };
}
