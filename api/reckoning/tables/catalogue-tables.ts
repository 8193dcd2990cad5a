import type { VariantDocument } from '../../contract/documents/release-documents.js';
import { integer, number, OF_VARIANT, optional, text, VARIANT } from './table.js';
import type { Table } from './table.js';

/** What was entered: variants by name, and what their labels claim. */
export const catalogueTables = (variants: readonly VariantDocument[]): Table[] => [variantsTable(variants), claimsTable(variants)];

const variantsTable = (variants: readonly VariantDocument[]): Table => ({
  name: 'variants',
  title: 'Variants of the edition',
  columns: [
    VARIANT,
    text('maker', 'Maker'),
    text('line', 'Line'),
    text('size', 'Size as on the label'),
    text('colour', 'Colour as on the label'),
    text('material', 'Material'),
    text('construction', 'How the line is made'),
    optional(integer('carriers', 'Ends braided')),
    optional(number('pe number', 'PE number on the label')),
    text('outcome', 'Placed, incomplete or excluded in this edition'),
  ],
  primaryKey: ['variant'],
  foreignKeys: [],
  rows: variants.map(({ variant: { slug, maker, line, size, colour, material, construction, carriers, peNumber }, outcome }) => ({
    variant: slug,
    maker: maker.name,
    line: line.name,
    size,
    colour,
    material,
    construction,
    carriers,
    'pe number': peNumber,
    outcome,
  })),
});

const claimsTable = (variants: readonly VariantDocument[]): Table => ({
  name: 'claims',
  title: 'What labels claim, beside what was measured',
  columns: [
    VARIANT,
    text('quantity', 'What is claimed'),
    text('basis', 'What the label says that the number is: average, minimum, maximum, class, or not stated'),
    text('printed', 'Number as printed'),
    text('printed unit', 'Unit as printed'),
    number('claimed', 'The claim in the unit of the column after it'),
    text('unit', 'Unit of claimed and measured'),
    optional(number('measured', 'Measured value')),
    optional({ ...number('measured to claimed', 'Measured over claimed'), unit: '%' }),
    optional(text('decision', 'Decision after JCGM 106')),
  ],
  primaryKey: ['variant', 'quantity'],
  foreignKeys: [OF_VARIANT],
  rows: variants.flatMap(({ variant, claims }) =>
    claims.map(({ quantity, basis, printed, value, unit, measured, ratioPercent, decision }) => ({
      variant: variant.slug,
      quantity,
      basis,
      printed: printed.text,
      'printed unit': printed.unit,
      claimed: value,
      unit,
      measured: measured?.value ?? null,
      'measured to claimed': ratioPercent,
      decision,
    })),
  ),
});
