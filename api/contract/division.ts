/** Divisions: what may be compared within an edition. Each has its own scheme, entries, tables and score; an entry is in exactly one. */
import { z } from 'zod';
import { CONSTRUCTIONS } from './constructions.js';

/** Last parts of addresses of an edition, in the API or on the site, that are something else than a division. */
export const TAKEN_BY_ADDRESSES = [
  'all',
  'amendments',
  'assignments',
  'board',
  'catalogue',
  'claims',
  'closure',
  'divisions',
  'edition',
  'entries',
  'errata',
  'exclusions',
  'booklet',
  'house',
  'labels',
  'opening',
  'map',
  'overall',
  'overrulings',
  'pairs',
  'plan',
  'planning',
  'previews',
  'records',
  'releases',
  'remarks',
  'retest-results',
  'retests',
  'revisions',
  'rigs',
  'round-robins',
  'standings',
  'variants',
  'withdrawn',
] as const;

/** Whether a name would hide, or be hidden by, another address of an edition. */
export const isTaken = (slug: string): boolean => TAKEN_BY_ADDRESSES.some((taken) => taken === slug);

/** What a division takes. Pure data: an entry belongs to the division whose rule fits its line. */
export const divisionRuleSchema = z
  .strictObject({
    materials: z
      .array(z.string().trim().min(1).max(60))
      .max(50)
      .describe('Materials that it takes, as the catalogue spells them; empty for any'),
    constructions: z.array(z.enum(CONSTRUCTIONS)).max(20).describe('Constructions that it takes; empty for any'),
  })
  .describe('Which lines a division takes: those of one of its materials and one of its constructions');

export type DivisionRule = z.infer<typeof divisionRuleSchema>;

interface Made {
  readonly material: string;
  readonly construction: string;
}

/** Whether a division takes a line. Case counts for nothing: a material is written by hand. */
export const takes = (
  { materials, constructions }: { readonly materials: readonly string[]; readonly constructions: readonly string[] },
  { material, construction }: Made,
): boolean =>
  (materials.length === 0 || materials.some((one) => one.toLowerCase() === material.toLowerCase())) &&
  (constructions.length === 0 || constructions.some((one) => one === construction));
