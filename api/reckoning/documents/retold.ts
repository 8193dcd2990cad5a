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
export const retoldOf = (outputs: Bundle['outputs'], variants: readonly VariantDocument[], spreads?: SpreadsEvidence): Retold => ({
  ...placesIn(outputs),
  previousEdition: tablesIn(outputs)[0]?.edition.previousEdition ?? null,
  history: variants.flatMap(({ variant, history }) => history.slice(-1).map((point) => ({ variant: variant.slug, point }))),
  results: outputs.results.map(({ quantity, ...result }) => ({ ...result, quantity: keyNow(quantity) })),
  ...(spreads ? { spreads } : {}),
});

/**
 * As it enters a later release.
 * @param isNewest whether it is the edition before: of older ones records take the values, and nothing takes how sure they were or what they found of spreads
 */
export function earlierFrom(
  { previousEdition: _, results, spreads, ...told }: Retold,
  { edition, revision, digest }: Pick<EarlierEdition, 'edition' | 'revision' | 'digest'>,
  isNewest: boolean,
): EarlierEdition {
  const values = () =>
    results.map(({ variant, quantity, value }) => ({ variant, quantity, value, standardUncertainty: null, degreesOfFreedom: null }));
  const heading = { edition, revision, digest, ...told };
  return isNewest ? { ...heading, results, ...(spreads ? { spreads } : {}) } : { ...heading, results: values() };
}
