import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import { checkSetOf } from '../checks/check-set-of.js';
import { CHECK_SET_VERSION } from '../checks/check-list.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { Identifiers, sha256 } from '../platform/identifiers/identifiers.js';
import { editionProblems } from './editions.errors.js';
import { obstacleFaults } from '../contract/obstacle.js';
import { EditionsReadModel } from './editions.read-model.js';
import { EditionObstacles } from './obstacles.read-model.js';
import { EditionsStore } from './editions.store.js';

/** Opens an edition: from now on its divisions with their schemes, method versions and checks are fixed, and the key of blind codes is sealed by its digest. */
@Injectable()
export class OpenEdition {
  constructor(
    private readonly store: EditionsStore,
    private readonly editions: EditionsReadModel,
    private readonly obstacles: EditionObstacles,
    private readonly catalogue: CatalogueReadModel,
    private readonly database: Database,
    private readonly identifiers: Identifiers,
    private readonly audit: AuditTrail,
  ) {}

  async run(actor: Actor, slug: string, version: number): Promise<void> {
    await this.database.transaction(async (tx) => {
      const edition = await this.store.lockIn(tx, slug, version, ['planned']);
      const obstacles = await this.obstacles.toOpening(slug);
      if (obstacles.length > 0) {
        const detail = `${obstacles.map(({ what, references }) => [what, references.join(', ')].filter(Boolean).join(': ')).join('; ')}.`;
        throw new Problem(editionProblems['editions/nothing-to-open'], detail, obstacleFaults(obstacles));
      }
      const blindKey = blindKeyOf(await this.catalogue.spoolsOf(await this.editions.entriesOf(slug)), this.identifiers.salt());
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

/**
 * The key that is sealed: blind codes of the spools of the edition's entries, in order, with what they are.
 * @param salt a secret, without which the digest would be found by trying what a few spools may be
 */
const blindKeyOf = (spools: readonly { readonly code: string; readonly variant: string }[], salt: string): string =>
  `salt ${salt}\n${spools.map(({ code, variant }) => `${code} ${variant}\n`).join('')}`;
