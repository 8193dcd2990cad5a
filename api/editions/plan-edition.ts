import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import type { MethodVersion } from '../contract/endpoints/methods.js';
import { MethodsReadModel } from '../methods/methods.read-model.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { categoryFaults } from './category-faults.js';
import { editionProblems } from './editions.errors.js';
import { EditionsReadModel } from './editions.read-model.js';
import { schemeRules } from '../contract/endpoints/editions.js';
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
    const versions = await Promise.all(methods.map((method) => this.version(method)));
    const faults = categoryFaults(schemeRules.parse(foundScheme.rules).categories, versions, 'pin a version of it among the methods');
    if (faults.length > 0)
      throw new Problem(
        editionProblems['editions/cannot-count'],
        `Categories of the scheme ${scheme.slug} number ${scheme.number} that no result could ever count in.`,
        faults.map((fault) => ({ ...fault, pointer: '/methods' })),
      );
    await this.database.transaction(async (tx) => {
      const data = {
        ...named,
        schemeId: foundScheme.id,
        state: 'planned',
        opensOn: new Date(opensOn),
        closesOn: new Date(closesOn),
        previousId: before?.id ?? null,
      };
      await this.store.createEdition(
        tx,
        data,
        versions.map(({ id }) => id),
      );
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'edition.planned',
        objectType: 'edition',
        objectId: input.slug,
        after: input,
      });
    });
  }

  private async version({ slug, number }: { slug: string; number: number }): Promise<MethodVersion> {
    const version = await this.methods.version(slug, number);
    if (!version) throw unknown(`version ${number} of method ${slug}`);
    return version;
  }
}
