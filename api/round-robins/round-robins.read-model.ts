import { Injectable } from '@nestjs/common';
import { AccountsReadModel } from '../accounts/accounts.read-model.js';
import { InstrumentsReadModel } from '../instruments/instruments.read-model.js';
import { MethodsReadModel } from '../methods/methods.read-model.js';
import { Database } from '../platform/database/database.js';
import type { Prisma } from '../platform/database/generated/client.js';
import type { RoundRobinEvidence } from '../reckoning/evidence/round-robin-evidence.js';

const WHOLE = {
  testers: { orderBy: { number: 'asc' } },
  cells: { include: { readings: { orderBy: { number: 'asc' } } }, orderBy: { id: 'asc' } },
} satisfies Prisma.RoundRobinInclude;

type Row = Prisma.RoundRobinGetPayload<{ include: typeof WHOLE }>;

/** Round robins, as people and releases see them. */
@Injectable()
export class RoundRobinsReadModel {
  constructor(
    private readonly database: Database,
    private readonly accounts: AccountsReadModel,
    private readonly instruments: InstrumentsReadModel,
    private readonly methods: MethodsReadModel,
  ) {}

  async list() {
    const rows = await this.database.client.roundRobin.findMany({ orderBy: { id: 'desc' } });
    const methods = await this.methods.slugs(rows.map(({ methodId }) => methodId));
    return rows.map(({ slug, name, methodId, state }) => ({
      slug,
      name,
      method: methods.of(methodId),
      state: state as RoundRobinEvidence['state'],
    }));
  }

  /** With the numbers of those who take part; null when there is none. */
  async one(slug: string) {
    const row = await this.database.client.roundRobin.findUnique({ where: { slug }, include: WHOLE });
    if (!row) return null;
    const people = await this.accounts.displayNames(row.testers.map(({ testerId }) => testerId));
    return {
      version: row.version,
      testers: row.testers.map(({ testerId, number }) => ({ testerId, number, name: people.of(testerId) })),
      evidence: (await this.evidenceOf([row]))(row),
    };
  }

  /** Closed between two days, by slug. */
  async closedBetween(from: string, until: string): Promise<RoundRobinEvidence[]> {
    const rows = await this.database.client.roundRobin.findMany({
      where: { state: 'closed', closedOn: { gte: new Date(from), lte: new Date(until) } },
      include: WHOLE,
      orderBy: { slug: 'asc' },
    });
    return rows.map(await this.evidenceOf(rows));
  }

  /** Slugs of the open ones that a tester takes part in and has spools of yet to pull. */
  async waitingFor(testerId: string): Promise<string[]> {
    const rows = await this.database.client.roundRobin.findMany({
      where: { state: 'open', testers: { some: { testerId } } },
      select: { slug: true, levels: true, cells: { where: { testerId }, select: { level: true } } },
      orderBy: { slug: 'asc' },
    });
    return rows.filter(({ levels, cells }) => cells.length < levels.length).map(({ slug }) => slug);
  }

  private async evidenceOf(rows: readonly Row[]): Promise<(row: Row) => RoundRobinEvidence> {
    const methods = await this.methods.slugs(rows.map(({ methodId }) => methodId));
    const rigs = await this.instruments.named(rows.flatMap(({ cells }) => cells.map(({ instrumentId }) => instrumentId)));
    return (row) => toEvidence(row, methods.of(row.methodId), (id) => rigs.of(id).code);
  }
}

const toEvidence = (row: Row, method: string, rigOf: (instrumentId: string) => string): RoundRobinEvidence => {
  const numberOf = new Map(row.testers.map(({ testerId, number }) => [testerId, number]));
  return {
    slug: row.slug,
    name: row.name,
    words: row.words,
    method,
    levels: row.levels,
    specimens: row.specimens,
    state: row.state as RoundRobinEvidence['state'],
    closedOn: row.closedOn?.toISOString().slice(0, 10) ?? null,
    testers: row.testers.length,
    cells: row.cells
      .map(({ testerId, level, instrumentId, readings }) => ({
        tester: numberOf.get(testerId) ?? 0,
        level,
        instrument: rigOf(instrumentId),
        readings: readings.map(({ enteredText, enteredUnit, valueSi }) => ({
          text: enteredText,
          unit: enteredUnit,
          valueN: valueSi.toFixed(),
        })),
      }))
      .sort((one, other) => one.tester - other.tester || row.levels.indexOf(one.level) - row.levels.indexOf(other.level)),
  };
};
