import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { Database } from '../../platform/database/database.js';
import { platformProblems } from '../../platform/errors/platform.errors.js';
import { Problem } from '../../platform/errors/problem.js';
import type { Actor } from '../../platform/http/access.js';
import { Jobs } from '../../platform/jobs/jobs.js';
import { BUILD_SITE, keysOf, PREPARE_RELEASE, PUBLISH_RELEASE } from './release-orders.js';
import { releaseProblems } from '../releases.errors.js';
import { ReleasesStore } from '../releases.store.js';

/** Calls off a release that waits for its time, or cannot be built. Nobody has seen it; the order and its end stay on the audit trail. */
@Injectable()
export class CallOffRelease {
  constructor(
    private readonly store: ReleasesStore,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly jobs: Jobs,
  ) {}

  async run(actor: Actor, slug: string, revision: number): Promise<void> {
    for (const queue of [PUBLISH_RELEASE, PREPARE_RELEASE, BUILD_SITE]) await this.jobs.prepare(queue);
    await this.database.transaction(async (tx) => {
      const edition = await this.store.lockEdition(tx, slug);
      const last = edition?.last;
      if (last?.revision !== revision)
        throw new Problem(platformProblems['request/not-found'], `Edition ${slug} has no revision ${revision} that could be called off.`);
      if (last.state !== 'building') throw new Problem(releaseProblems['releases/not-waiting'], `Revision ${revision} is ${last.state}.`);
      await this.store.remove(tx, last.id);
      for (const { queue, key } of keysOf(last.id)) await this.jobs.takeBack(tx, queue, key);
      // Who builds the site takes away what was built for it.
      await this.jobs.order(tx, BUILD_SITE, { edition: slug, revision });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'release.calledOff',
        objectType: 'release',
        objectId: `${slug}/${revision}`,
        before: { publishAt: last.publishAt?.toISOString() ?? null },
      });
    });
  }
}
