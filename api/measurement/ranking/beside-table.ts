import { tableMoments } from '../bench-model/table-moments.js';
import type { Tail } from '../bench-model/tail.js';
import { tailOf } from '../bench-model/tail.js';
import type { ModelEvidence, ModelSeries } from './model-evidence.js';
import { partsOf } from './product-tails.js';

/**
 * How well each value of a table is known beside the others: what rigs, testers and certificates add to all of them alike is left out.
 *
 * Formula: of the logarithms less their mean over the table: σ² = Σp²σ_p², κ₄ = Σp⁴κ₄_p, Σu⁴/ν likewise; then Student's t with that variance and kurtosis
 * @param evidence of n entries, all made of the same series with the same powers
 * @param series fitted series by key
 * @returns relative standard uncertainty [1] and degrees of freedom of each
 * @throws MeasurementError as `partsOf`
 * @see JCGM-100 5.1.6
 * @example besideTable([evidenceOfModel], { force: fit }).length // 1
 */
export function besideTable(evidence: readonly ModelEvidence[], series: ModelSeries): Tail[] {
  const parts = partsOf(evidence, series).map(({ fit, power, positions }) => ({ power, ...tableMoments(fit, positions) }));
  const sum = (of: 'variance' | 'fourth' | 'welch', order: number, i: number): number =>
    parts.reduce((all, part) => all + part.power ** order * part[of][i]!, 0);
  return evidence.map((_, i) => tailOf(sum('variance', 2, i), sum('fourth', 4, i), sum('welch', 4, i)));
}
