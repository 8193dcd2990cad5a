import { z } from 'zod';

/** Readable identifier of what has a page or an address of its own. */
export const slug = z
  .string()
  .max(60)
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'Expected lower-case letters, digits and single hyphens, e.g. harbour-8')
  .describe('Readable identifier; never changes');
