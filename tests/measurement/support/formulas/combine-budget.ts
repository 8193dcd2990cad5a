import { requireDegreesOfFreedom } from '../../../../api/measurement/distributions/require-domain.js';
import { MeasurementError } from '../../../../api/measurement/errors.js';
import { requireNotNegative } from '../../../../api/measurement/figures/require-positive.js';
import { compensatedSum } from '../../../../api/measurement/summary/compensated-sum.js';

export interface BudgetComponent {
  name: string;
  /** A: from the scatter of readings; B: from any other knowledge */
  kind: 'A' | 'B';
  standardUncertainty: number;
  sensitivity: number;
  /** Infinity where the uncertainty is taken as exactly known */
  degreesOfFreedom: number;
}

export interface BudgetShare {
  name: string;
  kind: 'A' | 'B';
  /** |c|·u, in the unit of the result */
  contribution: number;
  /** part of the combined variance */
  sharePercent: number;
}

export interface Budget {
  combined: number;
  effectiveDegreesOfFreedom: number;
  /** expanded uncertainty for a coverage factor */
  expanded: (coverageFactor: number) => number;
  shares: BudgetShare[];
}

/**
 * Combines uncorrelated components to first order and shows each one's share.
 *
 * Formula: u_c² = Σ(c u)²; ν_eff = u_c⁴/Σ[(c u)⁴/ν]
 * @param components one or more, with u ≥ 0 [own unit], finite c [result unit/own unit] and ν > 0 or Infinity [1]
 * @returns combined [result unit], effectiveDegreesOfFreedom [1], expanded(k) [result unit], shares in the order given [%]; shares are 0 when u_c is 0
 * @throws MeasurementError 'uncertainty/no-components'; 'figures/negative' for u; 'measurement/not-a-number' for c; 'distributions/out-of-domain' for ν
 * @see JCGM-100 5.1.2 and G.4.1
 * @example combineBudget([{ name: 'force', kind: 'B', standardUncertainty: 3, sensitivity: 1, degreesOfFreedom: Infinity }]).combined // 3
 */
export function combineBudget(components: readonly BudgetComponent[]): Budget {
  requireComponents(components);
  const contributions = components.map(({ sensitivity, standardUncertainty }) => Math.abs(sensitivity) * standardUncertainty);
  const variance = compensatedSum(contributions.map((contribution) => contribution ** 2));
  const combined = Math.sqrt(variance);
  const part = (i: number): number => (variance > 0 ? contributions[i]! ** 2 / variance : 0);
  // Infinite degrees of freedom add nothing to the sum; with all of them infinite the result is infinite too.
  const inverse = compensatedSum(components.map(({ degreesOfFreedom }, i) => part(i) ** 2 / degreesOfFreedom));
  return {
    combined,
    effectiveDegreesOfFreedom: inverse > 0 ? 1 / inverse : Infinity,
    expanded: (coverageFactor) => coverageFactor * combined,
    shares: components.map(({ name, kind }, i) => ({ name, kind, contribution: contributions[i]!, sharePercent: 100 * part(i) })),
  };
}

function requireComponents(components: readonly BudgetComponent[]): void {
  if (components.length === 0) {
    throw new MeasurementError(
      'uncertainty/no-components',
      'combineBudget: found no component, expected at least 1. List what the result depends on.',
    );
  }
  for (const { name, standardUncertainty, sensitivity, degreesOfFreedom } of components) {
    requireNotNegative(standardUncertainty, `standardUncertainty of ${name}`, 'combineBudget');
    requireDegreesOfFreedom(degreesOfFreedom, `combineBudget, ${name}`);
    if (!Number.isFinite(sensitivity)) {
      throw new MeasurementError(
        'measurement/not-a-number',
        `combineBudget: the sensitivity of ${name} is ${sensitivity}, expected a finite number.`,
      );
    }
  }
}
