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

/** What is measured with an instrument after it was retired. Days as ISO 8601 texts. */
export const retiredFault = (code: string, benchDay: string, retired: z.infer<typeof retiredSchema>, pointer: string) =>
  retired === null || benchDay <= retired.on
    ? []
    : [
        {
          pointer,
          code: 'retired',
          detail: `${code} is out of use since ${retired.on}; found a bench day of ${benchDay}. Name the instrument that was used, correct the day, or ask an editor to take ${code} into use again.`,
        },
      ];
