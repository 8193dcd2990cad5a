import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import type { InputFault } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { ExamineSubmissions } from './examine-submissions.js';
import { isBlocked } from './examined-submission.js';
import type { ExaminedSubmission } from './examined-submission.js';
import { blockingFaults, refusal, sortOut } from './intake.js';
import type { Intake } from './intake.js';
import { referenceOf } from './submission.js';
import { RequireRigsAsSeen } from './require-rigs-as-seen.js';
import { submissionProblems } from './submissions.errors.js';
import { SubmissionsStore } from './submissions.store.js';
import type { NewSubmission } from './submissions.store.js';

export interface HandedIn {
  readonly references: readonly string[];
  /** Faults of what was not stored; only where good ones may be stored without the others. */
  readonly refused: readonly InputFault[];
}

/** Takes what a tester hands in: read, computed, checked, and on record as first revisions. All of it or nothing, unless asked otherwise. */
@Injectable()
export class HandInSubmissions {
  constructor(
    private readonly examine: ExamineSubmissions,
    private readonly store: SubmissionsStore,
    private readonly requireRigsAsSeen: RequireRigsAsSeen,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, intake: Intake, isPartial: boolean): Promise<HandedIn> {
    const examinations = await this.examine.run(
      actor,
      intake.handIns.map(({ content }) => content),
    );
    const { sorted, faults } = sortOut(intake, examinations);
    const blocking = sorted.flatMap(blockingFaults);
    const good = sorted.map(({ examined }) => examined).filter((examined) => !isBlocked(examined));
    const isWell = faults.length === 0 && good.length === sorted.length;
    if (good.length === 0 || !(isWell || isPartial)) throw refusal(faults, blocking, intake.furtherFaults);
    const references = await this.database.transaction((tx) => this.put(tx, actor, good));
    return { references, refused: [...faults, ...blocking] };
  }

  private async put(tx: Transaction, actor: Actor, good: readonly ExaminedSubmission[]): Promise<string[]> {
    const createdAt = this.clock.now();
    const submissions: NewSubmission[] = [];
    for (const [{ id, slug }, ofEdition] of Map.groupBy(good, ({ subject }) => subject.edition)) {
      const first = await this.store.takeNumbers(tx, id, ofEdition.length);
      if (first === null) throw new Problem(submissionProblems['submissions/edition-closed'], `Edition ${slug} is not open any more.`);
      submissions.push(
        ...ofEdition.map((examined, index) => ({
          reference: referenceOf(slug, first + index),
          testerId: actor.accountId,
          createdAt,
          examined,
        })),
      );
    }
    await this.store.create(tx, submissions);
    await this.requireRigsAsSeen.run(tx, good);
    const references = submissions.map(({ reference }) => reference);
    const event = {
      actorId: actor.accountId,
      action: 'submission.handedIn',
      objectType: 'submission',
      after: { state: 'submitted', revision: 1 },
    };
    await this.audit.recordAll(
      tx,
      references.map((reference) => ({ ...event, objectId: reference })),
    );
    return references;
  }
}
