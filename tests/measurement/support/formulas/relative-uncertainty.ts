import { MeasurementError } from '../../../../api/measurement/errors.js';
import { requireNotNegative } from '../../../../api/measurement/figures/require-positive.js';
import { compensatedSum } from '../../../../api/measurement/summary/compensated-sum.js';

/** One factor of a product of powers. */
export interface RelativeFactor {
  name: string;
  /** u/|x| of the factor */
  relativeUncertainty: number;
  exponent: number;
}

/**
 * Relative standard uncertainty of a product of powers.
 *
 * Formula: u_r² = Σ(p u_r,i)²
 * @param factors one or more, with u_r ≥ 0 [1] and finite exponent p [1]
 * @returns u_r of the product [1]
 * @throws MeasurementError 'uncertainty/no-components' for none; 'figures/negative' for u_r; 'measurement/not-a-number' for p
 * @see JCGM-100 5.1.6
 * @example combineRelative([{ name: 'm', relativeUncertainty: 0.03, exponent: 1 }, { name: 'V', relativeUncertainty: 0.02, exponent: 2 }]) // 0.05
 */
export function combineRelative(factors: readonly RelativeFactor[]): number {
  if (factors.length === 0) {
    throw new MeasurementError(
      'uncertainty/no-components',
      'combineRelative: found no factor, expected at least 1. List the factors of the product.',
    );
  }
  for (const { name, relativeUncertainty, exponent } of factors) {
    requireNotNegative(relativeUncertainty, `relativeUncertainty of ${name}`, 'combineRelative');
    if (!Number.isFinite(exponent)) {
      throw new MeasurementError(
        'measurement/not-a-number',
        `combineRelative: the exponent of ${name} is ${exponent}, expected a finite number.`,
      );
    }
  }
  return Math.sqrt(compensatedSum(factors.map(({ relativeUncertainty, exponent }) => (exponent * relativeUncertainty) ** 2)));
}

/**
 * Relative standard uncertainty of the apparent stress on a circular section.
 *
 * Formula: u_r²(σ) = u_r²(F) + 4 u_r²(d)
 * @param relativeForceUncertainty u_r(F) ≥ 0 [1]
 * @param relativeDiameterUncertainty u_r(d) ≥ 0 [1]
 * @returns u_r(σ) [1]
 * @throws MeasurementError 'figures/negative' for an argument below 0 or not finite
 * @see JCGM-100 5.1.6
 * @example circleStressRelativeUncertainty(0.03, 0.02) // 0.05
 */
export function circleStressRelativeUncertainty(relativeForceUncertainty: number, relativeDiameterUncertainty: number): number {
  return combineRelative([
    { name: 'force', relativeUncertainty: relativeForceUncertainty, exponent: 1 },
    { name: 'diameter', relativeUncertainty: relativeDiameterUncertainty, exponent: -2 },
  ]);
}
