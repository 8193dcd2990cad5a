import { Injectable } from '@nestjs/common';
import { DecisionsReadModel } from '../../decisions/decisions.read-model.js';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { Clock } from '../../platform/clock/clock.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/database.js';
import { Problem } from '../../platform/errors/problem.js';
import type { Actor } from '../../platform/http/access.js';
import { requireSameVersion } from '../../platform/http/headers/if-match.js';
import { notValid } from '../../platform/http/validation.js';
import { ExamineSubmissions } from '../examine/examine-submissions.js';
import { isBlocked, toRecord } from '../examine/examined-submission.js';
import type { ExaminedSubmission } from '../examine/examined-submission.js';
import { blockingFaults } from '../examine/blocking-faults.js';
import { onlyOne } from '../intake/only-one.js';
import type { Intake } from '../intake/intake.js';
import { FaultTally, refusal } from '../intake/intake-tally.js';
import { subjectChanges } from '../examine/subject.js';
import { requireOwn } from '../submission.js';
import type { LockedSubmission } from '../submission.js';
import { RequireFirst } from './require-first.js';
import { RequireRigsAsSeen } from './require-rigs-as-seen.js';
import { submissionProblems } from '../submissions.errors.js';
import { EditionsStore } from '../../editions/editions.store.js';
import { SubmissionsStore } from '../submissions.store.js';

/** Hands in a draft, or a returned submission again: its own tester, the question answered, as the next revision. */
@Injectable()
export class HandInRevision {
  constructor(
    private readonly examine: ExamineSubmissions,
    private readonly store: SubmissionsStore,
    private readonly decisions: DecisionsReadModel,
    private readonly editions: EditionsStore,
    private readonly requireRigsAsSeen: RequireRigsAsSeen,
    private readonly requireFirst: RequireFirst,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, reference: string, version: number, intake: Intake): Promise<void> {
    const handIn = await onlyOne(intake);
    const seen = await this.database.transaction((tx) => this.open(tx, actor, reference, version));
    const [examination] = await this.examine.run(actor, [handIn], { ownId: seen.id });
    if (!examination || 'faults' in examination) throw notValid(examination?.faults ?? []);
    const changes = subjectChanges(seen, examination.subject);
    if (changes.length > 0) throw notValid(changes.map(handIn.locate));
    if (isBlocked(examination)) throw refusal(new FaultTally(), FaultTally.of(blockingFaults(examination)));
    await this.requireFirst.run([examination.contentDigest], () =>
      this.database.transaction(async (tx) => {
        const submission = await this.open(tx, actor, reference, version);
        await this.put(tx, actor, submission, examination);
      }),
    );
  }

  private async open(tx: Transaction, actor: Actor, reference: string, version: number): Promise<LockedSubmission> {
    const submission = requireOwn(actor, await this.store.lock(tx, reference), reference, 'handIn');
    requireSameVersion(submission.version, version);
    if (await this.decisions.hasOpenQuery(submission.id)) throw new Problem(submissionProblems['submissions/query-open']);
    return submission;
  }

  private async put(tx: Transaction, actor: Actor, submission: LockedSubmission, examined: ExaminedSubmission): Promise<void> {
    const { id, reference, state, benchDay } = submission;
    if (!(await this.editions.holdOpen(tx, submission.editionId))) throw new Problem(submissionProblems['submissions/edition-closed']);
    const number = submission.revision + 1;
    await this.store.handIn(tx, id, examined);
    await this.store.addRevisions(tx, { number, handedInAt: this.clock.now() }, new Map([[id, toRecord(examined)]]));
    await this.requireRigsAsSeen.run(tx, examined.rigRecords);
    await this.audit.record(tx, {
      actorId: actor.accountId,
      action: 'submission.handedIn',
      objectType: 'submission',
      objectId: reference,
      before: { state, revision: submission.revision, benchDay: benchDay.toISOString().slice(0, 10) },
      after: { state: 'submitted', revision: number, benchDay: examined.content.benchDay },
    });
  }
}
