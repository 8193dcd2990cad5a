import { Injectable } from '@nestjs/common';
import { Database } from '../platform/database/database.js';
import type { Prisma } from '../platform/database/generated/client.js';
import type { RoundRobinEvidence } from '../reckoning/evidence/round-robin-evidence.js';

const WHOLE = {
  method: { select: { slug: true } },
  testers: { include: { tester: { select: { displayName: true } } }, orderBy: { number: 'asc' } },
  cells: { include: { instrument: { select: { code: true } }, readings: { orderBy: { number: 'asc' } } }, orderBy: { id: 'asc' } },
} satisfies Prisma.RoundRobinInclude;

type Row = Prisma.RoundRobinGetPayload<{ include: typeof WHOLE }>;

/** Round robins, as people and releases see them. */
@Injectable()
export class RoundRobinsReadModel {
  constructor(private readonly database: Database) {}

  async list() {
    const rows = await this.database.client.roundRobin.findMany({
      include: { method: { select: { slug: true } } },
      orderBy: { id: 'desc' },
    });
    return rows.map(({ slug, name, method, state }) => ({ slug, name, method: method.slug, state: state as RoundRobinEvidence['state'] }));
  }

  /** With the numbers of those who take part; null when there is none. */
  async one(slug: string) {
    const row = await this.database.client.roundRobin.findUnique({ where: { slug }, include: WHOLE });
    return (
      row && {
        version: row.version,
        testers: row.testers.map(({ testerId, number, tester }) => ({ testerId, number, name: tester.displayName })),
        evidence: toEvidence(row),
      }
    );
  }

  /** Closed between two days, by slug. */
  async closedBetween(from: string, until: string): Promise<RoundRobinEvidence[]> {
    const rows = await this.database.client.roundRobin.findMany({
      where: { state: 'closed', closedOn: { gte: new Date(from), lte: new Date(until) } },
      include: WHOLE,
      orderBy: { slug: 'asc' },
    });
    return rows.map(toEvidence);
  }
}

const toEvidence = (row: Row): RoundRobinEvidence => {
  const numberOf = new Map(row.testers.map(({ testerId, number }) => [testerId, number]));
  return {
    slug: row.slug,
    name: row.name,
    words: row.words,
    method: row.method.slug,
    levels: row.levels,
    specimens: row.specimens,
    state: row.state as RoundRobinEvidence['state'],
    closedOn: row.closedOn?.toISOString().slice(0, 10) ?? null,
    testers: row.testers.length,
    cells: row.cells
      .map(({ testerId, level, instrument, readings }) => ({
        tester: numberOf.get(testerId) ?? 0,
        level,
        instrument: instrument.code,
        readings: readings.map(({ enteredText, enteredUnit, valueSi }) => ({
          text: enteredText,
          unit: enteredUnit,
          valueN: valueSi.toFixed(),
        })),
      }))
      .sort((one, other) => one.tester - other.tester || row.levels.indexOf(one.level) - row.levels.indexOf(other.level)),
  };
};
