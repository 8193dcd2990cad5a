import { falseDiscoveryAdjusted } from '../comparison/false-discovery.js';
import { tCdf } from '../distributions/t-distribution.js';
import type { ModelEvidence, ModelSeries } from './model-evidence.js';
import { median } from '../summary/median.js';
import { productTails } from './product-tails.js';
import type { ProductTails } from './product-tails.js';

/** Values of one category in one edition, by entry. */
export interface EditionValues {
  readonly series: ModelSeries;
  readonly evidence: ReadonlyMap<string, ModelEvidence>;
}

/** How a value changed against the edition before. */
export interface ValueChange {
  readonly id: string;
  /** now over before, less 1 [1] */
  readonly relativeChange: number;
  /** the same, less what the whole table moved by: rigs and testers of two years differ, and that moves every value alike [1] */
  readonly beyondTable: number;
  /** of what is beyond the table [1] */
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
  /** adjusted over the table: the share of noise among changes named up to this one */
  readonly adjustedProbability: number;
  readonly isChange: boolean;
}

/** Share of noise among the changes that a table names. */
const MOST_NOISE = 0.05;

/**
 * Which values changed between two editions beyond what the whole table moved by; of the changes named at most one in twenty is noise.
 *
 * Formula: d = ln(x/x′) less its median over the table; u_i² = Σ_jV_ij/m − ΣΣV/2m² of both years, V of the differences; ν by Welch–Satterthwaite from the mean ν of a value's differences; p two-sided
 * from Student's t; changed where Benjamini and Hochberg's adjusted p ≤ 0.05. A change of all values alike cannot be told from one of the rigs
 * @param now values of this edition
 * @param before values of the one before, in the same unit
 * @returns changes of the entries that are in both, by id; none is named where fewer than three are
 * @throws MeasurementError as `productTails`
 * @see BENJAMINI-HOCHBERG-1995
 * @see WELCH-1947
 * @example valueChanges({ series: { force: fit }, evidence: new Map([['a', evidenceOfModel]]) }, { series: { force: fit }, evidence: new Map([['a', evidenceOfModel]]) }).map(({ isChange }) => isChange) // [false]
 */
export function valueChanges(now: EditionValues, before: EditionValues): ValueChange[] {
  const ids = [...now.evidence.keys()].filter((id) => before.evidence.has(id)).sort();
  if (ids.length === 0) return [];
  const years = [now, before].map(({ series, evidence }) =>
    aboutTable(
      productTails(
        ids.map((id) => evidence.get(id)!),
        series,
      ),
      ids.length,
    ),
  );
  const logs = ids.map((id) => Math.log(now.evidence.get(id)!.value / before.evidence.get(id)!.value));
  const shift = median(logs);
  const changes = ids.map((id, i) => {
    const parts = years.map((year) => year[i]!);
    const variance = parts.reduce((sum, part) => sum + part.variance, 0);
    const welch = parts.reduce((sum, part) => sum + part.variance ** 2 / part.degreesOfFreedom, 0);
    const degreesOfFreedom = welch === 0 ? Infinity : variance ** 2 / welch;
    const standardUncertainty = Math.sqrt(variance);
    const beyond = logs[i]! - shift;
    const isJudged = ids.length >= FEWEST_TOLD && standardUncertainty > 0;
    const probability = isJudged ? 2 * tCdf(-Math.abs(beyond) / standardUncertainty, degreesOfFreedom) : 1;
    return {
      id,
      relativeChange: Math.expm1(logs[i]!),
      beyondTable: Math.expm1(beyond),
      standardUncertainty,
      degreesOfFreedom,
      probability,
    };
  });
  const adjusted = falseDiscoveryAdjusted(changes.map(({ probability }) => probability));
  return changes.map(({ probability: _, ...change }, i) => ({
    ...change,
    adjustedProbability: adjusted[i]!,
    isChange: adjusted[i]! <= MOST_NOISE,
  }));
}

/** Below that a table has no middle that one entry does not make. */
const FEWEST_TOLD = 3;

/** Variance of each value about the mean of the table, from the variances of all differences. */
function aboutTable({ standardUncertainty, degreesOfFreedom }: ProductTails, m: number): { variance: number; degreesOfFreedom: number }[] {
  const rows = Array.from({ length: m }, (_, i) => {
    let [variance, inverse] = [0, 0];
    for (let j = 0; j < m; j++) {
      if (j === i) continue;
      variance += standardUncertainty[i * m + j]! ** 2 / m;
      inverse += 1 / degreesOfFreedom[i * m + j]! / (m - 1);
    }
    return { variance, degreesOfFreedom: inverse === 0 ? Infinity : 1 / inverse };
  });
  const half = rows.reduce((sum, { variance }) => sum + variance, 0) / (2 * m);
  return rows.map((row) => ({ ...row, variance: Math.max(0, row.variance - half) }));
}
