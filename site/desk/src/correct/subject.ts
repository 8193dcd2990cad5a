import type { z } from 'zod';
import type { Former } from '../../../../api/contract/former.js';
import type { FieldOptions } from '../parts/field-options.js';

/** A row of the catalogue or an instrument, as somebody corrects it. */
export interface Subject {
  readonly title: string;
  readonly told: string;
  /** Number that a correction carries, as it was seen. */
  readonly version: number;
  readonly former: Former;
  readonly corrections: readonly Correction[];
  readonly retirement: Retirement | null;
}

export interface Correction {
  readonly heading: string;
  readonly schema: z.ZodType<object>;
  readonly fields: readonly FieldOptions[];
  /** Whether fields that were left as they are stay out of the request. */
  readonly isPartial: boolean;
  readonly method: 'PATCH' | 'PUT';
  readonly path: string;
}

export interface Retirement {
  readonly path: string;
  readonly since: { readonly on: string; readonly reason: string } | null;
}
