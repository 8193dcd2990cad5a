import { Injectable, Logger } from '@nestjs/common';
import { Mail } from '../platform/mail/mail.js';
import { Problem } from '../platform/errors/problem.js';
import { accountProblems } from './accounts.errors.js';
import { AccountsReadModel } from './accounts.read-model.js';
import { Attempts, lettersTo, secretsFrom } from './attempts.js';
import { MakePasswordReset } from './make-password-reset.js';

/** Sends whoever has forgotten their password an address to set a new one; the answer does not tell who has an account. */
@Injectable()
export class AskForReset {
  private readonly log = new Logger(AskForReset.name);

  constructor(
    private readonly accounts: AccountsReadModel,
    private readonly attempts: Attempts,
    private readonly resets: MakePasswordReset,
    private readonly mail: Mail,
  ) {}

  /** @throws Problem where the house has no mail server, and after some letters to one address */
  async run(email: string, network: string): Promise<void> {
    if (!this.mail.isSetUp) throw new Problem(accountProblems['accounts/no-mail']);
    await this.attempts.begin(secretsFrom(network), lettersTo(email));
    // Not waited for: how long it takes would tell whether there is an account.
    void this.write(email).catch((error: unknown) => this.log.error(`No address for a new password was made: ${String(error)}`));
  }

  private async write(email: string): Promise<void> {
    const account = await this.accounts.byEmail(email);
    if (account && !account.isDisabled) await this.resets.run(null, account.id);
  }
}
