import { Injectable } from '@nestjs/common';
import { AccountsReadModel } from '../../accounts/accounts.read-model.js';
import { CatalogueReadModel } from '../../catalogue/catalogue.read-model.js';
import { EditionsReadModel } from '../../editions/editions.read-model.js';
import { MethodsReadModel } from '../../methods/methods.read-model.js';
import type { AreaRule } from '../../readings/submission-figures.js';

/** What a submission's row points at. */
export interface Pointers {
  readonly editionId: string;
  readonly spoolId: string;
  readonly methodVersionId: string;
  readonly testerId: string;
}

export interface NamesOfSubmission {
  /** Slug. */
  readonly edition: string;
  /** Blind code. */
  readonly spool: string;
  readonly method: { readonly slug: string; readonly number: number };
  readonly areaFrom: AreaRule;
  readonly tester: string;
}

/** Names by which people know what submissions are about, each kept by another feature. */
@Injectable()
export class SubmissionNames {
  constructor(
    private readonly editions: EditionsReadModel,
    private readonly catalogue: CatalogueReadModel,
    private readonly methods: MethodsReadModel,
    private readonly accounts: AccountsReadModel,
  ) {}

  /** With as many statements for one submission as for thousands. */
  async of(rows: readonly Pointers[]): Promise<(row: Pointers) => NamesOfSubmission> {
    const [editions, spools, versions, testers] = await Promise.all([
      this.editions.slugs(rows.map(({ editionId }) => editionId)),
      this.catalogue.spoolCodes(rows.map(({ spoolId }) => spoolId)),
      this.methods.versionRows(rows.map(({ methodVersionId }) => methodVersionId)),
      this.accounts.displayNames(rows.map(({ testerId }) => testerId)),
    ]);
    return ({ editionId, spoolId, methodVersionId, testerId }) => {
      const { method, number, parameters } = versions.of(methodVersionId);
      return {
        edition: editions.of(editionId),
        spool: spools.of(spoolId),
        method: { slug: method.slug, number },
        areaFrom: (parameters as { areaFrom: AreaRule }).areaFrom,
        tester: testers.of(testerId),
      };
    };
  }
}
