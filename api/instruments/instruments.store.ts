import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/database.js';
import type { Retirement } from '../contract/retired.js';
import type { InstrumentKind } from '../contract/instrument-kinds.js';

interface NewInstrument {
  readonly code: string;
  readonly kind: InstrumentKind;
  readonly name: string;
  readonly capacityText: string;
  readonly capacityUnit: string;
  readonly capacitySi: string;
  readonly resolutionText: string;
  readonly resolutionUnit: string;
  readonly resolutionSi: string;
}

interface NewCalibration {
  readonly instrumentId: string;
  readonly certificate: string;
  readonly validFrom: Date;
  readonly validUntil: Date;
  readonly correctionPercent: string;
  readonly expandedUncertaintyPercent: string;
  readonly coverageFactor: string;
}

const ONE_MORE = { version: { increment: 1 } } as const;

/** The only writer of instruments and calibrations. */
@Injectable()
export class InstrumentsStore {
  /** The instrument with its certificates, locked until the transaction ends; null when there is none. */
  async lock(tx: Transaction, code: string) {
    await tx.$queryRaw`SELECT 1 FROM instrument WHERE code = ${code} FOR UPDATE`;
    return tx.instrument.findUnique({ where: { code }, include: { calibrations: true } });
  }

  create(tx: Transaction, data: NewInstrument) {
    return tx.instrument.create({ data });
  }

  /** Adds a certificate; the instrument shows its certificates, so that it counts as changed. */
  async addCalibration(tx: Transaction, data: NewCalibration): Promise<void> {
    await tx.calibration.create({ data });
    await tx.instrument.update({ where: { id: data.instrumentId }, data: ONE_MORE });
  }

  async retire(tx: Transaction, id: string, retired: Retirement): Promise<void> {
    await tx.instrument.update({ where: { id }, data: { ...retired, ...ONE_MORE } });
  }

  async correctCalibration(tx: Transaction, id: string, { instrumentId, ...fields }: NewCalibration): Promise<void> {
    await tx.calibration.update({ where: { id }, data: fields });
    await tx.instrument.update({ where: { id: instrumentId }, data: ONE_MORE });
  }
}
