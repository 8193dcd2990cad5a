import { Injectable } from '@nestjs/common';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import { RIG_KINDS } from '../contract/instrument-kinds.js';
import { InstrumentsReadModel } from '../instruments/instruments.read-model.js';
import { MethodsReadModel } from '../methods/methods.read-model.js';
import { among, ById } from '../platform/database/by-id.js';
import { Database } from '../platform/database/database.js';

/** What a spool that is tested again may not be: whose it was, and on which rigs. */
export interface SecondTime {
  readonly testerId: string;
  readonly instruments: readonly string[];
  readonly method: string;
}

/** Submissions that may be tested again, that are, and that come of it. */
@Injectable()
export class RetestedSubmissions {
  constructor(
    private readonly database: Database,
    private readonly catalogue: CatalogueReadModel,
    private readonly instruments: InstrumentsReadModel,
    private readonly methods: MethodsReadModel,
  ) {}

  /** Spools that stand for a second time, by id. */
  async secondTimes(spoolIds: readonly string[]): Promise<Map<string, SecondTime>> {
    const again = await this.catalogue.putBack({ spoolIds });
    if (again.length === 0) return new Map();
    const rows = await this.database.client.submission.findMany({
      where: { id: among(again.map(({ submissionId }) => submissionId)) },
      include: { revisions: { orderBy: { number: 'desc' }, take: 1, include: { instruments: true } } },
    });
    const instrumentIdsOf = ({ revisions }: (typeof rows)[number]) =>
      revisions.flatMap(({ instruments }) => instruments.map(({ instrumentId }) => instrumentId));
    const instruments = await this.instruments.named(rows.flatMap(instrumentIdsOf));
    const versions = await this.methods.versionRows(rows.map(({ methodVersionId }) => methodVersionId));
    const first = new ById(
      rows.map((row) => [
        row.id,
        {
          testerId: row.testerId,
          method: versions.of(row.methodVersionId).method.slug,
          instruments: instrumentIdsOf(row).flatMap((id) => {
            const { code, kind } = instruments.of(id);
            return RIG_KINDS.includes(kind) ? [code] : [];
          }),
        },
      ]),
    );
    return new Map(again.map(({ spoolId, submissionId }) => [spoolId, first.of(submissionId)]));
  }

  /** Accepted submissions of an edition that were pulled and are no re-tests themselves, by reference. */
  async drawable(editionId: string) {
    const rows = await this.database.client.submission.findMany({
      where: { editionId, state: 'accepted', revision: { gt: 0 } },
      select: { id: true, reference: true, spoolId: true, methodVersionId: true },
      orderBy: { reference: 'asc' },
    });
    const spools = await this.catalogue.spoolsById(rows.map(({ spoolId }) => spoolId));
    const again = new Set(await this.catalogue.allPutBack());
    const pulling = await this.methods.pullingAmong(rows.map(({ methodVersionId }) => methodVersionId));
    return rows.filter(
      ({ spoolId, methodVersionId }) => spools.of(spoolId).retiredOn === null && !again.has(spoolId) && pulling.has(methodVersionId),
    );
  }

  /** References and methods of submissions by their ids. */
  async named(ids: readonly string[]): Promise<ById<{ readonly reference: string; readonly method: string }>> {
    const rows = await this.database.client.submission.findMany({
      where: { id: among(ids) },
      select: { id: true, reference: true, methodVersionId: true },
    });
    const versions = await this.methods.versionRows(rows.map(({ methodVersionId }) => methodVersionId));
    return new ById(
      rows.map(({ id, reference, methodVersionId }) => [id, { reference, method: versions.of(methodVersionId).method.slug }]),
    );
  }

  /** Id of a spool → reference of the first submission on it that was accepted. */
  async acceptedOn(spoolIds: readonly string[]): Promise<Map<string, string>> {
    const rows = await this.database.client.submission.findMany({
      where: { spoolId: among(spoolIds), state: 'accepted' },
      select: { spoolId: true, reference: true },
      orderBy: { reference: 'desc' },
    });
    return new Map(rows.map(({ spoolId, reference }) => [spoolId, reference]));
  }
}
