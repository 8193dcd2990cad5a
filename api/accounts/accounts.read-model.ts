import { Injectable } from '@nestjs/common';
import { Database } from '../platform/database/database.js';

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

  sessionByHash(tokenHash: string) {
    return this.database.client.session.findUnique({ where: { tokenHash }, include: { account: true } });
  }

  tokenByHash(tokenHash: string) {
    return this.database.client.apiToken.findUnique({ where: { tokenHash }, include: { account: true } });
  }

  tokensOf(accountId: string) {
    return this.database.client.apiToken.findMany({ where: { accountId, revokedAt: null }, orderBy: { id: 'asc' } });
  }

  async blockedUntil(email: string): Promise<Date | null> {
    const row = await this.database.client.signInFailure.findUnique({ where: { email } });
    return row?.blockedUntil ?? null;
  }

  async hasInterest(accountId: string, makerId: string): Promise<boolean> {
    return (await this.database.client.declaredInterest.count({ where: { accountId, makerId } })) > 0;
  }

  interestsOf(accountId: string) {
    return this.database.client.declaredInterest.findMany({
      where: { accountId },
      include: { maker: { select: { slug: true } } },
      orderBy: { declaredAt: 'asc' },
    });
  }

  /** Names shown on published pages, by account id. */
  async displayNames(ids: readonly string[]): Promise<Map<string, string>> {
    const rows = await this.database.client.account.findMany({ where: { id: { in: [...ids] } }, select: { id: true, displayName: true } });
    return new Map(rows.map((row) => [row.id, row.displayName]));
  }

  makerId(slug: string) {
    return this.database.client.maker.findUnique({ where: { slug }, select: { id: true } });
  }

  async isEmpty(): Promise<boolean> {
    return (await this.database.client.account.count()) === 0;
  }
}
