import type { Category, CategoryDocument, EditionDocument, Figure } from '../../contract/documents/release-documents.js';
import type { Tables } from '../documents/bundle.js';
import { keyOf } from '../results/quantity.js';
import { integer, number, OF_VARIANT, optional, text, VARIANT } from './table.js';
import type { Table } from './table.js';

const PLACE = optional(integer('place', 'Standard competition place; empty for a row that is not placed'));
const PLACE_IF_INCLUDED = optional(integer('place if included', 'Place that an excluded row would have had'));
const GROUP = optional(integer('group', 'Too-close-to-call group, 1 is the top group'));
const LOW_PLACE = optional(integer('place low', 'Simultaneous 95 % place interval, best end'));
const HIGH_PLACE = optional(integer('place high', 'Simultaneous 95 % place interval, worst end'));

/**
 * Who came where: overall, and in each category with the measured values.
 * @param figures of each variant, by its slug
 */
export const standingsTables = (divisions: readonly Tables[], figures: ReadonlyMap<string, readonly Figure[]>): Table[] => [
  overallTable(divisions.map(({ edition }) => edition)),
  resultsTable(
    divisions.flatMap(({ categories }) => categories),
    figures,
  ),
];

/** Column and cell that tell the division; none where there is one. */
const divisionColumn = (documents: readonly Pick<EditionDocument, 'division'>[]) =>
  documents.some(({ division }) => division) ? [text('division', 'What is compared: places never run across divisions')] : [];
const divisionCell = ({ division }: Pick<EditionDocument, 'division'>) => (division ? { division: division.slug } : {});

const overallTable = (editions: readonly EditionDocument[]): Table => {
  const codes = [...new Set(editions.flatMap(({ scheme }) => scheme.categories.map(({ code }) => code)))];
  return {
    name: 'standings',
    title: 'Overall standings',
    columns: [
      ...divisionColumn(editions),
      PLACE,
      PLACE_IF_INCLUDED,
      GROUP,
      LOW_PLACE,
      HIGH_PLACE,
      VARIANT,
      number('score', 'Score under the scheme'),
      ...codes.map((code) => optional(integer(`place in ${code}`, 'Place counted in the score'))),
    ],
    primaryKey: ['variant'],
    foreignKeys: [OF_VARIANT],
    rows: editions.flatMap((edition) =>
      edition.overall.map(({ place, placeIfIncluded, group, placeInterval, variant, score, categoryPlaces }) => ({
        ...divisionCell(edition),
        place,
        'place if included': placeIfIncluded,
        group,
        'place low': placeInterval?.low ?? null,
        'place high': placeInterval?.high ?? null,
        variant: variant.slug,
        score,
        ...Object.fromEntries(codes.map((code) => [`place in ${code}`, categoryPlaces[code] ?? null])),
      })),
    ),
  };
};

const RESULT_COLUMNS = [
  text('category', 'Category of the scheme'),
  VARIANT,
  PLACE,
  PLACE_IF_INCLUDED,
  GROUP,
  LOW_PLACE,
  HIGH_PLACE,
  number('value', 'Measured value'),
  optional(number('low 95 %', 'Lower end of the 95 % interval')),
  optional(number('high 95 %', 'Upper end of the 95 % interval')),
  text('unit', 'Unit of the value and its interval'),
  integer('specimens', 'Specimens that count'),
  integer('submissions', 'Submissions'),
  integer('testers', 'Testers'),
  integer('rigs', 'Rigs'),
  optional(number('diameter', 'Measured diameter of the variant, the same in each of its rows; empty where none was measured')),
  optional(number('diameter low 95 %', 'Lower end of the 95 % interval of the diameter')),
  optional(number('diameter high 95 %', 'Upper end of the 95 % interval of the diameter')),
  optional(text('diameter unit', 'Unit of the diameter and its interval')),
];

const resultsTable = (categories: readonly CategoryDocument[], figures: ReadonlyMap<string, readonly Figure[]>): Table => ({
  name: 'results',
  title: 'Results and places by category',
  columns: [...divisionColumn(categories), ...RESULT_COLUMNS],
  primaryKey: ['category', 'variant'],
  foreignKeys: [OF_VARIANT],
  rows: categories.flatMap(({ division, category, rows }) =>
    rows.map(({ variant, place, placeIfIncluded, group, placeInterval, figure }) => ({
      ...divisionCell({ division }),
      category: category.code,
      variant: variant.slug,
      place,
      'place if included': placeIfIncluded,
      group,
      'place low': placeInterval?.low ?? null,
      'place high': placeInterval?.high ?? null,
      value: figure.value,
      'low 95 %': figure.low,
      'high 95 %': figure.high,
      unit: figure.unit,
      specimens: figure.specimens,
      submissions: figure.submissions,
      testers: figure.testers,
      rigs: figure.rigs,
      ...diameterCells(category, figures.get(variant.slug) ?? []),
    })),
  ),
});

/** The diameter that a stress was taken over; of other categories the first that the edition measured. */
function diameterCells({ section }: Category, figures: readonly Figure[]): Table['rows'][number] {
  const own = section && keyOf({ quantity: 'diameter', ...section, section: null });
  const diameter = figures.find(({ quantity }) => (own ? quantity === own : quantity.startsWith('diameter/')));
  return {
    diameter: diameter?.value ?? null,
    'diameter low 95 %': diameter?.low ?? null,
    'diameter high 95 %': diameter?.high ?? null,
    'diameter unit': diameter?.unit ?? null,
  };
}
