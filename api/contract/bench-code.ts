import { z } from 'zod';

/** Code of an instrument or a control line: one rule wherever one is given. */
export const benchCode = z
  .string()
  .regex(/^[A-Za-z0-9][A-Za-z0-9-]{0,23}$/, 'Expected up to 24 letters, digits and hyphens, the first no hyphen, e.g. R1 or gauge-1')
  .describe('Short bench code; never changes');
