import { Inject, Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { CONFIG } from '../config.js';
import type { Config } from '../config.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import type { Letter } from '../platform/mail/mail.js';
import { Mail } from '../platform/mail/mail.js';
import { Identifiers, sha256 } from '../platform/identifiers/identifiers.js';
import { accountProblems } from './accounts.errors.js';
import { AccountsStore } from './accounts.store.js';

const VALID_HOURS = 24;

/** Makes a one-time address to set a new password. Without an actor it is made at the house's own machine, for an admin who is locked out. */
@Injectable()
export class MakePasswordReset {
  constructor(
    private readonly store: AccountsStore,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
    private readonly identifiers: Identifiers,
    private readonly mail: Mail,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  async run(actor: Actor | null, accountId: string) {
    const secret = this.identifiers.secret();
    const createdAt = this.clock.now();
    const expiresAt = new Date(createdAt.getTime() + VALID_HOURS * 3_600_000);
    const madeBy = actor?.accountId ?? null;
    const email = await this.database.transaction(async (tx) => {
      const account = await this.store.accountById(tx, accountId);
      if (!account) throw new Problem(platformProblems['request/not-found'], `No account has the id ${accountId}.`);
      if (account.isDisabled) throw new Problem(accountProblems['accounts/disabled']);
      await this.store.makeReset(tx, { accountId, tokenHash: sha256(secret), madeBy, createdAt, expiresAt });
      await this.audit.record(tx, { actorId: madeBy, action: 'account.resetMade', objectType: 'account', objectId: accountId });
      return account.email;
    });
    const address = `${this.config.PUBLIC_URL}/desk/new-password/#${secret}`;
    const isMailed = await this.mail.send(letter(this.config.HOUSE_NAME, email, address));
    return { secret, address, isMailed, expiresAt: expiresAt.toISOString() };
  }
}

const letter = (house: string, to: string, address: string): Letter => ({
  to,
  subject: `A new password at ${house}`,
  text: `Set a new password here, within ${VALID_HOURS} hours; the address serves once:\n\n${address}\n\nIf you did not ask for it, do nothing: your password stays.\n`,
});
