import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { SubmissionsReadModel } from '../submissions/submissions.read-model.js';
import { obstacleFaults } from '../contract/obstacle.js';
import { boardProblems } from './board.errors.js';
import { closingObstacles } from './closing-obstacles.js';
import { EditionObstacles } from '../editions/obstacles.read-model.js';
import { EditionsStore } from '../editions/editions.store.js';

/** Closes an edition: no submission is taken any more, none may still wait for somebody, each entry is in one division, and none that counts may be in doubt; what stands in the way is told all at once. */
@Injectable()
export class CloseEdition {
  constructor(
    private readonly store: EditionsStore,
    private readonly obstacles: EditionObstacles,
    private readonly submissions: SubmissionsReadModel,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, slug: string, version: number): Promise<void> {
    await this.database.transaction(async (tx) => {
      const edition = await this.store.lockIn(tx, slug, version, ['open']);
      const unsettled = await this.submissions.unsettledIn(edition.id, tx);
      const obstacles = [...(await this.obstacles.ofDivisions(slug)), ...closingObstacles(unsettled)];
      if (obstacles.length > 0) {
        const detail = `${obstacles.map(({ what }) => what).join('; ')}.`;
        throw new Problem(boardProblems['editions/work-in-progress'], detail, obstacleFaults(obstacles));
      }
      await this.store.touch(tx, edition.id, { state: 'closed', closedOn: this.clock.now() });
      await this.audit.record(tx, { actorId: actor.accountId, action: 'edition.closed', objectType: 'edition', objectId: slug });
    });
  }
}
