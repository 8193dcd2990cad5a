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
import { blockingFaults } from '../examine/blocking-faults.js';
import { BATCH_SPECIMENS } from '../intake/intake.js';
import type { Intake } from '../intake/intake.js';
import { IntakeTally } from '../intake/intake-tally.js';
import { referenceOf } from '../submission.js';
import { ExaminedBatches } from './examined-batches.js';
import type { Batch, Waiting } from './examined-batches.js';
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

interface ToStore {
  readonly actor: Actor;
  readonly at: Date;
  readonly spool: SpooledFile;
  readonly batches: ExaminedBatches;
  readonly found: IntakeTally;
  readonly isPartial: boolean;
}

/** Files that are stored while they are examined at one time: each holds a connection meanwhile. */
const MOST_AT_ONCE = 2;
/** The longest file takes minutes on a slow machine. */
const STORED_WITHIN_MS = 600_000;

/**
 * Takes what a tester hands in: read, computed, checked, and on record as first revisions. All of it or nothing, unless asked otherwise.
 * Of a long file what was examined is stored while the rest is examined: revisions with their specimens, which nobody waits for. The numbers
 * of the edition, submissions and instruments, which others do, follow when all of it was.
 */
@Injectable()
export class HandInSubmissions {
  private storedMeanwhile = 0;

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
      const batches = new ExaminedBatches(this.examined(actor, intake, found, spool, at), (work) => this.database.apart(work));
      const references = await this.meanwhileOrAfter(batches, () =>
        this.requireFirst.run(found.digests, () =>
          this.database.transaction((tx) => this.put(tx, { actor, at, spool, batches, found, isPartial }), STORED_WITHIN_MS),
        ),
      );
      const { faults, blocking } = found;
      return { references, refused: [...faults.faults, ...blocking.faults], refusedFaults: faults.count + blocking.count };
    } finally {
      await spool.close();
    }
  }

  /** Lets a long file be stored while it is examined, if not so many are already. */
  private async meanwhileOrAfter<Stored>(batches: ExaminedBatches, store: () => Promise<Stored>): Promise<Stored> {
    if (!(await batches.areMany()) || this.storedMeanwhile >= MOST_AT_ONCE) {
      await batches.examineAll();
      return store();
    }
    this.storedMeanwhile++;
    try {
      return await store();
    } finally {
      this.storedMeanwhile--;
    }
  }

  /** The good ones, a batch at a time. */
  private async *examined(actor: Actor, intake: Intake, found: IntakeTally, spool: SpooledFile, at: Date): AsyncGenerator<Batch, void> {
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
      yield this.spooled(spool, at, good);
    }
    const { faults, furtherFaults, isSound } = intake.unread();
    found.faults.add(faults, furtherFaults);
    found.isSound = isSound;
  }

  private async spooled(spool: SpooledFile, handedInAt: Date, records: readonly SubmissionRecord[]): Promise<Batch> {
    const byId = new Map(records.map((record) => [uuid7(), record]));
    const heads = [...byId].map(([id, { editionId, submission }]) => ({ id, editionId, ...submission }));
    const { revisions, instruments } = this.store.revisionRows({ number: 1, handedInAt }, byId);
    const wait = async ({ statement, bytes }: TableRows): Promise<Waiting> => ({ statement, piece: await spool.add(bytes) });
    const waiting: Waiting[] = [];
    for (const rows of revisions) waiting.push(await wait(rows));
    const isFull = records.reduce((sum, { specimens }) => sum + specimens.length, 0) >= BATCH_SPECIMENS;
    return { heads, revisions: waiting, instruments: await wait(instruments), isFull };
  }

  private async put(tx: Transaction, { actor, at, spool, batches, found, isPartial }: ToStore): Promise<string[]> {
    const insert = async (waiting: readonly Waiting[]): Promise<void> => {
      for (const { statement, piece } of waiting) await insertRows(tx, { statement, bytes: await spool.piece(piece) });
    };
    let inserted = Promise.resolve();
    const all: Batch[] = [];
    for await (const batch of batches) {
      all.push(batch);
      if (found.isWell || isPartial) inserted = inserted.then(() => insert(batch.revisions));
      // Told below, once all is examined.
      inserted.catch(() => undefined);
    }
    await inserted;
    found.require(isPartial);
    const heads = await this.withReferences(
      tx,
      found,
      all.flatMap((batch) => batch.heads),
    );
    const references = [...heads.keys()];
    await this.store.create(tx, { testerId: actor.accountId, createdAt: at }, heads);
    await insert(all.map(({ instruments }) => instruments));
    await this.tell(tx, actor, references);
    await this.requireRigsAsSeen.run(tx, found.rigsSeen);
    return references;
  }

  private async withReferences(
    tx: Transaction,
    { good }: IntakeTally,
    heads: readonly SubmissionHead[],
  ): Promise<Map<string, SubmissionHead>> {
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
    return new Map(heads.map((head) => [take(head.editionId), head]));
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
