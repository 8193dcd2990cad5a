import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/database.js';
import { uuid7 } from '../platform/identifiers/uuid7.js';

export interface NewRoundRobin {
  readonly slug: string;
  readonly name: string;
  readonly words: string;
  readonly methodId: string;
  readonly levels: readonly string[];
  readonly specimens: number;
  readonly testerIds: readonly string[];
}

export interface NewCell {
  readonly roundRobinId: string;
  readonly testerId: string;
  readonly level: string;
  readonly instrumentId: string;
  readonly handedInAt: Date;
  readonly readings: readonly { readonly enteredText: string; readonly enteredUnit: string; readonly valueSi: string }[];
}

/** The only writer of round robins. */
@Injectable()
export class RoundRobinsStore {
  /** The round robin with who takes part and what is handed in, locked; null when there is none. */
  async lock(tx: Transaction, slug: string) {
    await tx.$queryRaw`SELECT 1 FROM "round_robin" WHERE "slug" = ${slug} FOR UPDATE`;
    return tx.roundRobin.findUnique({ where: { slug }, include: { testers: true, cells: { select: { testerId: true, level: true } } } });
  }

  async plan(tx: Transaction, { testerIds, levels, ...plan }: NewRoundRobin): Promise<void> {
    const { id } = await tx.roundRobin.create({ data: { ...plan, levels: [...levels] } });
    await tx.roundRobinTester.createMany({ data: testerIds.map((testerId, index) => ({ roundRobinId: id, testerId, number: index + 1 })) });
  }

  async moveTo(tx: Transaction, id: string, state: 'open' | 'closed', closedOn: Date | null): Promise<void> {
    await tx.roundRobin.update({ where: { id }, data: { state, closedOn, version: { increment: 1 } } });
  }

  async addCell(tx: Transaction, { readings, ...cell }: NewCell): Promise<void> {
    const cellId = uuid7();
    await tx.roundRobinCell.create({ data: { id: cellId, ...cell } });
    await tx.roundRobinReading.createMany({ data: readings.map((reading, index) => ({ cellId, number: index + 1, ...reading })) });
  }
}
