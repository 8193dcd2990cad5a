import { QUANTITIES } from '../../contract/endpoints/editions.js';
import type { Estimate } from '../results/estimate.js';
import { roundHalfEven } from '../../measurement/units/round-half-even.js';
import type { VariantDocument } from '../../contract/documents/release-documents.js';

type Budget = VariantDocument['budgets'][number];
type Line = Budget['lines'][number];

/** Effective degrees of freedom from which a t interval is a normal one. */
const MANY = 1000;

/** The uncertainty budget of a value: each component's share of the variance; none where the uncertainty is not known. */
export function budgetOf(category: string, { value, standardUncertainty, degreesOfFreedom, budget }: Estimate): Budget[] {
  if (standardUncertainty === null) return [];
  const lines = budget.map(({ name, sharePercent }) => ({ ...namedBy(name), sharePercent }));
  const merged = Map.groupBy(lines, ({ component, of }) => `${component} ${of ?? ''}`);
  return [
    {
      category,
      standardUncertaintyPercent: roundHalfEven((100 * standardUncertainty) / value, 2),
      degreesOfFreedom: degreesOfFreedom > MANY ? null : Math.floor(degreesOfFreedom),
      lines: [...merged.values()]
        .map((same) => ({ first: same[0], share: same.reduce((sum, { sharePercent }) => sum + sharePercent, 0) }))
        .sort((one, other) => other.share - one.share)
        .flatMap(({ first, share }) =>
          first ? [{ component: first.component, of: first.of, sharePercent: roundHalfEven(share, 1) }] : [],
        ),
    },
  ];
}

const SOURCE = new RegExp(`^(tester|rig|certificate):(.+?)(?:/(?:${QUANTITIES.join('|')})/[a-z0-9/-]+)?$`);

/** A source of the model in the words of the page: "tester:A. Fenn/breakingForce/straight-pull/untreated" is the tester A. Fenn. */
function namedBy(source: string): Pick<Line, 'component' | 'of'> {
  const [, component, of] = SOURCE.exec(source) ?? [];
  return component === undefined ? { component: 'repeatability', of: null } : { component: component as Line['component'], of: of ?? null };
}
