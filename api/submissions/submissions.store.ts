import { Injectable } from '@nestjs/common';
import { CHECK_SET_VERSION } from '../checks/check-list.js';
import { FindingsStore } from '../findings/findings.store.js';
import type { Transaction } from '../platform/database/database.js';
import { insertRows, tableRows } from '../platform/database/insert-rows.js';
import type { TableRows } from '../platform/database/insert-rows.js';
import { Prisma } from '../platform/database/generated/client.js';
import { uuid7 } from '../platform/identifiers/uuid7.js';
import { toSubmissionColumns } from './examine/examined-submission.js';
import type { ExaminedSubmission, SubmissionRecord } from './examine/examined-submission.js';
import type { Subject } from './examine/subject.js';
import type { LockedSubmission } from './submission.js';
import type { DraftContent } from '../contract/endpoints/drafts.js';
import type { SubmissionState } from '../contract/submission-states.js';

/** With what is typed so far, where it is a draft. */
export type LockedDraft = LockedSubmission & { readonly draft: unknown };

/** A submission's own row, but for its reference and who handed it in. */
export type SubmissionHead = { readonly id: string; readonly editionId: string } & SubmissionRecord['submission'];

interface StandingRevision {
  readonly id: string;
  readonly specimens: readonly { readonly id: string; readonly number: number; readonly validity: string }[];
}

interface RevisionHead {
  readonly number: number;
  readonly handedInAt: Date;
}

const MOST_DRAFT_SAVES = 50;

const toJson = (value: object): Prisma.InputJsonValue => JSON.parse(JSON.stringify(value)) as Prisma.InputJsonValue;

const withBenchDay = <Columns extends { readonly benchDay: string }>(columns: Columns) => ({
  ...columns,
  benchDay: new Date(columns.benchDay),
});

/** The only writer of submissions, their drafts and revisions. */
@Injectable()
export class SubmissionsStore {
  constructor(private readonly findings: FindingsStore) {}

  /** Locks a submission's row; null when there is none. */
  async lock(tx: Transaction, reference: string): Promise<LockedDraft | null> {
    const [row] = await tx.$queryRaw<LockedDraft[]>`
      SELECT "id"::text, "reference", "edition_id"::text AS "editionId", "tester_id"::text AS "testerId", "spool_id"::text AS "spoolId",
        "method_version_id"::text AS "methodVersionId", "bench_day" AS "benchDay", "state", "revision", "version", "draft"
      FROM "submission" WHERE "reference" = ${reference} FOR UPDATE`;
    return row ?? null;
  }

  /** The revision of a locked submission that stands, with its specimens by number. */
  async standing(tx: Transaction, { id, revision }: LockedSubmission): Promise<StandingRevision> {
    const rows = await tx.$queryRaw<(StandingRevision['specimens'][number] & { readonly revisionId: string })[]>`
      SELECT r."id"::text AS "revisionId", c."id"::text, c."number", c."validity"
      FROM "submission_revision" r JOIN "specimen" c ON c."revision_id" = r."id"
      WHERE r."submission_id" = ${id}::uuid AND r."number" = ${revision} ORDER BY c."number"`;
    const revisionId = rows[0]?.revisionId;
    if (revisionId === undefined)
      throw new Error(`Submission ${id} has no revision ${revision} with specimens; expected the one that it names.`);
    return { id: revisionId, specimens: rows.map(({ id: specimen, number, validity }) => ({ id: specimen, number, validity })) };
  }

  /**
   * Stores submissions that are handed in for the first time; their first revisions are stored before or after them.
   * @param records by the references that they get
   */
  async create(
    tx: Transaction,
    { testerId, createdAt }: { readonly testerId: string; readonly createdAt: Date },
    records: ReadonlyMap<string, SubmissionHead>,
  ): Promise<void> {
    const handedIn = { testerId, createdAt, state: 'submitted', revision: 1 };
    await insertRows(
      tx,
      tableRows(
        'submission',
        [...records].map(([reference, head]) => ({ ...head, reference, ...handedIn })),
      ),
    );
  }

  /** @param records by the ids of their submissions */
  async addRevisions(tx: Transaction, revision: RevisionHead, records: ReadonlyMap<string, SubmissionRecord>): Promise<void> {
    const { revisions, instruments } = this.revisionRows(revision, records);
    for (const rows of [...revisions, instruments]) await insertRows(tx, rows);
  }

