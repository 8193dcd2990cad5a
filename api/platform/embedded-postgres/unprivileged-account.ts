import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

/** An account of the machine that a server may run under. */
export interface Account {
  readonly name: string;
  readonly uid: number;
  readonly gid: number;
}

/** In the order we would take them. */
const CANDIDATES = ['postgres', 'nobody'];

/**
 * The account PostgreSQL runs under, or undefined for our own.
 * PostgreSQL refuses to run as root, so root lends it an unprivileged account that the machine already has.
 * @throws Error when we are root and the machine has none of the known accounts
 */
export function chooseAccount(): Account | undefined {
  if (process.getuid?.() !== 0) return undefined;
  const accounts = readAccounts(readFileSync('/etc/passwd', 'utf8'));
  for (const name of CANDIDATES) {
    const account = accounts.find((candidate) => candidate.name === name && candidate.uid !== 0);
    if (account) return account;
  }
  throw new Error(
    `PostgreSQL does not run as root, and /etc/passwd has no account named ${CANDIDATES.join(' or ')} to run it under. ` +
      'Start as an ordinary user, or set DATABASE_URL to a PostgreSQL server of your own.',
  );
}

function readAccounts(passwd: string): Account[] {
  return passwd.split('\n').flatMap((line) => {
    const [name, , uid, gid] = line.split(':');
    return name && uid && gid ? [{ name, uid: Number(uid), gid: Number(gid) }] : [];
  });
}

/** Whether the account may pass through every folder above the path and enter (or run) the path itself. */
export function canReach(account: Account, path: string): boolean {
  const answer = spawnSync('/bin/sh', ['-c', 'test -x "$0"', path], { uid: account.uid, gid: account.gid, cwd: '/' });
  return answer.status === 0;
}
