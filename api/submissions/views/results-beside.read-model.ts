import { Injectable } from '@nestjs/common';
import { CatalogueReadModel } from '../../catalogue/catalogue.read-model.js';
import { InstrumentsReadModel } from '../../instruments/instruments.read-model.js';
import { MethodsReadModel } from '../../methods/methods.read-model.js';
import { Database } from '../../platform/database/database.js';
import { SubmissionNames } from './submission-names.read-model.js';

const MOST = 50;

/** What others found of the same variant by the same method. */
@Injectable()
export class ResultsBeside {
  constructor(
    private readonly database: Database,
    private readonly names: SubmissionNames,
    private readonly catalogue: CatalogueReadModel,
    private readonly methods: MethodsReadModel,
    private readonly instruments: InstrumentsReadModel,
  ) {}

  /** Accepted ones beside a submission, latest bench day first. */
  async beside(submission: { readonly id: string; readonly spoolId: string; readonly methodVersionId: string }) {
    const rows = await this.database.client.submission.findMany({
      where: {
        state: 'accepted',
        id: { not: submission.id },
        spoolId: { in: await this.catalogue.spoolsOfSameVariant(submission.spoolId) },
        methodVersionId: { in: await this.methods.versionsOfSameMethod(submission.methodVersionId) },
      },
      include: { revisions: { orderBy: { number: 'desc' }, take: 1, include: { instruments: true } } },
      orderBy: [{ benchDay: 'desc' }, { reference: 'desc' }],
      take: MOST,
    });
    const names = await this.names.of(rows);
    const used = rows.flatMap(({ revisions }) => revisions.flatMap(({ instruments }) => instruments));
    const rigs = await this.instruments.named(used.map(({ instrumentId }) => instrumentId));
    return rows.map((row) => ({
      reference: row.reference,
      edition: names(row).edition,
      benchDay: row.benchDay.toISOString().slice(0, 10),
      tester: names(row).tester,
      instruments: row.revisions.flatMap(({ instruments }) => instruments.map(({ instrumentId }) => rigs.of(instrumentId).code)),
      figures: (row.revisions[0]?.figures ?? {}) as Record<string, unknown>,
    }));
  }
}
