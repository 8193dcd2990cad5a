import { Injectable } from '@nestjs/common';
import { SpoolRows } from '../../catalogue/spools/spool-rows.read-model.js';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { Clock } from '../../platform/clock/clock.js';
import { Database } from '../../platform/database/database.js';
import { normaliseBlindCode } from '../../contract/blind-code.js';
import type { InputFault } from '../../platform/errors/problem.js';
import type { Actor } from '../../platform/http/access.js';
import { ExamineSubmissions } from '../examine/examine-submissions.js';
import { isBlocked } from '../examine/examined-submission.js';
import type { ExaminedSubmission } from '../examine/examined-submission.js';
import { FaultTally, refusal } from '../intake/intake-tally.js';
import type { Intake } from '../intake/intake.js';
import type { HandIn } from '../intake/intake.js';
import { figuresForTester, toTesterFinding } from '../views/submission-view.js';
import { SpoolPreviewsStore } from './spool-previews.store.js';
import type { PreviewResponse } from '../../contract/endpoints/submissions.js';

/** Submissions of one spool by one method that one preview takes: who has more is looking for something else than their own slips. */
export const MOST_OF_ONE_SPOOL = 5;

/** Shows a tester the figures and findings of what is about to be handed in. Of it nothing is stored but how often: previews of each spool are counted. */
@Injectable()
export class PreviewSubmissions {
  constructor(
    private readonly examine: ExamineSubmissions,
    private readonly store: SpoolPreviewsStore,
    private readonly spools: SpoolRows,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, intake: Intake): Promise<PreviewResponse[]> {
    const previews: PreviewResponse[] = [];
    const found = new FaultTally();
    const counts = new Map<string, number>();
    for await (const { examined, faults } of this.examine.inTurn(actor, onlySoMany(intake.handIns, found, counts), true)) {
      found.add(faults);
      previews.push(...examined.map(toPreview));
    }
    const { faults, furtherFaults } = intake.unread();
    found.add(faults, furtherFaults);
    await this.count(actor, counts);
    if (found.count > 0) throw refusal(found);
    return previews;
  }

  /** Counts what was looked at, refused or not; the trail tells of the first preview of a spool and of each time that their number has doubled. */
  private async count(actor: Actor, counts: ReadonlyMap<string, number>): Promise<void> {
    const spools = [...(await this.spools.ids([...counts.keys()]))].sort(([one], [other]) => (one < other ? -1 : 1));
    const ofSpools = new Map(spools.map(([code, id]) => [id, counts.get(code) ?? 0]));
    await this.database.transaction(async (tx) => {
      const now = await this.store.count(tx, actor.accountId, ofSpools, this.clock.now());
      const looked = spools.map(([blindCode, id]) => ({ blindCode, count: now.get(id) ?? 0 }));
      const told = looked.filter(({ blindCode, count }) => doublings(count) > doublings(count - (counts.get(blindCode) ?? 0)));
      await this.audit.recordAll(
        tx,
        told.map(({ blindCode, count }) => ({
          actorId: actor.accountId,
          action: 'spool.previewed',
          objectType: 'spool',
          objectId: blindCode,
          after: { previews: count },
        })),
      );
    });
  }
}

const doublings = (count: number): number => (count === 0 ? -1 : Math.floor(Math.log2(count)));

const toPreview = (examined: ExaminedSubmission): PreviewResponse => ({
  edition: examined.subject.edition.slug,
  spool: examined.subject.spool.blindCode,
  method: { slug: examined.subject.method.slug, number: examined.subject.method.number },
  benchDay: examined.content.benchDay,
  rows: examined.rows && { first: examined.rows[0], last: examined.rows[1] },
  isBlocked: isBlocked(examined),
  figures: figuresForTester(examined.figures, examined.subject.method.parameters.areaFrom),
  findings: examined.findings.flatMap((finding) => toTesterFinding(null, finding)),
});

/**
 * Passes on what may be looked at; what is beyond it is a fault.
 * @param bySpool takes in how many are looked at of each spool
 */
async function* onlySoMany(handIns: AsyncIterable<HandIn>, found: FaultTally, bySpool: Map<string, number>): AsyncGenerator<HandIn> {
  const counts = new Map<string, number>();
  for await (const handIn of handIns) {
    const { spool, method } = handIn.content;
    const code = normaliseBlindCode(spool);
    bySpool.set(code, (bySpool.get(code) ?? 0) + 1);
    const key = JSON.stringify([code, method]);
    const count = (counts.get(key) ?? 0) + 1;
    counts.set(key, count);
    if (count <= MOST_OF_ONE_SPOOL) yield handIn;
    else if (count === MOST_OF_ONE_SPOOL + 1) found.add([handIn.locate(tooMany(spool, method))]);
  }
}

const tooMany = (spool: string, method: string): InputFault => ({
  pointer: '/spool',
  code: 'spool_too_often',
  detail: `More than ${MOST_OF_ONE_SPOOL} submissions of the spool ${spool} by ${method} in one preview. Leave out those that were not measured, or look at them in parts.`,
});
