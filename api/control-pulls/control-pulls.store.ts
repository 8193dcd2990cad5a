import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/database.js';
import { uuid7 } from '../platform/identifiers/uuid7.js';
import type { ControlLineRequest } from '../contract/endpoints/control-pulls.js';

/** As displayed, and in °C. */
export interface Air {
  readonly temperatureText: string;
  readonly temperatureUnit: string;
  readonly temperatureC: string;
  readonly humidityPercent: string;
}

export interface NewControlPull extends Partial<Air> {
  readonly controlLineId: string;
  readonly instrumentId: string;
  readonly methodId: string;
  readonly testerId: string;
  readonly benchDay: Date;
  readonly handedInAt: Date;
  readonly note: string | null;
  readonly contentDigest: string;
  readonly readings: readonly { readonly enteredText: string; readonly enteredUnit: string; readonly valueSi: string }[];
}

/** A submission that was pulled on a rig by a method, with the revision that stands. */
export interface PulledOnRig {
  readonly reference: string;
  readonly revisionId: string;
  readonly benchDay: string;
  readonly isDoubted: boolean;
}

/** Before any bench day. */
const FIRST_DAY = '0001-01-01';

/** The only writer of control lines and control pulls. */
@Injectable()
export class ControlPullsStore {
  controlLine(tx: Transaction, code: string) {
    return tx.controlLine.findUnique({ where: { code } });
  }

  addControlLine(tx: Transaction, line: ControlLineRequest, addedAt: Date) {
    return tx.controlLine.create({ data: { ...line, addedAt } });
  }

  /** Bench day of the last pull of a rig by a method up to a day that counts, neither struck nor late; the first of days before any. */
  async countedBefore(tx: Transaction, instrumentId: string, methodId: string, day: string): Promise<string> {
    const row = await tx.controlPull.findFirst({
      where: { instrumentId, methodId, benchDay: { lte: new Date(day) }, strike: null, isLate: false },
      orderBy: { benchDay: 'desc' },
      select: { benchDay: true },
    });
    return row?.benchDay.toISOString().slice(0, 10) ?? FIRST_DAY;
  }

  /** The record says whether it is late: of an earlier day than one that stands. */
  async addPull(tx: Transaction, { readings, ...pull }: NewControlPull): Promise<{ id: string; isLate: boolean }> {
    const id = uuid7();
    const { isLate } = await tx.controlPull.create({ data: { id, ...pull }, select: { isLate: true } });
    await tx.controlReading.createMany({ data: readings.map((reading, index) => ({ controlPullId: id, number: index + 1, ...reading })) });
    return { id, isLate };
  }

  /** Id of the pull with a content; null when there is none. */
  async pullWithContent(tx: Transaction, contentDigest: string): Promise<string | null> {
    return (await tx.controlPull.findUnique({ where: { contentDigest }, select: { id: true } }))?.id ?? null;
  }

  /** A pull with its strike if there is one; null when there is none. */
  pull(tx: Transaction, id: string) {
    return tx.controlPull.findUnique({
      where: { id },
      select: { testerId: true, benchDay: true, strike: true, isLate: true, instrumentId: true, methodId: true },
    });
  }

  async strike(tx: Transaction, strike: { controlPullId: string; byId: string; reason: string; at: Date }): Promise<void> {
    await tx.controlPullStrike.create({ data: strike });
  }

  /** Submissions of a rig and method since a bench day that are in the results or on their way there; locked, so that none is decided meanwhile. */
  pulledSince(tx: Transaction, instrumentId: string, methodId: string, since: string, code: string): Promise<PulledOnRig[]> {
    return tx.$queryRaw<PulledOnRig[]>`
      SELECT s."reference", r."id"::text AS "revisionId", to_char(s."bench_day", 'YYYY-MM-DD') AS "benchDay",
        EXISTS (SELECT 1 FROM "finding" f WHERE f."revision_id" = r."id" AND f."code" = ${code}) AS "isDoubted"
      FROM "submission" s
      JOIN "submission_revision" r ON r."submission_id" = s."id" AND r."number" = s."revision"
      JOIN "submission_instrument" u ON u."revision_id" = r."id" AND u."instrument_id" = ${instrumentId}::uuid
      JOIN "method_version" m ON m."id" = s."method_version_id" AND m."method_id" = ${methodId}::uuid
      WHERE s."bench_day" >= ${since}::date AND s."state" IN ('submitted', 'returned', 'accepted')
      ORDER BY s."reference" FOR UPDATE OF s`;
  }
}
