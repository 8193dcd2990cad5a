import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/database.js';

/** The only writer of declared interests. */
@Injectable()
export class InterestsStore {
  async declare(tx: Transaction, data: { accountId: string; makerId: string; words: string; declaredAt: Date }): Promise<void> {
    await tx.declaredInterest.create({ data });
  }
}
