import { z } from 'zod';

/** What an open edition took besides, as its editor and its readers see it. */
export const amendmentSchema = z
  .strictObject({
    on: z.iso.date().describe('When'),
    reason: z.string().describe('Why'),
    variants: z.array(z.string()).describe('Further entries, by slug'),
    methods: z.array(z.strictObject({ slug: z.string(), number: z.int() })).describe('Method versions pinned besides'),
    closesOn: z
      .strictObject({ before: z.iso.date(), after: z.iso.date() })
      .nullable()
      .describe('The closing day that was planned, and the later one'),
  })
  .describe('What an open edition took besides, with the reason');
export type Amendment = z.infer<typeof amendmentSchema>;
