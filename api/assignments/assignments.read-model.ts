import { Injectable } from '@nestjs/common';
import { AccountsReadModel } from '../accounts/accounts.read-model.js';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import { EditionRows } from '../editions/edition-rows.read-model.js';
import { EditionsReadModel } from '../editions/editions.read-model.js';
import { MethodsReadModel } from '../methods/methods.read-model.js';
import { among } from '../platform/database/by-id.js';
import { Database } from '../platform/database/database.js';
import { SubmissionPointers } from '../submissions/submission-pointers.read-model.js';
import type { Prisma } from '../platform/database/generated/client.js';

/** Assignments with what was handed in for them. */
@Injectable()
export class AssignmentsReadModel {
  constructor(
    private readonly database: Database,
    private readonly accounts: AccountsReadModel,
    private readonly catalogue: CatalogueReadModel,
    private readonly editions: EditionsReadModel,
    private readonly methods: MethodsReadModel,
    private readonly rows: EditionRows,
    private readonly submissions: SubmissionPointers,
  ) {}

  async ofEdition(slug: string) {
    const editionId = await this.rows.idOf(slug);
    return editionId === null ? [] : this.list({ editionId });
  }

  /** A tester's own, of open editions. */
  async ofTester(testerId: string) {
    return (await this.list({ testerId, editionId: among(await this.rows.open()) })).map(({ tester: _, ...own }) => own);
  }

  private async list(where: Prisma.AssignmentWhereInput) {
    const rows = await this.database.client.assignment.findMany({
      where: { ...where, takenBackAt: null },
      orderBy: [{ dueOn: { sort: 'asc', nulls: 'last' } }, { id: 'asc' }],
    });
    const done = await this.handedIn(rows);
    const editions = await this.editions.slugs(rows.map(({ editionId }) => editionId));
    const spools = await this.catalogue.spoolCodes(rows.map(({ spoolId }) => spoolId));
    const methods = await this.methods.slugs(rows.map(({ methodId }) => methodId));
    const people = await this.accounts.displayNames(rows.map(({ testerId }) => testerId));
    const items = rows.map(({ id, specimens, dueOn, ...work }) => ({
      id,
      edition: editions.of(work.editionId),
      spool: spools.of(work.spoolId),
      method: methods.of(work.methodId),
      tester: { id: work.testerId, displayName: people.of(work.testerId) },
      specimens,
      dueOn: dueOn && dueOn.toISOString().slice(0, 10),
      handedIn: done.get(keyOf(work)) ?? null,
    }));
    return [...items.filter(({ handedIn }) => handedIn === null), ...items.filter(({ handedIn }) => handedIn !== null)];
  }

  private async handedIn(rows: readonly Work[]): Promise<Map<string, string>> {
    const submissions = await this.submissions.standingOn(
      rows.map(({ editionId }) => editionId),
      rows.map(({ spoolId }) => spoolId),
    );
    const versions = await this.methods.versionRows(submissions.map(({ methodVersionId }) => methodVersionId));
    return new Map(
      submissions.map(({ reference, methodVersionId, ...at }) => [
        keyOf({ ...at, methodId: versions.of(methodVersionId).methodId }),
        reference,
      ]),
    );
  }
}

interface Work {
  readonly editionId: string;
  readonly spoolId: string;
  readonly methodId: string;
  readonly testerId: string;
}
const keyOf = ({ editionId, spoolId, methodId, testerId }: Work): string => [editionId, spoolId, methodId, testerId].join(' ');
