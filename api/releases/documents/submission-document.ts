import { rigOf } from '../../editions/compute-standings.js';
import { computeResults } from '../../editions/results.js';
import type { Figure, PublishedSubmission } from '../../public-api/release-documents.schemas.js';
import type { AcceptedSubmission } from '../../submissions/submissions.read-model.js';
import { toFigure, USUAL } from './figure.js';

/** An accepted submission with every specimen and reading, counted or not. */
export function publishedSubmission(submission: AcceptedSubmission): PublishedSubmission {
  const { reference, revision, method, testerName, reviewerName, spoolCode, benchDay, specimens, findings } = submission;
  return {
    reference,
    revision,
    method: method.slug,
    methodVersion: method.number,
    tester: testerName,
    reviewer: reviewerName,
    rig: rigOf(submission),
    instruments: submission.instruments.map(({ code, certificate }) => ({ code, calibration: certificate })),
    spool: spoolCode,
    benchDay,
    figures: figuresOf(submission),
    findings: findings.map(({ code, message, resolution }) => ({ code, message, resolution })),
    specimens: specimens.map(({ number, condition, state, reason, readings }) => ({
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
    })),
  };
}

/** Figures of the submission by itself: repeatability only, without the calibration of its rig. */
function figuresOf(submission: AcceptedSubmission): Figure[] {
  const { variantId, method, testerId, figures } = submission;
  const results = computeResults(
    [{ variantId, method: method.slug, testerId, rig: rigOf(submission), figures, calibrationRelative: 0 }],
    null,
  );
  return [...results].map(([quantity, result]) => toFigure(result, USUAL[quantity]));
}
