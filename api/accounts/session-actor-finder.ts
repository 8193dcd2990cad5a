import { Injectable } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import type { Actor } from '../platform/http/access.js';
import { ActorFinder, SESSION_COOKIE } from '../platform/http/access.js';
import { sha256 } from '../platform/identifiers/identifiers.js';
import { toRoles } from './account.js';
import { AccountsReadModel } from './accounts.read-model.js';
import { AccountsStore } from './accounts.store.js';

/** A use of a token within it of the last one noted costs no statement [ms]. */
const NOTED_EVERY_MS = 60_000;

/** Finds the actor by the session cookie of a browser or the bearer token of a program. */
@Injectable()
export class SessionActorFinder extends ActorFinder {
  constructor(
    private readonly accounts: AccountsReadModel,
    private readonly store: AccountsStore,
    private readonly database: Database,
    private readonly clock: Clock,
  ) {
    super();
  }

  find(request: FastifyRequest): Promise<Actor | null> {
    const bearer = /^Bearer (\S+)$/i.exec(request.headers.authorization ?? '')?.[1];
    if (bearer !== undefined) return this.byToken(bearer);
    const cookie = request.cookies[SESSION_COOKIE];
    return cookie === undefined ? Promise.resolve(null) : this.bySession(cookie);
  }

  private async bySession(secret: string): Promise<Actor | null> {
    const sessionKey = sha256(secret);
    const session = await this.accounts.sessionByHash(sessionKey);
    if (!session || session.expiresAt <= this.clock.now() || session.isDisabled) return null;
    const { accountId, displayName, roles, csrfToken } = session;
    return { accountId, displayName, roles: toRoles(roles), csrfToken, sessionKey };
  }

  private async byToken(secret: string): Promise<Actor | null> {
    const now = this.clock.now();
    const token = await this.accounts.tokenByHash(sha256(secret));
    if (!token || token.revokedAt !== null || token.expiresAt <= now || token.isDisabled) return null;
    if (token.lastUsedAt === null || now.getTime() - token.lastUsedAt.getTime() >= NOTED_EVERY_MS)
      await this.store.touchToken(this.database.client, token.id, now);
    const { accountId, displayName, roles } = token;
    return {
      accountId,
      displayName,
      roles: toRoles(roles.filter((role) => token.scopes.includes(role))),
      csrfToken: null,
      sessionKey: null,
    };
  }
}
