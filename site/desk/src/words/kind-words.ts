/** Closed lists of the contract, in words. */
import type { ClaimBasis, ClaimedQuantity } from '../../../../api/contract/claims.js';
import type { Construction } from '../../../../api/contract/constructions.js';
import type { InstrumentKind } from '../../../../api/contract/instrument-kinds.js';
import type { SpoolSource } from '../../../../api/contract/spool-sources.js';

export const CONSTRUCTION_WORDS: Readonly<Record<Construction, string>> = {
  braided: 'braided',
  fused: 'fused',
  hollowCore: 'braided, with a hollow core',
  twisted: 'twisted',
  monofilament: 'one filament',
};
export const SOURCE_WORDS: Readonly<Record<SpoolSource, string>> = {
  bought: 'bought',
  makerSupplied: 'supplied by the maker',
  lent: 'lent',
};
export const BASIS_WORDS: Readonly<Record<ClaimBasis, string>> = {
  average: 'an average',
  minimum: 'a minimum',
  maximum: 'a maximum',
  class: 'the upper bound of a class',
  notStated: 'not said',
};
export const CLAIMED_WORDS: Readonly<Record<ClaimedQuantity, string>> = {
  breakingForce: 'breaking force',
  diameter: 'diameter',
  linearDensity: 'linear density',
  peNumber: 'the PE number',
};
export const KIND_WORDS: Readonly<Record<InstrumentKind, string>> = {
  forceGauge: 'force gauge',
  loadFrame: 'load frame',
  micrometer: 'micrometer',
  opticalGauge: 'optical gauge',
  balance: 'balance',
  lengthMeasure: 'length measure',
  abrader: 'abrader',
};

/** What a choice sends → what is read. */
export const optionsOf = <Value extends string>(
  values: readonly Value[],
  words: Readonly<Record<Value, string>>,
): (readonly [Value, string])[] => values.map((value) => [value, words[value]] as const);
