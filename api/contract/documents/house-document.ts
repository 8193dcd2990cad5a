/** Who publishes, as a release tells it. */
import { z } from 'zod';
import { housePersonSchema } from '../endpoints/statements.js';
import { date, heading } from './published-fields.js';

export const houseDocumentSchema = z
  .strictObject({
    ...heading,
    statement: z.int().describe('Number of what the house said of itself, counted from 1'),
    statedOn: date.describe('Since when it says so'),
    contact: z.string().nullable().describe('How to reach the house'),
    people: z.array(housePersonSchema).describe('Who does what'),
    funding: z.string().nullable().describe('Who pays for it'),
    interests: z.string().nullable().describe('Ties to makers and sellers'),
    rightOfReply: z.string().nullable().describe('How a maker is heard'),
    licence: z.strictObject({ name: z.string().describe('SPDX name'), title: z.string(), path: z.string() }).describe('Of the data'),
  })
  .describe('Who publishes: contact, people, funding and interests, licence, right of reply');

export type HouseDocument = z.infer<typeof houseDocumentSchema>;
