import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/http/access.js';
import { ExamineSubmissions } from './examine-submissions.js';
import { isBlocked } from './examined-submission.js';
import type { ExaminedSubmission } from './examined-submission.js';
import { FaultTally, refusal } from './intake-tally.js';
import type { Intake } from './intake.js';
import { toTesterFinding } from './submission-view.js';
import type { PreviewResponse } from './submissions.schemas.js';

/** Shows a tester the figures and findings of what is about to be handed in; stores nothing. */
@Injectable()
export class PreviewSubmissions {
  constructor(private readonly examine: ExamineSubmissions) {}

  async run(actor: Actor, intake: Intake): Promise<PreviewResponse[]> {
    const previews: PreviewResponse[] = [];
    const found = new FaultTally();
    for await (const { examined, faults } of this.examine.inTurn(actor, intake.handIns)) {
      found.add(faults);
      previews.push(...examined.map(toPreview));
    }
    const { faults, furtherFaults } = intake.unread();
    found.add(faults, furtherFaults);
    if (found.count > 0) throw refusal(found);
    return previews;
  }
}

const toPreview = (examined: ExaminedSubmission): PreviewResponse => ({
  edition: examined.subject.edition.slug,
  spool: examined.subject.spool.blindCode,
  method: { slug: examined.subject.method.slug, number: examined.subject.method.number },
  benchDay: examined.content.benchDay,
  rows: examined.rows && { first: examined.rows[0], last: examined.rows[1] },
  isBlocked: isBlocked(examined),
  figures: { ...examined.figures },
  findings: examined.findings.flatMap((finding) => toTesterFinding(null, finding)),
});
