import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import pg from 'pg';
import { from as copyFrom } from 'pg-copy-streams';
import { list, named, SAME_WORDS } from '../../../api/platform/backup/tables.js';
import { appliedMigrations } from '../../../api/platform/migrations/apply-migrations.js';
import type { FileStore } from '../../../api/platform/file-store/file-store.js';
import { sha256 } from '../../../api/platform/identifiers/identifiers.js';
import { isLogged, traceOf } from '../bench/traces.js';
import type { LayWinter } from '../loader/load-house.js';
import { readKeptWinter } from './kept-winter.js';
import type { KeptTable, KeptWinter } from './kept-winter.js';

/**
 * The winters that are kept, when they can be laid into this database.
 * @param ownerUrl address for migrations
 * @returns null where the schema is another than that of the house they were kept from, or where the owner may not let the rules rest:
 * in a PostgreSQL of one's own that is the right of superusers
 */
export async function keptWinters(ownerUrl: string, seasons: readonly string[]): Promise<ReadonlyMap<string, KeptWinter> | null> {
  return withClient(ownerUrl, async (client) => {
    const { rows } = await client.query<{ isSuperuser: boolean }>(`SELECT current_setting('is_superuser') = 'on' AS "isSuperuser"`);
    const migrations = (await appliedMigrations(client)).map(({ checksum }) => checksum).join();
    const found = new Map<string, KeptWinter>();
    for (const season of seasons) {
      const winter = await readKeptWinter(season);
      if (winter?.migrations.join() === migrations) found.set(season, winter);
    }
    return rows[0]?.isSuperuser && found.size === seasons.length ? found : null;
  });
}

/** Lays the winters of the demo: rows, and what the load frame wrote, which the program keeps as files. */
export function layingOf(winters: ReadonlyMap<string, KeptWinter>, { seed, ownerUrl, files }: Ground): LayWinter {
  return async ({ season, handIns, entries }) => {
    const winter = winters.get(season.slug);
    if (!winter) throw new Error(`No bench work is kept of ${season.name}; run npm run keep-demo.`);
    for (const handIn of handIns.filter(isLogged)) {
      const csv = traceOf(seed, handIn, entries);
      if (csv !== null) await files.write(`traces/${sha256(csv)}.csv`, csv);
    }
    await layRowsOf(ownerUrl, winter);
    return new Map(winter.blindCodes);
  };
}

/** Where winters are laid. */
interface Ground {
  readonly seed: number;
  /** Address for migrations. */
  readonly ownerUrl: string;
  readonly files: FileStore;
}

/** Lays a winter's rows, in one transaction. The rules of the record judged them when they were written; they rest meanwhile. */
async function layRowsOf(ownerUrl: string, { tables }: KeptWinter): Promise<void> {
  await withClient(ownerUrl, async (client) => {
    await client.query(SAME_WORDS);
    await client.query('BEGIN');
    await client.query('SET LOCAL session_replication_role = replica');
    for (const table of tables) await layRows(client, table);
    await client.query('COMMIT');
  });
}

async function layRows(client: pg.Client, { name, columns, key, rows }: KeptTable): Promise<void> {
  await client.query(`CREATE TEMPORARY TABLE laid ON COMMIT DROP AS SELECT ${list(columns)} FROM ${named(name)} LIMIT 0`);
  await pipeline(Readable.from(rows.map((row) => `${row}\n`)), client.query(copyFrom(`COPY laid (${list(columns)}) FROM STDIN`)));
  const isSame = key.map((column) => `old.${named(column)} = laid.${named(column)}`).join(' AND ');
  await client.query(`DELETE FROM ${named(name)} old USING laid WHERE ${isSame}`);
  await client.query(`INSERT INTO ${named(name)} (${list(columns)}) SELECT ${list(columns)} FROM laid`);
  await client.query('DROP TABLE laid');
}

async function withClient<Answer>(databaseUrl: string, work: (client: pg.Client) => Promise<Answer>): Promise<Answer> {
  const client = new pg.Client({ connectionString: databaseUrl, connectionTimeoutMillis: 10_000 });
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end();
  }
}
