import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { SupersededRows } from '../audit/superseded.store.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { requireSameVersion } from '../platform/http/headers/if-match.js';
import { notValid } from '../platform/http/validation.js';
import type { CalibrationCorrection } from '../contract/endpoints/instruments.js';
import { InstrumentsReadModel } from './instruments.read-model.js';
import { InstrumentsStore } from './instruments.store.js';

interface Input {
  readonly code: string;
  /** Number of the certificate as it stands. */
  readonly certificate: string;
  readonly expectedVersion: number;
  readonly correction: CalibrationCorrection;
}

/** Corrects a certificate that was copied wrongly; once submissions name it, with a reason, and what it said is kept beside it. */
@Injectable()
export class CorrectCalibration {
  constructor(
    private readonly database: Database,
    private readonly store: InstrumentsStore,
    private readonly instruments: InstrumentsReadModel,
    private readonly superseded: SupersededRows,
    private readonly audit: AuditTrail,
  ) {}

  run(actor: Actor, { code, certificate, expectedVersion, correction }: Input): Promise<void> {
    const { reason, validFrom, validUntil, ...fields } = correction;
    return this.database.transaction(async (tx) => {
      const instrument = await this.store.lock(tx, code);
      const known = instrument?.calibrations.find((one) => one.certificate === certificate);
      if (!instrument || !known)
        throw new Problem(
          platformProblems['request/not-found'],
          `No certificate "${certificate}" of an instrument "${code}" is on record.`,
        );
      requireSameVersion(instrument.version, expectedVersion);
      const resting = await this.instruments.restingOn(tx, instrument.id, certificate);
      if (fields.certificate !== certificate) requireFree(fields.certificate, certificate, instrument.calibrations, resting.submissions);
      const was = toText(known);
      await this.superseded.keep(tx, { kind: 'calibration', objectId: known.id, was, reason, byId: actor.accountId }, resting);
      const days = { validFrom: new Date(validFrom), validUntil: new Date(validUntil) };
      await this.store.correctCalibration(tx, known.id, { instrumentId: instrument.id, ...fields, ...days });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'calibration.corrected',
        objectType: 'instrument',
        objectId: code,
        before: was,
        after: { ...fields, validFrom, validUntil },
      });
    });
  }
}

type Calibration = NonNullable<Awaited<ReturnType<InstrumentsStore['lock']>>>['calibrations'][number];

function requireFree(wanted: string, standing: string, all: readonly Calibration[], submissions: readonly string[]): void {
  const pointer = '/certificate';
  if (submissions.length > 0) {
    const detail = `${submissions.length} submissions name certificate "${standing}", so that its number stays. Correct its figures and days, or add the right one beside it.`;
    throw notValid([{ pointer, detail, code: 'named_by_submissions' }]);
  }
  if (!all.some(({ certificate }) => certificate === wanted)) return;
  const detail = `Certificate "${wanted}" is on record already. Give each its own number.`;
  throw new Problem(platformProblems['record/already-exists'], detail, [{ pointer, detail, code: 'duplicate' }]);
}

const toText = ({ certificate, validFrom, validUntil, ...figures }: Calibration) => ({
  certificate,
  validFrom: validFrom.toISOString().slice(0, 10),
  validUntil: validUntil.toISOString().slice(0, 10),
  correctionPercent: figures.correctionPercent.toFixed(),
  expandedUncertaintyPercent: figures.expandedUncertaintyPercent.toFixed(),
  coverageFactor: figures.coverageFactor.toFixed(),
});
