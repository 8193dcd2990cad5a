import { mandelPaule } from '../formulas/mandel-paule.js';
import { requireMeans } from '../../../../api/measurement/consensus/require-means.js';
import { chiSquareQuantile } from '../../../../api/measurement/distributions/chi-square-distribution.js';
import { MeasurementError } from '../../../../api/measurement/errors.js';
import { mean } from '../../../../api/measurement/summary/mean.js';
import type { Evidence, SharedEffect, SharedSource, SubmissionEvidence } from './evidence.js';

/** Level at which disagreement between submissions is taken for more than chance (common practice). */
const BEYOND_CHANCE = 0.99;

/**
 * Evidence of an entry from its submissions: their weighted mean, with what they share kept apart from what is their own.
 *
 * Formula: w = 1/(u² + e²), e the effects of the sources; own u² = Σw²u²/(Σw)²; where Q = Σw(x − x̃)² is beyond χ²(0.99; k − 1), disagreement is more than the known
 * effects explain and own u² is at least Mandel and Paule's 1/Σw less the shared part; sensitivities are weighted means
 * @param submissions one or more submission means [any one unit] with standard uncertainties
 * @param sources known shared effects by name
 * @returns evidence [same unit]; ν by Welch–Satterthwaite
 * @throws MeasurementError 'measurement/too-few-readings' for none; 'consensus/no-uncertainty' when one of several has none; 'ranking/unknown-source'
 * @see MANDEL-PAULE-1970
 * @see JCGM-100 5.1
 * @example evidenceOfSubmissions([{ value: 10, standardUncertainty: 1, degreesOfFreedom: 4, shared: [], parties: ['tester:t1'] }], {}).without // { 'tester:t1': null }
 */
export function evidenceOfSubmissions(
  submissions: readonly SubmissionEvidence[],
  sources: Readonly<Record<string, SharedSource>>,
): Evidence {
  const parties = [...new Set(submissions.flatMap((submission) => submission.parties))].sort();
  const without = parties.map((party) => {
    const left = submissions.filter((submission) => !submission.parties.includes(party));
    return [party, left.length === 0 ? null : combine(left, sources).value] as const;
  });
  return { ...combine(submissions, sources), without: Object.fromEntries(without) };
}

function combine(submissions: readonly SubmissionEvidence[], sources: Readonly<Record<string, SharedSource>>): Omit<Evidence, 'without'> {
  const [first] = submissions;
  if (!first) {
    throw new MeasurementError(
      'measurement/too-few-readings',
      'evidenceOfSubmissions: found no submissions, expected at least 1. Leave the entry out of the category.',
    );
  }
  if (submissions.length === 1) {
    const { value, standardUncertainty, degreesOfFreedom, shared } = first;
    return { value, standardUncertainty, degreesOfFreedom, shared };
  }
  const means = submissions.map(({ value, standardUncertainty }) => ({ mean: value, standardUncertainty }));
  requireMeans(means, 'evidenceOfSubmissions');
  const centre = mean(submissions.map((submission) => submission.value));
  const weights = submissions.map(({ standardUncertainty, shared }) => 1 / (standardUncertainty ** 2 + effectOf(centre, shared, sources)));
  const totalWeight = weights.reduce((sum, weight) => sum + weight, 0);
  const shares = weights.map((weight) => weight / totalWeight);
  const value = submissions.reduce((sum, submission, i) => sum + shares[i]! * submission.value, 0);
  const spread = submissions.reduce((sum, submission, i) => sum + weights[i]! * (submission.value - value) ** 2, 0);
  const shared = sharedBy(submissions, shares);
  const parts = submissions.map(({ standardUncertainty }, i) => (shares[i]! * standardUncertainty) ** 2);
  const within = parts.reduce((sum, part) => sum + part, 0);
  const isChance = spread <= chiSquareQuantile(BEYOND_CHANCE, submissions.length - 1);
  const own = isChance ? within : Math.max(within, mandelPaule(means).standardError ** 2 - effectOf(value, shared, sources));
  const welch =
    parts.reduce((sum, part, i) => sum + part ** 2 / submissions[i]!.degreesOfFreedom, 0) + (own - within) ** 2 / (submissions.length - 1);
  return {
    value,
    standardUncertainty: Math.sqrt(own),
    degreesOfFreedom: welch === 0 ? Infinity : own ** 2 / welch,
    shared,
  };
}

/** Variance of a value from the effects of its sources [unit²]. */
const effectOf = (value: number, shared: readonly SharedEffect[], sources: Readonly<Record<string, SharedSource>>): number =>
  shared.reduce(
    (sum, { source, sensitivity }) => sum + (value * sensitivity * sourceNamed(source, sources).relativeStandardUncertainty) ** 2,
    0,
  );

function sharedBy(submissions: readonly SubmissionEvidence[], shares: readonly number[]): SharedEffect[] {
  const sensitivities = new Map<string, number>();
  submissions.forEach(({ shared }, i) => {
    for (const { source, sensitivity } of shared) sensitivities.set(source, (sensitivities.get(source) ?? 0) + shares[i]! * sensitivity);
  });
  return [...sensitivities].map(([source, sensitivity]) => ({ source, sensitivity }));
}

/**
 * Finds a source of shared effects by its name.
 *
 * Formula: none, a look-up
 * @param name name of the source
 * @param sources known shared effects by name
 * @returns the source
 * @throws MeasurementError 'ranking/unknown-source' with the known names
 * @see COMMON-PRACTICE
 * @example sourceNamed('rig:r1', { 'rig:r1': { relativeStandardUncertainty: 0.01, degreesOfFreedom: Infinity } }).degreesOfFreedom // Infinity
 */
export function sourceNamed(name: string, sources: Readonly<Record<string, SharedSource>>): SharedSource {
  const source = Object.hasOwn(sources, name) ? sources[name] : undefined;
  if (!source) {
    throw new MeasurementError(
      'ranking/unknown-source',
      `sourceNamed: found "${name}", expected one of: ${Object.keys(sources).join(', ') || 'none'}. State what that source may be off by.`,
    );
  }
  return source;
}
