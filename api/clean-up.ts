import type { INestApplicationContext } from '@nestjs/common';
import { AccountsModule } from './accounts/accounts.module.js';
import { ForgetExpired } from './accounts/forget-expired.js';
import { IdempotentAnswersStore } from './platform/http/idempotency/idempotent-answers.store.js';
import { Jobs } from './platform/jobs/jobs.js';
import type { OrderQueue } from './platform/jobs/jobs.js';

export const CLEAN_UP: OrderQueue = { name: 'clean-up', policy: 'short' };
const EVERY_HOUR = '17 * * * *';

/** Lets one of all workers take away, every hour, what serves nobody any more: answers to old keys, sessions, counts of failed tries. */
export async function cleanUpHourly(context: INestApplicationContext): Promise<void> {
  await context.get(Jobs).every(CLEAN_UP.name, EVERY_HOUR, async () => {
    await context.get(IdempotentAnswersStore, { strict: false }).forgetOld();
    await context.select(AccountsModule).get(ForgetExpired).run();
  });
}
