import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/database.js';
import type { MethodVersionRequest } from '../contract/endpoints/methods.js';

/** The only writer of methods and their versions. */
@Injectable()
export class MethodsStore {
  /** The method with its versions, oldest first, locked until the transaction ends; null when there is none. */
  async lock(tx: Transaction, slug: string) {
    await tx.$queryRaw`SELECT 1 FROM method WHERE slug = ${slug} FOR UPDATE`;
    return tx.method.findUnique({ where: { slug }, include: { versions: { orderBy: { number: 'asc' } } } });
  }

  create(tx: Transaction, data: { slug: string; name: string }) {
    return tx.method.create({ data });
  }

  /** Last bench day of what was handed in under any version of a method; null while there is nothing. */
  async lastBenchDay(tx: Transaction, methodId: string): Promise<string | null> {
    const row = await tx.submission.findFirst({
      where: { state: { not: 'draft' }, methodVersion: { methodId } },
      orderBy: { benchDay: 'desc' },
      select: { benchDay: true },
    });
    return row?.benchDay.toISOString().slice(0, 10) ?? null;
  }

  addVersion(tx: Transaction, methodId: string, { effectiveFrom, effectiveUntil, ...version }: MethodVersionRequest) {
    return tx.methodVersion.create({
      data: {
        ...version,
        methodId,
        effectiveFrom: new Date(effectiveFrom),
        effectiveUntil: effectiveUntil === null ? null : new Date(effectiveUntil),
      },
    });
  }
}
