import { Injectable } from '@nestjs/common';
import { among, ById } from '../platform/database/by-id.js';
import { Database } from '../platform/database/database.js';

/** Of an account, what decides on a request. */
interface AccountInUse {
  readonly accountId: string;
  readonly displayName: string;
  readonly roles: readonly string[];
  readonly isDisabled: boolean;
}

interface SessionInUse extends AccountInUse {
  readonly csrfToken: string;
  readonly expiresAt: Date;
}

interface TokenInUse extends AccountInUse {
  readonly id: string;
  readonly scopes: readonly string[];
  readonly expiresAt: Date;
  readonly revokedAt: Date | null;
  readonly lastUsedAt: Date | null;
}

/** What other features and screens may know of accounts. */
@Injectable()
export class AccountsReadModel {
  constructor(private readonly database: Database) {}

  byEmail(email: string) {
    return this.database.client.account.findUnique({ where: { email } });
  }

  byId(id: string) {
    return this.database.client.account.findUnique({ where: { id } });
  }

  all() {
    return this.database.client.account.findMany({ orderBy: { id: 'asc' } });
  }

  /** Those who may test now. */
  testers() {
    const where = { isDisabled: false, roles: { has: 'tester' } };
    return this.database.client.account.findMany({ where, select: { id: true, displayName: true }, orderBy: { displayName: 'asc' } });
  }

  /** Those among these who may test now. */
  async testersAmong(ids: readonly string[]): Promise<Set<string>> {
    const where = { id: among(ids), isDisabled: false, roles: { has: 'tester' } };
    return new Set((await this.database.client.account.findMany({ where, select: { id: true } })).map(({ id }) => id));
  }

  // Every request asks one of these two: one statement, which leaves the password where it is.
  async sessionByHash(tokenHash: string): Promise<SessionInUse | null> {
    const [session] = await this.database.client.$queryRaw<SessionInUse[]>`
      SELECT s."csrf_token" AS "csrfToken", s."expires_at" AS "expiresAt",
        a."id"::text AS "accountId", a."display_name" AS "displayName", a."roles", a."is_disabled" AS "isDisabled"
      FROM "session" s JOIN "account" a ON a."id" = s."account_id" WHERE s."token_hash" = ${tokenHash}`;
    return session ?? null;
  }

  async tokenByHash(tokenHash: string): Promise<TokenInUse | null> {
    const [token] = await this.database.client.$queryRaw<TokenInUse[]>`
      SELECT t."id"::text, t."scopes", t."expires_at" AS "expiresAt", t."revoked_at" AS "revokedAt", t."last_used_at" AS "lastUsedAt",
        a."id"::text AS "accountId", a."display_name" AS "displayName", a."roles", a."is_disabled" AS "isDisabled"
      FROM "api_token" t JOIN "account" a ON a."id" = t."account_id" WHERE t."token_hash" = ${tokenHash}`;
    return token ?? null;
  }

  tokensOf(accountId: string) {
    return this.database.client.apiToken.findMany({ where: { accountId, revokedAt: null }, orderBy: { id: 'asc' } });
  }

  /** Whether somebody is signed in to the account from there. */
  async isKnownFrom(network: string, email: string, now: Date): Promise<boolean> {
    return (await this.database.client.session.count({ where: { network, account: { email }, expiresAt: { gt: now } } })) > 0;
  }

  /** Whether a password can still be set by it. */
  async isReset(tokenHash: string, now: Date): Promise<boolean> {
    return (await this.database.client.passwordReset.count({ where: { tokenHash, usedAt: null, expiresAt: { gt: now } } })) > 0;
  }

  sessionsOf(accountId: string, now: Date) {
    return this.database.client.session.findMany({ where: { accountId, expiresAt: { gt: now } }, orderBy: { createdAt: 'desc' } });
  }

  openInvitations(now: Date) {
    const where = { acceptedAt: null, revokedAt: null, expiresAt: { gt: now } };
    return this.database.client.invitation.findMany({ where, orderBy: { id: 'desc' } });
  }

  /** Whether an invitation can still be accepted. */
  async isInvitation(tokenHash: string, now: Date): Promise<boolean> {
    const where = { tokenHash, acceptedAt: null, revokedAt: null, expiresAt: { gt: now } };
    return (await this.database.client.invitation.count({ where })) > 0;
  }

  /** Names shown on published pages, by account id. */
  async displayNames(ids: readonly string[]): Promise<ById<string>> {
    if (ids.length === 0) return new ById();
    const rows = await this.database.client.account.findMany({ where: { id: among(ids) }, select: { id: true, displayName: true } });
    return new ById(rows.map((row) => [row.id, row.displayName]));
  }

  async isEmpty(): Promise<boolean> {
    return (await this.database.client.account.count()) === 0;
  }
}
