import { Injectable } from '@nestjs/common';
import { CHECK_SET_VERSION } from '../checks/check-list.js';
import type { Transaction } from '../platform/database/database.js';
import { Prisma } from '../platform/database/generated/client.js';
import { uuid7 } from '../platform/identifiers/uuid7.js';
import { toInstrumentColumns, toRevisionColumns, toSubmissionColumns } from './examined-submission.js';
import type { ExaminedSubmission } from './examined-submission.js';
import type { Naming, Subject } from './subject.js';
import type { LockedSubmission, SubmissionState } from './submission.js';

export interface NewSubmission {
  readonly reference: string;
  readonly testerId: string;
  readonly createdAt: Date;
  readonly examined: ExaminedSubmission;
}

export interface NewRevision {
  readonly submissionId: string;
  readonly number: number;
  readonly handedInAt: Date;
  readonly examined: ExaminedSubmission;
}

export interface NewDraft {
  readonly reference: string;
  readonly testerId: string;
  readonly createdAt: Date;
  readonly subject: Subject;
  readonly draft: Naming & { readonly benchDay: string };
}

/** With what is typed so far, where it is a draft. */
export type LockedDraft = LockedSubmission & { readonly draft: unknown };

const MOST_DRAFT_SAVES = 50;

const toJson = (value: object): Prisma.InputJsonValue => JSON.parse(JSON.stringify(value)) as Prisma.InputJsonValue;

/** The only writer of submissions, their drafts and revisions; what follows a decision is written by the reviews' store. */
@Injectable()
export class SubmissionsStore {
  /**
   * Takes running numbers of an open edition. The row's lock, held to the end of the transaction, lets nobody take the same and
   * nobody close the edition meanwhile.
   * @returns the first of the numbers; null when the edition is not open
   */
  async takeNumbers(tx: Transaction, editionId: string, count: number): Promise<number | null> {
    const rows = await tx.$queryRaw<{ last: number }[]>`
      UPDATE "edition" SET "submissions_numbered" = "submissions_numbered" + ${count}
      WHERE "id" = ${editionId}::uuid AND "state" = 'open' RETURNING "submissions_numbered" AS "last"`;
    return rows[0] ? rows[0].last - count + 1 : null;
  }

  /** Whether the edition is open, and stays so to the end of the transaction. */
  async holdOpen(tx: Transaction, editionId: string): Promise<boolean> {
    const rows = await tx.$queryRaw<unknown[]>`SELECT 1 FROM "edition" WHERE "id" = ${editionId}::uuid AND "state" = 'open' FOR SHARE`;
    return rows.length > 0;
  }

  /** Locks a submission's row; null when there is none. */
  async lock(tx: Transaction, reference: string): Promise<LockedDraft | null> {
    const rows = await tx.$queryRaw<{ id: string }[]>`SELECT "id"::text FROM "submission" WHERE "reference" = ${reference} FOR UPDATE`;
    if (!rows[0]) return null;
    const row = await tx.submission.findUniqueOrThrow({ where: { id: rows[0].id } });
    return { ...row, state: row.state as SubmissionState };
  }

  async hasOpenQuery(tx: Transaction, submissionId: string): Promise<boolean> {
    return (await tx.query.count({ where: { submissionId, answeredAt: null } })) > 0;
  }

  /** Stores first revisions with their submissions: one statement per table, however many they are. */
  async create(tx: Transaction, submissions: readonly NewSubmission[]): Promise<void> {
    const withIds = submissions.map((submission) => ({ id: uuid7(), ...submission }));
    await tx.submission.createMany({
      data: withIds.map(({ examined, ...row }) => ({
        ...row,
        editionId: examined.subject.edition.id,
        ...toSubmissionColumns(examined),
        state: 'submitted',
        revision: 1,
      })),
    });
    await this.addRevisions(
      tx,
      withIds.map(({ id, createdAt, examined }) => ({ submissionId: id, number: 1, handedInAt: createdAt, examined })),
    );
  }

