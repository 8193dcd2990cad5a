/** An edition among its predecessors, as far as records and runs look at it. */
import { roundHalfEven } from '../../measurement/units/round-half-even.js';
import type { ReleaseContext } from '../documents/release-context.js';

export interface SeasonOf {
  readonly edition: string;
  /** Table ("overall" or the code of a category) → who was placed where. */
  readonly places: ReadonlyMap<string, readonly { readonly variant: string; readonly place: number | null }[]>;
  /** Code of a category → version of its method. */
  readonly methodVersions: ReadonlyMap<string, number>;
  /** Value of a variant in a quantity by its key, unrounded; undefined where none is published. */
  readonly valueOf: (variant: string, quantity: string) => number | undefined;
}

/** The editions before, oldest first, and this one last. */
export function seasonsOf(context: ReleaseContext): SeasonOf[] {
  const earlier = context.earlier.map((one): SeasonOf => {
    const values = new Map(one.results.map(({ variant, quantity, value }) => [`${variant} ${quantity}`, Number(value)]));
    return {
      edition: one.edition,
      places: new Map([['overall', one.overall], ...one.categories.map(({ code, rows }) => [code, rows] as const)]),
      methodVersions: new Map(one.categories.map(({ code, methodVersion }) => [code, methodVersion])),
      valueOf: (variant, quantity) => values.get(`${variant} ${quantity}`),
    };
  });
  return [...earlier.reverse(), thisSeason(context)];
}

function thisSeason({ computed: { edition, standings, results } }: ReleaseContext): SeasonOf {
  const rowsOf = (rows: readonly { id: string; place: number | null }[]) => rows.map(({ id, place }) => ({ variant: id, place }));
  return {
    edition: edition.slug,
    places: new Map([
      ['overall', rowsOf(standings.overall)],
      ...Object.entries(standings.categories).map(([code, rows]) => [code, rowsOf(rows)] as const),
    ]),
    methodVersions: new Map(
      edition.scheme.rules.categories.map(({ code, method }) => [code, edition.methods.find(({ slug }) => slug === method)?.number ?? 0]),
    ),
    valueOf: (variant, quantity) => results.get(variant)?.get(quantity)?.estimate.value,
  };
}

/** A value as a category prints it. */
export const printed = (value: number, places: number): string => roundHalfEven(value, places);
