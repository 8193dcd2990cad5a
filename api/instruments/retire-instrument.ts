import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import type { Actor } from '../platform/http/access.js';
import { requireSameVersion } from '../platform/http/headers/if-match.js';
import { instrumentNotOnRecord } from './instrument.js';
import { InstrumentsStore } from './instruments.store.js';

interface Input {
  readonly code: string;
  readonly expectedVersion: number;
  /** Null to take it into use again. */
  readonly reason: string | null;
}

/** Retires an instrument, so that nothing later is measured with it, or takes it into use again; what was measured stands. */
@Injectable()
export class RetireInstrument {
  constructor(
    private readonly database: Database,
    private readonly store: InstrumentsStore,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  run(actor: Actor, { code, expectedVersion, reason }: Input): Promise<void> {
    return this.database.transaction(async (tx) => {
      const instrument = await this.store.lock(tx, code);
      if (!instrument) throw instrumentNotOnRecord(code);
      requireSameVersion(instrument.version, expectedVersion);
      await this.store.retire(tx, instrument.id, { retiredOn: reason === null ? null : this.clock.now(), retiredReason: reason });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: reason === null ? 'instrument.takenIntoUse' : 'instrument.retired',
        objectType: 'instrument',
        objectId: code,
        ...(reason === null ? {} : { after: { reason } }),
      });
    });
  }
}
