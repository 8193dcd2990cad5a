import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { MethodsReadModel } from '../methods/methods.read-model.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { editionProblems } from './editions.errors.js';
import { EditionsReadModel } from './editions.read-model.js';
import type { EditionRequest } from '../contract/endpoints/editions.js';
import { EditionsStore } from './editions.store.js';

const unknown = (what: string) => new Problem(editionProblems['editions/unknown-reference'], `Not on record: ${what}.`);

/** Plans an edition: a scheme, dates, the edition before, and the method versions to pin. */
@Injectable()
export class PlanEdition {
  constructor(
    private readonly store: EditionsStore,
    private readonly editions: EditionsReadModel,
    private readonly methods: MethodsReadModel,
    private readonly database: Database,
    private readonly audit: AuditTrail,
  ) {}

  async run(actor: Actor, input: EditionRequest): Promise<void> {
    const { scheme, previous, methods, opensOn, closesOn, ...named } = input;
    const foundScheme = await this.editions.scheme(scheme.slug, scheme.number);
    if (!foundScheme) throw unknown(`scheme ${scheme.slug} number ${scheme.number}`);
    const before = previous === null ? null : await this.editions.editionId(previous);
    if (previous !== null && !before) throw unknown(`edition ${previous}`);
    const versionIds = await Promise.all(methods.map((method) => this.versionId(method)));
    await this.database.transaction(async (tx) => {
      const data = {
        ...named,
        schemeId: foundScheme.id,
        state: 'planned',
        opensOn: new Date(opensOn),
        closesOn: new Date(closesOn),
        previousId: before?.id ?? null,
      };
      await this.store.createEdition(tx, data, versionIds);
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'edition.planned',
        objectType: 'edition',
        objectId: input.slug,
        after: input,
      });
    });
  }

  private async versionId({ slug, number }: { slug: string; number: number }): Promise<string> {
    const version = await this.methods.version(slug, number);
    if (!version) throw unknown(`version ${number} of method ${slug}`);
    return version.id;
  }
}
