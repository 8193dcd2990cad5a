import type { Estimate } from '../results/estimate.js';
import { roundHalfEven } from '../../measurement/units/round-half-even.js';
import type { VariantDocument } from '../../contract/documents/release-documents.js';

type Budget = VariantDocument['budgets'][number];

/** Effective degrees of freedom from which a t interval is a normal one. */
const MANY = 1000;

/** The uncertainty budget of a value: each component's share of the variance; none where the uncertainty is not known. */
export function budgetOf(category: string, { value, standardUncertainty, degreesOfFreedom, budget }: Estimate): Budget[] {
  if (standardUncertainty === null) return [];
  return [
    {
      category,
      standardUncertaintyPercent: roundHalfEven((100 * standardUncertainty) / value, 2),
      degreesOfFreedom: degreesOfFreedom > MANY ? null : Math.floor(degreesOfFreedom),
      lines: budget
        .toSorted((one, other) => other.sharePercent - one.sharePercent)
        .map(({ component, sharePercent }) => ({ component, of: null, sharePercent: roundHalfEven(sharePercent, 1) })),
    },
  ];
}
