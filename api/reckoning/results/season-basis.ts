/** What an edition teaches for the planning of the next: values, likely spreads, and what the season was made of. Pure. */
import type { Spreads } from '../../measurement/bench-model/bench-series.js';
import type { FittedSeries } from '../../measurement/bench-model/fit-series.js';
import type { SeasonBasis, SeasonDesign } from '../../measurement/ranking/planning/plan-season.js';
import { productTails } from '../../measurement/ranking/product-tails.js';
import { settledValues } from '../../measurement/ranking/settled-values.js';
import { median } from '../../measurement/summary/median.js';
import type { SchemeCategory } from '../../contract/endpoints/schemes.js';
import { shortfallsOf } from './eligibility.js';
import { keyOf } from './quantity.js';
import type { EditionResults } from './results.js';

export interface SeasonLearnt {
  readonly design: SeasonDesign;
  readonly basis: SeasonBasis;
}

const LEVEL = 0.95;

/** What a category teaches; null where fewer than two entries have a result that counts with an uncertainty, or the scatter is not known. */
export function seasonLearnt(category: SchemeCategory, { results, fits, spreads }: EditionResults): SeasonLearnt | null {
  const key = keyOf(category);
  const found = [...results].flatMap(([variant, own]) => {
    const result = own.get(key);
    return result?.evidence && shortfallsOf(category, variant, results).length === 0 ? [{ ...result, evidence: result.evidence }] : [];
  });
  const evidence = found.map((one) => one.evidence);
  const parts = (evidence[0]?.factors ?? []).flatMap(({ series, power }) => {
    const fit = fits[series];
    // Where no specimen differs from another on the display, its scatter adds nothing.
    const cv = spreads.get(series)?.typicalCvPercent ?? 0;
    return fit?.kind === 'fitted' ? [{ fit, cv, power }] : [];
  });
  const cvPercent = Math.sqrt(parts.reduce((sum, { cv, power }) => sum + (power * cv) ** 2, 0));
  if (found.length < 2 || parts.length !== evidence[0]?.factors.length || cvPercent === 0) return null;
  const { standardUncertainty } = productTails(evidence, fits);
  const logs = Float64Array.from(evidence, ({ value }) => Math.log(value));
  const specimens = median(found.map((one) => one.specimens / one.submissions));
  return {
    design: {
      rigs: Math.max(1, ...parts.map(({ fit }) => countOf(fit, 'rig'))),
      testers: Math.max(1, ...parts.map(({ fit }) => countOf(fit, 'tester'))),
      submissions: Math.max(1, Math.round(median(found.map((one) => one.submissions)))),
      specimens: Math.max(1, Math.round(specimens)),
    },
    basis: {
      values: [...settledValues(logs, withoutDiagonal(standardUncertainty, found.length))].map(Math.exp),
      spreads: productSpreads(parts),
      cvPercent,
      level: LEVEL,
    },
  };
}

const countOf = ({ design }: FittedSeries, cause: string): number => design.columns.filter(({ kind }) => kind === cause).length;

const withoutDiagonal = (all: Float64Array, n: number): Float64Array => all.map((one, at) => (at % (n + 1) === 0 ? 0 : one));

/** Likely spreads of a product: those of a force with those of a diameter, twice as large, paired apart so that they are not large together. */
function productSpreads(parts: readonly { readonly fit: FittedSeries; readonly power: number }[]): Spreads[] {
  const lists = parts.map(({ fit }) => fit.atoms.flatMap(({ spreads, count }) => Array.from({ length: count }, () => spreads)));
  const most = Math.max(...lists.map(({ length }) => length));
  return Array.from({ length: most }, (_, at) => {
    const likely = lists.map((list, k) => list[(at * (1 + 6 * k)) % list.length]);
    const sdOf = (cause: keyof Spreads): number =>
      Math.sqrt(parts.reduce((sum, { power }, k) => sum + (power * (likely[k]?.[cause] ?? 0)) ** 2, 0));
    return { rig: sdOf('rig'), tester: sdOf('tester'), submission: sdOf('submission') };
  });
}
