import { existsSync, readFileSync } from 'node:fs';
import { rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import pg from 'pg';
import { isAlive } from './platform/embedded-postgres/folder-lock.js';

/** What a database holds when the program starts. */
export interface DatabaseContents {
  /** No account and no release: nobody has used it yet. */
  readonly isUnused: boolean;
  /** An account of the demo is in it. */
  readonly isDemo: boolean;
}

/** Looks at a migrated database. */
export async function readContents(databaseUrl: string, demoEmails: readonly string[]): Promise<DatabaseContents> {
  const client = new pg.Client({ connectionString: databaseUrl, connectionTimeoutMillis: 10_000 });
  await client.connect();
  try {
    const { rows } = await client.query<DatabaseContents>(
      `SELECT NOT EXISTS (SELECT FROM account) AND NOT EXISTS (SELECT FROM release) AS "isUnused",
              EXISTS (SELECT FROM account WHERE email = ANY ($1)) AS "isDemo"`,
      [demoEmails],
    );
    return rows[0] ?? { isUnused: false, isDemo: false };
  } finally {
    await client.end();
  }
}

/** A file that is there, with the loading process's id, while the demo is being loaded: found at a start, it tells of a load that was cut off. */
const LOADING_MARK = 'demo-loading';

/** False also while another start, which lives, is loading it. */
export function wasDemoCutOff(dataFolder: string): boolean {
  const mark = join(dataFolder, LOADING_MARK);
  return existsSync(mark) && !isAlive(Number(readFileSync(mark, 'utf8')));
}

/** Runs the load between setting the mark and taking it away; a failed load keeps the mark. */
export async function loadWithMark(dataFolder: string, load: () => Promise<void>): Promise<void> {
  const mark = join(dataFolder, LOADING_MARK);
  await writeFile(mark, String(process.pid));
  await load();
  await rm(mark);
}

/** Empties the program's own database and files, so that a demo that was cut off is loaded from its beginning. */
export async function removeHalfDemo(databaseUrl: string, dataFolder: string): Promise<void> {
  const maintenance = new URL(databaseUrl);
  const name = maintenance.pathname.slice(1);
  maintenance.pathname = '/postgres';
  const client = new pg.Client({ connectionString: maintenance.href });
  await client.connect();
  try {
    await client.query(`DROP DATABASE IF EXISTS "${name}" WITH (FORCE)`);
    await client.query(`CREATE DATABASE "${name}"`);
  } finally {
    await client.end();
  }
  for (const name of ['files', 'site']) await rm(join(dataFolder, name), { recursive: true, force: true });
  await rm(join(dataFolder, LOADING_MARK));
}
