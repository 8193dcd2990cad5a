import { z } from 'zod';

/** Answer of RFC 9457, with the faults of the input. */
export const problemSchema = z.strictObject({
  type: z.url().describe('Page that explains this kind of problem'),
  title: z.string().describe('The kind of problem'),
  status: z.int().describe('HTTP status'),
  code: z.string().describe('Stable code'),
  detail: z.string().describe('What happened here'),
  explains: z.string().describe('What this kind of problem means, and what to do'),
  instance: z.string().describe('Address that was asked'),
  errors: z
    .array(
      z.strictObject({
        pointer: z.string().describe('Place in the input (RFC 6901)'),
        detail: z.string().describe('What was found, what was expected, what to do'),
        code: z.string().describe('Stable code of the fault'),
        row: z.int().optional().describe('Line of the file, the header is 1'),
        column: z.string().optional().describe('Column of the file'),
        found: z.string().optional().describe('Text found'),
        expected: z.string().optional().describe('What was expected'),
      }),
    )
    .describe('Every fault of the input, at most 100'),
  furtherFaults: z.int().optional().describe('Faults beyond those that are listed'),
});