  async addRevisions(tx: Transaction, revisions: readonly NewRevision[]): Promise<void> {
    const withIds = revisions.map((revision) => ({ id: uuid7(), ...revision }));
    await tx.submissionRevision.createMany({
      data: withIds.map(({ examined, ...row }) => ({
        ...row,
        ...toRevisionColumns(examined),
        figures: toJson(examined.figures),
        checkSetVersion: CHECK_SET_VERSION,
      })),
    });
    await tx.submissionInstrument.createMany({
      data: withIds.flatMap(({ id, examined }) => toInstrumentColumns(examined).map((instrument) => ({ revisionId: id, ...instrument }))),
    });
    await tx.finding.createMany({
      data: withIds.flatMap(({ id, examined }) =>
        examined.findings.map((finding) => ({
          id: uuid7(),
          revisionId: id,
          code: finding.code,
          severity: finding.severity,
          detail: toJson(finding),
        })),
      ),
    });
    await addSpecimens(tx, withIds);
  }

  /** A draft or a returned submission becomes submitted; what its next revision says of the bench day stands on the row too. */
  async handIn(tx: Transaction, id: string, examined: ExaminedSubmission): Promise<void> {
    const data = { ...toSubmissionColumns(examined), state: 'submitted', draft: Prisma.DbNull };
    await tx.submission.update({ where: { id }, data: { ...data, revision: { increment: 1 }, version: { increment: 1 } } });
  }

  async createDraft(tx: Transaction, { draft, subject, ...row }: NewDraft): Promise<void> {
    const columns = toSubmissionColumns({ content: draft, subject });
    await tx.submission.create({
      data: { ...row, ...columns, editionId: subject.edition.id, draft: toJson(draft), state: 'draft', id: uuid7() },
    });
  }

  /** Saves a draft; the one before goes to its history, of which the last fifty stay. */
  async saveDraft(tx: Transaction, before: LockedDraft, { draft, subject }: Pick<NewDraft, 'draft' | 'subject'>, at: Date): Promise<void> {
    const { id, version } = before;
    await tx.draftSave.create({ data: { submissionId: id, version, draft: toJson(before.draft as object), savedAt: at } });
    await tx.draftSave.deleteMany({ where: { submissionId: id, version: { lte: version - MOST_DRAFT_SAVES } } });
    await tx.submission.update({
      where: { id },
      data: { ...toSubmissionColumns({ content: draft, subject }), draft: toJson(draft), version: { increment: 1 } },
    });
  }

  async deleteDraft(tx: Transaction, id: string): Promise<void> {
    await tx.submission.delete({ where: { id } });
  }
}

/**
 * Specimens and readings travel as one text each: a file brings tens of thousands, and a statement with a parameter a cell took ten
 * times as long.
 */
async function addSpecimens(
  tx: Transaction,
  revisions: readonly { readonly id: string; readonly examined: ExaminedSubmission }[],
): Promise<void> {
  const specimens = revisions.flatMap(({ id, examined }) =>
    examined.specimens.map((specimen) => ({ id: uuid7(), revisionId: id, ...specimen })),
  );
  const readings = specimens.flatMap((specimen) =>
    specimen.readings.map((reading) => ({ id: uuid7(), specimenId: specimen.id, ...reading })),
  );
  await tx.$executeRaw`
    INSERT INTO "specimen" ("id", "revision_id", "number", "condition", "validity", "invalid_reason")
    SELECT "id", "revisionId", "number", "condition", "state", "reason" FROM json_to_recordset(${JSON.stringify(specimens.map(({ readings: _, ...one }) => one))}::json)
      AS r("id" uuid, "revisionId" uuid, "number" int, "condition" text, "state" text, "reason" text)`;
  await tx.$executeRaw`
    INSERT INTO "reading" ("id", "specimen_id", "role", "station", "entered_text", "entered_unit", "value_si")
    SELECT "id", "specimenId", "role", "station", "enteredText", "enteredUnit", "valueSi" FROM json_to_recordset(${JSON.stringify(readings)}::json)
      AS r("id" uuid, "specimenId" uuid, "role" text, "station" int, "enteredText" text, "enteredUnit" text, "valueSi" numeric)`;
}
