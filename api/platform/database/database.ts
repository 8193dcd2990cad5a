import { Inject, Injectable, Logger } from '@nestjs/common';
import { PrismaPg } from '@prisma/adapter-pg';
import { CONFIG } from '../../config.js';
import type { Config } from '../../config.js';
import { isRetryable } from './database-failure.js';
import { PrismaClient } from './generated/client.js';
import type { Prisma } from './generated/client.js';

/** What a store is given inside a transaction. */
export type Transaction = Prisma.TransactionClient;

const ATTEMPTS = 6;

/** The pool of connections, and the one way to change the record: a transaction that is tried again when others were in its way. */
@Injectable()
export class Database {
  readonly client: PrismaClient;
  private readonly log = new Logger(Database.name);

  constructor(@Inject(CONFIG) config: Config) {
    const adapter = new PrismaPg(
      {
        connectionString: config.DATABASE_URL,
        max: 10,
        connectionTimeoutMillis: 5000,
        idleTimeoutMillis: 30_000,
        statement_timeout: 30_000,
        lock_timeout: 5000,
        idle_in_transaction_session_timeout: 30_000,
      },
      { onPoolError: (error) => this.log.error(`A connection to the database broke: ${error.message}`) },
    );
    this.client = new PrismaClient({ adapter, transactionOptions: { maxWait: 10_000, timeout: 60_000 } });
  }

  async close(): Promise<void> {
    await this.client.$disconnect();
  }

  /**
   * Runs the work in one transaction; again, up to six times, after a serialisation failure or a deadlock.
   * The work must not touch anything but the transaction.
   */
  async transaction<T>(work: (tx: Transaction) => Promise<T>): Promise<T> {
    for (let attempt = 1; ; attempt++) {
      try {
        return await this.client.$transaction(work);
      } catch (error) {
        if (attempt === ATTEMPTS || !isRetryable(error)) throw error;
        await new Promise((resume) => setTimeout(resume, 10 * 2 ** attempt));
      }
    }
  }
}
