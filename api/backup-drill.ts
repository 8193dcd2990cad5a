/** A restore that is tried out: into a database and a folder of its own, which are taken away again. */
import { randomBytes } from 'node:crypto';
import { chmod, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import type { BackupList } from './platform/backup/backup-list.js';
import { restoreBackup, tablesThatDiffer } from './platform/backup/restore-backup.js';
import { startEmbeddedPostgres } from './platform/embedded-postgres/start-embedded-postgres.js';
import { releasesAt } from './releases/verify/release-source.js';
import { chainFaults } from './releases/verify/verify-chain.js';
import { verifyAny } from './releases/verify/verify-any.js';

interface Ground {
  /** Address for an owner who may make databases. */
  readonly url: string;
  stop(): Promise<void>;
}

/**
 * Restores a backup elsewhere, holds every row against the backup and verifies every release that came back.
 * @param ownerUrl where it is known, the drill has a database beside the one that it names; else an embedded server
 * @returns one sentence for each thing that is not as it was
 */
export async function drill(backup: string, list: BackupList, say: (line: string) => void, ownerUrl?: string): Promise<string[]> {
  const dataFolder = await mkdtemp(join(tmpdir(), 'fairpull-drill-'));
  await chmod(dataFolder, 0o711);
  try {
    const ground: Ground = ownerUrl ? await databaseBeside(ownerUrl) : await startEmbeddedPostgres(dataFolder);
    try {
      say(`Restoring into a ${ownerUrl ? 'database' : 'server'} of its own …`);
      await restoreBackup(backup, { databaseUrl: ground.url, dataFolder }, () => undefined);
      return [...(await rowsThatDiffer(list, ground.url)), ...(await releasesThatDiffer(dataFolder, list, say))];
    } finally {
      await ground.stop();
    }
  } finally {
    await rm(dataFolder, { recursive: true, force: true });
  }
}

async function databaseBeside(ownerUrl: string): Promise<Ground> {
  const address = new URL(ownerUrl);
  const name = `fairpull_drill_${randomBytes(4).toString('hex')}`;
  address.pathname = `/${name}`;
  await onServerOf(ownerUrl, `CREATE DATABASE ${name}`);
  return { url: address.href, stop: () => onServerOf(ownerUrl, `DROP DATABASE ${name} WITH (FORCE)`) };
}

async function onServerOf(url: string, statement: string): Promise<void> {
  const client = new pg.Client({ connectionString: url, application_name: 'fairpull: drill', connectionTimeoutMillis: 10_000 });
  await client.connect();
  await client.query(statement).finally(() => client.end());
}

async function rowsThatDiffer(list: BackupList, databaseUrl: string): Promise<string[]> {
  const names = await tablesThatDiffer(list, databaseUrl);
  return names.map((name) => `The rows of ${name} are not those of the backup.`);
}

/** Every release among the files, by its own digests, its signature and its chain, and recomputed by this program or its own. */
async function releasesThatDiffer(dataFolder: string, { files }: BackupList, say: (line: string) => void): Promise<string[]> {
  if (!files.some(({ path }) => path.endsWith('/manifest.json'))) return [];
  const verdicts = [];
  for (const source of await releasesAt(join(dataFolder, 'files'))) verdicts.push(await verifyAny(source));
  const figures = verdicts.reduce((sum, verdict) => sum + (verdict.figures ?? 0), 0);
  say(`${verdicts.length} releases verified, ${figures} figures recomputed.`);
  return [...verdicts.flatMap((verdict) => verdict.differences), ...chainFaults(verdicts)].map(
    ({ file, where, found, expected }) => `${file} ${where}: found ${found}; expected ${expected}.`,
  );
}
