import { Inject, Injectable } from '@nestjs/common';
import type { OnApplicationShutdown } from '@nestjs/common';
import { CONFIG } from '../config.js';
import type { Config } from '../config.js';
import type { SuccessionRequest } from '../contract/endpoints/catalogue.js';
import { Database } from '../platform/database/database.js';
import { Watch } from '../platform/database/watch-channel.js';

const CHANNEL = 'changes';
const LOOK_EVERY_MS = 10_000;

/** What took whose place, and which variant the results of another went to, in memory where it is served: public addresses ask at every read. */
@Injectable()
export class SuccessionsReadModel implements OnApplicationShutdown {
  private last: ReadonlyMap<string, string> = new Map();
  private watch: Watch | undefined;

  constructor(
    private readonly database: Database,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  async start(): Promise<void> {
    this.watch = new Watch({
      databaseUrl: this.config.DATABASE_URL,
      channel: CHANNEL,
      everyMs: LOOK_EVERY_MS,
      look: async (client) => {
        const { rows } = await client.query<{ kind: string; slug: string; successor: string }>(
          'SELECT kind, slug, successor FROM leads_to',
        );
        this.last = new Map(rows.map(({ kind, slug, successor }) => [`${kind} ${slug}`, successor]));
      },
    });
    await this.watch.start();
  }

  async catchUp(): Promise<void> {
    await this.watch?.lookNow();
  }

  async onApplicationShutdown(): Promise<void> {
    await this.watch?.stop();
  }

  /** The last of those that took its place one after the other; null when nothing did. */
  successorOf(kind: SuccessionRequest['kind'], slug: string): string | null {
    return this.last.get(`${kind} ${slug}`) ?? null;
  }

  async list() {
    const rows = await this.database.client.succession.findMany({ orderBy: { id: 'asc' } });
    return rows.map(({ kind, slug, successor, reason, at }) => ({ kind, slug, successor, reason, at: at.toISOString() }));
  }
}
