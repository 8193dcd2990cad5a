import { Injectable } from '@nestjs/common';
import type { Finding } from '../../checks/finding.js';
import { KeyReadings } from '../../platform/audit/key-readings.store.js';
import { Database } from '../../platform/database/database.js';
import type { Prisma } from '../../platform/database/generated/client.js';
import type { Actor } from '../../platform/http/access.js';
import { platformProblems } from '../../platform/errors/platform.errors.js';
import { Problem } from '../../platform/errors/problem.js';
import { changesBetween, handedInCells } from './revision-changes.js';
import type { RevisionChange } from './revision-changes.js';
import type { AreaRule } from '../../readings/submission-figures.js';
import { figuresForTester, toFullFinding, toSpecimenAnswer, toSpecimenInSi, toTesterFinding } from './submission-view.js';
import { noSubmission, seesAll } from '../submission.js';
import type { SubmissionState } from '../../contract/submission-states.js';
import type { HandedInSummary, SubmissionResponse, SubmissionsQuery, SubmissionSummary } from '../../contract/endpoints/submissions.js';

const HEADING = {
  edition: { select: { slug: true } },
  spool: { select: { blindCode: true } },
  methodVersion: { select: { number: true, parameters: true, method: { select: { slug: true } } } },
  tester: { select: { displayName: true } },
} satisfies Prisma.SubmissionInclude;

const SUMMARY = {
  ...HEADING,
  revisions: { orderBy: { number: 'desc' }, take: 1, select: { handedInAt: true } },
} satisfies Prisma.SubmissionInclude;

const HANDED_IN = {
  ...HEADING,
  revisions: {
    orderBy: { number: 'desc' },
    take: 1,
    select: { handedInAt: true, findings: { orderBy: { id: 'asc' }, select: { id: true, detail: true } } },
  },
} satisfies Prisma.SubmissionInclude;

const DETAIL = {
  ...HEADING,
  revisions: {
    orderBy: { number: 'desc' },
    take: 1,
    include: {
      instruments: { include: { instrument: { select: { code: true, kind: true } } }, orderBy: { instrument: { code: 'asc' } } },
      specimens: {
        include: { readings: { orderBy: [{ role: 'asc' }, { station: 'asc' }] }, setAside: { select: { reason: true } } },
        orderBy: { number: 'asc' },
      },
      findings: { orderBy: { id: 'asc' } },
    },
  },
  queries: { orderBy: { id: 'asc' } },
  withdrawal: true,
} satisfies Prisma.SubmissionInclude;

const REVIEW = {
  revision: { select: { number: true, submissionId: true } },
  reviewer: { select: { displayName: true } },
} satisfies Prisma.ReviewInclude;

type SummaryRow = Prisma.SubmissionGetPayload<{ include: typeof SUMMARY }>;
type DetailRow = Prisma.SubmissionGetPayload<{ include: typeof DETAIL }>;
type ReviewRow = Prisma.ReviewGetPayload<{ include: typeof REVIEW }>;

/** Submissions as screens show them. A tester sees the own ones, and of findings what is safe to know. */
@Injectable()
export class SubmissionViewsReadModel {
  constructor(
    private readonly database: Database,
    private readonly keyReadings: KeyReadings,
  ) {}

  /** Newest first; drafts are their tester's alone. */
  async list(
    actor: Actor,
    { state, edition, inDoubt, limit, cursor }: SubmissionsQuery,
  ): Promise<{ items: SubmissionSummary[]; nextCursor: string | null }> {
    const rows = await this.database.client.submission.findMany({
      where: {
        AND: [
          visibleTo(actor),
          state === undefined ? {} : { state },
          edition === undefined ? {} : { edition: { slug: edition } },
          inDoubt === undefined ? {} : IN_DOUBT,
          cursor === undefined ? {} : { id: { lt: cursor } },
        ],
      },
      include: SUMMARY,
      orderBy: { id: 'desc' },
      take: limit + 1,
    });
    const page = rows.slice(0, limit);
    return { items: page.map(toSummary), nextCursor: rows.length > limit ? (page.at(-1)?.id ?? null) : null };
  }

