import { Injectable } from '@nestjs/common';
import { among } from '../platform/database/by-id.js';
import type { Transaction } from '../platform/database/database.js';

export interface NewAssignment {
  readonly editionId: string;
  readonly spoolId: string;
  readonly methodId: string;
  readonly testerId: string;
  readonly specimens: number;
  readonly dueOn: Date | null;
  readonly givenAt: Date;
}

/** The only writer of assignments. */
@Injectable()
export class AssignmentsStore {
  /** Keeps the edition as it is until the end of the transaction. */
  async holdEdition(tx: Transaction, slug: string): Promise<void> {
    await tx.$queryRaw`SELECT 1 FROM "edition" WHERE "slug" = ${slug} FOR SHARE`;
  }

  /** Blind code → id of the spool, of those in use. */
  async spools(tx: Transaction, codes: readonly string[]): Promise<Map<string, string>> {
    const rows = await tx.spool.findMany({
      where: { blindCode: among(codes), retiredOn: null },
      select: { id: true, blindCode: true },
    });
    return new Map(rows.map(({ id, blindCode }) => [blindCode, id]));
  }

  async isTester(tx: Transaction, id: string): Promise<boolean> {
    return (await tx.account.count({ where: { id, isDisabled: false, roles: { has: 'tester' } } })) === 1;
  }

  /** Ids of the spools that the tester is asked for already. */
  async standing(
    tx: Transaction,
    { editionId, methodId, testerId }: Pick<NewAssignment, 'editionId' | 'testerId'> & { methodId: string | null },
  ) {
    if (methodId === null) return new Set<string>();
    const rows = await tx.assignment.findMany({ where: { editionId, methodId, testerId, takenBackAt: null }, select: { spoolId: true } });
    return new Set(rows.map(({ spoolId }) => spoolId));
  }

  async give(tx: Transaction, assignments: readonly NewAssignment[]): Promise<void> {
    await tx.assignment.createMany({ data: [...assignments] });
  }

  /** @returns whether there was one that stood */
  async takeBack(tx: Transaction, id: string, takenBackAt: Date): Promise<boolean> {
    const { count } = await tx.assignment.updateMany({ where: { id, takenBackAt: null }, data: { takenBackAt } });
    return count === 1;
  }
}
