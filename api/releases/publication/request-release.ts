import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { Clock } from '../../platform/clock/clock.js';
import { obstacleFaults } from '../../contract/obstacle.js';
import { EditionObstacles } from '../../editions/obstacles.read-model.js';
import { Database } from '../../platform/database/database.js';
import { platformProblems } from '../../platform/errors/platform.errors.js';
import { Problem } from '../../platform/errors/problem.js';
import type { InputFault } from '../../platform/errors/problem.js';
import type { HousePart } from '../../contract/endpoints/statements.js';
import type { Actor } from '../../platform/http/access.js';
import { MOST_FAULTS } from '../../platform/http/problems/content-faults.js';
import { Jobs } from '../../platform/jobs/jobs.js';
import { orderPlaced } from '../../platform/jobs/order-state.js';
import { StatementsReadModel } from '../../statements/statements.read-model.js';
import { unmetExpectations } from '../../reckoning/erratum.js';
import { ordersFor, PREPARE_RELEASE, PUBLISH_RELEASE } from './release-orders.js';
import { releaseProblems } from '../releases.errors.js';
import { ReleasesReadModel } from '../releases.read-model.js';
import type { ReleaseRequest } from '../../contract/endpoints/releases.js';
import { ReleasesStore } from '../releases.store.js';

const notStated = (part: HousePart): InputFault => ({
  pointer: `/house-statement/${part}`,
  code: 'not_stated',
  detail: `${HOUSE_WORDS[part]} is not said. Say it under Who we are on the desk, or at POST /v1/house-statement.`,
});

const HOUSE_WORDS: Readonly<Record<HousePart, string>> = {
  contact: 'How to reach the house',
  people: 'Who does what',
  funding: 'Who pays for it',
  interests: 'Which ties there are to makers and sellers',
  rightOfReply: 'How a maker is heard',
};

/** Asks for the next revision of a closed edition; the worker builds and publishes it. */
@Injectable()
export class RequestRelease {
  constructor(
    private readonly store: ReleasesStore,
    private readonly releases: ReleasesReadModel,
    private readonly obstacles: EditionObstacles,
    private readonly statements: StatementsReadModel,
    private readonly database: Database,
    private readonly jobs: Jobs,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, slug: string, { erratum, publishAt }: ReleaseRequest) {
    if (publishAt !== null && new Date(publishAt) <= this.clock.now()) throw new Problem(releaseProblems['releases/not-in-future']);
    if (erratum) await this.requireExpected(slug, erratum.expects);
    const { missing } = await this.statements.house();
    for (const queue of [PUBLISH_RELEASE, PREPARE_RELEASE]) await this.jobs.prepare(queue);
    return this.database.transaction(async (tx) => {
      const edition = await this.store.lockEdition(tx, slug);
      if (!edition) throw new Problem(platformProblems['request/not-found'], `No edition is called ${slug}.`);
      if (!['closed', 'published'].includes(edition.state))
        throw new Problem(releaseProblems['releases/edition-not-closed'], `Edition ${slug} is ${edition.state}.`);
      await this.obstacles.requireComputable(slug);
      const astray = await this.obstacles.ofDivisions(slug);
      if (astray.length > 0) throw new Problem(releaseProblems['releases/entry-in-no-division'], undefined, obstacleFaults(astray));
      const revision = (edition.last?.revision ?? 0) + 1;
      requireNext(edition.last, erratum, missing);
      const time = publishAt === null ? null : new Date(publishAt);
      const { id } = await this.store.startBuilding(tx, {
        editionId: edition.id,
        revision,
        requestedById: actor.accountId,
        requestedAt: this.clock.now(),
        publishAt: time,
        ...(erratum ? { erratum } : {}),
      });
      for (const { queue, ...wishes } of ordersFor(id, time, this.clock.now()))
        await this.jobs.order(tx, queue, { edition: slug, revision }, wishes);
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'release.requested',
        objectType: 'release',
        objectId: `${slug}/${revision}`,
        after: { erratum, publishAt },
      });
      return { edition: slug, revision, state: 'building' as const, digest: null, publishAt, order: orderPlaced(time ?? this.clock.now()) };
    });
  }

  /** Fails at once, and before anything is built, when the correction rests on what is no longer published. */
  private async requireExpected(slug: string, expects: NonNullable<ReleaseRequest['erratum']>['expects']): Promise<void> {
    const current = await this.releases.find(slug);
    if (!current) return;
    const unmet = unmetExpectations(expects, await this.releases.cellsOf(current));
    if (unmet.length > 0) throw new Problem(releaseProblems['releases/expected-otherwise'], undefined, unmet.slice(0, MOST_FAULTS));
  }
}

/** What a next revision needs: the one before is out, and an erratum comes with every one but the first. */
function requireNext(
  last: { readonly state: string; readonly revision: number } | undefined,
  erratum: ReleaseRequest['erratum'],
  missing: readonly HousePart[],
): void {
  if (last?.state === 'building')
    throw new Problem(releaseProblems['releases/in-progress'], `Revision ${last.revision} is being built or waits for its time.`);
  if (last && !erratum) throw new Problem(releaseProblems['releases/erratum-needed']);
  if (!last && erratum) throw new Problem(releaseProblems['releases/erratum-too-early']);
  if (!last && missing.length > 0) throw new Problem(releaseProblems['releases/house-not-stated'], undefined, missing.map(notStated));
}
