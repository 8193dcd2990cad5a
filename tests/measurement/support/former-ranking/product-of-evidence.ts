import { MeasurementError } from '../../../../api/measurement/errors.js';
import { requireFinite } from '../../../../api/measurement/figures/require-positive.js';
import type { Evidence } from './evidence.js';

/**
 * Evidence of a product of powers, for example a stress from a force and a diameter.
 *
 * Formula: x = c·Πxᵖ; own (u/x)² = Σp²(u/x)²; sensitivities times p; ν by Welch–Satterthwaite; without a party: the product of what is left
 * @param factors evidence of each factor, values above 0 [each its unit], with its power [1]
 * @param constant c above 0
 * @returns evidence of the product
 * @throws MeasurementError 'ranking/bad-evidence' for a factor or constant that is not above 0; 'measurement/not-a-number' for a power
 * @see JCGM-100 5.1.6
 * @example productOfEvidence([{ evidence: force, power: 1 }, { evidence: diameter, power: -2 }], 4 / Math.PI)
 */
export function productOfEvidence(factors: readonly { readonly evidence: Evidence; readonly power: number }[], constant = 1): Evidence {
  const bad = [constant, ...factors.map(({ evidence }) => evidence.value)].find((value) => !(value > 0 && value < Infinity));
  if (bad !== undefined) {
    throw new MeasurementError(
      'ranking/bad-evidence',
      `productOfEvidence: found ${bad}, expected factors and constant above 0. Leave the entry out of the category.`,
    );
  }
  factors.forEach(({ power }) => requireFinite(power, 'power', 'productOfEvidence'));
  const product = (valueOf: (evidence: Evidence) => number): number =>
    factors.reduce((result, { evidence, power }) => result * valueOf(evidence) ** power, constant);
  const value = product((evidence) => evidence.value);
  const parts = factors.map(({ evidence, power }) => ((power * evidence.standardUncertainty) / evidence.value) ** 2);
  const total = parts.reduce((sum, part) => sum + part, 0);
  const welch = parts.reduce((sum, part, i) => sum + part ** 2 / factors[i]!.evidence.degreesOfFreedom, 0);
  const parties = [...new Set(factors.flatMap(({ evidence }) => Object.keys(evidence.without)))].sort();
  const leftOf = (evidence: Evidence, party: string): number | null => {
    const left = evidence.without[party];
    return left === undefined ? evidence.value : left;
  };
  return {
    value,
    standardUncertainty: value * Math.sqrt(total),
    degreesOfFreedom: welch === 0 ? Infinity : total ** 2 / welch,
    shared: factors.flatMap(({ evidence, power }) =>
      evidence.shared.map(({ source, sensitivity }) => ({ source, sensitivity: power * sensitivity })),
    ),
    without: Object.fromEntries(
      parties.map((party) => [
        party,
        factors.some(({ evidence }) => leftOf(evidence, party) === null) ? null : product((evidence) => leftOf(evidence, party)!),
      ]),
    ),
  };
}
