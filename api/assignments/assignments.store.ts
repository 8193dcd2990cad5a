import { Injectable } from '@nestjs/common';
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
