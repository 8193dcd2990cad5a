/** A row that is out of use: it stays readable, and what was done with it before stands. */
import { z } from 'zod';

export const retiredSchema = z
  .strictObject({ on: z.iso.date().describe('Since when'), reason: z.string().describe('Why') })
  .nullable()
  .describe('Since when and why nothing new is put under it; it stays readable');

/** What the database holds of it. */
export interface Retirement {
  readonly retiredOn: Date | null;
  readonly retiredReason: string | null;
}

export const toRetired = ({ retiredOn, retiredReason }: Retirement): z.infer<typeof retiredSchema> =>
  retiredOn && { on: retiredOn.toISOString().slice(0, 10), reason: retiredReason ?? '' };
