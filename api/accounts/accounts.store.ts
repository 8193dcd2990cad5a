import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/database.js';

interface NewAccount {
  readonly email: string;
  readonly displayName: string;
  readonly passwordHash: string;
  readonly roles: string[];
  readonly createdAt: Date;
}

/** The only writer of accounts, invitations, sessions, tokens and declared interests. */
@Injectable()
export class AccountsStore {
  createAccount(tx: Transaction, account: NewAccount) {
    return tx.account.create({ data: account });
  }

  accountById(tx: Transaction, id: string) {
    return tx.account.findUnique({ where: { id } });
  }

  changeAccount(tx: Transaction, id: string, change: { roles?: string[]; isDisabled?: boolean }) {
    return tx.account.update({ where: { id }, data: { ...change, version: { increment: 1 } } });
  }

  /** Locks all admins' rows, so that two changes cannot take away the last one together. */
  async lockAdmins(tx: Transaction): Promise<string[]> {
    const rows = await tx.$queryRaw<
      { id: string }[]
    >`SELECT id::text FROM account WHERE 'admin' = ANY(roles) AND NOT is_disabled ORDER BY id FOR UPDATE`;
    return rows.map((row) => row.id);
  }

  createInvitation(
    tx: Transaction,
    data: { tokenHash: string; roles: string[]; note: string; invitedBy: string | null; createdAt: Date; expiresAt: Date },
  ) {
    return tx.invitation.create({ data });
  }

  /** Takes an invitation that is neither used nor expired; only one taker wins. */
  async takeInvitation(tx: Transaction, tokenHash: string, now: Date): Promise<{ roles: string[] } | null> {
    const { count } = await tx.invitation.updateMany({
      where: { tokenHash, acceptedAt: null, expiresAt: { gt: now } },
      data: { acceptedAt: now },
    });
    return count === 0 ? null : tx.invitation.findUnique({ where: { tokenHash }, select: { roles: true } });
  }

  createSession(tx: Transaction, data: { tokenHash: string; accountId: string; csrfToken: string; createdAt: Date; expiresAt: Date }) {
    return tx.session.create({ data });
  }

  endSessions(tx: Transaction, where: { tokenHash?: string; accountId?: string }) {
    return tx.session.deleteMany({ where });
  }

  createToken(
    tx: Transaction,
    data: { accountId: string; name: string; tokenHash: string; scopes: string[]; createdAt: Date; expiresAt: Date },
  ) {
    return tx.apiToken.create({ data });
  }

  async revokeToken(tx: Transaction, accountId: string, id: string, now: Date): Promise<boolean> {
    const { count } = await tx.apiToken.updateMany({ where: { id, accountId, revokedAt: null }, data: { revokedAt: now } });
    return count > 0;
  }

  /** Notes the use of a token, at most once a minute. */
  touchToken(tx: Transaction, id: string, now: Date) {
    return tx.apiToken.updateMany({
      where: { id, OR: [{ lastUsedAt: null }, { lastUsedAt: { lt: new Date(now.getTime() - 60_000) } }] },
      data: { lastUsedAt: now },
    });
  }

  async countFailure(tx: Transaction, email: string, blockedUntil: (failures: number) => Date): Promise<void> {
    const before = await tx.signInFailure.findUnique({ where: { email } });
    const failures = (before?.failures ?? 0) + 1;
    const data = { failures, blockedUntil: blockedUntil(failures) };
    await tx.signInFailure.upsert({ where: { email }, create: { email, ...data }, update: data });
  }

  forgetFailures(tx: Transaction, email: string) {
    return tx.signInFailure.deleteMany({ where: { email } });
  }

  declareInterest(tx: Transaction, data: { accountId: string; makerId: string; words: string; declaredAt: Date }) {
    return tx.declaredInterest.create({ data });
  }
}
