import { Injectable } from '@nestjs/common';
import { AccountsReadModel } from '../accounts/accounts.read-model.js';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import type { SpoolOnRecord } from '../catalogue/catalogue.read-model.js';
import { DecisionsReadModel } from '../decisions/decisions.read-model.js';
import { among, ById } from '../platform/database/by-id.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/database.js';
import type { Prisma } from '../platform/database/generated/client.js';
import type { SubmissionEvidence } from '../reckoning/evidence/submission-evidence.js';
import { RevisionParts } from './views/revision-parts.read-model.js';
import type { PartsOfRevision } from './views/revision-parts.read-model.js';
import { SubmissionNames } from './views/submission-names.read-model.js';
import type { NamesOfSubmission } from './views/submission-names.read-model.js';
import { IN_DOUBT } from './views/submission-views.read-model.js';
import type { WithdrawnEvidence } from '../reckoning/evidence/withdrawn-evidence.js';
import { SUBMISSION_STATES } from '../contract/submission-states.js';
import type { SubmissionState } from '../contract/submission-states.js';

const ACCEPTED = {
  revisions: {
    orderBy: { number: 'desc' },
    take: 1,
    include: {
      instruments: true,
      specimens: {
        include: { readings: { orderBy: [{ role: 'asc' }, { station: 'asc' }] }, trace: true },
        orderBy: { number: 'asc' },
      },
    },
  },
} satisfies Prisma.SubmissionInclude;

type AcceptedRow = Prisma.SubmissionGetPayload<{ include: typeof ACCEPTED }>;
type Revision = AcceptedRow['revisions'][number];

/** What others keep of an accepted submission. */
interface Beside extends PartsOfRevision {
  readonly names: NamesOfSubmission;
  readonly variant: SpoolOnRecord['variant'];
  readonly reviewers: readonly string[];
}

/** A statement takes 32 767 values, and each specimen of what is read is one. */
export const READ_AT_ONCE = 200;

const BY_REFERENCE = { orderBy: { reference: 'asc' } } as const;

const POINTERS = {
  id: true,
  reference: true,
  editionId: true,
  state: true,
  testerId: true,
  spoolId: true,
  methodVersionId: true,
  revision: true,
} as const;

/** What results and releases may know of submissions. */
@Injectable()
export class SubmissionsReadModel {
  constructor(
    private readonly database: Database,
    private readonly names: SubmissionNames,
    private readonly parts: RevisionParts,
    private readonly catalogue: CatalogueReadModel,
    private readonly decisions: DecisionsReadModel,
    private readonly accounts: AccountsReadModel,
  ) {}

  /** Rows of submissions by their ids. */
  async known(ids: readonly string[]) {
    const rows = await this.database.client.submission.findMany({ where: { id: among(ids) }, select: POINTERS });
    return new ById(rows.map((row) => [row.id, row]));
  }

  /** Row of a submission with the id of the revision that stands; null where there is no such one, or only a draft. */
  async standing(reference: string) {
    const row = await this.database.client.submission.findUnique({
      where: { reference },
      select: { ...POINTERS, revisions: { orderBy: { number: 'desc' }, take: 1, select: { id: true } } },
    });
    const revisionId = row?.revisions[0]?.id;
    return row && row.state !== 'draft' && revisionId !== undefined ? { ...row, revisionId } : null;
  }

  /** Row of a submission that is known to be there. */
  byReference(reference: string) {
    return this.database.client.submission.findUniqueOrThrow({ where: { reference }, select: POINTERS });
  }

  /** Accepted and not withdrawn, by reference. @param atOnce so many are asked for in one statement */
  async acceptedInEdition(editionId: string, atOnce = READ_AT_ONCE): Promise<SubmissionEvidence[]> {
    return this.accepted({ editionId, spoolId: { notIn: await this.catalogue.allPutBack() } }, atOnce);
  }

  /** What was tested again in an edition and accepted, by reference; it enters no value. */
  async retestedInEdition(editionId: string): Promise<SubmissionEvidence[]> {
    return this.accepted({ editionId, spoolId: { in: await this.catalogue.allPutBack() } });
  }

