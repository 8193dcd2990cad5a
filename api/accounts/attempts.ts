import { Injectable } from '@nestjs/common';
import { Clock } from '../platform/clock/clock.js';
import type { Transaction } from '../platform/database/database.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import { accountProblems } from './accounts.errors.js';
import { AccountsStore } from './accounts.store.js';

/** What is tried, and the failure from which on one has to wait. */
export interface Tried {
  readonly subject: string;
  readonly waitsFrom: number;
}

/** Failures before the wait: few for one secret, more for a house full of people behind one address. */
const FOR_ONE = 5;
const FOR_NETWORK = 20;

/** A known network has a count of its own, so that guesses from elsewhere do not lock out whoever has signed in from it before. */
export const signInOf = (email: string, knownNetwork: string | null): Tried => ({
  subject: knownNetwork === null ? `sign-in ${email}` : `sign-in ${email} from ${knownNetwork}`,
  waitsFrom: FOR_ONE,
});
export const passwordOf = (accountId: string): Tried => ({ subject: `password ${accountId}`, waitsFrom: FOR_ONE });
export const lettersTo = (email: string): Tried => ({ subject: `letters to ${email}`, waitsFrom: FOR_ONE });
export const secretsFrom = (network: string): Tried => ({ subject: `secrets from ${network}`, waitsFrom: FOR_NETWORK });

/** Counts each try before its secret is looked at, so that tries that come all at once are counted all the same. */
@Injectable()
export class Attempts {
  constructor(
    private readonly store: AccountsStore,
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** @throws Problem 429 while one has to wait */
  async begin(...all: readonly Tried[]): Promise<void> {
    for (const { subject, waitsFrom } of all) {
      const now = this.clock.now();
      const blockedUntil = await this.store.countAttempt(this.database.client, subject, waitsFrom, now);
      if (blockedUntil === null) continue;
      const seconds = Math.max(1, Math.ceil((blockedUntil.getTime() - now.getTime()) / 1000));
      throw new Problem(accountProblems['accounts/too-many-failures'], `Try again in ${seconds} s.`, [], {
        'Retry-After': String(seconds),
      });
    }
  }

  /** A success forgets what went wrong with this secret; of a network it takes back no more than its own try. */
  async succeed(tx: Transaction, secret: Tried | null, network: Tried | null): Promise<void> {
    if (secret) await this.store.forgetAttempts(tx, secret.subject);
    if (network) await this.store.takeAttemptBack(tx, network.subject, network.waitsFrom, this.clock.now());
  }
}
