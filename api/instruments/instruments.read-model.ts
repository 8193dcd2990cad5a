import { Injectable } from '@nestjs/common';
import type { Former, Resting } from '../contract/former.js';
import { EditionsReadModel } from '../editions/editions.read-model.js';
import { SupersededRows } from '../audit/superseded.store.js';
import { among, ById } from '../platform/database/by-id.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/database.js';
import type { Prisma } from '../platform/database/generated/client.js';
import type { CalibrationModel, InstrumentModel } from '../platform/database/generated/models.js';
import { DIMENSION_OF_KIND, RIG_KINDS } from '../contract/instrument-kinds.js';
import { toRetired } from '../contract/retired.js';
import type { InstrumentKind } from '../contract/instrument-kinds.js';

const WITH_CALIBRATIONS = { calibrations: { orderBy: [{ validFrom: 'asc' }, { certificate: 'asc' }] } } satisfies Prisma.InstrumentInclude;

type HeldInstrument = Pick<InstrumentModel, 'id' | 'code' | 'kind' | 'retiredOn' | 'retiredReason'>;
type InstrumentRow = InstrumentModel & { calibrations: CalibrationModel[] };

/** Instruments with their certificates, as screens, submissions and releases see them. */
@Injectable()
export class InstrumentsReadModel {
  constructor(
    private readonly database: Database,
    private readonly superseded: SupersededRows,
    private readonly editions: EditionsReadModel,
  ) {}

  /**
   * Instruments by their bench codes; an unknown code has none.
   * Capacity and resolution in SI (N, m or kg by dimension), exact decimals; calibrations oldest first.
   */
  async byCodes(codes: readonly string[]) {
    const rows = await this.database.client.instrument.findMany({
      where: { code: among(codes) },
      orderBy: { code: 'asc' },
      include: WITH_CALIBRATIONS,
    });
    return rows.map(toInstrument);
  }

  /** Codes and kinds of instruments by their ids. */
  async named(ids: readonly string[]): Promise<ById<{ readonly code: string; readonly kind: string }>> {
    const where = { id: among(ids) };
    const rows = await this.database.client.instrument.findMany({ where, select: { id: true, code: true, kind: true } });
    return new ById(rows.map(({ id, ...named }) => [id, named]));
  }

  async codes(ids: readonly string[]): Promise<ById<string>> {
    return new ById([...(await this.named(ids))].map(([id, { code }]) => [id, code]));
  }

  /** Codes of those among these that are on record, by their ids. */
  async known(codes: readonly string[]): Promise<ById<string>> {
    const rows = await this.database.client.instrument.findMany({ where: { code: among(codes) }, select: { id: true, code: true } });
    return new ById(rows.map(({ id, code }) => [id, code]));
  }

  /** Codes of the instruments that pull, and so are watched. */
  async rigs(): Promise<string[]> {
    const where = { kind: { in: [...RIG_KINDS] } };
    const rows = await this.database.client.instrument.findMany({ where, orderBy: { code: 'asc' }, select: { code: true } });
    return rows.map(({ code }) => code);
  }

  /** Codes of those without a certificate that holds on a day or later. */
  async uncalibratedOn(day: Date): Promise<string[]> {
    const where = { calibrations: { none: { validUntil: { gte: day } } } };
    const rows = await this.database.client.instrument.findMany({ where, orderBy: { code: 'asc' }, select: { code: true } });
    return rows.map(({ code }) => code);
  }

  /** An instrument, kept as it is until the end of the transaction; null when there is none. */
  async hold(tx: Transaction, code: string) {
    const [held] = await tx.$queryRaw<HeldInstrument[]>`
      SELECT "id"::text, "code", "kind", "retired_on" AS "retiredOn", "retired_reason" AS "retiredReason"
      FROM "instrument" WHERE "code" = ${code} FOR UPDATE`;
    return held ?? null;
  }

  /** Certificates with the instruments that they are of, by their ids: "C-1 of R1". */
  async certificateNames(ids: readonly string[]): Promise<ReadonlyMap<string, string>> {
    const where = { id: among(ids) };
    const rows = await this.database.client.calibration.findMany({ where, include: { instrument: { select: { code: true } } } });
    return new Map(rows.map(({ id, certificate, instrument }) => [id, `${certificate} of ${instrument.code}`]));
  }

  /** What certificates of an instrument said before they were superseded. */
  async formerOf(code: string): Promise<Former> {
    const calibrations = await this.database.client.calibration.findMany({ where: { instrument: { code } }, select: { id: true } });
    return (await this.superseded.of(calibrations.map(({ id }) => id))) as Former;
  }

  /** What rests on a certificate: revisions that were handed in and name it. */
  async restingOn(tx: Transaction, instrumentId: string, certificate: string): Promise<Resting> {
    const rows = await tx.submission.findMany({
      where: { revisions: { some: { instruments: { some: { instrumentId, certificate } } } } },
      select: { reference: true, editionId: true },
      orderBy: { reference: 'asc' },
    });
    const editions = await this.editions.slugs(rows.map(({ editionId }) => editionId));
    return { submissions: rows.map(({ reference }) => reference), editions: [...editions.values()].sort() };
  }

  /** Every instrument, by code. */
  async all() {
    const rows = await this.database.client.instrument.findMany({ orderBy: { code: 'asc' }, include: WITH_CALIBRATIONS });
    return rows.map(toInstrument);
  }
}

const toInstrument = (row: InstrumentRow) => ({
  id: row.id,
  version: row.version,
  code: row.code,
  kind: row.kind as InstrumentKind,
  name: row.name,
  dimension: DIMENSION_OF_KIND[row.kind as InstrumentKind],
  capacity: { text: row.capacityText, unit: row.capacityUnit },
  capacitySi: row.capacitySi.toFixed(),
  resolution: { text: row.resolutionText, unit: row.resolutionUnit },
  resolutionSi: row.resolutionSi.toFixed(),
  retired: toRetired(row),
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
