import { Injectable } from '@nestjs/common';
import { CatalogueReadModel } from '../../catalogue/catalogue.read-model.js';
import type { CheckSettings, PinnedChecks } from '../../checks/check-input.js';
import { EditionsReadModel } from '../../editions/editions.read-model.js';
import { MethodsReadModel } from '../../methods/methods.read-model.js';
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
  constructor(
    private readonly editions: EditionsReadModel,
    private readonly methods: MethodsReadModel,
    private readonly catalogue: CatalogueReadModel,
  ) {}

  /** Locks a submission's row and reads what a trace is held against, before anything can be set aside; null when there is none, or only a draft. */
  async lock(tx: Transaction, reference: string) {
    const rows = await tx.$queryRaw<{ id: string }[]>`SELECT "id"::text FROM "submission" WHERE "reference" = ${reference} FOR UPDATE`;
    if (!rows[0]) return null;
    const submission = await tx.submission.findUniqueOrThrow({ where: { id: rows[0].id } });
    const revision = await tx.submissionRevision.findUnique({
      where: { submissionId_number: { submissionId: submission.id, number: submission.revision } },
      include: {
        specimens: {
          include: { readings: true, trace: { select: { specimenId: true } } },
          orderBy: { number: 'asc' },
        },
      },
    });
    if (!revision) return null;
    const version = (await this.methods.versionRows([submission.methodVersionId])).of(submission.methodVersionId);
    return {
      id: submission.id,
      testerId: submission.testerId,
      state: submission.state,
      version: submission.version,
      parameters: version.parameters as { settings?: readonly { name: string; value: string; unit: string }[] },
      pinnedChecks: (await this.editions.pinnedAtOpening({ id: submission.editionId })).checks as PinnedChecks,
      checkSettings: version.checks as CheckSettings,
      variantId: (await this.catalogue.spoolsById([submission.spoolId])).of(submission.spoolId).variant.id,
      revisionId: revision.id,
      areaMm2: (revision.figures as { areaMm2?: number | null }).areaMm2 ?? null,
      specimens: revision.specimens.map((specimen) => ({
        id: specimen.id,
        hasTrace: specimen.trace !== null,
        ...toSpecimenInSi({ ...specimen, trace: null, setAside: null }),
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
