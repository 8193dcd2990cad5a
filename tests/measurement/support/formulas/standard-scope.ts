import { MeasurementError } from '../../../../api/measurement/errors.js';

/** What is needed of a specimen to hold it against a standard's scope. */
export interface ScopedSpecimen {
  fibre: 'uhmwpe' | 'aramid' | 'nylon' | 'other';
  form: 'yarn' | 'netting-yarn' | 'braided-line';
  /** stretch between 0.05 and 1.0 cN/tex [%] */
  earlyStretchPercent?: number;
}

const SCOPES = {
  'ISO 2062:2009': (specimen: ScopedSpecimen): boolean =>
    specimen.form === 'yarn' && specimen.fibre !== 'uhmwpe' && specimen.fibre !== 'aramid',
  'ISO 1805:2006': (specimen: ScopedSpecimen): boolean => specimen.form === 'netting-yarn',
  'ASTM D2256': (specimen: ScopedSpecimen): boolean => specimen.form === 'yarn' && !((specimen.earlyStretchPercent ?? 0) > 5),
} as const;

export type ScopedStandard = keyof typeof SCOPES;

/**
 * Tells whether a result on a specimen may carry a standard's number. None of these names angling line:
 * a line's result follows a principle and carries no number.
 *
 * Formula: none, the scopes as their catalogue pages state them
 * @param standard number of the standard
 * @param specimen fibre, form and, where known, early stretch [%]
 * @returns true only inside the scope
 * @throws MeasurementError 'claims/unknown-standard' for a standard whose scope is not recorded here
 * @see COMMON-PRACTICE
 * @example mayCarryStandard('ISO 2062:2009', { fibre: 'uhmwpe', form: 'yarn' }) // false
 */
export function mayCarryStandard(standard: ScopedStandard, specimen: ScopedSpecimen): boolean {
  if (!Object.hasOwn(SCOPES, standard)) {
    throw new MeasurementError(
      'claims/unknown-standard',
      `mayCarryStandard: found "${standard}", expected one of ${Object.keys(SCOPES).join(', ')}. Name no standard whose scope is unknown.`,
    );
  }
  return SCOPES[standard](specimen);
}
