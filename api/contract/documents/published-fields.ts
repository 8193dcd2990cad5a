/** What every document of a release is made of. Every number that is published is a decimal string at stated places. */
import { z } from 'zod';

/** Of the documents and the inputs that they are computed from; raised when a program of before could not read them. */
export const FORMAT_VERSION = 3;

export const formatVersion = z
  .literal([1, 2, FORMAT_VERSION])
  .describe(
    'Version of this document format; since 2 methods state their series and quantities are named by them, since 3 an edition may have divisions',
  );

export const decimal = z
  .string()
  .regex(/^-?\d+(\.\d+)?$/)
  .describe('A decimal number as text, rounded half-even to the places its method or scheme states');

export const slug = z
  .string()
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)
  .describe('Readable identifier; never changes');

export const quantity = z
  .string()
  .describe('What was measured, as a code: the quantity, its method and series, e.g. retention/fg-knot/knotted. A fixed name in format 1');

export const quantityName = z.string().optional().describe('The same in words, e.g. "Knot retention, FG"; not told by format 1');
export const date = z.iso.date().describe('Calendar date, ISO 8601');

/** A division by name. */
export const divisionNameSchema = z
  .strictObject({ slug, name: z.string().describe('Name of the division') })
  .describe(
    'The division of an edition that a document is of; none of one that is of the whole edition, or of an edition with one division',
  );

/** What every document of a release begins with. */
export const heading = {
  formatVersion,
  house: z.string().describe('Who publishes'),
  isDemo: z.boolean().describe('Whether the figures are invented for demonstration'),
  edition: z.strictObject({ slug, name: z.string().describe('Name'), openedOn: date, closedOn: date }).describe('The edition'),
  division: divisionNameSchema.optional(),
  revision: z.int().describe('Revision of the release'),
  publishedAt: z.iso.datetime().describe('When it was published, UTC'),
};
