import type { z } from 'zod';
import type { methodVersionRequest } from '../../../api/contract/endpoints/methods.js';

/** A written protocol with its dated wordings, as an editor enters them. */
export interface DemoMethod {
  readonly slug: string;
  readonly name: string;
  readonly versions: readonly z.input<typeof methodVersionRequest>[];
}
