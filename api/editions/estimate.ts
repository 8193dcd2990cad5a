/** A variant's value of one quantity from one or several submissions. Pure. */
import { mandelPaule } from '../measurement/consensus/mandel-paule.js';
import { tQuantile } from '../measurement/distributions/t-distribution.js';
import { mean } from '../measurement/summary/mean.js';

/** Mean of one submission; standard uncertainty null for a single specimen. */
export interface Point {
  readonly mean: number;
  readonly standardUncertainty: number | null;
  readonly degreesOfFreedom: number;
}

/** Value with its standard uncertainty, in the unit of its points; uncertainty null where it cannot be stated. */
export interface Estimate {
  readonly value: number;
  readonly standardUncertainty: number | null;
  readonly degreesOfFreedom: number;
}

/**
 * Combines the submissions of a variant: one stands for itself; several give the consensus of Mandel and Paule, with
 * Welch–Satterthwaite degrees of freedom over what lies within and between submissions (JCGM 100 G.4).
 * @param points one a submission, at least one
 */
export function combineSubmissions(points: readonly Point[]): Estimate {
  const known = points.filter((point): point is Point & { standardUncertainty: number } => (point.standardUncertainty ?? 0) > 0);
  const only = points[0];
  if (points.length === 1 && only)
    return { value: only.mean, standardUncertainty: only.standardUncertainty, degreesOfFreedom: only.degreesOfFreedom };
  if (known.length < points.length)
    return { value: mean(points.map((point) => point.mean)), standardUncertainty: null, degreesOfFreedom: 0 };
  const consensus = mandelPaule(known);
  const within = known.reduce((sum, { standardUncertainty }) => sum + 1 / standardUncertainty ** 2, 0) ** -1;
  const total = consensus.standardError ** 2;
  const between = Math.max(0, total - within);
  const withinDegrees = known.reduce((sum, { degreesOfFreedom }) => sum + degreesOfFreedom, 0);
  const degreesOfFreedom = total ** 2 / (within ** 2 / withinDegrees + between ** 2 / (known.length - 1));
  return { value: consensus.mean, standardUncertainty: consensus.standardError, degreesOfFreedom };
}

/**
 * Adds relative uncertainties of a systematic kind (calibration) to an estimate; their degrees of freedom are infinite.
 * @param relative relative standard uncertainties [1]
 */
export function widen(estimate: Estimate, relative: readonly number[]): Estimate {
  if (estimate.standardUncertainty === null) return estimate;
  const own = estimate.standardUncertainty ** 2;
  const total = own + relative.reduce((sum, u) => sum + (u * estimate.value) ** 2, 0);
  return {
    ...estimate,
    standardUncertainty: Math.sqrt(total),
    degreesOfFreedom: own === 0 ? Infinity : (estimate.degreesOfFreedom * total ** 2) / own ** 2,
  };
}

/** Product of powers of independent estimates: relative uncertainties combined to first order (JCGM 100 5.1.6). */
export function productOfPowers(factors: readonly { readonly estimate: Estimate; readonly power: number }[], constant = 1): Estimate {
  const value = factors.reduce((product, { estimate, power }) => product * estimate.value ** power, constant);
  const parts = factors.map(({ estimate, power }) => ({
    relative: estimate.standardUncertainty === null ? null : Math.abs((power * estimate.standardUncertainty) / estimate.value),
    degreesOfFreedom: estimate.degreesOfFreedom,
  }));
  if (parts.some(({ relative }) => relative === null)) return { value, standardUncertainty: null, degreesOfFreedom: 0 };
  const total = parts.reduce((sum, { relative }) => sum + (relative ?? 0) ** 2, 0);
  const welch = parts.reduce((sum, { relative, degreesOfFreedom }) => sum + (relative ?? 0) ** 4 / degreesOfFreedom, 0);
  return { value, standardUncertainty: value * Math.sqrt(total), degreesOfFreedom: welch === 0 ? Infinity : total ** 2 / welch };
}

/** 95 % interval of an estimate; null where its uncertainty cannot be stated. */
export function intervalOf({ value, standardUncertainty, degreesOfFreedom }: Estimate): { low: number; high: number } | null {
  if (standardUncertainty === null) return null;
  const halfWidth = standardUncertainty * tQuantile(0.975, Math.min(1e6, Math.max(1, degreesOfFreedom)));
  return { low: value - halfWidth, high: value + halfWidth };
}
