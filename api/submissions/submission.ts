import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { statesFor } from '../contract/submission-actions.js';
import type { ActionName } from '../contract/submission-actions.js';
import type { SubmissionState } from '../contract/submission-states.js';
import { submissionProblems } from './submissions.errors.js';

/** A submission's row as read under its lock. */
export interface LockedSubmission {
  readonly id: string;
  readonly reference: string;
  readonly editionId: string;
  readonly testerId: string;
  readonly spoolId: string;
  readonly methodVersionId: string;
  readonly benchDay: Date;
  readonly state: SubmissionState;
  readonly revision: number;
  readonly version: number;
}

/** S-2026-0007: the edition and the running number in it, at least four digits. */
export const referenceOf = (edition: string, number: number): string => `S-${edition}-${String(number).padStart(4, '0')}`;

/** Whether the actor sees other testers' submissions, with everything that the checks found. */
export const seesAll = (actor: Actor): boolean => actor.roles.includes('reviewer') || actor.roles.includes('editor');

/** The answer for a submission that does not exist, or is another tester's: the same, so that nobody learns which. */
export const noSubmission = (reference: string): Problem =>
  new Problem(platformProblems['request/not-found'], `No submission of yours has the reference ${reference}.`);

/** Only its own tester changes a submission, and only in a state for the action. */
export function requireOwn<Locked extends LockedSubmission>(
  actor: Actor,
  submission: Locked | null,
  reference: string,
  action: ActionName,
): Locked {
  if (submission?.testerId !== actor.accountId) throw noSubmission(reference);
  const states = statesFor(action);
  if (states.includes(submission.state)) return submission;
  throw new Problem(submissionProblems['submissions/wrong-state'], `${reference} is ${submission.state}; expected ${states.join(' or ')}.`);
}
