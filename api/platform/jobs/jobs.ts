import { Inject, Injectable, Logger } from '@nestjs/common';
import { PgBoss, fromPrisma } from 'pg-boss';
import type { ClientBase } from 'pg';
import type { ConstructorOptions, JobWithMetadata } from 'pg-boss';
import { CONFIG } from '../../config.js';
import type { Config } from '../../config.js';
import type { Transaction } from '../database/database.js';
import { inTrace, traceparent } from '../trace/trace-context.js';
import { stateOfOrder } from './order-state.js';
import { attemptInWords, RETRIES } from './retries.js';
import type { OpenOrder, OrderState } from '../../contract/order-state.js';

/** Where orders of one kind wait. */
export interface OrderQueue {
  readonly name: string;
  /** "exclusive": one order of a key that is not done yet; "short": one that waits, beside those that are being carried out. */
  readonly policy: 'exclusive' | 'short';
}

interface OrderWishes {
  /** Of orders with the same key no more than the policy allows. */
  readonly key?: string;
  /** Seconds from now until it may be taken up. */
  readonly afterS?: number;
}

/** An order belongs to the trace of what asked for it. */
interface Traced {
  readonly traceparent?: string | undefined;
}

/** What comes by the times of a cron line carries nothing. */
const tracedIn = (data: object | null): Traced => data ?? {};

function orderIn(data: object | null): object {
  const { traceparent: _, ...order } = tracedIn(data);
  return order;
}

/** A worker that is gone is told by its silence for so long; a long computation may keep a living one silent, which does no harm. */
const HEARTBEAT_S = 30;
const LOOK_AFTER_WORKERS_S = 10;
/** What may be taken up when it is ordered is told at once; what waits for its time or is tried again is found by looking. */
const LOOKS = { pollingIntervalSeconds: 0.5, notifyPollingIntervalSeconds: 0.5 } as const;
const QUEUES_OF_ITS_OWN = '__pgboss__';

/** Orders for the worker. An order rides in the transaction of the change that asks for it. */
@Injectable()
export class Jobs {
  private readonly log = new Logger(Jobs.name);
  private readonly boss: PgBoss;
  private starting: Promise<unknown> | undefined;
  private readonly known = new Set<string>();

  constructor(@Inject(CONFIG) config: Config) {
    const options: ConstructorOptions & { readonly onConnect: (client: ClientBase) => Promise<void> } = {
      connectionString: config.DATABASE_URL,
      // A migration made it: to make one takes a right that the program does not need.
      createSchema: false,
      onConnect: asOwnerOfQueue,
      max: 4,
      useListenNotify: true,
      superviseIntervalSeconds: LOOK_AFTER_WORKERS_S,
      monitorIntervalSeconds: LOOK_AFTER_WORKERS_S,
    };
    this.boss = new PgBoss(options);
    this.boss.on('error', (error) => this.log.error(`The queue of orders: ${error.message}`));
  }

  /** Puts an order into the transaction, which a rollback takes away again; without one it is put on record by itself. */
  async order(tx: Transaction | null, queue: OrderQueue, data: object, { key, afterS = 0 }: OrderWishes = {}): Promise<void> {
    await this.prepare(queue);
    await this.boss.send(queue.name, { ...data, traceparent: traceparent() } satisfies Traced, {
      ...(tx && { db: fromPrisma(tx) }),
      ...(key !== undefined && { singletonKey: key }),
      startAfter: afterS,
      heartbeatSeconds: HEARTBEAT_S,
      expireInSeconds: 24 * 3600 - 1,
      ...RETRIES,
    });
  }

  /** Takes back what waits under a key; what is being carried out goes on. */
  async takeBack(tx: Transaction, queue: OrderQueue, key: string): Promise<void> {
    await this.prepare(queue);
    const waiting = await this.boss.findJobs(queue.name, { key, queued: true });
    const ids = waiting.map(({ id }) => id);
    if (ids.length > 0) await this.boss.cancel(queue.name, ids, { db: fromPrisma(tx) });
  }

  /** How far the newest order of a key is; null when there is none. */
  async stateOf(queue: OrderQueue, key: string): Promise<OrderState | null> {
    await this.prepare(queue);
    const newest = (await this.boss.findJobs<object>(queue.name, { key })).at(-1);
    return newest ? stateOfOrder(newest) : null;
  }

