import { z } from 'zod';

const schemaAddressSchema = z
  .strictObject({
    name: z.string().describe('What the document is called'),
    version: z.int().describe('Version of the schema; raised when a field goes or means something else'),
    address: z.string().describe('Where the schema stands for ever'),
  })
  .describe('A schema and its address');

export const schemasResponse = z
  .strictObject({
    items: z.array(schemaAddressSchema).describe('By document'),
    nextCursor: z.string().nullable().describe('Always null'),
  })
  .describe('Schemas of all public documents');

export const jsonSchemaSchema = z
  .looseObject({ title: z.string().describe('What the document is called') })
  .describe('A JSON Schema (2020-12); its $id is its own address, its $comment says what may grow');

export const schemaParameters = { version: z.coerce.number().int().min(1), name: z.string().max(60) };
