/** What an edition tells the next ones of rigs, testers and spools: how likely it leaves their spreads. Pure. */
import type { SeasonTold } from '../../measurement/bench-model/bench-series.js';
import { contrastsOf } from '../../measurement/bench-model/design.js';
import { FEWEST_CONTRASTS } from '../../measurement/bench-model/fit-series.js';
import { seasonTells } from '../../measurement/bench-model/spread-atoms.js';
import { roundHalfEven } from '../../measurement/units/round-half-even.js';
import type { SpreadsEvidence } from '../evidence/effects-evidence.js';
import type { EditionResults } from '../results/results.js';

const PLACES = 6;

/** Of every measured quantity that was fitted and of which enough were pulled twice; what the edition itself was told is not in it. */
export const spreadsFound = ({ quantities, fits }: Pick<EditionResults, 'quantities' | 'fits'>): SpreadsEvidence =>
  Object.fromEntries(
    quantities.flatMap(({ key, reproducibility }) => {
      const fit = fits[key];
      const tells = fit?.kind === 'fitted' && contrastsOf(fit.design) >= FEWEST_CONTRASTS;
      return tells ? [[key, seasonTells(fit.design, reproducibility, fit.isApart).map(asText)] as const] : [];
    }),
  );

/** What several editions found, of every measured quantity one after the other. */
export function spreadsBefore(earlier: readonly { readonly spreads?: SpreadsEvidence }[]): SpreadsEvidence {
  const all = earlier.flatMap(({ spreads }) => Object.entries(spreads ?? {}));
  return Object.fromEntries([...Map.groupBy(all, ([key]) => key)].map(([key, found]) => [key, found.flatMap(([, told]) => told)]));
}

const asText = ({ cause, points }: SeasonTold): SpreadsEvidence[string][number] => ({
  cause,
  points: points.map(({ relativeSd, likelihood }) => ({
    relativeSd: roundHalfEven(relativeSd, PLACES),
    likelihood: roundHalfEven(likelihood, PLACES),
  })),
});
