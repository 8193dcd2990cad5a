import type { VariantDocument } from '../../contract/documents/release-documents.js';
import type { SpreadsEvidence } from '../evidence/effects-evidence.js';
import type { EarlierEdition } from '../release-inputs.js';
import { tablesIn } from './bundle.js';
import type { Bundle } from './bundle.js';
import { keyNow } from './format-1.js';
import { placesIn } from './places-in.js';

/** Path in a release; releases from before there was such a file have none. */
export const RETOLD = 'retold.json';

/** What later editions tell again of a release: they read this instead of all of it. */
export interface Retold extends Omit<EarlierEdition, 'edition' | 'revision' | 'digest'> {
  readonly previousEdition: string | null;
}

/** @param spreads what a release told of them; its bundle and its documents do not */
export const retoldOf = (
  outputs: Bundle['outputs'],
  variants: readonly Pick<VariantDocument, 'variant' | 'history'>[],
  spreads?: SpreadsEvidence,
): Retold => ({
  ...placesIn(outputs),
  previousEdition: tablesIn(outputs)[0]?.edition.previousEdition ?? null,
  history: variants.flatMap(({ variant, history }) => history.slice(-1).map((point) => ({ variant: variant.slug, point }))),
  results: outputs.results.map(({ quantity, ...result }) => ({ ...result, quantity: keyNow(quantity) })),
  ...(spreads ? { spreads } : {}),
});

/** Editions whose spreads are told to a later one: rigs, testers and ways of sampling change with the years. */
const SPREADS_OF = 3;

/**
 * As it enters a later release.
 * @param age how many editions lie between; of others than the one before records take the values, and nothing takes how sure they were
 */
export function earlierFrom(
  { previousEdition: _, results, spreads, ...told }: Retold,
  { edition, revision, digest }: Pick<EarlierEdition, 'edition' | 'revision' | 'digest'>,
  age: number,
): EarlierEdition {
  const values = () =>
    results.map(({ variant, quantity, value }) => ({ variant, quantity, value, standardUncertainty: null, degreesOfFreedom: null }));
  return {
    edition,
    revision,
    digest,
    ...told,
    results: age === 0 ? results : values(),
    ...(spreads && age < SPREADS_OF ? { spreads } : {}),
  };
}
