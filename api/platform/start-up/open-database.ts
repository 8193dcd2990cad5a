import pg from 'pg';
import { startEmbeddedPostgres } from '../embedded-postgres/start-embedded-postgres.js';
import type { ClosingList } from './closing-list.js';
import { say, step } from './progress.js';
import type { StartOptions } from './start-options.js';

/** Two ways into one database; they may be the same. */
export interface DatabaseAddresses {
  /** For migrations. */
  readonly ownerUrl: string;
  /** For server and worker. */
  readonly programUrl: string;
}

/**
 * The database to work on: the one that DATABASE_URL names, else the embedded server.
 * @returns its addresses
 * @throws Error when it does not answer
 */
export async function openDatabase(options: StartOptions, closing: ClosingList): Promise<DatabaseAddresses> {
  if (options.databaseUrl !== undefined) {
    const ownerUrl = options.ownerUrl ?? options.databaseUrl;
    await requireAnswer(ownerUrl);
    return { ownerUrl, programUrl: options.databaseUrl };
  }
  const starting = startEmbeddedPostgres(options.dataFolder, { say });
  closing.add(async () => {
    const server = await starting.catch(() => undefined);
    await server?.stop();
  });
  const { url, programUrl } = await step('Starting PostgreSQL (the first time it makes its data folder)', () => starting);
  return { ownerUrl: url, programUrl };
}

async function requireAnswer(url: string): Promise<void> {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: 10_000 });
  try {
    await client.connect();
    await client.query('SELECT 1');
  } catch (error) {
    const { host } = new URL(url);
    throw new Error(`The PostgreSQL server at ${host} that DATABASE_URL names does not let us in: ${(error as Error).message}`, {
      cause: error,
    });
  } finally {
    await client.end().catch(() => undefined);
  }
}
