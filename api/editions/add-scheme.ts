import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { MethodsReadModel } from '../methods/methods.read-model.js';
import { Database } from '../platform/database/database.js';
import type { Actor } from '../platform/http/access.js';
import { notValid } from '../platform/http/validation.js';
import { categoryFaults } from './category-faults.js';
import type { SchemeRequest } from '../contract/endpoints/schemes.js';
import { EditionsStore } from './editions.store.js';

/** Adds a scheme, which never changes: every category names a series that a method on record yields. */
@Injectable()
export class AddScheme {
  constructor(
    private readonly store: EditionsStore,
    private readonly methods: MethodsReadModel,
    private readonly database: Database,
    private readonly audit: AuditTrail,
  ) {}

  async run(actor: Actor, input: SchemeRequest): Promise<void> {
    const { categories } = input.rules;
    const slugs = new Set(categories.flatMap(({ method, section }) => [method, ...(section ? [section.method] : [])]));
    const versions = await Promise.all([...slugs].map((slug) => this.methods.versionsOf(slug)));
    const faults = categoryFaults(categories, versions.flat(), 'no version of it is on record; add one, or name another method');
    if (faults.length > 0) throw notValid(faults);
    await this.database.transaction(async (tx) => {
      await this.store.createScheme(tx, input);
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'scheme.added',
        objectType: 'scheme',
        objectId: `${input.slug}/${input.number}`,
        after: input,
      });
    });
  }
}