  /**
   * Rows of revisions and of all that belongs to them, in the order in which the tables take them. All but their instruments may be stored
   * before the submissions: naming an instrument makes others wait.
   * @param records by the ids of their submissions
   */
  revisionRows(revision: RevisionHead, records: ReadonlyMap<string, SubmissionRecord>): { revisions: TableRows[]; instruments: TableRows } {
    const withIds = [...records].map(([submissionId, record]) => ({ id: uuid7(), submissionId, ...revision, record }));
    const specimens = withIds.flatMap(({ id, record }) =>
      record.specimens.map((specimen) => ({ id: uuid7(), revisionId: id, ...specimen })),
    );
    const revisions = [
      tableRows(
        'submission_revision',
        withIds.map(({ record, ...row }) => ({ ...row, ...record.revision, checkSetVersion: CHECK_SET_VERSION })),
      ),
      this.findings.rows(withIds.flatMap(({ id, record }) => record.findings.map((finding) => ({ revisionId: id, finding })))),
      tableRows(
        'specimen',
        specimens.map(({ id, revisionId, number, condition, state, reason }) => ({
          id,
          revisionId,
          number,
          condition,
          validity: state,
          invalidReason: reason,
        })),
      ),
      tableRows(
        'reading',
        specimens.flatMap(({ id, readings }) => readings.map(({ siUnit: _, ...reading }) => ({ id: uuid7(), specimenId: id, ...reading }))),
      ),
    ];
    const instruments = tableRows(
      'submission_instrument',
      withIds.flatMap(({ id, record }) => record.instruments.map((instrument) => ({ revisionId: id, ...instrument }))),
    );
    return { revisions, instruments };
  }

  /** A draft or a returned submission becomes submitted; what its next revision says of the bench day stands on the row too. */
  async handIn(tx: Transaction, id: string, examined: ExaminedSubmission): Promise<void> {
    const data = {
      ...withBenchDay(toSubmissionColumns(examined)),
      state: 'submitted',
      draft: Prisma.DbNull,
      contentDigest: examined.contentDigest,
    };
    await tx.submission.update({ where: { id }, data: { ...data, revision: { increment: 1 }, version: { increment: 1 } } });
  }

  /** Moves a submission to what was decided about it. */
  moveTo(tx: Transaction, id: string, state: SubmissionState) {
    return tx.submission.update({ where: { id }, data: { state, version: { increment: 1 } }, select: { state: true, version: true } });
  }

  /** Something was added to a submission: who read it before reads it again. */
  async touch(tx: Transaction, id: string): Promise<void> {
    await tx.submission.update({ where: { id }, data: { version: { increment: 1 } } });
  }

  async takeBack(tx: Transaction, id: string): Promise<void> {
    await tx.submission.update({ where: { id }, data: { state: 'takenBack', version: { increment: 1 } } });
  }

  /** How many drafts somebody has begun in an edition and not handed in. */
  async countDrafts(tx: Transaction, editionId: string, testerId: string): Promise<number> {
    return tx.submission.count({ where: { editionId, testerId, state: 'draft' } });
  }

  async createDraft(
    tx: Transaction,
    row: { readonly reference: string; readonly testerId: string; readonly createdAt: Date },
    subject: Subject,
    draft: DraftContent,
  ): Promise<void> {
    const columns = withBenchDay(toSubmissionColumns({ content: draft, subject }));
    await tx.submission.create({
      data: { ...row, ...columns, editionId: subject.edition.id, draft: toJson(draft), state: 'draft', id: uuid7() },
    });
  }

  /** Saves a draft; the one before goes to its history, of which the last fifty stay. */
  async saveDraft(tx: Transaction, before: LockedDraft, subject: Subject, draft: DraftContent, at: Date): Promise<void> {
    const { id, version } = before;
    await tx.draftSave.create({ data: { submissionId: id, version, draft: toJson(before.draft as object), savedAt: at } });
    await tx.draftSave.deleteMany({ where: { submissionId: id, version: { lte: version - MOST_DRAFT_SAVES } } });
    await tx.submission.update({
      where: { id },
      data: { ...withBenchDay(toSubmissionColumns({ content: draft, subject })), draft: toJson(draft), version: { increment: 1 } },
    });
  }

  async deleteDraft(tx: Transaction, id: string): Promise<void> {
    await tx.submission.delete({ where: { id } });
  }
}
