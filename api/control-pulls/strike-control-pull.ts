import { Injectable } from '@nestjs/common';
import { InstrumentsReadModel } from '../instruments/instruments.read-model.js';
import { MethodsReadModel } from '../methods/methods.read-model.js';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { CastDoubt } from './cast-doubt.js';
import { controlPullProblems } from './control-pulls.errors.js';
import { ControlPullsStore } from './control-pulls.store.js';

/**
 * Takes a control pull that went wrong out of its chart: a second person, with a reason. Doubt that it cast stays until it is
 * answered in words; a good pull that goes lets the doubt of a bad one reach further back.
 */
@Injectable()
export class StrikeControlPull {
  constructor(
    private readonly database: Database,
    private readonly store: ControlPullsStore,
    private readonly instruments: InstrumentsReadModel,
    private readonly methods: MethodsReadModel,
    private readonly castDoubt: CastDoubt,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  run(actor: Actor, id: string, reason: string): Promise<void> {
    return this.database.transaction(async (tx) => {
      const place = await this.store.pull(tx, id);
      if (!place) throw new Problem(platformProblems['request/not-found'], `No control pull has the id ${id}.`);
      const { instrumentId, methodId } = place;
      const instrument = (await this.instruments.codes([instrumentId])).of(instrumentId);
      const method = (await this.methods.slugs([methodId])).of(methodId);
      // As whoever pulls on the rig: each pull is judged by those before it.
      await this.instruments.hold(tx, instrument);
      const pull = (await this.store.pull(tx, id)) ?? place;
      if (pull.testerId === actor.accountId) throw new Problem(controlPullProblems['control-pulls/own-pull']);
      if (pull.strike || pull.isLate) throw new Problem(controlPullProblems['control-pulls/struck']);
      await this.store.strike(tx, { controlPullId: id, byId: actor.accountId, reason, at: this.clock.now() });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'controlPull.struck',
        objectType: 'controlPull',
        objectId: id,
        after: { reason },
      });
      const since = await this.store.countedBefore(tx, instrumentId, methodId, pull.benchDay.toISOString().slice(0, 10));
      const watched = { instrument: { id: instrumentId, code: instrument }, method: { id: methodId, slug: method } };
      await this.castDoubt.run(tx, actor.accountId, watched, await this.castDoubt.charts(tx, watched), since);
    });
  }
}
