import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { chmod, chown, cp, mkdir, rename, rm } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { giveBack } from './give-back.js';
import { findServerBinaries } from './server-binaries.js';
import type { ServerBinaries } from './server-binaries.js';
import { canReach, chooseAccount } from './unprivileged-account.js';
import type { Account } from './unprivileged-account.js';

/** Where one PostgreSQL server lives and as whom it runs. */
export interface ServerHome {
  readonly binFolder: string;
  readonly major: string;
  /** Folder of this server alone: cluster, password, log and lock. */
  readonly folder: string;
  readonly clusterFolder: string;
  readonly passwordFile: string;
  readonly logFile: string;
  /** Undefined: our own account. */
  readonly account: Account | undefined;
}

/** Where root keeps what the unprivileged account cannot reach in the checkout. */
const ELSEWHERE = '/var/lib/fairpull';

/**
 * Makes the folder that the server lives in: `postgres` in the data folder. Where the account that root lends cannot get there
 * (a checkout under a closed home folder), it is a folder under /var/lib/fairpull that belongs to this data folder alone;
 * where that account cannot get at the server's programs, a copy of them is kept there too.
 * @param say receives the sentence that tells where the data went when it is not in the data folder
 * @throws Error when the account can reach neither place
 */
export async function prepareServerHome(dataFolder: string, say: (sentence: string) => void, elsewhere = ELSEWHERE): Promise<ServerHome> {
  const binaries = findServerBinaries();
  const account = chooseAccount();
  const inside = resolve(dataFolder);
  await makeOpenFolder(inside);
  if (!account) return describeHome(inside, binaries.folder, binaries.major, account);
  const programs = canReach(account, join(binaries.folder, 'bin', 'postgres')) ? binaries.folder : await copyPrograms(binaries, elsewhere);
  const outside = join(elsewhere, createHash('sha256').update(inside).digest('hex').slice(0, 16));
  // A database that was begun outside stays there, also when the way inside was opened since.
  const wasBegunOutside = existsSync(join(outside, 'postgres', 'cluster'));
  if (canReach(account, inside) && !wasBegunOutside) return describeHome(inside, programs, binaries.major, account);

  await makeOpenFolder(elsewhere);
  await makeOpenFolder(outside);
  if (!canReach(account, outside)) {
    throw new Error(
      `PostgreSQL does not run as root; it would run as "${account.name}", but that account can enter neither ${inside} nor ${outside}. ` +
        'Move the checkout to a folder that others may pass through, or start as an ordinary user, or set DATABASE_URL.',
    );
  }
  say(`The account "${account.name}" that PostgreSQL runs under could not enter ${inside}; the database is kept in ${outside}.`);
  return describeHome(outside, programs, binaries.major, account);
}

/** New folders are made passable; one that exists keeps the rights its owner gave it. */
async function makeOpenFolder(folder: string): Promise<void> {
  if (existsSync(folder)) return;
  await mkdir(folder, { recursive: true });
  await chmod(folder, 0o711);
}

/** A copy that everybody may run, shared by all checkouts with this version. */
async function copyPrograms(binaries: ServerBinaries, elsewhere: string): Promise<string> {
  await makeOpenFolder(elsewhere);
  const copy = join(elsewhere, `server-${binaries.version}`);
  if (existsSync(copy)) return copy;
  const making = `${copy}.${process.pid}`;
  await cp(binaries.folder, making, { recursive: true, verbatimSymlinks: true });
  spawnSync('chmod', ['-R', 'a+rX', making]);
  // Another start may have been quicker: its copy is as good.
  await rename(making, copy).catch(() => rm(making, { recursive: true }));
  return copy;
}

async function describeHome(parent: string, binaries: string, major: string, account: Account | undefined): Promise<ServerHome> {
  const folder = join(parent, 'postgres');
  await mkdir(folder, { recursive: true, mode: 0o700 });
  const clusterFolder = join(folder, 'cluster');
  if (account) await chown(folder, account.uid, account.gid);
  await giveBack(folder, clusterFolder, account);
  return {
    binFolder: join(binaries, 'bin'),
    major,
    folder,
    clusterFolder,
    passwordFile: join(folder, 'password'),
    logFile: join(folder, 'server.log'),
    account,
  };
}
