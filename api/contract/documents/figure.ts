import { z } from 'zod';
import { decimal, quantity, quantityName } from './published-fields.js';

export const tradeValueSchema = z
  .strictObject({
    unit: z.string().describe('Trade unit symbol'),
    value: decimal,
    low: decimal.nullable().describe('Lower end of the 95 % interval'),
    high: decimal.nullable().describe('Upper end of the 95 % interval'),
  })
  .describe('The same figure in the unit that the trade uses');

export const figureSchema = z
  .strictObject({
    quantity,
    name: quantityName,
    unit: z.string().describe('SI unit symbol'),
    value: decimal,
    low: decimal.nullable().describe('Lower end of the 95 % interval; null when it cannot be stated'),
    high: decimal.nullable().describe('Upper end of the 95 % interval; null when it cannot be stated'),
    trade: tradeValueSchema.nullable(),
    specimens: z.int().describe('Valid specimens behind the figure'),
    submissions: z.int().describe('Accepted submissions behind the figure'),
    testers: z.int().describe('Testers behind the figure'),
    rigs: z.int().describe('Rigs behind the figure'),
    note: z.string().nullable().describe('What a reader must know about this figure'),
  })
  .describe('A published figure with its 95 % interval and the evidence behind it');

export type Figure = z.infer<typeof figureSchema>;
