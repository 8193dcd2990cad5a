import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { drawBlindCode } from '../contract/blind-code.js';
import { SpoolsStore } from '../catalogue/spools/spools.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { Identifiers } from '../platform/identifiers/identifiers.js';
import { RetestedSubmissions } from '../submissions/retested.read-model.js';
import { drawFrom, seedOf } from './draw-order.js';
import { retestProblems } from './retests.errors.js';
import { RetestsStore } from './retests.store.js';

/** Draws accepted results, by a seed that was fixed at the opening, and puts their spools back on the shelf under new codes. */
@Injectable()
export class DrawRetests {
  constructor(
    private readonly database: Database,
    private readonly store: RetestsStore,
    private readonly spools: SpoolsStore,
    private readonly submissions: RetestedSubmissions,
    private readonly identifiers: Identifiers,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  run(actor: Actor, slug: string, percent: number): Promise<void> {
    return this.database.transaction(async (tx) => {
      const edition = await this.store.lockEdition(tx, slug);
      if (!edition) throw new Problem(platformProblems['request/not-found'], `No edition is called ${slug}.`);
      if (edition.retestDraw) throw new Problem(retestProblems['retests/drawn']);
      const candidates = edition.state === 'open' ? await this.submissions.drawable(edition.id) : [];
      if (candidates.length === 0)
        throw new Problem(retestProblems['retests/nothing-to-draw'], `Edition ${slug} is ${edition.state} and has nothing to draw from.`);
      const from = candidates.map(({ reference }) => reference);
      const seed = seedOf(edition.blindKeyDigest ?? '', slug);
      const drawn = drawFrom(from, seed, percent);
      const drawId = await this.store.draw(tx, { editionId: edition.id, seed, percent, from, byId: actor.accountId, at: this.clock.now() });
      for (const reference of drawn) {
        const original = candidates.find((one) => one.reference === reference);
        if (!original) continue;
        const { id: submissionId, spoolId } = original;
        await this.spools.putBack(tx, { drawId, submissionId, spoolId, blindCode: await this.freeCode(tx) });
      }
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'retests.drawn',
        objectType: 'edition',
        objectId: slug,
        after: { seed, percent, drawn },
      });
    });
  }

  private async freeCode(tx: Transaction): Promise<string> {
    for (;;) {
      const code = drawBlindCode((limit) => this.identifiers.below(limit));
      if (!(await this.spools.isTaken(tx, code))) return code;
    }
  }
}
