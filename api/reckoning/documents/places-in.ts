import type { EarlierEdition } from '../release-inputs.js';
import type { Bundle, Tables } from './bundle.js';
import { keyNow } from './format-1.js';

type Places = Pick<EarlierEdition, 'overall' | 'categories'>;

/** Who came where in a release, as a later one tells it again: at the top where it had one division, else by division. */
export const placesIn = (outputs: Bundle['outputs']): Places & Pick<EarlierEdition, 'divisions'> =>
  'divisions' in outputs
    ? {
        overall: [],
        categories: [],
        divisions: outputs.divisions.flatMap((tables) => {
          const slug = tables.edition.division?.slug;
          return slug === undefined ? [] : [{ slug, ...placesOfTables(tables) }];
        }),
      }
    : placesOfTables(outputs);

const placesOfTables = ({ edition, categories }: Tables): Places => ({
  overall: placesOf(edition.overall),
  categories: categories.map(({ category: { code, quantity, methodVersion }, rows }) => ({
    code,
    quantity: keyNow(quantity),
    methodVersion,
    rows: placesOf(rows),
  })),
});

const placesOf = (rows: readonly { readonly variant: { readonly slug: string }; readonly place: number | null }[]) =>
  rows.map(({ variant, place }) => ({ variant: variant.slug, place }));
