/** The tables of the record as plain rows, one file a table. The job queue is left out: its orders are given anew at every start. */
import { createReadStream, createWriteStream } from 'node:fs';
import { join } from 'node:path';
import { Writable } from 'node:stream';
import { text as readText } from 'node:stream/consumers';
import { pipeline } from 'node:stream/promises';
import { createGunzip, createGzip } from 'node:zlib';
import type pg from 'pg';
import { from as copyFrom, to as copyTo } from 'pg-copy-streams';
import type { TableBackup } from './backup-list.js';
import { DigestStream } from './digest-stream.js';

/** Rows are told in the same words whatever the server and the account are set to. */
export const SAME_WORDS = `SET TimeZone = 'UTC'; SET DateStyle = 'ISO, MDY'; SET IntervalStyle = 'postgres'; SET bytea_output = 'hex';
  SET extra_float_digits = 1; SET client_encoding = 'UTF8'; SET statement_timeout = 0; SET idle_in_transaction_session_timeout = 0`;

const TABLES = `
  SELECT c.relname AS name,
         array_agg(a.attname::text ORDER BY a.attnum) FILTER (WHERE a.attgenerated = '') AS columns,
         (SELECT array_agg(k.attname::text ORDER BY array_position(i.indkey::int2[], k.attnum))
            FROM pg_index i JOIN pg_attribute k ON k.attrelid = c.oid AND k.attnum = ANY (i.indkey::int2[])
           WHERE i.indrelid = c.oid AND i.indisprimary) AS key
    FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid AND a.attnum > 0 AND NOT a.attisdropped
   WHERE c.relnamespace = current_schema()::regnamespace AND c.relkind = 'r' AND c.relpersistence = 'p' AND c.relname <> '_prisma_migrations'
   GROUP BY c.oid, c.relname ORDER BY c.relname COLLATE "C"`;

export interface RecordTable {
  readonly name: string;
  /** Without generated ones. */
  readonly columns: readonly string[];
  readonly key: readonly string[] | null;
}

export const named = (name: string): string => `"${name.replaceAll('"', '""')}"`;
export const list = (names: readonly string[]): string => names.map(named).join(', ');
const fileOf = (name: string): string => `database/${name}.copy.gz`;

/** All tables of the record, as the database has them. */
export async function tablesOf(client: pg.Client): Promise<RecordTable[]> {
  return (await client.query<RecordTable>(TABLES)).rows;
}

/** Rows in the order of the key by their text: the same rows give the same bytes on every server. */
const rowsInOrder = ({ name, columns, key }: RecordTable): string => {
  const order = (key ?? columns).map((column) => `${named(column)}::text COLLATE "C"`).join(', ');
  return `COPY (SELECT ${list(columns)} FROM ${named(name)} ORDER BY ${order}) TO STDOUT`;
};

/**
 * Begins to look at the database as it is at this moment, whatever others write meanwhile.
 * @returns all tables
 */
export async function beginSnapshot(client: pg.Client): Promise<RecordTable[]> {
  await client.query(SAME_WORDS);
  await client.query('BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY');
  return tablesOf(client);
}

/** All rows of a table in the text form of COPY. */
export async function rowsOf(client: pg.Client, table: RecordTable): Promise<string[]> {
  const text = await readText(client.query(copyTo(rowsInOrder(table))));
  return text.split('\n').slice(0, -1);
}

/** Number and digest of the rows of a table. */
export async function digestOfRows(client: pg.Client, table: RecordTable): Promise<Pick<TableBackup, 'rows' | 'sha256'>> {
  const nowhere = new Writable({ write: (_chunk, _encoding, done) => done() });
  return streamRows(client, table, (rows, digest) => pipeline(rows, digest, nowhere));
}

