import { Injectable } from '@nestjs/common';
import { Database } from '../platform/database/database.js';
import type { Prisma } from '../platform/database/generated/client.js';
import type { CalibrationModel, InstrumentModel } from '../platform/database/generated/models.js';
import { DIMENSION_OF_KIND } from '../contract/instrument-kinds.js';
import type { InstrumentKind } from '../contract/instrument-kinds.js';

const WITH_CALIBRATIONS = { calibrations: { orderBy: [{ validFrom: 'asc' }, { certificate: 'asc' }] } } satisfies Prisma.InstrumentInclude;

type InstrumentRow = InstrumentModel & { calibrations: CalibrationModel[] };

/** Instruments with their certificates, as screens, submissions and releases see them. */
@Injectable()
export class InstrumentsReadModel {
  constructor(private readonly database: Database) {}

  /**
   * Instruments by their bench codes; an unknown code has none.
   * Capacity and resolution in SI (N, m or kg by dimension), exact decimals; calibrations oldest first.
   */
  async byCodes(codes: readonly string[]) {
    const rows = await this.database.client.instrument.findMany({
      where: { code: { in: [...codes] } },
      orderBy: { code: 'asc' },
      include: WITH_CALIBRATIONS,
    });
    return rows.map(toInstrument);
  }

  /** Every instrument, by code. */
  async all() {
    const rows = await this.database.client.instrument.findMany({ orderBy: { code: 'asc' }, include: WITH_CALIBRATIONS });
    return rows.map(toInstrument);
  }
}

const toInstrument = (row: InstrumentRow) => ({
  id: row.id,
  code: row.code,
  kind: row.kind as InstrumentKind,
  name: row.name,
  dimension: DIMENSION_OF_KIND[row.kind as InstrumentKind],
  capacity: { text: row.capacityText, unit: row.capacityUnit },
  capacitySi: row.capacitySi.toFixed(),
  resolution: { text: row.resolutionText, unit: row.resolutionUnit },
  resolutionSi: row.resolutionSi.toFixed(),
  calibrations: row.calibrations.map((calibration) => ({
    certificate: calibration.certificate,
    validFrom: calibration.validFrom.toISOString().slice(0, 10),
    validUntil: calibration.validUntil.toISOString().slice(0, 10),
    correctionPercent: calibration.correctionPercent.toFixed(),
    expandedUncertaintyPercent: calibration.expandedUncertaintyPercent.toFixed(),
    coverageFactor: calibration.coverageFactor.toFixed(),
  })),
});

export type InstrumentOnRecord = ReturnType<typeof toInstrument>;
