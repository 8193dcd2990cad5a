/** The series of readings that results are made of: which specimens of which method, and how they scatter. Pure. */
import { resolutionUncertainty } from '../../measurement/uncertainty/standard-uncertainty.js';
import { moderatedVariances } from '../../measurement/consensus/moderated-variances.js';
import type { OwnVariance } from '../../measurement/consensus/moderated-variances.js';
import { isTreated } from '../../readings/series-needs.js';
import type { MethodSeries } from '../../contract/method-series.js';
import type { Spread, SubmissionFigures } from '../../readings/submission-figures.js';
import type { SeriesPart } from './quantity.js';

/** An accepted submission as far as results need it. */
export interface ResultSubmission {
  readonly reference: string;
  /** Slug. */
  readonly variant: string;
  readonly method: string;
  readonly tester: string;
  /** Code of the instrument that took the readings. */
  readonly rig: string;
  readonly figures: SubmissionFigures;
  /** The rig's certificate on the bench day with its relative standard uncertainty [1]; null without one. */
  readonly calibration: { readonly certificate: string; readonly relative: number } | null;
  /** Step of the rig's display [N of a force, mm of a diameter]; null where the figure is not read on one display. */
  readonly resolution: number | null;
}

const FIGURE: Readonly<Record<MethodSeries['kind'], (figures: SubmissionFigures, isOfTreated: boolean) => Spread | null>> = {
  breakingForce: (figures, isOfTreated) => (isOfTreated ? figures.treatedForceN : figures.breakingForceN),
  diameterAlongStations: ({ diameterMm }) => diameterMm,
  linearDensity: ({ linearDensityTex }) => linearDensityTex,
};
/** What is shown by a display whose step counts. */
const READ_ON_DISPLAY: readonly MethodSeries['kind'][] = ['breakingForce', 'diameterAlongStations'];

/** What a submission found in a series; null where it is of another method. */
export function spreadIn({ method, series, figure }: SeriesPart, submission: Pick<ResultSubmission, 'method' | 'figures'>): Spread | null {
  if (submission.method !== method) return null;
  return figure === 'outOfRoundness'
    ? submission.figures.outOfRoundnessPercent
    : FIGURE[series.kind](submission.figures, isTreated(series));
}

/** A series of one submission with the variance of its mean. */
export interface SeriesMean {
  readonly submission: ResultSubmission;
  readonly n: number;
  readonly mean: number;
  /** Coefficient of variation as found [%]; null for a single specimen. */
  readonly ownCvPercent: number | null;
  /** Relative variance of the mean, moderated, with its degrees of freedom; null where no spread can be stated. */
  readonly relative: OwnVariance | null;
}

/** A series over the whole edition. */
export interface EditionSeries {
  /** What a specimen of this series scatters by in general [%]; null when too few submissions tell. */
  readonly typicalCvPercent: number | null;
  /** By reference of the submission. */
  readonly means: ReadonlyMap<string, SeriesMean>;
}

/**
 * Means of a series with variances that borrow strength from one another (Smyth 2004), so that five specimens do not
 * pretend to know their own spread. A spread below what the display can show counts as that: step / √12 (JCGM 100 F.2.2.1).
 */
export function editionSeries(part: SeriesPart, submissions: readonly ResultSubmission[]): EditionSeries {
  const found = submissions.flatMap((submission) => {
    const spread = spreadIn(part, submission);
    return spread && spread.mean > 0 ? [{ submission, spread }] : [];
  });
  const { priorVariance, moderated } = moderatedVariances(
    found.map(({ spread: { n, mean, sd } }) => ({ variance: sd === null ? 0 : (sd / mean) ** 2, degreesOfFreedom: n - 1 })),
  );
  const isOnDisplay = part.figure === 'mean' && READ_ON_DISPLAY.includes(part.series.kind);
  const means = found.map(({ submission, spread: { n, mean, cvPercent } }, i) => {
    const step = isOnDisplay && submission.resolution !== null ? submission.resolution / mean : 0;
    return [
      submission.reference,
      { submission, n, mean, ownCvPercent: cvPercent, relative: ofMean(moderated[i] ?? null, n, step) },
    ] as const;
  });
  return { typicalCvPercent: priorVariance === null ? null : 100 * Math.sqrt(priorVariance), means: new Map(means) };
}

function ofMean(moderated: OwnVariance | null, n: number, relativeStep: number): OwnVariance | null {
  const variance = Math.max(moderated?.variance ?? 0, resolutionUncertainty(relativeStep) ** 2) / n;
  return moderated && variance > 0 ? { variance, degreesOfFreedom: moderated.degreesOfFreedom } : null;
}