/** Writes the rows of a table into a backup. */
export async function dumpRows(client: pg.Client, table: RecordTable, backup: string): Promise<TableBackup> {
  const file = fileOf(table.name);
  const written = await streamRows(client, table, (rows, digest) =>
    pipeline(rows, digest, createGzip(), createWriteStream(join(backup, file), { flush: true })),
  );
  return { name: table.name, columns: [...table.columns], ...written, file };
}

async function streamRows(
  client: pg.Client,
  table: RecordTable,
  pass: (rows: NodeJS.ReadableStream, digest: DigestStream) => Promise<void>,
): Promise<Pick<TableBackup, 'rows' | 'sha256'>> {
  const rows = client.query(copyTo(rowsInOrder(table)));
  const digest = new DigestStream();
  await pass(rows, digest);
  return { rows: rows.rowCount, sha256: digest.digest() };
}

/**
 * Reads the rows of a table in a backup to their end.
 * @returns their digest
 */
export async function digestInBackup(backup: string, { file }: TableBackup): Promise<string> {
  const digest = new DigestStream();
  const nowhere = new Writable({ write: (_chunk, _encoding, done) => done() });
  await pipeline(createReadStream(join(backup, file)), createGunzip(), digest, nowhere);
  return digest.digest();
}

/**
 * Puts the rows of a backup in the place of those that a migrated database has, in one transaction. The rules of the record judge changes,
 * not a record that is put back as it was: their triggers rest meanwhile. References between tables are laid anew, and so are checked.
 * @throws Error when a table is missing, or its rows are not those that the list names; then nothing is changed
 */
export async function loadTables(
  client: pg.Client,
  backup: string,
  tables: readonly TableBackup[],
  say: (line: string) => void,
): Promise<void> {
  await client.query(SAME_WORDS);
  await client.query('BEGIN');
  try {
    const there = await tablesOf(client);
    const missing = tables.filter(({ name }) => !there.some((table) => table.name === name));
    if (missing.length > 0)
      throw new Error(`The database has no table ${missing.map(({ name }) => name).join(', ')}, which the backup holds.`);
    const references = (await client.query<Reference>(REFERENCES)).rows;
    for (const { holder, name } of references) await client.query(`ALTER TABLE ${holder} DROP CONSTRAINT ${named(name)}`);
    for (const { name } of there) {
      await client.query(`ALTER TABLE ${named(name)} DISABLE TRIGGER USER`);
      await client.query(`DELETE FROM ${named(name)}`);
    }
    for (const table of tables) {
      await loadRows(client, backup, table);
      say(`  ${table.name}: ${table.rows} rows`);
    }
    for (const { holder, name, definition } of references)
      await client.query(`ALTER TABLE ${holder} ADD CONSTRAINT ${named(name)} ${definition}`);
    for (const { name } of there) await client.query(`ALTER TABLE ${named(name)} ENABLE TRIGGER USER`);
    await client.query('COMMIT');
  } catch (error) {
    await client.query('ROLLBACK').catch(() => undefined);
    throw error;
  }
}

interface Reference {
  readonly holder: string;
  readonly name: string;
  readonly definition: string;
}

const REFERENCES = `SELECT conrelid::regclass::text AS holder, conname AS name, pg_get_constraintdef(oid) AS definition
  FROM pg_constraint WHERE contype = 'f' AND connamespace = current_schema()::regnamespace ORDER BY conrelid, conname`;

async function loadRows(client: pg.Client, backup: string, { name, columns, file, rows, sha256 }: TableBackup): Promise<void> {
  const digest = new DigestStream();
  const taken = client.query(copyFrom(`COPY ${named(name)} (${list(columns)}) FROM STDIN`));
  await pipeline(createReadStream(join(backup, file)), createGunzip(), digest, taken);
  const found = digest.digest();
  if (found !== sha256 || taken.rowCount !== rows)
    throw new Error(`${file} of the backup was changed: ${taken.rowCount} rows, SHA-256 ${found}; expected ${rows} rows, ${sha256}.`);
}
