import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { notValid } from '../platform/http/validation.js';
import { instrumentNotOnRecord } from './instrument.js';
import type { CalibrationRequest } from '../contract/endpoints/instruments.js';
import { InstrumentsStore } from './instruments.store.js';

interface Input {
  readonly code: string;
  readonly calibration: CalibrationRequest;
}

/** Adds a certificate to an instrument. */
@Injectable()
export class AddCalibration {
  constructor(
    private readonly database: Database,
    private readonly store: InstrumentsStore,
    private readonly audit: AuditTrail,
  ) {}

  run(actor: Actor, { code, calibration }: Input): Promise<void> {
    return this.database.transaction(async (tx) => {
      const instrument = await this.store.lock(tx, code);
      if (!instrument) throw instrumentNotOnRecord(code);
      if (instrument.retiredOn !== null) throw notValid([outOfUse(code)]);
      const { certificate, validFrom, validUntil, ...figures } = calibration;
      if (instrument.calibrations.some((known) => known.certificate === certificate)) {
        const detail = `Certificate "${certificate}" of "${code}" is on record. Give a new certificate its own number, or correct that one (PUT /v1/instruments/{code}/calibrations/{certificate}).`;
        throw new Problem(platformProblems['record/already-exists'], detail, [{ pointer: '/certificate', detail, code: 'duplicate' }]);
      }
      await this.store.addCalibration(tx, {
        instrumentId: instrument.id,
        certificate,
        validFrom: new Date(validFrom),
        validUntil: new Date(validUntil),
        ...figures,
      });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'calibration.added',
        objectType: 'instrument',
        objectId: code,
        after: calibration,
      });
    });
  }
}

const outOfUse = (code: string) => ({
  pointer: '',
  code: 'retired',
  detail: `"${code}" is retired: nothing is measured with it. Take it into use again first (DELETE /v1/instruments/${code}/retirement).`,
});
