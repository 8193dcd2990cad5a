import { rigOf } from '../../editions/compute-edition.js';
import { computeResults } from '../../editions/results.js';
import type { Figure, PublishedSubmission } from '../../public-api/release-documents.schemas.js';
import { figuresOfEvidence } from '../../submissions/submission-evidence.js';
import type { SubmissionEvidence } from '../../submissions/submission-evidence.js';
import { toFigure, USUAL } from './figure.js';

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
function figuresOf(submission: SubmissionEvidence): Figure[] {
  const { method, tester } = submission;
  const figures = figuresOfEvidence(submission);
  const results = computeResults([{ method: method.slug, tester, rig: rigOf(submission), figures, calibrationRelative: 0 }], null);
  return [...results].map(([quantity, result]) => toFigure(result, USUAL[quantity]));
}
