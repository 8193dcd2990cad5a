/** A value with how sure it is. Pure. */
import { valueBudgets } from '../../measurement/bench-model/value-budget.js';
import type { ValueUncertainty, VarianceParts } from '../../measurement/bench-model/value-budget.js';
import type { FittedSeries } from '../../measurement/bench-model/fit-series.js';
import { valueInterval } from '../../measurement/uncertainty/value-interval.js';
import type { ModelEvidence, ModelSeries } from '../../measurement/ranking/model-evidence.js';
import { productTails } from '../../measurement/ranking/product-tails.js';

/** A component's share of the variance of a value [%]. */
export interface BudgetShare {
  readonly component: keyof VarianceParts;
  readonly sharePercent: number;
}

/** Value with its standard uncertainty, in the unit of the quantity; uncertainty null where it cannot be stated. */
export interface Estimate {
  readonly value: number;
  readonly standardUncertainty: number | null;
  readonly degreesOfFreedom: number;
  readonly budget: readonly BudgetShare[];
  /** Whether its submissions disagree beyond the others. */
  readonly isApart: boolean;
}

/** A value about which nothing more is known. */
export const bareEstimate = (value: number): Estimate => ({
  value,
  standardUncertainty: null,
  degreesOfFreedom: 0,
  budget: [],
  isApart: false,
});

/** Uncertainty of a value from the fitted series that it is made of, each with its power (JCGM 100 5.1.6). */
export function estimateOf(evidence: ModelEvidence, fits: ModelSeries): Estimate {
  const { value, factors } = evidence;
  const tails = productTails([evidence], fits);
  const parts = factors.flatMap(({ series, variant, power }) => {
    const found = budgetIn(fits[series], variant);
    return found ? [{ found, square: power ** 2 }] : [];
  });
  const components: (keyof VarianceParts)[] = ['repeatability', 'submission', 'rig', 'tester', 'certificate', 'spreads'];
  const shares = components.map((component) => parts.reduce((sum, { found, square }) => sum + square * found.parts[component], 0));
  const total = shares.reduce((sum, share) => sum + share, 0);
  return {
    value,
    standardUncertainty: value * (tails.standardUncertainty[0] ?? 0),
    degreesOfFreedom: tails.degreesOfFreedom[0] ?? 0,
    budget: components.flatMap((component, i) =>
      total > 0 && (shares[i] ?? 0) > 0 ? [{ component, sharePercent: (100 * (shares[i] ?? 0)) / total }] : [],
    ),
    isApart: parts.some(({ found }) => found.isApart),
  };
}

/** Budgets of a fit by variant: all categories that lean on it ask for the same. */
const budgets = new WeakMap<FittedSeries, ReadonlyMap<string, ValueUncertainty>>();

function budgetIn(fit: ModelSeries[string] | undefined, variant: string): ValueUncertainty | undefined {
  if (fit?.kind !== 'fitted') return undefined;
  const known = budgets.get(fit) ?? new Map(valueBudgets(fit).map((one) => [one.variant, one]));
  budgets.set(fit, known);
  return known.get(variant);
}

/** 95 % interval of an estimate; null where its uncertainty cannot be stated. */
export function intervalOf({
  value,
  standardUncertainty,
  degreesOfFreedom,
}: Pick<Estimate, 'value' | 'standardUncertainty' | 'degreesOfFreedom'>): { low: number; high: number } | null {
  if (standardUncertainty === null) return null;
  return valueInterval(value, standardUncertainty, degreesOfFreedom);
}
