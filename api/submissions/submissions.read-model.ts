import { Injectable } from '@nestjs/common';
import type { Finding } from '../checks/finding.js';
import { Database } from '../platform/database/database.js';
import type { Prisma } from '../platform/database/generated/client.js';
import type { SpecimenInSi } from './readings-si.js';
import { computeSubmissionFigures } from './submission-figures.js';
import type { AreaRule, SubmissionFigures } from './submission-figures.js';
import { toSpecimenInSi } from './submission-view.js';
import type { SubmissionState } from './submission.js';

const ACCEPTED = {
  spool: { select: { blindCode: true, variantId: true, variant: { select: { line: { select: { densityGPerCm3: true } } } } } },
  methodVersion: { select: { id: true, number: true, parameters: true, method: { select: { slug: true } } } },
  tester: { select: { displayName: true } },
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
      reviews: { include: { reviewer: { select: { displayName: true } } } },
    },
  },
} satisfies Prisma.SubmissionInclude;

type AcceptedRow = Prisma.SubmissionGetPayload<{ include: typeof ACCEPTED }>;

/** An accepted submission as results and releases take it. */
export interface AcceptedSubmission {
  readonly id: string;
  readonly reference: string;
  readonly revision: number;
  readonly variantId: string;
  readonly spoolCode: string;
  readonly method: { readonly slug: string; readonly number: number; readonly versionId: string };
  readonly testerId: string;
  readonly testerName: string;
  readonly reviewerName: string;
  readonly benchDay: string;
  readonly instruments: readonly { readonly code: string; readonly kind: string; readonly certificate: string | null }[];
  readonly temperatureC: string;
  readonly humidityPercent: string;
  readonly specimens: readonly SpecimenInSi[];
  readonly findings: readonly { readonly code: string; readonly message: string; readonly resolution: string | null }[];
  /** Without the specimens that were set aside. */
  readonly figures: SubmissionFigures;
}

/** What results and releases may know of submissions. */
@Injectable()
export class SubmissionsReadModel {
  constructor(private readonly database: Database) {}

  /** Accepted and not withdrawn, by reference; figures computed anew from the specimens that count. */
  async acceptedInEdition(editionId: string): Promise<AcceptedSubmission[]> {
    const rows = await this.database.client.submission.findMany({ where: { editionId, state: 'accepted' }, include: ACCEPTED });
    return rows
      .flatMap((row) => row.revisions.map((revision) => toAccepted(row, revision)))
      .sort((one, other) => (one.reference < other.reference ? -1 : 1));
  }

  /** How many submissions of an edition stand in each state. */
  async countByState(editionId: string): Promise<Record<SubmissionState, number>> {
    const counts: Record<SubmissionState, number> = { draft: 0, submitted: 0, accepted: 0, returned: 0, refused: 0, withdrawn: 0 };
    const groups = await this.database.client.submission.groupBy({ by: ['state'], where: { editionId }, _count: { _all: true } });
    for (const { state, _count } of groups) counts[state as SubmissionState] = _count._all;
    return counts;
  }
}

function toAccepted(row: AcceptedRow, revision: AcceptedRow['revisions'][number]): AcceptedSubmission {
  const { spool, methodVersion, tester } = row;
  const specimens = revision.specimens.map(toSpecimenInSi);
  const { areaFrom } = methodVersion.parameters as { areaFrom: AreaRule };
  return {
    id: row.id,
    reference: row.reference,
    revision: row.revision,
    variantId: spool.variantId,
    spoolCode: spool.blindCode,
    method: { slug: methodVersion.method.slug, number: methodVersion.number, versionId: methodVersion.id },
    testerId: row.testerId,
    testerName: tester.displayName,
    reviewerName: revision.reviews.map(({ reviewer }) => reviewer.displayName).join(', '),
    benchDay: row.benchDay.toISOString().slice(0, 10),
    instruments: revision.instruments.map(({ instrument, certificate }) => ({ ...instrument, certificate })),
    temperatureC: revision.temperatureC.toFixed(),
    humidityPercent: revision.humidityPercent.toFixed(),
    specimens,
    findings: revision.findings.map(({ code, detail, resolution }) => ({
      code,
      message: (detail as unknown as Finding).message,
      resolution,
    })),
    figures: computeSubmissionFigures(specimens, areaFrom, spool.variant.line.densityGPerCm3.toNumber()),
  };
}
