import { Injectable } from '@nestjs/common';
import type { Finding } from '../checks/finding.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/database.js';
import type { Prisma } from '../platform/database/generated/client.js';
import type { SubmissionEvidence } from '../reckoning/evidence/submission-evidence.js';
import type { AreaRule } from '../readings/submission-figures.js';
import { toSpecimenInSi } from './views/submission-view.js';
import { IN_DOUBT } from './views/submission-views.read-model.js';
import type { WithdrawnEvidence } from '../reckoning/evidence/withdrawn-evidence.js';
import type { SubmissionState } from '../contract/submission-states.js';

const ACCEPTED = {
  spool: { select: { blindCode: true, variant: { select: { slug: true, line: { select: { densityGPerCm3: true } } } } } },
  methodVersion: { select: { number: true, parameters: true, method: { select: { slug: true } } } },
  tester: { select: { displayName: true } },
  revisions: {
    orderBy: { number: 'desc' },
    take: 1,
    include: {
      instruments: { include: { instrument: { select: { code: true, kind: true } } }, orderBy: { instrument: { code: 'asc' } } },
      specimens: {
        include: { readings: { orderBy: [{ role: 'asc' }, { station: 'asc' }] }, setAside: { select: { reason: true } }, trace: true },
        orderBy: { number: 'asc' },
      },
      findings: { orderBy: { id: 'asc' } },
      reviews: { include: { reviewer: { select: { displayName: true } } } },
    },
  },
} satisfies Prisma.SubmissionInclude;

type AcceptedRow = Prisma.SubmissionGetPayload<{ include: typeof ACCEPTED }>;

/** What results and releases may know of submissions. */
@Injectable()
export class SubmissionsReadModel {
  constructor(private readonly database: Database) {}

  /** Accepted and not withdrawn, by reference. */
  async acceptedInEdition(editionId: string): Promise<SubmissionEvidence[]> {
    return this.accepted({ editionId, spool: { retest: null } });
  }

  /** What was tested again in an edition and accepted, by reference; it enters no result. */
  retestedInEdition(editionId: string): Promise<SubmissionEvidence[]> {
    return this.accepted({ editionId, spool: { retest: { isNot: null } } });
  }

  private async accepted(where: Prisma.SubmissionWhereInput): Promise<SubmissionEvidence[]> {
    const rows = await this.database.client.submission.findMany({ where: { ...where, state: 'accepted' }, include: ACCEPTED });
    return rows
      .flatMap((row) => row.revisions.map((revision) => toEvidence(row, revision)))
      .sort((one, other) => (one.reference < other.reference ? -1 : 1));
  }

  /** Accepted once and withdrawn since, by reference. */
  async withdrawnInEdition(editionId: string): Promise<WithdrawnEvidence[]> {
    const rows = await this.database.client.submission.findMany({
      where: { editionId, state: 'withdrawn' },
      orderBy: { reference: 'asc' },
      include: {
        spool: { select: { variant: { select: { slug: true } } } },
        methodVersion: { select: { method: { select: { slug: true } } } },
        tester: { select: { displayName: true } },
        withdrawal: true,
      },
    });
    return rows.map(({ reference, spool, methodVersion, tester, benchDay, withdrawal }) => ({
      reference,
      variant: spool.variant.slug,
      method: methodVersion.method.slug,
      tester: tester.displayName,
      benchDay: benchDay.toISOString().slice(0, 10),
      withdrawnOn: withdrawal?.at.toISOString().slice(0, 10) ?? '',
      reason: withdrawal?.reason ?? '',
    }));
  }

  /** References of submissions of an edition with which somebody has still something to do: to decide, to hand in again, to answer a finding. */
  async unsettledIn(editionId: string, reader: Transaction = this.database.client) {
    const referencesOf = async (where: Prisma.SubmissionWhereInput) => {
      const rows = await reader.submission.findMany({
        where: { editionId, ...where },
        select: { reference: true },
        orderBy: { reference: 'asc' },
      });
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
    const counts: Record<SubmissionState, number> = {
      draft: 0,
      submitted: 0,
      accepted: 0,
      returned: 0,
      refused: 0,
      takenBack: 0,
      withdrawn: 0,
    };
    const groups = await this.database.client.submission.groupBy({ by: ['state'], where: { editionId }, _count: { _all: true } });
    for (const { state, _count } of groups) counts[state as SubmissionState] = _count._all;
    return counts;
  }
}

function toEvidence(row: AcceptedRow, revision: AcceptedRow['revisions'][number]): SubmissionEvidence {
  const { spool, methodVersion, tester } = row;
  return {
    reference: row.reference,
    revision: row.revision,
    variant: spool.variant.slug,
    spool: spool.blindCode,
    method: { slug: methodVersion.method.slug, number: methodVersion.number },
    areaFrom: (methodVersion.parameters as { areaFrom: AreaRule }).areaFrom,
    densityGPerCm3: spool.variant.line.densityGPerCm3.toFixed(),
    tester: tester.displayName,
    reviewer: revision.reviews.map(({ reviewer }) => reviewer.displayName).join(', '),
    benchDay: row.benchDay.toISOString().slice(0, 10),
    isBlind: revision.isBlind,
    instruments: revision.instruments.map(({ instrument, certificate }) => ({ ...instrument, certificate })),
    temperatureC: revision.temperatureC.toFixed(),
    humidityPercent: revision.humidityPercent.toFixed(),
    specimens: revision.specimens.map(toSpecimenInSi),
    findings: revision.findings.map(({ code, detail, resolution }) => ({
      code,
      message: (detail as unknown as Finding).message,
      resolution,
    })),
  };
}
