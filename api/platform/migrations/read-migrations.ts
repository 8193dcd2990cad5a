import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';

/** One step of the database's history, as written in prisma/migrations/<name>/migration.sql. */
export interface Migration {
  readonly name: string;
  readonly sql: string;
  /** SHA-256 of the file, hex. */
  readonly checksum: string;
}

/**
 * Reads the migrations in the order of their names, which begin with a date.
 * @throws Error when a folder holds no migration.sql
 */
export async function readMigrations(folder: string): Promise<Migration[]> {
  const entries = existsSync(folder) ? await readdir(folder, { withFileTypes: true }) : [];
  const names = entries.filter((entry) => entry.isDirectory()).map((entry) => entry.name);
  return Promise.all(names.sort().map((name) => readMigration(folder, name)));
}

async function readMigration(folder: string, name: string): Promise<Migration> {
  const file = join(folder, name, 'migration.sql');
  if (!existsSync(file)) throw new Error(`${join(folder, name)} has no migration.sql. Write it, or remove the folder.`);
  // A checkout on Windows may hold CRLF; the history is the same.
  const sql = (await readFile(file, 'utf8')).replaceAll('\r\n', '\n');
  return { name, sql, checksum: createHash('sha256').update(sql).digest('hex') };
}
