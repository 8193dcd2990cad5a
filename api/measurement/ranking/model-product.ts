import { MeasurementError } from '../errors.js';
import { requireFinite } from '../figures/require-positive.js';
import type { ModelEvidence } from './model-evidence.js';

/**
 * Evidence of a product of powers, for example a stress from a force and a diameter.
 *
 * Formula: x = c·Πxᵖ; powers of the factors times p; without a party: the product of what is left
 * @param factors evidence of each factor, values above 0 [each its unit], with its power [1]
 * @param constant c above 0
 * @returns evidence of the product
 * @throws MeasurementError 'ranking/bad-evidence' for a factor or constant that is not above 0; 'measurement/not-a-number' for a power
 * @see JCGM-100 5.1.6
 * @example modelProduct([{ evidence: evidenceOfModel, power: 2 }]).factors[0]?.power // 2
 */
export function modelProduct(factors: readonly { readonly evidence: ModelEvidence; readonly power: number }[], constant = 1): ModelEvidence {
  const bad = [constant, ...factors.map(({ evidence }) => evidence.value)].find((value) => !(value > 0 && value < Infinity));
  if (bad !== undefined) {
    throw new MeasurementError(
      'ranking/bad-evidence',
      `modelProduct: found ${bad}, expected factors and constant above 0. Leave the entry out of the category.`,
    );
  }
  factors.forEach(({ power }) => requireFinite(power, 'power', 'modelProduct'));
  const product = (valueOf: (evidence: ModelEvidence) => number): number =>
    factors.reduce((result, { evidence, power }) => result * valueOf(evidence) ** power, constant);
  const parties = [...new Set(factors.flatMap(({ evidence }) => Object.keys(evidence.without)))].sort();
  const leftOf = ({ value, without }: ModelEvidence, party: string): number | null => {
    const left = without[party];
    return left === undefined ? value : left;
  };
  return {
    value: product(({ value }) => value),
    factors: factors.flatMap(({ evidence, power }) => evidence.factors.map((factor) => ({ ...factor, power: power * factor.power }))),
    without: Object.fromEntries(
      parties.map((party) => [
        party,
        factors.some(({ evidence }) => leftOf(evidence, party) === null) ? null : product((evidence) => leftOf(evidence, party)!),
      ]),
    ),
  };
}
