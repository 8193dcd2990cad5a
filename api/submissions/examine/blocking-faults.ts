import { findingForTester } from '../../checks/finding.js';
import type { InputFault } from '../../platform/errors/problem.js';
import type { ExaminedSubmission } from './examined-submission.js';

/** Findings that block, as faults: a tester reads what is safe to know. */
export const blockingFaults = ({ findings, locate }: ExaminedSubmission): InputFault[] =>
  findings.flatMap((finding) => {
    const safe = finding.severity === 'blocks' ? findingForTester(finding) : null;
    return safe ? [locate({ pointer: finding.pointer ?? '', code: safe.code, detail: safe.message })] : [];
  });