  /** Orders of every kind that are not done: those that wait, those at work and those that failed. */
  async open(): Promise<OpenOrder[]> {
    await this.start();
    const queues = (await this.boss.getQueues()).filter(({ name }) => !name.startsWith(QUEUES_OF_ITS_OWN));
    const jobs = (await Promise.all(queues.map(({ name }) => this.boss.findJobs<object>(name)))).flat();
    return jobs
      .filter(({ state }) => !['completed', 'cancelled'].includes(state))
      .map((job) => ({ queue: job.name, order: orderIn(job.data), orderedAt: job.createdOn.toISOString(), ...stateOfOrder(job) }));
  }

  /** Lets this process carry out the orders of a queue, one at a time; a sentence that the work comes back with is kept. What fails is told in the log and tried again a few times. */
  async carryOut(queue: OrderQueue, work: (data: object) => Promise<unknown>): Promise<void> {
    await this.prepare(queue);
    const options = { ...LOOKS, batchSize: 1, includeMetadata: true } as const;
    await this.boss.work<object, string | undefined, typeof options>(queue.name, options, async ([job]) => {
      if (!job) return undefined;
      return inTrace(tracedIn(job.data).traceparent, () => this.attempt(job, work));
    });
  }

  private async attempt(job: JobWithMetadata, work: (data: object) => Promise<unknown>): Promise<string | undefined> {
    try {
      const words = await work(orderIn(job.data));
      return typeof words === 'string' ? words : undefined;
    } catch (error) {
      this.log.error(failureInWords(job, error), error instanceof Error ? error.stack : undefined);
      throw error;
    }
  }

  /** Orders of a queue that the record still holds, newest first. */
  async lastOf(queue: OrderQueue): Promise<(OrderState & { orderedAt: string; endedAt: string | null })[]> {
    await this.prepare(queue);
    const jobs = await this.boss.findJobs<object>(queue.name);
    return jobs
      .sort((one, other) => other.createdOn.getTime() - one.createdOn.getTime())
      .map((job) => ({ ...stateOfOrder(job), orderedAt: job.createdOn.toISOString(), endedAt: job.completedOn?.toISOString() ?? null }));
  }

  /** The cron line by which something is done, UTC; null where it is not. */
  async timesOf(name: string): Promise<string | null> {
    await this.start();
    const [schedule] = await this.boss.getSchedules(name);
    return schedule?.cron ?? null;
  }

  /** Lets one of all workers do this at the times of a cron line, UTC. */
  async every(name: string, cron: string, work: () => Promise<unknown>): Promise<void> {
    await this.carryOut({ name, policy: 'short' }, work);
    await this.boss.schedule(name, cron);
  }

  /** Ends what was done at the times of a cron line. */
  async noLonger(name: string): Promise<void> {
    await this.start();
    await this.boss.unschedule(name);
  }

  /** Makes sure that the queue exists; safe to call from many processes. */
  async prepare({ name, policy }: OrderQueue): Promise<void> {
    await this.start();
    if (this.known.has(name)) return;
    await this.boss.createQueue(name, { policy });
    // Also for a queue of before orders were told of.
    await this.boss.updateQueue(name, { notify: true });
    this.known.add(name);
  }

  private async start(): Promise<void> {
    await (this.starting ??= this.boss.start());
  }

  /** Waits a little for the orders at work. */
  async stop(): Promise<void> {
    if (this.starting) await this.boss.stop({ graceful: true, timeout: 10_000 });
  }
}

/** Whoever starts first makes the queue's tables: started with the role for migrations, it makes them as the program's role all the same, which has to read them later. */
async function asOwnerOfQueue(client: ClientBase): Promise<void> {
  await client.query(`
    SELECT set_config('role', pg_get_userbyid(nspowner), false) FROM pg_namespace
    WHERE nspname = 'pgboss' AND pg_has_role(current_user, nspowner, 'MEMBER')`);
}

const failureInWords = (job: JobWithMetadata, error: unknown): string =>
  `Order ${job.name} ${JSON.stringify(orderIn(job.data))} failed (${attemptInWords(job)}): ${error instanceof Error ? error.message : String(error)}`;
