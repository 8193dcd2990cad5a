import { Inject, Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { CONFIG } from '../config.js';
import type { Config } from '../config.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import type { Actor } from '../platform/http/access.js';
import type { Letter } from '../platform/mail/mail.js';
import { Mail } from '../platform/mail/mail.js';
import { Identifiers, sha256 } from '../platform/identifiers/identifiers.js';
import { toRoles } from './account.js';
import type { InvitationRequest } from '../contract/endpoints/accounts.js';
import { AccountsStore } from './accounts.store.js';

const VALID_DAYS = 14;

/** Makes a one-time address for a new account. Without an actor it is the installation's own, for its first admin. */
@Injectable()
export class Invite {
  constructor(
    private readonly store: AccountsStore,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
    private readonly identifiers: Identifiers,
    private readonly mail: Mail,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  async run(actor: Actor | null, { roles, note, email }: InvitationRequest) {
    const secret = this.identifiers.secret();
    const createdAt = this.clock.now();
    const expiresAt = new Date(createdAt.getTime() + VALID_DAYS * 86_400_000);
    const invitedBy = actor?.accountId ?? null;
    const invitation = await this.database.transaction(async (tx) => {
      const made = await this.store.createInvitation(tx, { tokenHash: sha256(secret), roles, note, invitedBy, createdAt, expiresAt });
      await this.audit.record(tx, {
        actorId: invitedBy,
        action: 'invitation.made',
        objectType: 'invitation',
        objectId: made.id,
        after: { roles, note },
      });
      return made;
    });
    // Behind the #, so that no server or proxy writes the secret into a log.
    const address = `${this.config.PUBLIC_URL}/desk/invitation/#${secret}`;
    const isMailed = email !== undefined && (await this.mail.send(this.letter(email, address)));
    return { id: invitation.id, secret, address, isMailed, roles: toRoles(roles), expiresAt: expiresAt.toISOString() };
  }

  private letter(to: string, address: string): Letter {
    const house = this.config.HOUSE_NAME;
    const text = `You are invited to ${house}. Make your account here, within ${VALID_DAYS} days; the address serves once:\n\n${address}\n`;
    return { to, subject: `Your invitation to ${house}`, text };
  }
}
