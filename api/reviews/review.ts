import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { InputFault } from '../platform/errors/problem.js';
import { notValid } from '../platform/http/validation.js';
import { statesFor } from '../contract/submission-actions.js';
import type { ActionName } from '../contract/submission-actions.js';
import { whatTells } from '../contract/blind-question.js';
import { reviewProblems } from './reviews.errors.js';

/** What a decision is made on: the current revision, read under the lock of the submission. */
export interface SubmissionUnderReview {
  readonly id: string;
  readonly reference: string;
  readonly state: string;
  readonly revision: number;
  readonly version: number;
  readonly testerId: string;
  readonly revisionId: string;
  readonly specimens: readonly { readonly id: string; readonly number: number; readonly validity: string }[];
  readonly findings: readonly {
    readonly id: string;
    readonly code: string;
    readonly severity: string;
    readonly resolution: string | null;
  }[];
}

export interface SettingAside {
  readonly specimen: number;
  readonly reason: string;
}

export interface Resolution {
  readonly finding: string;
  readonly words: string;
}

/** A second person decides; the database keeps the same rule (reviewer_is_not_tester). */
export function requireSecondPerson(actorId: string, testerId: string): void {
  if (actorId === testerId) throw new Problem(reviewProblems['reviews/own-submission']);
}

export function requireState(submission: { reference: string; state: string }, action: ActionName): void {
  const expected = statesFor(action);
  if (expected.some((state) => state === submission.state)) return;
  throw new Problem(
    reviewProblems['reviews/wrong-state'],
    `${submission.reference} is ${submission.state}; expected ${expected.join(' or ')}.`,
  );
}

/** Every finding that is held is answered in words; an answer belongs to a finding of this revision, and stands once. */
export function requireAnswers(findings: SubmissionUnderReview['findings'], resolutions: readonly Resolution[]): void {
  const known = new Set(findings.map((finding) => finding.id));
  const answered = new Set(resolutions.map((resolution) => resolution.finding));
  const unanswered = findings
    .filter((finding) => finding.severity === 'held' && !answered.has(finding.id))
    .map(({ id, code }) => ({
      pointer: '/resolutions',
      code: 'finding_unanswered',
      detail: `Finding ${code} (${id}) is held and has no answer. Say in words why the submission stands in spite of it, or return it.`,
    }));
  const strange = resolutions.flatMap((resolution, index) => {
    const isDouble = resolutions.findIndex((other) => other.finding === resolution.finding) < index;
    if (known.has(resolution.finding) && !isDouble) return [];
    const detail = isDouble
      ? 'This finding is answered twice; keep one answer.'
      : 'No finding of this revision has this id; read the submission again.';
    return [{ pointer: `/resolutions/${index}/finding`, code: isDouble ? 'duplicate' : 'unknown_finding', detail }];
  });
  throwAny([...unanswered, ...strange]);
}

/** A finding that came up after the acceptance is one of the standing revision, and is answered once. */
export function requireUnanswered(findings: SubmissionUnderReview['findings'], id: string): void {
  const finding = findings.find((one) => one.id === id);
  if (!finding) throw new Problem(platformProblems['request/not-found'], `No finding of the standing revision has the id ${id}.`);
  if (finding.resolution !== null) throw new Problem(reviewProblems['reviews/finding-answered']);
}

/** Only a valid specimen is set aside, once, and some are left to compute with. */
export function requireSettable(specimens: SubmissionUnderReview['specimens'], setAside: readonly SettingAside[]): void {
  const faults = setAside.flatMap(({ specimen }, index) => {
    const detail = whyNotSettable(specimens, setAside, specimen, index);
    return detail === null ? [] : [{ pointer: `/setAside/${index}/specimen`, code: 'not_settable', detail }];
  });
  const valid = specimens.filter((specimen) => specimen.validity === 'valid').length;
  if (faults.length === 0 && setAside.length > 0 && setAside.length >= valid) {
    faults.push({
      pointer: '/setAside',
      code: 'nothing_left',
      detail: `All ${valid} valid specimens would be set aside. Refuse or return the submission instead.`,
    });
  }
  throwAny(faults);
}

function whyNotSettable(
  specimens: SubmissionUnderReview['specimens'],
  setAside: readonly SettingAside[],
  number: number,
  index: number,
): string | null {
  const specimen = specimens.find((one) => one.number === number);
  if (!specimen) return `No specimen has the number ${number}; expected one of ${specimens.map((one) => one.number).join(', ')}.`;
  if (specimen.validity !== 'valid') return `Specimen ${number} is invalid already and does not count; leave it out here.`;
  return setAside.findIndex((other) => other.specimen === number) < index
    ? `Specimen ${number} is set aside twice; keep one reason.`
    : null;
}

/** A query names the specimens to look at, never how far off they are: a question with a quantity in it would tell. */
export function requireBlindQuestion(
  query: { specimens: readonly number[]; question: string },
  specimens: SubmissionUnderReview['specimens'],
): void {
  const numbers = new Set(specimens.map((specimen) => specimen.number));
  const faults: InputFault[] = query.specimens.flatMap((number, index) =>
    numbers.has(number)
      ? []
      : [
          {
            pointer: `/query/specimens/${index}`,
            code: 'unknown_specimen',
            detail: `No specimen has the number ${number}; name specimens of this submission.`,
          },
        ],
  );
  const told = whatTells(query.question);
  if (told !== null) {
    const detail = `The question holds a size or a direction ("${told}"). Name the specimens to look at, never how far off they are or in which direction.`;
    faults.push({ pointer: '/query/question', code: 'question_tells_figures', detail });
  }
  throwAny(faults);
}

function throwAny(faults: readonly InputFault[]): void {
  if (faults.length > 0) throw notValid(faults);
}
