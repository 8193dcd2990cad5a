/** A restore that is tried out: into a server and a folder of its own, which are taken away again. */
import { chmod, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BackupList } from './platform/backup/backup-list.js';
import { restoreBackup, tablesThatDiffer } from './platform/backup/restore-backup.js';
import { startEmbeddedPostgres } from './platform/embedded-postgres/start-embedded-postgres.js';
import { releasesAt } from './releases/verify/release-source.js';
import { chainFaults } from './releases/verify/verify-chain.js';
import { verifyAny } from './releases/verify/verify-any.js';

/**
 * Restores a backup elsewhere, holds every row against the backup and verifies every release that came back.
 * @returns one sentence for each thing that is not as it was
 */
export async function drill(backup: string, list: BackupList, say: (line: string) => void): Promise<string[]> {
  const dataFolder = await mkdtemp(join(tmpdir(), 'fairpull-drill-'));
  await chmod(dataFolder, 0o711);
  try {
    const server = await startEmbeddedPostgres(dataFolder);
    try {
      say('Restoring into a server of its own …');
      await restoreBackup(backup, { databaseUrl: server.url, dataFolder }, () => undefined);
      return [...(await rowsThatDiffer(list, server.url)), ...(await releasesThatDiffer(dataFolder, list, say))];
    } finally {
      await server.stop();
    }
  } finally {
    await rm(dataFolder, { recursive: true, force: true });
  }
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
