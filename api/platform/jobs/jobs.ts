import { Inject, Injectable } from '@nestjs/common';
import type { OnApplicationShutdown } from '@nestjs/common';
import { PgBoss, fromPrisma } from 'pg-boss';
import { CONFIG } from '../../config.js';
import type { Config } from '../../config.js';
import type { Transaction } from '../database/database.js';

/** Orders for the worker. An order rides in the transaction of the change that asks for it. */
@Injectable()
export class Jobs implements OnApplicationShutdown {
  private readonly boss: PgBoss;
  private starting: Promise<unknown> | undefined;
  private readonly known = new Set<string>();

  constructor(@Inject(CONFIG) config: Config) {
    this.boss = new PgBoss({ connectionString: config.DATABASE_URL, max: 4 });
    this.boss.on('error', () => undefined);
  }

  /** Puts an order into the transaction; a rollback takes it away again. */
  async order(tx: Transaction, queue: string, data: object): Promise<void> {
    await this.prepare(queue);
    await this.boss.send(queue, data, { db: fromPrisma(tx), retryLimit: 5, retryDelay: 2, retryBackoff: true, expireInSeconds: 900 });
  }

  /** Lets this process carry out the orders of a queue, one at a time. */
  async carryOut(queue: string, work: (data: object) => Promise<void>): Promise<void> {
    await this.prepare(queue);
    await this.boss.work<object>(queue, { pollingIntervalSeconds: 0.5, batchSize: 1 }, async (jobs) => {
      for (const job of jobs) await work(job.data);
    });
  }

  /** Lets one of all workers do this at the times of a cron line, UTC. */
  async every(queue: string, cron: string, work: () => Promise<void>): Promise<void> {
    await this.carryOut(queue, work);
    await this.boss.schedule(queue, cron);
  }

  /** Makes sure that the queue exists; safe to call from many processes. */
  async prepare(queue: string): Promise<void> {
    await (this.starting ??= this.boss.start());
    if (this.known.has(queue)) return;
    await this.boss.createQueue(queue);
    this.known.add(queue);
  }

  async onApplicationShutdown(): Promise<void> {
    if (this.starting) await this.boss.stop({ graceful: true, timeout: 10_000 });
  }
}
