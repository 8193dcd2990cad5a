/** A value with how sure it is. Pure. */
import { tQuantile } from '../../measurement/distributions/t-distribution.js';
import { sourceNamed } from '../../measurement/ranking/evidence-of-submissions.js';
import type { Evidence, SharedSource } from '../../measurement/ranking/evidence.js';
import { combineBudget } from '../../measurement/uncertainty/combine-budget.js';
import type { BudgetShare } from '../../measurement/uncertainty/combine-budget.js';

/** Value with its standard uncertainty, in the unit of the quantity; uncertainty null where it cannot be stated. */
export interface Estimate {
  readonly value: number;
  readonly standardUncertainty: number | null;
  readonly degreesOfFreedom: number;
  /** Each component's share of the variance, the own repeatability first. */
  readonly budget: readonly BudgetShare[];
}

/** A value about which nothing more is known. */
export const bareEstimate = (value: number): Estimate => ({ value, standardUncertainty: null, degreesOfFreedom: 0, budget: [] });

/** Combines what is a value's own with what it shares with others (JCGM 100 5.1.2, G.4.1). */
export function estimateOf(evidence: Evidence, sources: Readonly<Record<string, SharedSource>>): Estimate {
  const { value, standardUncertainty, degreesOfFreedom, shared } = evidence;
  const { combined, effectiveDegreesOfFreedom, shares } = combineBudget([
    { name: 'repeatability', kind: 'A', standardUncertainty, sensitivity: 1, degreesOfFreedom },
    ...shared.map(({ source, sensitivity }) => {
      const { relativeStandardUncertainty, degreesOfFreedom: known } = sourceNamed(source, sources);
      const kind = source.startsWith('certificate:') ? ('B' as const) : ('A' as const);
      return {
        name: source,
        kind,
        standardUncertainty: relativeStandardUncertainty,
        sensitivity: value * sensitivity,
        degreesOfFreedom: known,
      };
    }),
  ]);
  return { value, standardUncertainty: combined, degreesOfFreedom: effectiveDegreesOfFreedom, budget: shares };
}

/** 95 % interval of an estimate; null where its uncertainty cannot be stated. */
export function intervalOf({
  value,
  standardUncertainty,
  degreesOfFreedom,
}: Pick<Estimate, 'value' | 'standardUncertainty' | 'degreesOfFreedom'>): { low: number; high: number } | null {
  if (standardUncertainty === null) return null;
  const halfWidth = standardUncertainty * tQuantile(0.975, Math.min(1e6, Math.max(1, degreesOfFreedom)));
  return { low: value - halfWidth, high: value + halfWidth };
}
