import { Injectable } from '@nestjs/common';
import type { CheckSettings, PinnedChecks } from '../../checks/check-input.js';
import type { Transaction } from '../../platform/database/database.js';
import { toSpecimenInSi } from '../views/submission-view.js';
import type { Over, Sample, TraceFigures } from '../../readings/traces/trace-figures.js';

export interface NewTrace {
  readonly specimenId: string;
  readonly digest: string;
  readonly over: Over;
  readonly sampleCount: number;
  readonly figures: TraceFigures;
  readonly points: readonly Sample[];
  readonly addedAt: Date;
}

/** The only writer of traces. */
@Injectable()
export class TracesStore {
  /** Locks a submission's row and reads what a trace is held against; null when there is none, or only a draft. */
  async lock(tx: Transaction, reference: string) {
    const rows = await tx.$queryRaw<{ id: string }[]>`SELECT "id"::text FROM "submission" WHERE "reference" = ${reference} FOR UPDATE`;
    if (!rows[0]) return null;
    const submission = await tx.submission.findUniqueOrThrow({
      where: { id: rows[0].id },
      include: {
        edition: { select: { checkSet: true } },
        methodVersion: { select: { parameters: true, checks: true } },
        spool: { select: { variantId: true } },
      },
    });
    const revision = await tx.submissionRevision.findUnique({
      where: { submissionId_number: { submissionId: submission.id, number: submission.revision } },
      include: {
        specimens: {
          include: { readings: true, setAside: { select: { reason: true } }, trace: { select: { specimenId: true } } },
          orderBy: { number: 'asc' },
        },
      },
    });
    if (!revision) return null;
    return {
      id: submission.id,
      testerId: submission.testerId,
      state: submission.state,
      version: submission.version,
      parameters: submission.methodVersion.parameters as { settings?: readonly { name: string; value: string; unit: string }[] },
      pinnedChecks: submission.edition.checkSet as PinnedChecks,
      checkSettings: submission.methodVersion.checks as CheckSettings,
      variantId: submission.spool.variantId,
      revisionId: revision.id,
      areaMm2: (revision.figures as { areaMm2?: number | null }).areaMm2 ?? null,
      specimens: revision.specimens.map((specimen) => ({
        id: specimen.id,
        hasTrace: specimen.trace !== null,
        ...toSpecimenInSi({ ...specimen, trace: null }),
      })),
    };
  }

  async add(tx: Transaction, traces: readonly NewTrace[]): Promise<void> {
    await tx.trace.createMany({
      data: traces.map(({ figures, points, ...trace }) => ({ ...trace, figures: toJson(figures), points: toJson(points) })),
    });
  }
}

const toJson = (value: object): object => JSON.parse(JSON.stringify(value)) as object;
