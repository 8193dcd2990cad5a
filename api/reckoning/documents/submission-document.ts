import { rigOf } from '../standings/compute-edition.js';
import { quantitiesIn } from '../results/quantity.js';
import type { EditionQuantity, PinnedMethod } from '../results/quantity.js';
import { spreadIn } from '../results/series.js';
import type { Figure, PublishedSubmission } from '../../contract/documents/release-documents.js';
import type { PublishedTrace } from '../../contract/documents/trace.js';
import { figuresOfEvidence } from '../evidence/submission-evidence.js';
import type { SubmissionEvidence } from '../evidence/submission-evidence.js';
import type { TraceEvidence } from '../../readings/traces/trace-evidence.js';
import { shownFigure, USUAL } from './figure.js';

/** An accepted submission with every specimen and reading, counted or not. */
export function publishedSubmission(submission: SubmissionEvidence, methods: readonly PinnedMethod[]): PublishedSubmission {
  const { reference, revision, method, tester, reviewer, spool, benchDay, isBlind, specimens, findings } = submission;
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
    isBlind,
    figures: figuresOf(submission, methods),
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
function figuresOf(submission: SubmissionEvidence, methods: readonly PinnedMethod[]): Figure[] {
  const figures = figuresOfEvidence(submission);
  const found = { method: submission.method.slug, figures };
  const method = methods.find(({ slug }) => slug === found.method);
  return (method ? quantitiesIn(method) : []).flatMap((quantity) => {
    const spreads = quantity.parts.map((part) => spreadIn(part, found));
    const [spread] = spreads;
    const interval = quantity.quantity === 'retention' ? figures.retentionPercent : spread && { ...spread, value: spread.mean };
    const specimens = spreads.reduce((sum, one) => sum + (one?.n ?? 0), 0);
    return interval ? [ownFigure(quantity, specimens, interval)] : [];
  });
}

function ownFigure(of: EditionQuantity, specimens: number, { value, low95, high95 }: Interval): Figure {
  const interval = low95 === null || high95 === null ? null : { low: low95, high: high95 };
  return shownFigure(of, value, interval, { specimens, submissions: 1, testers: 1, rigs: 1, note: null }, USUAL[of.quantity]);
}

interface Interval {
  readonly value: number;
  readonly low95: number | null;
  readonly high95: number | null;
}
