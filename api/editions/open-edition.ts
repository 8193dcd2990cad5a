import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { checkSetOf } from '../checks/check-set-of.js';
import { CHECK_SET_VERSION } from '../checks/check-list.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { Identifiers, sha256 } from '../platform/identifiers/identifiers.js';
import { editionProblems } from './editions.errors.js';
import { obstacleFaults } from '../contract/obstacle.js';
import { EditionsStore } from './editions.store.js';
import { openingObstacles, toOpening } from './opening-obstacles.js';

/** Opens an edition: from now on its divisions with their schemes, method versions and checks are fixed, and the key of blind codes is sealed by its digest. */
@Injectable()
export class OpenEdition {
  constructor(
    private readonly store: EditionsStore,
    private readonly database: Database,
    private readonly identifiers: Identifiers,
    private readonly audit: AuditTrail,
  ) {}

  async run(actor: Actor, slug: string, version: number): Promise<void> {
    await this.database.transaction(async (tx) => {
      const edition = await this.store.lockIn(tx, slug, version, ['planned']);
      const obstacles = openingObstacles(toOpening(edition, await this.store.dividedEntries(tx, edition.id)));
      if (obstacles.length > 0) {
        const detail = `${obstacles.map(({ what, references }) => [what, references.join(', ')].filter(Boolean).join(': ')).join('; ')}.`;
        throw new Problem(editionProblems['editions/nothing-to-open'], detail, obstacleFaults(obstacles));
      }
      const blindKey = await this.store.blindKey(tx, edition.id, this.identifiers.salt());
      const blindKeyDigest = sha256(blindKey);
      await this.store.touch(tx, edition.id, {
        state: 'open',
        blindKey,
        blindKeyDigest,
        checkSetVersion: CHECK_SET_VERSION,
        checkSet: JSON.parse(JSON.stringify(checkSetOf().checks)) as object[],
      });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'edition.opened',
        objectType: 'edition',
        objectId: slug,
        after: { blindKeyDigest, checkSetVersion: CHECK_SET_VERSION },
      });
    });
  }
}
