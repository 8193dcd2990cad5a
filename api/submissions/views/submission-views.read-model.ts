import { Injectable } from '@nestjs/common';
import { EditionRows } from '../../editions/edition-rows.read-model.js';
import { FindingsReadModel } from '../../findings/findings.read-model.js';
import { KeyReadings } from '../../audit/key-readings.store.js';
import { among } from '../../platform/database/by-id.js';
import { Database } from '../../platform/database/database.js';
import type { Prisma } from '../../platform/database/generated/client.js';
import type { Actor } from '../../platform/http/access.js';
import { platformProblems } from '../../platform/errors/platform.errors.js';
import { Problem } from '../../platform/errors/problem.js';
import { changesBetween, handedInCells } from './revision-changes.js';
import type { RevisionChange } from './revision-changes.js';
import { BesideSubmissions } from './beside-submissions.read-model.js';
import { RevisionParts } from './revision-parts.read-model.js';
import { SubmissionNames } from './submission-names.read-model.js';
import { DETAIL, SUMMARY, toDetail, toSummary } from './submission-rows.read-model.js';
import { toTesterFinding } from './submission-view.js';
import { noSubmission, seesAll } from '../submission.js';
import type { HandedInSummary, SubmissionResponse, SubmissionsQuery, SubmissionSummary } from '../../contract/endpoints/submissions.js';

/** Submissions as screens show them. A tester sees the own ones, and of findings what is safe to know. */
@Injectable()
export class SubmissionViewsReadModel {
  constructor(
    private readonly database: Database,
    private readonly names: SubmissionNames,
    private readonly parts: RevisionParts,
    private readonly beside: BesideSubmissions,
    private readonly findings: FindingsReadModel,
    private readonly editions: EditionRows,
    private readonly keyReadings: KeyReadings,
  ) {}

  /** Newest first; drafts are their tester's alone. */
  async list(
    actor: Actor,
    { state, edition, inDoubt, limit, cursor }: SubmissionsQuery,
  ): Promise<{ items: SubmissionSummary[]; nextCursor: string | null }> {
    const editionId = edition === undefined ? undefined : await this.editions.idOf(edition);
    if (editionId === null) return { items: [], nextCursor: null };
    const rows = await this.database.client.submission.findMany({
      where: {
        AND: [
          visibleTo(actor),
          state === undefined ? {} : { state },
          editionId === undefined ? {} : { editionId },
          inDoubt === undefined ? {} : IN_DOUBT,
          cursor === undefined ? {} : { id: { lt: cursor } },
        ],
      },
      include: SUMMARY,
      orderBy: { id: 'desc' },
      take: limit + 1,
    });
    const page = rows.slice(0, limit);
    const names = await this.names.of(page);
    return { items: page.map((row) => toSummary(row, names(row))), nextCursor: rows.length > limit ? (page.at(-1)?.id ?? null) : null };
  }

  /** What its tester has just handed in, with what the checks found, in the order of the references. */
  async handedIn(references: readonly string[]): Promise<HandedInSummary[]> {
    const rows = await this.database.client.submission.findMany({ where: { reference: among(references) }, include: SUMMARY });
    const names = await this.names.of(rows);
    const findings = await this.findings.ofRevisions(rows.flatMap(({ revisions }) => revisions.map(({ id }) => id)));
    const toFindings = (row: (typeof rows)[number]) =>
      row.revisions.flatMap(({ id }) => findings.get(id) ?? []).flatMap(({ id, detail }) => toTesterFinding(id, detail));
    const found = new Map(rows.map((row) => [row.reference, { ...toSummary(row, names(row)), findings: toFindings(row) }]));
    return references.flatMap((reference) => found.get(reference) ?? []);
  }

  /** One that the actor may see; else as if there were none. */
  async one(actor: Actor, reference: string): Promise<SubmissionResponse> {
    const [answer] = await this.details(actor, { AND: [{ reference }, visibleTo(actor)] });
    if (!answer) throw noSubmission(reference);
    return answer;
  }

