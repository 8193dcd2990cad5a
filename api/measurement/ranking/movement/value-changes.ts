import { falseDiscoveryAdjusted } from '../../comparison/false-discovery.js';
import { tCdf } from '../../distributions/t-distribution.js';
import type { OwnVariance } from '../../consensus/moderated-variances.js';
import { median } from '../../summary/median.js';
import { ratioVariance } from '../../uncertainty/ratio-variance.js';

/** A value of one edition with how well it is known beside the others of its table. */
export interface ValueInTable {
  /** above 0 [unit of the category] */
  readonly value: number;
  /** relative, as `besideTable` tells it [1] */
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
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
/** Below that a table has no middle that one entry does not make. */
const FEWEST_TOLD = 3;

/**
 * Which values changed between two editions beyond what the whole table moved by; of the changes named at most one in twenty is noise.
 *
 * Formula: d = ln(x/x′) less its median over the table; u² = u_i² + u_i′², each beside its own year's table; ν by Welch–Satterthwaite; p two-sided from Student's t; changed where Benjamini and
 * Hochberg's adjusted p ≤ 0.05. A change of all values alike cannot be told from one of the rigs
 * @param now values of this edition by id
 * @param before values of the one before, in the same unit
 * @returns changes of the entries that are in both, by id; none is named where fewer than three are
 * @throws nothing: the caller checks the values
 * @see BENJAMINI-HOCHBERG-1995
 * @see WELCH-1947
 * @example valueChanges(new Map([['a', valueInTable]]), new Map([['a', valueInTable]])).map(({ isChange }) => isChange) // [false]
 */
export function valueChanges(now: ReadonlyMap<string, ValueInTable>, before: ReadonlyMap<string, ValueInTable>): ValueChange[] {
  const both = [...now].flatMap(([id, mine]) => (before.has(id) ? [{ id, mine, theirs: before.get(id)! }] : []));
  both.sort((one, other) => (one.id < other.id ? -1 : 1));
  if (both.length === 0) return [];
  const logs = both.map(({ mine, theirs }) => Math.log(mine.value / theirs.value));
  const shift = median(logs);
  const changes = both.map(({ id, mine, theirs }, i) => {
    const { variance, degreesOfFreedom } = ratioVariance(squared(mine), squared(theirs));
    const standardUncertainty = Math.sqrt(variance);
    const beyond = logs[i]! - shift;
    const isJudged = both.length >= FEWEST_TOLD && standardUncertainty > 0;
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

const squared = ({ standardUncertainty, degreesOfFreedom }: ValueInTable): OwnVariance => ({
  variance: standardUncertainty ** 2,
  degreesOfFreedom,
});