  private async accepted(where: Prisma.SubmissionWhereInput, atOnce = READ_AT_ONCE): Promise<SubmissionEvidence[]> {
    const found: SubmissionEvidence[] = [];
    for (let last: AcceptedRow | undefined, isMore = true; isMore;) {
      const rows: AcceptedRow[] = await this.database.client.submission.findMany({
        where: { ...where, state: 'accepted', ...(last ? { id: { gt: last.id } } : {}) },
        include: ACCEPTED,
        orderBy: { id: 'asc' },
        take: atOnce,
      });
      const beside = await this.besideAccepted(rows);
      found.push(...rows.flatMap((row) => row.revisions.map((revision) => toEvidence(row, revision, beside(row, revision)))));
      [last, isMore] = [rows.at(-1), rows.length === atOnce];
    }
    return found.sort((one, other) => (one.reference < other.reference ? -1 : 1));
  }

  private async besideAccepted(rows: readonly AcceptedRow[]): Promise<(row: AcceptedRow, revision: Revision) => Beside> {
    const revisions = rows.flatMap((row) => row.revisions);
    const [names, spools, parts, reviews] = await Promise.all([
      this.names.of(rows),
      this.catalogue.spoolsById(rows.map(({ spoolId }) => spoolId)),
      this.parts.of(revisions),
      this.decisions.reviewsOf(revisions.map(({ id }) => id)),
    ]);
    const people = await this.accounts.displayNames(reviews.map(({ reviewerId }) => reviewerId));
    const reviewsOf = Map.groupBy(reviews, ({ revisionId }) => revisionId);
    return (row, revision) => ({
      ...parts(revision),
      names: names(row),
      variant: spools.of(row.spoolId).variant,
      reviewers: (reviewsOf.get(revision.id) ?? []).map(({ reviewerId }) => people.of(reviewerId)),
    });
  }

  /** Accepted once and withdrawn since, by reference. */
  async withdrawnInEdition(editionId: string): Promise<WithdrawnEvidence[]> {
    const rows = await this.database.client.submission.findMany({ where: { editionId, state: 'withdrawn' }, ...BY_REFERENCE });
    const names = await this.names.of(rows);
    const spools = await this.catalogue.spoolsById(rows.map(({ spoolId }) => spoolId));
    const withdrawals = await this.decisions.withdrawalsOf(rows.map(({ id }) => id));
    return rows.map((row) => ({
      reference: row.reference,
      variant: spools.of(row.spoolId).variant.slug,
      method: names(row).method.slug,
      tester: names(row).tester,
      benchDay: row.benchDay.toISOString().slice(0, 10),
      withdrawnOn: withdrawals.get(row.id)?.at.toISOString().slice(0, 10) ?? '',
      reason: withdrawals.get(row.id)?.reason ?? '',
    }));
  }

  /** References of submissions of an edition with which somebody has still something to do: to decide, to hand in again, to answer a finding. */
  async unsettledIn(editionId: string, reader: Transaction = this.database.client) {
    const referencesOf = async (where: Prisma.SubmissionWhereInput) => {
      const rows = await reader.submission.findMany({ where: { editionId, ...where }, select: { reference: true }, ...BY_REFERENCE });
      return rows.map(({ reference }) => reference);
    };
    return {
      submitted: await referencesOf({ state: 'submitted' }),
      returned: await referencesOf({ state: 'returned' }),
      inDoubt: await referencesOf(IN_DOUBT),
    };
  }

  /** How many submissions of an edition stand in each state. */
  async countByState(editionId: string): Promise<Record<SubmissionState, number>> {
    const counts = Object.fromEntries(SUBMISSION_STATES.map((state) => [state, 0])) as Record<SubmissionState, number>;
    const groups = await this.database.client.submission.groupBy({ by: ['state'], where: { editionId }, _count: { _all: true } });
    for (const { state, _count } of groups) counts[state as SubmissionState] = _count._all;
    return counts;
  }
}

const toEvidence = (
  row: AcceptedRow,
  revision: Revision,
  { names, variant, reviewers, instruments, specimens, findings }: Beside,
): SubmissionEvidence => ({
  reference: row.reference,
  revision: row.revision,
  variant: variant.slug,
  spool: names.spool,
  method: names.method,
  areaFrom: names.areaFrom,
  densityGPerCm3: String(variant.densityGPerCm3),
  tester: names.tester,
  reviewer: reviewers.join(', '),
  benchDay: row.benchDay.toISOString().slice(0, 10),
  isBlind: revision.isBlind,
  instruments,
  temperatureC: revision.temperatureC.toFixed(),
  humidityPercent: revision.humidityPercent.toFixed(),
  specimens,
  findings: findings.map(({ code, detail, resolution }) => ({ code, message: detail.message, resolution })),
});
