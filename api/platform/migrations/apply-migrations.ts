import { randomUUID } from 'node:crypto';
import { fileURLToPath } from 'node:url';
import pg from 'pg';
import { readMigrations } from './read-migrations.js';
import type { Migration } from './read-migrations.js';
import { requireServer } from '../database/require-server.js';
import { requireSameHistory } from './require-same-history.js';
import type { AppliedMigration } from './require-same-history.js';

/** The lock that Prisma's own `migrate` takes (schema-engine, ADVISORY_LOCK_KEY), so that neither runs beside the other. */
const ADVISORY_LOCK_KEY = 72_707_369;

/** The table that Prisma's own `migrate` keeps, column for column. */
const MIGRATIONS_TABLE = `CREATE TABLE IF NOT EXISTS "_prisma_migrations" (
  "id" VARCHAR(36) PRIMARY KEY NOT NULL,
  "checksum" VARCHAR(64) NOT NULL,
  "finished_at" TIMESTAMPTZ,
  "migration_name" VARCHAR(255) NOT NULL,
  "logs" TEXT,
  "rolled_back_at" TIMESTAMPTZ,
  "started_at" TIMESTAMPTZ NOT NULL DEFAULT now(),
  "applied_steps_count" INTEGER NOT NULL DEFAULT 0
)`;

export const MIGRATIONS_FOLDER = fileURLToPath(new URL('../../../prisma/migrations', import.meta.url));

const APPLIED = `SELECT "migration_name" AS name, "checksum", "finished_at" IS NOT NULL AS "isFinished"
  FROM "_prisma_migrations" WHERE "rolled_back_at" IS NULL ORDER BY "migration_name"`;

/**
 * Brings a database up to the history in a folder of migrations; does nothing when it is already there.
 * Each migration runs in a transaction of its own together with its row in `_prisma_migrations`: it is there whole or not at all.
 * @param upTo the history of a backup: no migration beyond it is applied
 * @returns names of the migrations that were applied now
 * @throws Error when the database's history is not a beginning of the folder's, or when a migration fails
 */
export async function applyMigrations(
  databaseUrl: string,
  folder: string = MIGRATIONS_FOLDER,
  upTo?: readonly Pick<AppliedMigration, 'name' | 'checksum'>[],
): Promise<string[]> {
  const migrations = await readMigrations(folder);
  if (upTo)
    requireSameHistory(
      migrations,
      upTo.map((one) => ({ ...one, isFinished: true })),
    );
  return withConnection(databaseUrl, async (client) => {
    await requireServer(client);
    // Held by the session, not a transaction; ends with the connection.
    await client.query('SELECT pg_advisory_lock($1)', [ADVISORY_LOCK_KEY]);
    await client.query(MIGRATIONS_TABLE);
    const { rows } = await client.query<AppliedMigration>(APPLIED);
    requireSameHistory(migrations, rows);
    const pending = migrations.slice(rows.length, upTo?.length);
    for (const migration of pending) await applyMigration(client, migration);
    return pending.map(({ name }) => name);
  });
}

/** The history of a database, oldest first; empty when no migration was ever applied. */
export async function appliedMigrations(client: pg.Client): Promise<AppliedMigration[]> {
  const table = await client.query<{ isThere: boolean }>(`SELECT to_regclass('"_prisma_migrations"') IS NOT NULL AS "isThere"`);
  return table.rows[0]?.isThere ? (await client.query<AppliedMigration>(APPLIED)).rows : [];
}

/**
 * Names of the migrations that a database still lacks; changes nothing.
 * @throws Error when the database's history is not a beginning of the folder's
 */
export async function pendingMigrations(databaseUrl: string, folder: string = MIGRATIONS_FOLDER): Promise<string[]> {
  const migrations = await readMigrations(folder);
  return withConnection(databaseUrl, async (client) => {
    const rows = await appliedMigrations(client);
    requireSameHistory(migrations, rows);
    return migrations.slice(rows.length).map(({ name }) => name);
  });
}

async function withConnection<Answer>(databaseUrl: string, work: (client: pg.Client) => Promise<Answer>): Promise<Answer> {
  const client = new pg.Client({
    connectionString: databaseUrl,
    application_name: 'fairpull: migrations',
    connectionTimeoutMillis: 10_000,
  });
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end();
  }
}

async function applyMigration(client: pg.Client, migration: Migration): Promise<void> {
  try {
    await client.query('BEGIN');
    await client.query(migration.sql);
    await client.query(
      `INSERT INTO "_prisma_migrations" ("id", "checksum", "migration_name", "started_at", "finished_at", "applied_steps_count")
       VALUES ($1, $2, $3, now(), clock_timestamp(), 1)`,
      [randomUUID(), migration.checksum, migration.name],
    );
    await client.query('COMMIT');
  } catch (error) {
    await client.query('ROLLBACK').catch(() => undefined);
    const { message, position } = error as { message: string; position?: string };
    const line = position === undefined ? '' : ` at line ${migration.sql.slice(0, Number(position)).split('\n').length}`;
    throw new Error(`Migration ${migration.name} failed${line} and was undone: ${message}`, { cause: error });
  }
}
