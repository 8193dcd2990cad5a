import { Injectable } from '@nestjs/common';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { AccountsStore } from './accounts.store.js';

/** Takes away what lets nobody in any more: sessions that are over, counts of tries from the day before. */
@Injectable()
export class ForgetExpired {
  constructor(
    private readonly store: AccountsStore,
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  async run(): Promise<void> {
    const now = this.clock.now();
    await this.database.transaction((tx) => this.store.forgetExpired(tx, now));
  }
}
