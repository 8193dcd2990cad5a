/** What is measured of a variant directly: means of submissions, what they share, and the evidence that they make together. Pure. */
import { pooledBetweenVariance } from '../../measurement/consensus/pooled-between-variance.js';
import { evidenceOfSubmissions } from '../../measurement/ranking/evidence-of-submissions.js';
import type { Evidence, SharedEffect, SharedSource, SubmissionEvidence } from '../../measurement/ranking/evidence.js';
import { causesOf } from './causes.js';
import type { Causes } from './causes.js';
import type { CauseEffects } from '../evidence/effects-evidence.js';
import type { QuantityKind } from '../../contract/endpoints/editions.js';
import type { EditionQuantity } from './quantity.js';
import type { EditionSeries, ResultSubmission } from './series.js';

/** A quantity that is a mean of a series, or the ratio of two. */
export type Measured = Pick<EditionQuantity, 'key' | 'quantity' | 'parts'>;

/** A ratio of two pulls on one rig: its calibration and its own effect cancel. */
const isRatio = ({ parts }: Measured): boolean => parts.length === 2;
/** Figures that the certificate of the instrument speaks of. */
const CALIBRATED: readonly QuantityKind[] = ['breakingForce', 'diameter'];

interface Point {
  readonly submission: ResultSubmission;
  readonly value: number;
  /** Null where it cannot be stated. */
  readonly standardUncertainty: number | null;
  readonly degreesOfFreedom: number;
}

/** What submissions of one variant differ by beyond repeatability, as relative standard deviation [%]. */
export interface BetweenSubmissions {
  readonly relativePercent: number;
  readonly degreesOfFreedom: number;
}

export interface MeasuredQuantity {
  readonly between: BetweenSubmissions;
  readonly sources: Readonly<Record<string, SharedSource>>;
  /** Slug of the variant → its submissions, and their evidence; null where an uncertainty cannot be stated. */
  readonly variants: ReadonlyMap<string, { readonly points: readonly Point[]; readonly evidence: Evidence | null }>;
}

/**
 * Evidence of every variant. What submissions of one variant differ by beyond repeatability is pooled over the edition
 * and given to its causes, rig and tester. One effect per cause, shared by all that it touched.
 * @param effects what is known of the causes from elsewhere
 */
export function measure(measured: Measured, series: readonly EditionSeries[], effects: CauseEffects = {}): MeasuredQuantity {
  const points = pointsOf(series);
  const byVariant = Map.groupBy(points, ({ submission }) => submission.variant);
  const shared = [...byVariant.values()].filter((own) => own.length > 1).map((own) => own.flatMap(known));
  const { relativeVariance, degreesOfFreedom } = pooledBetweenVariance(
    shared
      .filter((own) => own.length > 1)
      .map((own) => own.map(({ value, standardUncertainty }) => ({ mean: value, standardUncertainty }))),
  );
  const causes = causesOf({ relativeVariance, degreesOfFreedom }, effects, isRatio(measured));
  const sources = sourcesOf(measured, points, causes);
  const evidenceOf = (own: readonly Point[]): Evidence | null => {
    const all = own.flatMap(known);
    return all.length < own.length
      ? null
      : evidenceOfSubmissions(
          all.map((point) => toSubmissionEvidence(measured, point)),
          sources,
        );
  };
  return {
    between: { relativePercent: 100 * Math.sqrt(relativeVariance), degreesOfFreedom },
    sources,
    variants: new Map([...byVariant].map(([variant, own]) => [variant, { points: own, evidence: evidenceOf(own) }])),
  };
}

type KnownPoint = Point & { readonly standardUncertainty: number };
const known = (point: Point): KnownPoint[] =>
  point.standardUncertainty === null ? [] : [{ ...point, standardUncertainty: point.standardUncertainty }];

function pointsOf([first, second]: readonly EditionSeries[]): Point[] {
  return [...(first?.means.values() ?? [])].flatMap(({ submission, mean, relative }) => {
    if (second === undefined)
      return {
        submission,
        value: mean,
        standardUncertainty: relative && mean * Math.sqrt(relative.variance),
        degreesOfFreedom: relative?.degreesOfFreedom ?? 0,
      };
    const treated = second.means.get(submission.reference);
    return treated ? ratioPoint(submission, [mean, relative], [treated.mean, treated.relative]) : [];
  });
}

type Part = readonly [mean: number, relative: { readonly variance: number; readonly degreesOfFreedom: number } | null];

/** Treated over untreated [%], to first order (JCGM 100 5.1.6). */
function ratioPoint(submission: ResultSubmission, [untreated, below]: Part, [treated, above]: Part): Point {
  const value = (100 * treated) / untreated;
  if (!below || !above) return { submission, value, standardUncertainty: null, degreesOfFreedom: 0 };
  const total = below.variance + above.variance;
  const welch = below.variance ** 2 / below.degreesOfFreedom + above.variance ** 2 / above.degreesOfFreedom;
  return {
    submission,
    value,
    standardUncertainty: value * Math.sqrt(total),
    degreesOfFreedom: welch === 0 ? Infinity : total ** 2 / welch,
  };
}

const rigSource = ({ key }: Measured, { rig }: ResultSubmission): string => `rig:${rig}/${key}`;
const testerSource = ({ key }: Measured, { tester }: ResultSubmission): string => `tester:${tester}/${key}`;

function sourcesOf(measured: Measured, points: readonly Point[], causes: Causes): Record<string, SharedSource> {
  return Object.fromEntries(
    points.flatMap(({ submission }): [string, SharedSource][] => [
      [testerSource(measured, submission), causes.tester],
      ...(isRatio(measured) ? [] : ([[rigSource(measured, submission), causes.rig]] as [string, SharedSource][])),
      ...certificateOf(measured, submission).map(({ certificate, relative }): [string, SharedSource] => [
        `certificate:${certificate}`,
        { relativeStandardUncertainty: relative, degreesOfFreedom: Infinity },
      ]),
    ]),
  );
}

const certificateOf = ({ quantity }: Measured, { calibration }: ResultSubmission) =>
  calibration && CALIBRATED.includes(quantity) ? [calibration] : [];

function toSubmissionEvidence(
  measured: Measured,
  { submission, value, standardUncertainty, degreesOfFreedom }: KnownPoint,
): SubmissionEvidence {
  const sources = [
    testerSource(measured, submission),
    ...(isRatio(measured) ? [] : [rigSource(measured, submission)]),
    ...certificateOf(measured, submission).map(({ certificate }) => `certificate:${certificate}`),
  ];
  return {
    value,
    standardUncertainty,
    degreesOfFreedom,
    shared: sources.map((source): SharedEffect => ({ source, sensitivity: 1 })),
    parties: [`tester:${submission.tester}`, `rig:${submission.rig}`],
  };
}
