import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { Clock } from '../../platform/clock/clock.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/database.js';
import { Problem } from '../../platform/errors/problem.js';
import type { InputFault } from '../../platform/errors/problem.js';
import type { Actor } from '../../platform/http/access.js';
import { ExamineSubmissions } from '../examine/examine-submissions.js';
import { isBlocked, toRecord } from '../examine/examined-submission.js';
import type { SubmissionRecord } from '../examine/examined-submission.js';
import { SpooledFile } from '../intake/spooled-file.js';
import { blockingFaults } from '../examine/blocking-faults.js';
import type { Intake } from '../intake/intake.js';
import { IntakeTally, refusal } from '../intake/intake-tally.js';
import { referenceOf } from '../submission.js';
import { oneAhead } from './one-ahead.js';
import { RequireFirst } from './require-first.js';
import { RequireRigsAsSeen } from './require-rigs-as-seen.js';
import { submissionProblems } from '../submissions.errors.js';
import { EditionsStore } from '../../editions/editions.store.js';
import { SubmissionsStore } from '../submissions.store.js';

export interface HandedIn {
  readonly references: readonly string[];
  /** Faults of what was not stored; only where good ones may be stored without the others. */
  readonly refused: readonly InputFault[];
  /** How many there are; more than listed in a file with more than anybody reads. */
  readonly refusedFaults: number;
}

/**
 * Takes what a tester hands in: read, computed, checked, and on record as first revisions. All of it or nothing, unless asked otherwise.
 * What was examined waits on disk until all of it was: the record is locked for no longer than the storing takes.
 */
@Injectable()
export class HandInSubmissions {
  constructor(
    private readonly examine: ExamineSubmissions,
    private readonly store: SubmissionsStore,
    private readonly editions: EditionsStore,
    private readonly requireRigsAsSeen: RequireRigsAsSeen,
    private readonly requireFirst: RequireFirst,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, intake: Intake, isPartial: boolean): Promise<HandedIn> {
    const found = new IntakeTally();
    const records = await SpooledFile.of(this.examined(actor, intake, found));
    try {
      const { faults, blocking, good } = found;
      // What is said of a submission that may lack rows would mislead.
      if (!found.isSound) throw refusal(faults);
      const isWell = faults.count + blocking.count === 0;
      if (good.size === 0 || !(isWell || isPartial)) throw refusal(faults, blocking);
      const references = await this.requireFirst.run(found.digests, () =>
        this.database.transaction((tx) => this.put(tx, actor, records, found)),
      );
      return { references, refused: [...faults.faults, ...blocking.faults], refusedFaults: faults.count + blocking.count };
    } finally {
      await records.close();
    }
  }

  /** Records of the good ones, a line a batch. */
  private async *examined(actor: Actor, intake: Intake, found: IntakeTally): AsyncGenerator<Buffer> {
    for await (const { examined, faults } of this.examine.inTurn(actor, intake.handIns)) {
      found.faults.add(faults);
      const good: SubmissionRecord[] = [];
      for (const one of examined) {
        if (isBlocked(one)) {
          found.blocking.add(blockingFaults(one));
          continue;
        }
        found.count(one);
        good.push(toRecord(one));
      }
      yield Buffer.from(`${JSON.stringify(good)}\n`);
    }
    const { faults, furtherFaults, isSound } = intake.unread();
    found.faults.add(faults, furtherFaults);
    found.isSound = isSound;
  }

  private async put(tx: Transaction, actor: Actor, records: SpooledFile, { good, rigsSeen }: IntakeTally): Promise<string[]> {
    const createdAt = this.clock.now();
    const next = new Map<string, { readonly slug: string; number: number }>();
    for (const [id, { slug, count }] of good) {
      const number = await this.editions.takeNumbers(tx, id, count);
      if (number === null) throw new Problem(submissionProblems['submissions/edition-closed'], `Edition ${slug} is not open any more.`);
      next.set(id, { slug, number });
    }
    const references: string[] = [];
    const take = (editionId: string): string => {
      const place = next.get(editionId);
      if (!place) throw new Error(`No numbers were taken of edition ${editionId}.`);
      return referenceOf(place.slug, place.number++);
    };
    await oneAhead(records.lines(), async (line) => {
      const batch = new Map((JSON.parse(line) as SubmissionRecord[]).map((record) => [take(record.editionId), record]));
      references.push(...batch.keys());
      await this.store.create(tx, { testerId: actor.accountId, createdAt }, batch);
      await this.tell(tx, actor, [...batch.keys()]);
    });
    await this.requireRigsAsSeen.run(tx, rigsSeen);
    return references;
  }

  private async tell(tx: Transaction, actor: Actor, references: readonly string[]): Promise<void> {
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
  }
}
