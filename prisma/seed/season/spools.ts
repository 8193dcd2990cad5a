import type { DemoVariant } from '../house/variants.js';
import { Draws } from '../model/draws.js';
import { daysAfter } from './seasons.js';
import type { Season } from './seasons.js';
import { MISLABELLED, SUPPLIED } from './story.js';

/** One spool as the house obtained it. */
export interface DemoSpool {
  /** Names the spool within the demo; the blind code is drawn by the program. */
  readonly key: string;
  /** What the box says. */
  readonly variant: string;
  /** What is on it: another variant where the box is wrong. */
  readonly contents: DemoVariant;
  readonly source: 'bought' | 'makerSupplied';
  readonly obtainedOn: string;
  readonly place: string;
  readonly lot: string;
  readonly lengthM: string;
  /** Strength of this lot against the usual of the variant [1]. */
  readonly lotEffect: number;
}

const SHOPS = ['Chandlery on the north quay', 'Post order', 'Tackle counter in the upper town', 'Saturday market', 'Shop at the ferry'];
const LENGTHS_M = ['150', '150', '200', '300'];

/** Spools of an entry: one bought, and where the story needs it a second. */
export function spoolsOf(seed: number, season: Season, entry: DemoVariant, variants: readonly DemoVariant[]): DemoSpool[] {
  const spool = (letter: string, more: Partial<DemoSpool> = {}): DemoSpool => {
    const key = spoolKey(season, entry, letter);
    const draws = new Draws(seed, 'spool', key);
    return {
      key,
      variant: entry.slug,
      contents: entry,
      source: 'bought',
      obtainedOn: daysAfter(season.opensOn, -20 + draws.below(18)),
      place: SHOPS[draws.below(SHOPS.length)] ?? 'Post order',
      lot: `${entry.maker.name.slice(0, 2).toUpperCase()}${1000 + draws.below(9000)}`,
      lengthM: LENGTHS_M[draws.below(LENGTHS_M.length)] ?? '150',
      lotEffect: draws.normal(1, 0.006),
      ...more,
    };
  };
  if (MISLABELLED.season === season.slug && MISLABELLED.label === entry.slug) {
    const contents = variants.find(({ slug }) => slug === MISLABELLED.contents);
    return contents ? [spool('a'), spool('b', { contents })] : [spool('a')];
  }
  if (SUPPLIED.season === season.slug && SUPPLIED.variant === entry.slug) {
    return [spool('a'), spool('b', { source: 'makerSupplied', place: `Sent by ${entry.maker.name}`, lotEffect: 1.03 })];
  }
  return [spool('a')];
}

export const spoolKey = (season: Season, { slug }: { readonly slug: string }, letter: string): string => `${season.slug}/${slug}/${letter}`;
