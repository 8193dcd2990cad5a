import { Inject, Injectable, Logger } from '@nestjs/common';
import { PrismaPg } from '@prisma/adapter-pg';
import { AsyncLocalStorage } from 'node:async_hooks';
import { CONFIG } from '../../config.js';
import type { Config } from '../../config.js';
import { letCopy } from './copying.js';
import type { Copying } from './copying.js';
import { isRetryable } from './database-failure.js';
import { PrismaClient } from './generated/client.js';
import { oneAtATime } from './one-at-a-time.js';
import { Answer } from './scope.js';
import type { Scope, Transaction } from './scope.js';

export type { Transaction } from './scope.js';

const ATTEMPTS = 6;
const WITHIN_MS = 60_000;

/** The pool of connections, and the one way to change the record: a transaction that is tried again when others were in its way. */
@Injectable()
export class Database {
  private readonly pool: PrismaClient;
  private readonly scope = new AsyncLocalStorage<Scope>();
  private readonly begun = new AsyncLocalStorage<{ copying?: Copying }>();
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
    const inTurn = oneAtATime(adapter, (copying) => {
      const begun = this.begun.getStore();
      if (begun) begun.copying = copying;
    });
    this.pool = new PrismaClient({ adapter: inTurn, transactionOptions: { maxWait: 10_000 } });
  }

  async close(): Promise<void> {
    await this.pool.$disconnect();
  }

  /**
   * Where queries go: the transaction that the caller is in, else the pool. So nobody who holds a connection, and locks, ever waits for a
   * second one: enough of them at once would wait for one another until all give up.
   */
  get client(): Transaction {
    return this.scope.getStore()?.transaction ?? this.pool;
  }

  /**
   * Runs the work in one transaction, the caller's if there is one; again, up to six times, after a serialisation failure or a deadlock.
   * The work must not touch anything but the transaction.
   * @param withinMs how long all of it may take
   */
  async transaction<T>(work: (tx: Transaction) => Promise<T>, withinMs = WITHIN_MS): Promise<T> {
    const scope = this.scope.getStore();
    if (scope?.transaction) return work(scope.transaction);
    const answer = scope?.answer ?? null;
    for (let attempt = 1; ; attempt++) {
      try {
        return await (scope && answer
          ? this.openFor(scope, answer, work, withinMs)
          : this.scope.run(unbound(), () => this.once(work, withinMs)));
      } catch (error) {
        if (attempt === ATTEMPTS || !isRetryable(error)) throw error;
        await new Promise((resume) => setTimeout(resume, 10 * 2 ** attempt));
      }
    }
  }

  /**
   * Runs work whose answer is stored together with what it changed: both are there, or neither, whenever the program dies.
   * @param store writes the answer; in the transaction of the work, if it made one
   */
  async withAnswer<T>(work: () => Promise<T>, store: (tx: Transaction, result: T) => Promise<void>): Promise<T> {
    const answer = new Answer();
    const scope: Scope = { transaction: null, answer };
    try {
      const result = await this.scope.run(scope, work);
      await store(scope.transaction ?? this.pool, result);
      answer.resolve();
      await answer.committed;
      return result;
    } catch (error) {
      answer.reject(error as Error);
      // Rolled back before anybody hears of it.
      await answer.committed?.catch(() => undefined);
      throw error;
    }
  }

  /**
   * Lets work ask by a connection of its own while its caller holds one for a transaction. Only where few do so at a time, far fewer than
   * there are connections: else they wait for one another.
   */
  apart<T>(work: () => Promise<T>): Promise<T> {
    return this.scope.run(unbound(), work);
  }

  private once<T>(work: (tx: Transaction) => Promise<T>, withinMs: number): Promise<T> {
    return this.begin(this.scope.getStore() ?? unbound(), work, withinMs);
  }

  private begin<T>(scope: Scope, work: (tx: Transaction) => Promise<T>, withinMs: number): Promise<T> {
    const begun: { copying?: Copying } = {};
    return this.begun.run(begun, () =>
      this.pool.$transaction(
        (tx) => {
          if (begun.copying) letCopy(tx, begun.copying);
          return within(scope, tx, () => work(tx));
        },
        { timeout: withinMs },
      ),
    );
  }

  /** Gives the result of the work while its transaction stays open for the answer. */
  private openFor<T>(scope: Scope, answer: Answer, work: (tx: Transaction) => Promise<T>, withinMs: number): Promise<T> {
    return new Promise((resolve, reject) => {
      answer.committed = this.begin(
        scope,
        async (tx) => {
          resolve(await work(tx));
          await answer.written;
        },
        withinMs,
      );
      answer.committed.catch(reject);
    });
  }
}

const unbound = (): Scope => ({ transaction: null, answer: null });

async function within<T>(scope: Scope, tx: Transaction, work: () => Promise<T>): Promise<T> {
  scope.transaction = tx;
  try {
    return await work();
  } finally {
    scope.transaction = null;
  }
}