  /** What an own draft was before, newest first. */
  async draftHistory(actor: Actor, reference: string) {
    const rows = await this.database.client.draftSave.findMany({
      where: { submission: { reference, testerId: actor.accountId, state: 'draft' } },
      orderBy: { version: 'desc' },
    });
    return rows.map(({ version, savedAt, draft }) => ({
      version,
      savedAt: savedAt.toISOString(),
      content: draft as Record<string, unknown>,
    }));
  }

  /** What a revision says otherwise than the one before; for whoever may see the submission. */
  async changes(actor: Actor, reference: string, number: number): Promise<RevisionChange[]> {
    await this.one(actor, reference);
    const revisions = await this.database.client.submissionRevision.findMany({
      where: { submission: { reference }, number: { in: [number - 1, number] } },
      orderBy: { number: 'asc' },
      include: {
        instruments: true,
        specimens: { include: { readings: { orderBy: [{ role: 'asc' }, { station: 'asc' }] } }, orderBy: { number: 'asc' } },
      },
    });
    const [before, after] = revisions;
    if (!before || !after) throw new Problem(platformProblems['request/not-found'], `${reference} has no revision ${number}.`);
    const parts = await this.parts.of(revisions);
    return changesBetween(handedInCells(before, parts(before)), handedInCells(after, parts(after)));
  }

  /** Submitted ones of other testers, longest waiting first. */
  async queue(actor: Actor, limit: number, cursor?: string): Promise<{ items: SubmissionResponse[]; nextCursor: string | null }> {
    const waiting = await this.database.client.$queryRaw<{ id: string }[]>`
      SELECT s."id"::text FROM "submission" s JOIN "submission_revision" r ON r."submission_id" = s."id" AND r."number" = s."revision"
      WHERE s."state" = 'submitted' AND s."tester_id" <> ${actor.accountId}::uuid
        AND (${cursor ?? null}::uuid IS NULL OR (r."handed_in_at", s."id") >
          (SELECT c."handed_in_at", c."submission_id" FROM "submission_revision" c WHERE c."submission_id" = ${cursor ?? null}::uuid ORDER BY c."number" DESC LIMIT 1))
      ORDER BY r."handed_in_at", s."id" LIMIT ${limit + 1}`;
    const ids = waiting.slice(0, limit).map(({ id }) => id);
    const answers = await this.details(actor, { id: { in: ids } }, ids);
    return { items: answers, nextCursor: waiting.length > limit ? (ids.at(-1) ?? null) : null };
  }

  private async details(actor: Actor, where: Prisma.SubmissionWhereInput, order: readonly string[] = []): Promise<SubmissionResponse[]> {
    const rows = await this.database.client.submission.findMany({ where, include: DETAIL });
    const beside = await this.beside.of(rows);
    // Findings in full hold what the label says, and readings what others found: who reads them tests the spool no more blind.
    const ofOthers = rows.filter(({ testerId }) => testerId !== actor.accountId);
    await this.keyReadings.note(actor, 'results', { codes: ofOthers.map((row) => beside(row).names.spool) });
    rows.sort((one, other) => order.indexOf(one.id) - order.indexOf(other.id));
    return rows.map((row) => toDetail(actor, row, beside(row)));
  }
}

/** A held finding is answered on accepting; one without an answer came up afterwards. */
export const IN_DOUBT = {
  state: 'accepted',
  revisions: { some: { reviews: { some: { decision: 'accepted' } }, findings: { some: { severity: 'held', resolution: null } } } },
} satisfies Prisma.SubmissionWhereInput;

const visibleTo = (actor: Actor): Prisma.SubmissionWhereInput => ({
  OR: [{ testerId: actor.accountId }, ...(seesAll(actor) ? [{ state: { not: 'draft' } }] : [])],
});
