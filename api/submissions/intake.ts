import { findingForTester } from '../checks/finding.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { InputFault } from '../platform/errors/problem.js';
import type { Examination } from './examine-submissions.js';
import type { ExaminedSubmission } from './examined-submission.js';
import type { SubmissionContent } from './submission-content.js';
import { submissionProblems } from './submissions.errors.js';

/** One submission on its way in, and how a fault of it is told: for a file, by row and column. */
export interface HandIn {
  readonly content: SubmissionContent;
  readonly rows: readonly [number, number] | null;
  readonly locate: (fault: InputFault) => InputFault;
}

/** What came with one request: submissions that could be read, and the faults of those that could not. */
export interface Intake {
  readonly isFile: boolean;
  readonly handIns: readonly HandIn[];
  readonly faults: readonly InputFault[];
  /** How many more faults the file has than are listed. */
  readonly furtherFaults: number;
}

/** A submission that was examined, with the rows that it stood in. */
export interface SortedSubmission {
  readonly handIn: HandIn;
  readonly examined: ExaminedSubmission;
}

/** Faults listed in one answer; a file can have more than anybody reads. */
const MOST_FAULTS = 5000;

/** Findings that block, as faults: a tester reads what is safe to know. */
export const blockingFaults = ({ handIn, examined }: SortedSubmission): InputFault[] =>
  examined.findings.flatMap((finding) => {
    const safe = finding.severity === 'blocks' ? findingForTester(finding) : null;
    return safe ? [handIn.locate({ pointer: finding.pointer ?? '', code: safe.code, detail: safe.message })] : [];
  });

/** Parts what can be used from what cannot, with every fault in the order of the rows. */
export function sortOut(
  { handIns, faults }: Intake,
  examinations: readonly Examination[],
): { sorted: SortedSubmission[]; faults: InputFault[] } {
  const sorted: SortedSubmission[] = [];
  const found = [...faults];
  examinations.forEach((examination, index) => {
    const handIn = handIns[index];
    if (!handIn) throw new Error(`sortOut: examination ${index} belongs to none of ${handIns.length} submissions.`);
    if ('faults' in examination) found.push(...examination.faults.map(handIn.locate));
    else sorted.push({ handIn, examined: examination });
  });
  return { sorted, faults: found.sort((one, other) => (one.row ?? 0) - (other.row ?? 0)) };
}

/** The 422 for input that cannot be used, or that checks block; nothing was stored. */
export function refusal(faults: readonly InputFault[], blocking: readonly InputFault[], furtherFaults = 0): Problem {
  const all = [...faults, ...blocking];
  const kind = faults.length > 0 ? platformProblems['request/not-valid'] : submissionProblems['submissions/blocked'];
  const total = all.length + furtherFaults;
  const count = total === 1 ? '1 fault' : `${total} faults`;
  const listedCount = Math.min(all.length, MOST_FAULTS);
  const listed = total > listedCount ? `; the first ${listedCount} are listed` : '';
  return new Problem(kind, `${count} found${listed}; nothing was stored.`, all.slice(0, MOST_FAULTS));
}
