import { Logger } from '@nestjs/common';
import pg from 'pg';

export interface WatchOptions {
  readonly databaseUrl: string;
  /** Channel of NOTIFY. */
  readonly channel: string;
  /** Looks after this time also when nobody notified. */
  readonly everyMs: number;
  /** Looks at the database through the connection that listens, so that a busy pool does not keep it waiting. */
  readonly look: (client: pg.Client) => Promise<void>;
}

const ANSWER_WITHIN_MS = 5000;

/** Keeps something in memory in step with the database: looks at each notification, and now and then; while the database is down it stays. */
export class Watch {
  private readonly log = new Logger(Watch.name);
  private isStopped = false;
  private isDown = false;
  private isWoken = false;
  private endNap: () => void = () => undefined;
  private waiting: (() => void)[] = [];
  private running: Promise<void> | undefined;

  constructor(private readonly options: WatchOptions) {}

  /** Resolves after the first look, or when the database does not answer. */
  async start(): Promise<void> {
    const looked = this.lookNow();
    this.running = this.run();
    await looked;
  }

  /** Resolves when a look that began after the call is over, well or not; at once when nothing is watched. */
  async lookNow(): Promise<void> {
    if (this.isStopped) return;
    await new Promise<void>((done) => {
      this.waiting.push(done);
      this.wake();
    });
  }

  async stop(): Promise<void> {
    this.isStopped = true;
    this.wake();
    await this.running;
    this.letGo();
  }

  private wake(): void {
    this.isWoken = true;
    this.endNap();
  }

  private async run(): Promise<void> {
    while (!this.isStopped) {
      await this.listen().catch((error: unknown) => {
        if (!this.isDown && !this.isStopped)
          this.log.error(`What is known of the ${this.options.channel} is not kept in step with the database: ${String(error)}`);
        this.isDown = true;
      });
      this.letGo();
      this.isWoken = false;
      await this.nap();
    }
  }

  private async listen(): Promise<void> {
    const client = new pg.Client({
      connectionString: this.options.databaseUrl,
      application_name: 'fairpull: watch',
      connectionTimeoutMillis: ANSWER_WITHIN_MS,
      query_timeout: ANSWER_WITHIN_MS,
      keepAlive: true,
    });
    let failure: Error | undefined;
    const fail = (error: Error) => {
      failure ??= error;
      this.wake();
    };
    client.on('error', fail);
    client.on('end', () => fail(new Error('the connection ended')));
    client.on('notification', () => this.wake());
    try {
      await client.connect();
      await client.query(`LISTEN ${this.options.channel}`);
      while (!this.isStopped && !failure) {
        const asked = this.waiting.splice(0);
        this.isWoken = false;
        await this.options.look(client).finally(() => asked.forEach((done) => done()));
        this.isDown = false;
        await this.nap();
      }
    } finally {
      await client.end().catch(() => undefined);
    }
    if (failure) throw failure;
  }

  private nap(): Promise<void> {
    if (this.isWoken || this.isStopped) return Promise.resolve();
    return new Promise((resume) => {
      const timer = setTimeout(resume, this.options.everyMs);
      this.endNap = () => {
        clearTimeout(timer);
        resume();
      };
    });
  }

  private letGo(): void {
    for (const done of this.waiting.splice(0)) done();
  }
}
