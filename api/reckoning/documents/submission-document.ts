import { rigOf } from '../standings/compute-edition.js';
import type { Quantity } from '../../contract/endpoints/editions.js';
import type { Figure, PublishedSubmission } from '../../contract/documents/release-documents.js';
import type { PublishedTrace } from '../../contract/documents/trace.js';
import { figuresOfEvidence } from '../evidence/submission-evidence.js';
import type { SubmissionEvidence } from '../evidence/submission-evidence.js';
import type { TraceEvidence } from '../../readings/traces/trace-evidence.js';
import type { Spread } from '../../readings/submission-figures.js';
import { shownFigure, USUAL } from './figure.js';

/** An accepted submission with every specimen and reading, counted or not. */
export function publishedSubmission(submission: SubmissionEvidence): PublishedSubmission {
  const { reference, revision, method, tester, reviewer, spool, benchDay, specimens, findings } = submission;
  return {
    reference,
    revision,
    method: method.slug,
    methodVersion: method.number,
    tester,
    reviewer,
    rig: rigOf(submission),
    instruments: submission.instruments.map(({ code, certificate }) => ({ code, calibration: certificate })),
    spool,
    benchDay,
    figures: figuresOf(submission),
    findings: findings.map(({ code, message, resolution }) => ({ code, message, resolution })),
    specimens: specimens.map(({ number, condition, state, reason, readings, trace }) => ({
      number,
      condition,
      state,
      reason,
      readings: readings.map(({ role, station, enteredText, enteredUnit, valueSi, siUnit }) => ({
        role,
        station,
        entered: { text: enteredText, unit: enteredUnit },
        value: valueSi,
        unit: siUnit,
      })),
      ...(trace ? { trace: publishedTrace(trace) } : {}),
    })),
  };
}

const publishedTrace = ({ figures, points, ...trace }: TraceEvidence): PublishedTrace => ({
  ...trace,
  figures: { ...figures, slips: figures.slips.map((slip) => ({ ...slip })) },
  points: points.map(([at, forceN]) => [at, forceN]),
});

/** Figures of the submission by itself: its repeatability as found, without the calibration of its rig. */
function figuresOf(submission: SubmissionEvidence): Figure[] {
  const { breakingForceN, diameterMm, outOfRoundnessPercent, linearDensityTex, retentionPercent, treatedForceN } =
    figuresOfEvidence(submission);
  const isKnot = submission.method.slug === 'named-knot';
  const means: readonly (readonly [Quantity, Spread | null])[] = [
    ['breakingForce', breakingForceN],
    ['diameter', diameterMm],
    ['outOfRoundness', outOfRoundnessPercent],
    ['linearDensity', linearDensityTex],
  ];
  return [
    ...means.flatMap(([quantity, spread]) => (spread ? [ownFigure(quantity, spread.n, { ...spread, value: spread.mean })] : [])),
    ...(retentionPercent
      ? [ownFigure(isKnot ? 'knotRetention' : 'abrasionRetention', (breakingForceN?.n ?? 0) + (treatedForceN?.n ?? 0), retentionPercent)]
      : []),
  ];
}

function ownFigure(quantity: Quantity, specimens: number, { value, low95, high95 }: Interval): Figure {
  const interval = low95 === null || high95 === null ? null : { low: low95, high: high95 };
  return shownFigure(quantity, value, interval, { specimens, submissions: 1, testers: 1, rigs: 1, note: null }, USUAL[quantity]);
}

interface Interval {
  readonly value: number;
  readonly low95: number | null;
  readonly high95: number | null;
}
