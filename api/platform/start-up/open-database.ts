import pg from 'pg';
import { startEmbeddedPostgres } from '../embedded-postgres/start-embedded-postgres.js';
import type { ClosingList } from './closing-list.js';
import { say, step } from './progress.js';
import type { StartOptions } from './start-options.js';

/**
 * The database to work on: the one that DATABASE_URL names, else the embedded server.
 * @returns its address
 * @throws Error when it does not answer
 */
export async function openDatabase(options: StartOptions, closing: ClosingList): Promise<string> {
  if (options.databaseUrl !== undefined) {
    await requireAnswer(options.databaseUrl);
    return options.databaseUrl;
  }
  const starting = startEmbeddedPostgres(options.dataFolder, { say });
  closing.add(async () => {
    const server = await starting.catch(() => undefined);
    await server?.stop();
  });
  return (await step('Starting PostgreSQL (the first time it makes its data folder)', () => starting)).url;
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
