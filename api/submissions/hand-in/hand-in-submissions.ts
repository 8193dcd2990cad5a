import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { Clock } from '../../platform/clock/clock.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/database.js';
import { insertRows } from '../../platform/database/insert-rows.js';
import type { TableRows } from '../../platform/database/insert-rows.js';
import { Problem } from '../../platform/errors/problem.js';
import type { InputFault } from '../../platform/errors/problem.js';
import type { Actor } from '../../platform/http/access.js';
import { uuid7 } from '../../platform/identifiers/uuid7.js';
import { ExamineSubmissions } from '../examine/examine-submissions.js';
import { isBlocked, toRecord } from '../examine/examined-submission.js';
import type { SubmissionRecord } from '../examine/examined-submission.js';
import { SpooledFile } from '../intake/spooled-file.js';
import type { Piece } from '../intake/spooled-file.js';
import { blockingFaults } from '../examine/blocking-faults.js';
import type { Intake } from '../intake/intake.js';
import { IntakeTally, refusal } from '../intake/intake-tally.js';
import { referenceOf } from '../submission.js';
import { RequireFirst } from './require-first.js';
import { RequireRigsAsSeen } from './require-rigs-as-seen.js';
import { submissionProblems } from '../submissions.errors.js';
import { EditionsStore } from '../../editions/editions.store.js';
import { SubmissionsStore } from '../submissions.store.js';
import type { SubmissionHead } from '../submissions.store.js';

export interface HandedIn {
  readonly references: readonly string[];
  /** Faults of what was not stored; only where good ones may be stored without the others. */
  readonly refused: readonly InputFault[];
  /** How many there are; more than listed in a file with more than anybody reads. */
  readonly refusedFaults: number;
}

/** Submissions that were examined together: their own rows, and where those of their first revisions wait. */
interface Batch {
  readonly heads: readonly SubmissionHead[];
  readonly rows: (Pick<TableRows, 'statement'> & { readonly piece: Piece })[];
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
    const spool = await SpooledFile.empty();
    try {
      const at = this.clock.now();
      const batches: Batch[] = [];
      for await (const records of this.examined(actor, intake, found)) batches.push(await this.spool(spool, at, records));
      const { faults, blocking, good } = found;
      // What is said of a submission that may lack rows would mislead.
      if (!found.isSound) throw refusal(faults);
      const isWell = faults.count + blocking.count === 0;
      if (good.size === 0 || !(isWell || isPartial)) throw refusal(faults, blocking);
      const references = await this.requireFirst.run(found.digests, () =>
        this.database.transaction((tx) => this.put(tx, actor, at, spool, batches, found)),
      );
      return { references, refused: [...faults.faults, ...blocking.faults], refusedFaults: faults.count + blocking.count };
    } finally {
      await spool.close();
    }
  }

  /** The good ones, a batch at a time. */
  private async *examined(actor: Actor, intake: Intake, found: IntakeTally): AsyncGenerator<SubmissionRecord[]> {
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
      yield good;
    }
    const { faults, furtherFaults, isSound } = intake.unread();
    found.faults.add(faults, furtherFaults);
    found.isSound = isSound;
  }

  private async spool(spool: SpooledFile, handedInAt: Date, records: readonly SubmissionRecord[]): Promise<Batch> {
    const byId = new Map(records.map((record) => [uuid7(), record]));
    const heads = [...byId].map(([id, { editionId, submission }]) => ({ id, editionId, ...submission }));
    const rows: Batch['rows'] = [];
    for (const { statement, bytes } of this.store.revisionRows({ number: 1, handedInAt }, byId))
      rows.push({ statement, piece: await spool.add(bytes) });
    return { heads, rows };
  }

  private async put(
    tx: Transaction,
    actor: Actor,
    createdAt: Date,
    spool: SpooledFile,
    batches: readonly Batch[],
    { good, rigsSeen }: IntakeTally,
  ): Promise<string[]> {
    const next = new Map<string, { readonly slug: string; number: number }>();
    for (const [id, { slug, count }] of good) {
      const number = await this.editions.takeNumbers(tx, id, count);
      if (number === null) throw new Problem(submissionProblems['submissions/edition-closed'], `Edition ${slug} is not open any more.`);
      next.set(id, { slug, number });
    }
    const take = (editionId: string): string => {
      const place = next.get(editionId);
      if (!place) throw new Error(`No numbers were taken of edition ${editionId}.`);
      return referenceOf(place.slug, place.number++);
    };
    const heads = new Map(batches.flatMap((batch) => batch.heads).map((head) => [take(head.editionId), head]));
    const references = [...heads.keys()];
    await this.store.create(tx, { testerId: actor.accountId, createdAt }, heads);
    for (const { statement, piece } of batches.flatMap(({ rows }) => rows))
      await insertRows(tx, { statement, bytes: await spool.piece(piece) });
    await this.tell(tx, actor, references);
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
