import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/database.js';

interface NewAccount {
  readonly email: string;
  readonly displayName: string;
  readonly nameAsSeen: string;
  readonly passwordHash: string;
  readonly roles: string[];
  readonly createdAt: Date;
}

const LONGEST_WAIT_S = 900;

/** The only writer of accounts, invitations, sessions and tokens. */
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
      where: { tokenHash, acceptedAt: null, revokedAt: null, expiresAt: { gt: now } },
      data: { acceptedAt: now },
    });
    return count === 0 ? null : tx.invitation.findUnique({ where: { tokenHash }, select: { roles: true } });
  }

  createSession(
    tx: Transaction,
    data: { tokenHash: string; accountId: string; csrfToken: string; network: string; createdAt: Date; expiresAt: Date },
  ) {
    return tx.session.create({ data });
  }

  endSessions(tx: Transaction, where: { tokenHash?: string | { not: string }; accountId?: string; id?: string }) {
    return tx.session.deleteMany({ where });
  }

  createToken(
    tx: Transaction,
    data: { accountId: string; name: string; tokenHash: string; scopes: string[]; createdAt: Date; expiresAt: Date },
  ) {
    return tx.apiToken.create({ data });
  }

  /** @returns how many were revoked */
  async revokeTokens(tx: Transaction, where: { accountId: string; id?: string }, now: Date): Promise<number> {
    return (await tx.apiToken.updateMany({ where: { ...where, revokedAt: null }, data: { revokedAt: now } })).count;
  }

  /** @returns how many were revoked: one, or none when it is not open */
  async revokeInvitation(tx: Transaction, id: string, now: Date): Promise<number> {
    const where = { id, acceptedAt: null, revokedAt: null, expiresAt: { gt: now } };
    return (await tx.invitation.updateMany({ where, data: { revokedAt: now } })).count;
  }

  setPassword(tx: Transaction, id: string, passwordHash: string) {
    return tx.account.update({ where: { id }, data: { passwordHash } });
  }

  /** The last reset of an account is the only one that serves. */
  async makeReset(
    tx: Transaction,
    data: { accountId: string; tokenHash: string; madeBy: string | null; createdAt: Date; expiresAt: Date },
  ): Promise<void> {
    await tx.passwordReset.deleteMany({ where: { accountId: data.accountId, usedAt: null } });
    await tx.passwordReset.create({ data });
  }

  /** Takes a reset that is neither used nor expired; only one taker wins. */
  async takeReset(tx: Transaction, tokenHash: string, now: Date) {
    const where = { tokenHash, usedAt: null, expiresAt: { gt: now }, account: { isDisabled: false } };
    const { count } = await tx.passwordReset.updateMany({ where, data: { usedAt: now } });
    return count === 0 ? null : (await tx.passwordReset.findUniqueOrThrow({ where: { tokenHash }, include: { account: true } })).account;
  }

  async forgetExpired(tx: Transaction, now: Date): Promise<void> {
    const dayBefore = new Date(now.getTime() - 86_400_000);
    await tx.session.deleteMany({ where: { expiresAt: { lt: now } } });
    await tx.signInFailure.deleteMany({ where: { lastAt: { lt: dayBefore } } });
    await tx.passwordReset.deleteMany({ where: { expiresAt: { lt: dayBefore } } });
  }

  /** Notes the use of a token: never before one that another request has noted meanwhile. */
  async touchToken(tx: Transaction, id: string, now: Date): Promise<void> {
    await tx.apiToken.updateMany({ where: { id, OR: [{ lastUsedAt: null }, { lastUsedAt: { lt: now } }] }, data: { lastUsedAt: now } });
  }

  /**
   * Counts a try in one statement: none without a wait up to the given failure, then 2, 4, 8 … seconds, at most 15 minutes. A quiet day
   * forgets; a wait longer than that is left from a clock that was set back.
   * @returns until when one has to wait, without being counted; null when the try may go on
   */
  async countAttempt(tx: Transaction, subject: string, waitsFrom: number, now: Date): Promise<Date | null> {
    const counted = await tx.$queryRaw<object[]>`
      INSERT INTO sign_in_failure AS f (email, failures, blocked_until, last_at) VALUES (${subject}, 1, ${now}, ${now})
      ON CONFLICT (email) DO UPDATE SET
        failures = CASE WHEN f.last_at < ${now}::timestamptz - interval '1 day' THEN 1 ELSE f.failures + 1 END,
        blocked_until = CASE WHEN f.failures + 1 < ${waitsFrom} OR f.last_at < ${now}::timestamptz - interval '1 day' THEN ${now}::timestamptz
          ELSE ${now}::timestamptz + make_interval(secs => least(${LONGEST_WAIT_S}, 2 ^ least(f.failures + 2 - ${waitsFrom}, 20))) END,
        last_at = ${now}
      WHERE f.blocked_until <= ${now} OR f.blocked_until > ${now}::timestamptz + make_interval(secs => ${LONGEST_WAIT_S})
      RETURNING 1`;
    if (counted.length > 0) return null;
    return (await tx.signInFailure.findUnique({ where: { subject } }))?.blockedUntil ?? now;
  }

  forgetAttempts(tx: Transaction, subject: string) {
    return tx.signInFailure.deleteMany({ where: { subject } });
  }

  async takeAttemptBack(tx: Transaction, subject: string, waitsFrom: number, now: Date): Promise<void> {
    await tx.$executeRaw`
      UPDATE sign_in_failure SET failures = failures - 1, blocked_until = CASE WHEN failures <= ${waitsFrom} THEN ${now} ELSE blocked_until END
      WHERE email = ${subject} AND failures > 0`;
  }
}
