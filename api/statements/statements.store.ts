import { Injectable } from '@nestjs/common';
import type { HouseStatementRequest } from '../contract/endpoints/statements.js';
import type { Transaction } from '../platform/database/database.js';

/** Who says something, and when. */
interface Said {
  readonly byId: string;
  readonly at: Date;
}

export interface NewRemark extends Said {
  readonly kind: string;
  readonly construction: string | null;
  readonly lineSlug: string | null;
  readonly variantSlug: string | null;
  readonly editionSlug: string | null;
  readonly category: string | null;
  readonly words: string;
  readonly signedBy: string;
  readonly supersedesId: string | null;
}

/** The only writer of what the house says. */
@Injectable()
export class StatementsStore {
  /** @returns its number */
  async state(tx: Transaction, statement: HouseStatementRequest & Said): Promise<number> {
    await tx.$executeRaw`LOCK TABLE "house_statement" IN SHARE ROW EXCLUSIVE MODE`;
    const number = 1 + (await tx.houseStatement.count());
    await tx.houseStatement.create({ data: { ...statement, people: [...statement.people], number } });
    return number;
  }

  /** @returns its id */
  async remark(tx: Transaction, remark: NewRemark): Promise<string> {
    return (await tx.remark.create({ data: remark, select: { id: true } })).id;
  }

  /** A remark, nobody else ending it meanwhile; null when there is none. */
  async lock(tx: Transaction, id: string) {
    await tx.$queryRaw`SELECT 1 FROM "remark" WHERE "id" = ${id}::uuid FOR UPDATE`;
    return tx.remark.findUnique({ where: { id }, include: { end: true } });
  }

  async end(tx: Transaction, remarkId: string, end: Said & { readonly reason: string }): Promise<void> {
    await tx.remarkEnd.create({ data: { remarkId, ...end } });
  }
}
