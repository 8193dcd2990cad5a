import { Injectable } from '@nestjs/common';
import { AccountsReadModel } from '../accounts/accounts.read-model.js';
import { InstrumentsReadModel } from '../instruments/instruments.read-model.js';
import { MethodsReadModel } from '../methods/methods.read-model.js';
import { among, ById } from '../platform/database/by-id.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/database.js';
import type { Prisma } from '../platform/database/generated/client.js';
import type { ControlPullModel } from '../platform/database/generated/models.js';
import type { ControlPullEvidence, PullAmbient } from '../reckoning/evidence/control-pull-evidence.js';

const PULL = {
  controlLine: { select: { code: true, name: true, lot: true } },
  readings: { orderBy: { number: 'asc' } },
  strike: { select: { reason: true, at: true } },
} satisfies Prisma.ControlPullInclude;

export type ControlPullOnRecord = ControlPullEvidence & { readonly id: string };

export interface WhichPulls {
  /** Id → code of the rigs. */
  readonly rigs?: ReadonlyMap<string, string>;
  /** Id → slug of the methods. */
  readonly methods?: ReadonlyMap<string, string>;
  /** Last bench day. */
  readonly until?: string;
  /** Ids of control lines: each lot has one of its own. */
  readonly controlLines?: readonly string[];
}

/** Control lines and pulls, as charts, submissions and releases see them. */
@Injectable()
export class ControlPullsReadModel {
  constructor(
    private readonly database: Database,
    private readonly accounts: AccountsReadModel,
    private readonly instruments: InstrumentsReadModel,
    private readonly methods: MethodsReadModel,
  ) {}

  async controlLines() {
    const rows = await this.database.client.controlLine.findMany({ orderBy: { code: 'asc' } });
    return rows.map(({ id: _, addedAt, ...line }) => ({ ...line, addedAt: addedAt.toISOString() }));
  }

  /** Pulls and strikes of each rig together, by its id: it grows with whatever may change what is known of them. */
  async records(rigIds: Iterable<string>, tx?: Transaction): Promise<Map<string, number>> {
    const ids = [...new Set(rigIds)];
    const rows = await (tx ?? this.database.client).$queryRaw<{ id: string; records: number }[]>`
      SELECT p."instrument_id"::text AS "id", (count(p."id") + count(s."control_pull_id"))::int AS "records"
      FROM "control_pull" p LEFT JOIN "control_pull_strike" s ON s."control_pull_id" = p."id"
      WHERE p."instrument_id" = ANY(${ids}::uuid[]) GROUP BY p."instrument_id"`;
    const counted = new Map(rows.map(({ id, records }) => [id, records]));
    return new Map(ids.map((id) => [id, counted.get(id) ?? 0]));
  }

  /**
   * Pulls of the lots that were on these rigs around these days: up to the pull before the first of them, and the one behind the last.
   * What is known of a rig on one of the days rests on no other, so that earlier seasons are not read.
   */
  async pullsAround(
    { rigs, methods }: Required<Pick<WhichPulls, 'rigs' | 'methods'>>,
    days: readonly string[],
  ): Promise<ControlPullOnRecord[]> {
    const sorted = days.toSorted();
    const [first, last] = [sorted[0] ?? null, sorted.at(-1) ?? null];
    const lots = await this.database.client.$queryRaw<{ id: string }[]>`
      WITH counted AS (
        SELECT p."instrument_id", p."method_id", p."control_line_id", p."bench_day" FROM "control_pull" p
        WHERE p."instrument_id" = ANY(${[...rigs.keys()]}::uuid[])
          AND NOT p."is_late" AND NOT EXISTS (SELECT 1 FROM "control_pull_strike" s WHERE s."control_pull_id" = p."id")
      ), around AS (
        SELECT "instrument_id", "method_id",
          max("bench_day") FILTER (WHERE "bench_day" <= ${first}::date) AS "from", min("bench_day") FILTER (WHERE "bench_day" > ${last}::date) AS "to"
        FROM counted GROUP BY 1, 2
      )
      SELECT DISTINCT c."control_line_id"::text AS "id" FROM counted c JOIN around a USING ("instrument_id", "method_id")
      WHERE c."bench_day" BETWEEN coalesce(a."from", ${first}::date) AND coalesce(a."to", ${last}::date)`;
    return lots.length === 0 ? [] : this.pulls({ rigs, methods, controlLines: lots.map(({ id }) => id) });
  }

  /** Pulls in the order of pulling. */
  async pulls({ rigs, methods, until, controlLines }: WhichPulls, tx?: Transaction): Promise<ControlPullOnRecord[]> {
    const rows = await (tx ?? this.database.client).controlPull.findMany({
      where: {
        ...(rigs && { instrumentId: among(rigs.keys()) }),
        ...(methods && { methodId: among(methods.keys()) }),
        ...(until === undefined ? {} : { benchDay: { lte: new Date(until) } }),
        ...(controlLines === undefined ? {} : { controlLineId: among(controlLines) }),
      },
      include: PULL,
      orderBy: [{ benchDay: 'asc' }, { id: 'asc' }],
    });
    const codes = new ById(rigs ?? (await this.instruments.codes(rows.map(({ instrumentId }) => instrumentId))));
    const slugs = new ById(methods ?? (await this.methods.slugs(rows.map(({ methodId }) => methodId))));
    const people = await this.accounts.displayNames(rows.map(({ testerId }) => testerId));
    return rows.map((row) =>
      toPull(row, { instrument: codes.of(row.instrumentId), method: slugs.of(row.methodId), tester: people.of(row.testerId) }),
    );
  }
}

const toPull = (
  row: Prisma.ControlPullGetPayload<{ include: typeof PULL }>,
  { instrument, method, tester }: Pick<ControlPullEvidence, 'instrument' | 'method' | 'tester'>,
): ControlPullOnRecord => ({
  id: row.id,
  instrument,
  method,
  controlLine: row.controlLine,
  benchDay: row.benchDay.toISOString().slice(0, 10),
  tester,
  readings: row.readings.map(({ enteredText, enteredUnit, valueSi }) => ({
    text: enteredText,
    unit: enteredUnit,
    valueN: valueSi.toFixed(),
  })),
  ambient: toAmbient(row),
  note: row.note,
  strike: strikeOf(row),
});

/** Each pull is judged by those before it: one that came in after later ones stands beside them, with the reason. */
const LATE = 'It came in after a pull of a later day: it is kept, and judges nothing.';

function strikeOf({ strike, isLate, handedInAt }: Prisma.ControlPullGetPayload<{ include: typeof PULL }>): ControlPullOnRecord['strike'] {
  if (strike) return { reason: strike.reason, on: dayOf(strike.at) };
  return isLate ? { reason: LATE, on: dayOf(handedInAt) } : null;
}

const dayOf = (at: Date): string => at.toISOString().slice(0, 10);

function toAmbient(
  row: Pick<ControlPullModel, 'temperatureText' | 'temperatureUnit' | 'temperatureC' | 'humidityPercent'>,
): PullAmbient | null {
  const { temperatureText: text, temperatureUnit: unit, temperatureC, humidityPercent } = row;
  if (text === null || unit === null || temperatureC === null || humidityPercent === null) return null;
  return { temperature: { text, unit }, temperatureC: temperatureC.toFixed(), humidityPercent: humidityPercent.toFixed() };
}