  /** What its tester has just handed in, with what the checks found, in the order of the references. */
  async handedIn(references: readonly string[]): Promise<HandedInSummary[]> {
    const rows = await this.database.client.submission.findMany({
      where: { reference: { in: [...references] } },
      include: HANDED_IN,
    });
    const found = new Map(
      rows.map((row) => [row.reference, { ...toSummary(row), findings: toTesterFindings(row.revisions[0]?.findings ?? []) }]),
    );
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
        instruments: { include: { instrument: { select: { code: true } } }, orderBy: { instrument: { code: 'asc' } } },
        specimens: { include: { readings: { orderBy: [{ role: 'asc' }, { station: 'asc' }] } }, orderBy: { number: 'asc' } },
      },
    });
    const [before, after] = revisions;
    if (!before || !after) throw new Problem(platformProblems['request/not-found'], `${reference} has no revision ${number}.`);
    return changesBetween(handedInCells(before), handedInCells(after));
  }

  /** Blind code of a submission's spool; null when there is no such submission. */
  async spoolCodeOf(reference: string): Promise<string | null> {
    const row = await this.database.client.submission.findUnique({
      where: { reference },
      select: { spool: { select: { blindCode: true } } },
    });
    return row?.spool.blindCode ?? null;
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
    const reviews = await this.database.client.review.findMany({
      where: { revision: { submissionId: { in: rows.map(({ id }) => id) } } },
      include: REVIEW,
      orderBy: { at: 'asc' },
    });
    // Findings in full hold what the label says, and readings what others found: who reads them tests the spool no more blind.
    const ofOthers = rows.filter(({ testerId }) => testerId !== actor.accountId);
    await this.keyReadings.note(actor, 'results', { codes: ofOthers.map(({ spool }) => spool.blindCode) });
    rows.sort((one, other) => order.indexOf(one.id) - order.indexOf(other.id));
    return rows.map((row) =>
      toDetail(
        actor,
        row,
        reviews.filter(({ revision }) => revision.submissionId === row.id),
      ),
    );
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

const toSummary = (row: SummaryRow): SubmissionSummary => ({
  reference: row.reference,
  edition: row.edition.slug,
  spool: row.spool.blindCode,
  method: { slug: row.methodVersion.method.slug, number: row.methodVersion.number },
  benchDay: row.benchDay.toISOString().slice(0, 10),
  state: row.state as SubmissionState,
  revision: row.revision,
  version: row.version,
  tester: row.tester.displayName,
  handedInAt: row.revisions[0]?.handedInAt.toISOString() ?? null,
});

function toDetail(actor: Actor, row: DetailRow, reviews: readonly ReviewRow[]): SubmissionResponse {
  const revision = row.revisions[0];
  const isOwn = row.testerId === actor.accountId;
  return {
    ...toSummary(row),
    ...toBench(revision),
    figures: toFigures(revision?.figures, row.methodVersion.parameters, isOwn),
    findings: (revision?.findings ?? []).flatMap(({ id, detail, resolution }) => {
      const finding = detail as unknown as Finding;
      return isOwn ? toTesterFinding(id, finding) : [toFullFinding(id, finding, resolution)];
    }),
    reviews: reviews.map(({ revision: { number }, decision, reason, at, reviewer }) => ({
      revision: number,
      decision: decision as SubmissionResponse['reviews'][number]['decision'],
      reason,
      at: at.toISOString(),
      reviewer: reviewer.displayName,
    })),
    queries: row.queries.map(({ id, revision: asked, specimens, question, askedAt, answer }) => ({
      id,
      revision: asked,
      specimens,
      question,
      askedAt: askedAt.toISOString(),
      answer,
    })),
    withdrawal: row.withdrawal && { reason: row.withdrawal.reason, at: row.withdrawal.at.toISOString() },
    draft: row.draft as Record<string, unknown> | null,
  };
}

type Bench = Pick<
  SubmissionResponse,
  | 'zone'
  | 'temperature'
  | 'temperatureC'
  | 'humidityPercent'
  | 'hasSeenLabel'
  | 'isBlind'
  | 'note'
  | 'fewerBecause'
  | 'instruments'
  | 'specimens'
>;

const toBench = (revision: DetailRow['revisions'][number] | undefined): Bench => ({
  zone: revision?.zone ?? null,
  temperature: revision ? { text: revision.temperatureText, unit: revision.temperatureUnit } : null,
  temperatureC: revision?.temperatureC.toFixed() ?? null,
  humidityPercent: revision?.humidityPercent.toFixed() ?? null,
  hasSeenLabel: revision?.hasSeenLabel ?? null,
  isBlind: revision?.isBlind ?? null,
  note: revision?.note ?? null,
  fewerBecause: revision?.fewerBecause ?? null,
  instruments: (revision?.instruments ?? []).map(({ instrument, certificate }) => ({ ...instrument, certificate })),
  specimens: (revision?.specimens ?? []).map((specimen) => toSpecimenAnswer(toSpecimenInSi(specimen))),
});

const toTesterFindings = (
  findings: readonly { readonly id: string; readonly detail: Prisma.JsonValue }[],
): SubmissionResponse['findings'] => findings.flatMap(({ id, detail }) => toTesterFinding(id, detail as unknown as Finding));

function toFigures(figures: Prisma.JsonValue | undefined, parameters: Prisma.JsonValue, isOwn: boolean): SubmissionResponse['figures'] {
  if (!figures) return null;
  return isOwn
    ? figuresForTester(figures as object, (parameters as { areaFrom: AreaRule }).areaFrom)
    : (figures as Record<string, unknown>);
}
