import type { FittedSeries } from '../bench-model/fit-series.js';
import { pairMoments } from '../bench-model/pair-moments.js';
import { tailOf } from '../bench-model/tail.js';
import { MeasurementError } from '../errors.js';
import type { ModelEvidence, ModelSeries } from './model-evidence.js';

/** n·n tails of relative errors: of differences at i·n + j, of the values themselves at i·n + i. */
export interface ProductTails {
  readonly standardUncertainty: Float64Array;
  readonly degreesOfFreedom: Float64Array;
}

/** The power with which each series enters, the same for all entries of a category. */
export interface Part {
  readonly fit: FittedSeries;
  readonly key: string;
  readonly power: number;
  readonly positions: readonly number[];
}

/**
 * Tails of products of powers, each value's and each difference's: series are independent of one another, so their cumulants add.
 *
 * Formula: of the logarithms: σ² = Σp²σ_p², κ₄ = Σp⁴κ₄_p, Σu⁴/ν likewise; then Student's t with that variance and kurtosis
 * @param evidence of n entries, all made of the same series with the same powers
 * @param series fitted series by key
 * @returns relative standard uncertainties [1] and degrees of freedom
 * @throws MeasurementError as `partsOf`
 * @see JCGM-100 5.1.6
 * @example productTails([evidenceOfModel, evidenceOfModel], { force: fit }).standardUncertainty.length // 4
 */
export function productTails(evidence: readonly ModelEvidence[], series: ModelSeries): ProductTails {
  const n = evidence.length;
  const [variance, fourth, welch] = [new Float64Array(n * n), new Float64Array(n * n), new Float64Array(n * n)];
  for (const { fit, power, positions } of partsOf(evidence, series)) {
    const moments = pairMoments(fit, positions);
    for (let at = 0; at < n * n; at++) {
      variance[at] = variance[at]! + power ** 2 * moments.variance[at]!;
      fourth[at] = fourth[at]! + power ** 4 * moments.fourth[at]!;
      welch[at] = welch[at]! + power ** 4 * moments.welch[at]!;
    }
  }
  const degreesOfFreedom = new Float64Array(n * n);
  const standardUncertainty = variance.map((one, at) => {
    const tail = tailOf(one, fourth[at]!, welch[at]!);
    degreesOfFreedom[at] = tail.degreesOfFreedom;
    return tail.standardUncertainty;
  });
  return { standardUncertainty, degreesOfFreedom };
}

/**
 * Draws of products of powers from the draws of their series.
 *
 * Formula: e = Σp·e_p, to first order of the logarithm
 * @param evidence of n entries, all made of the same series with the same powers
 * @param series fitted series by key
 * @param drawn B·m relative deviations of each series, by key [1]
 * @param draws B [1]
 * @returns B·n deviations of the logarithms, draw by draw [1]
 * @throws MeasurementError as `partsOf`
 * @see JCGM-101
 * @example productErrors([evidenceOfModel], { force: fit }, drawnSeries, drawCount).length // 10
 */
export function productErrors(
  evidence: readonly ModelEvidence[],
  series: ModelSeries,
  drawn: ReadonlyMap<string, Float32Array>,
  draws: number,
): Float64Array {
  const n = evidence.length;
  const errors = new Float64Array(draws * n);
  for (const { key, power, positions, fit } of partsOf(evidence, series)) {
    const own = drawn.get(key)!;
    const m = fit.means.length;
    for (let draw = 0; draw < draws; draw++)
      for (let i = 0; i < n; i++) errors[draw * n + i] = errors[draw * n + i]! + power * own[draw * m + positions[i]!]!;
  }
  return errors;
}

/**
 * The series that a category is made of, each with its power and where its entries stand in it.
 *
 * Formula: none
 * @param evidence of n entries, all made of the same series with the same powers
 * @param series fitted series by key
 * @returns one part a series
 * @throws MeasurementError 'ranking/unknown-source' for a series or variant that was not fitted; 'ranking/bad-evidence' for entries made in different ways
 * @see JCGM-100 5.1.6
 * @example partsOf([evidenceOfModel], { force: fit }).map(({ power }) => power) // [1]
 */
export function partsOf(evidence: readonly ModelEvidence[], series: ModelSeries): Part[] {
  return (evidence[0]?.factors ?? []).map(({ series: key, power }, at) => {
    const fit = Object.hasOwn(series, key) ? series[key] : undefined;
    if (fit?.kind !== 'fitted') throw unknown(key, Object.keys(series));
    const known = new Map(fit.design.variants.map((variant, v) => [variant, v]));
    const positions = evidence.map(({ factors }) => {
      const own = factors[at];
      if (own?.series !== key || own.power !== power || factors.length !== evidence[0]!.factors.length) throw mixed(key);
      const position = known.get(own.variant);
      if (position === undefined) throw unknown(`${key} of ${own.variant}`, fit.design.variants);
      return position;
    });
    return { fit, key, power, positions };
  });
}

const unknown = (found: string, expected: readonly string[]): MeasurementError =>
  new MeasurementError(
    'ranking/unknown-source',
    `productTails: found "${found}", expected one of: ${expected.join(', ') || 'none'}. Fit that series first.`,
  );

const mixed = (key: string): MeasurementError =>
  new MeasurementError(
    'ranking/bad-evidence',
    `productTails: found entries that are not all made of ${key} with one power, expected one recipe for a category. Split the category.`,
  );
