import { z } from 'zod';
import { CELL_GROUPS } from '../cell-groups.js';
import { cellDivision } from '../documents/corrections.js';
import { figureSchema } from '../documents/figure.js';
import { slug } from '../slug.js';

const group = z.int().nullable().describe('Too-close-to-call group, 1 is the top group');
const previewRow = z.strictObject({ variant: slug, place: z.int().nullable(), score: z.string(), group });
const previewChange = z.strictObject({
  about: z.enum(CELL_GROUPS).describe('What the cell is about'),
  where: z.string().describe('Cell, as an erratum names it in expects: "overall, <variant>, place"'),
  division: cellDivision,
  before: z.string().nullable().describe('What an erratum expects there; null where there was no such cell'),
  after: z.string().nullable(),
});
const previewChanges = z.array(previewChange).describe('Cells that changed since, what readers care about first');
const previewTables = z.strictObject({
  overall: z.array(previewRow),
  categories: z.record(
    z.string(),
    z.array(
      z.strictObject({
        variant: slug,
        place: z.int().nullable(),
        value: z.string(),
        group,
        figure: figureSchema
          .pick({ name: true, unit: true, value: true, low: true, high: true })
          .nullable()
          .describe('As readers would have it, with the 95 % interval; null where nothing can be stated'),
      }),
    ),
  ),
  incomplete: z.array(z.strictObject({ variant: slug, missing: z.array(z.string()) })),
  excluded: z.array(slug),
});
export const previewResponse = z.strictObject({
  edition: slug,
  ...previewTables.shape,
  divisions: z
    .array(z.strictObject({ division: slug, ...previewTables.shape }))
    .optional()
    .describe('Standings of each division, those beside it then being empty; none of an edition with one'),
  since: z
    .strictObject({
      at: z.iso.datetime().describe('The look before'),
      changes: previewChanges,
    })
    .nullable()
    .describe('Against the look before; null for the first'),
  published: z
    .strictObject({ revision: z.int().describe('Revision that readers have'), changes: previewChanges })
    .nullable()
    .describe('Against what is published; null where nothing is'),
});

export const exclusionPreviewResponse = z.strictObject({
  edition: slug,
  variant: slug.describe('Entry that is supposed to be left out'),
  changes: z.array(previewChange).describe('Cells that readers would see otherwise, what they care about first'),
});
