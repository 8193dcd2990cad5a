/** What an acceptance must say: of held findings, and of specimens that are set aside. Pure. */
import { notValid } from '../platform/http/validation.js';
import type { SubmissionUnderReview } from './submission-under-review.js';

export interface SettingAside {
  readonly specimen: number;
  readonly reason: string;
}

export interface Resolution {
  readonly finding: string;
  readonly words: string;
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
  const faults = [...unanswered, ...strange];
  if (faults.length > 0) throw notValid(faults);
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
  if (faults.length > 0) throw notValid(faults);
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
