import { Injectable } from '@nestjs/common';
import { among } from '../../platform/database/by-id.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/database.js';

/** Rows of spools, for features whose own rows point at them; tells nobody what a spool is. */
@Injectable()
export class SpoolRows {
  constructor(private readonly database: Database) {}

  /** Ids of spools by their blind codes, retired ones too; an unknown code has none. */
  async ids(codes: readonly string[]): Promise<Map<string, string>> {
    return this.find({ blindCode: among(codes) });
  }

  /** The same of those in use. */
  async inUse(codes: readonly string[]): Promise<Map<string, string>> {
    return this.find({ blindCode: among(codes), retiredOn: null });
  }

  private async find(where: { blindCode: { in: string[] }; retiredOn?: null }): Promise<Map<string, string>> {
    const rows = await this.database.client.spool.findMany({ where, select: { id: true, blindCode: true } });
    return new Map(rows.map(({ id, blindCode }) => [blindCode, id]));
  }

  /** Ids of all spools of lines of these makers. */
  async ofMakers(makerIds: readonly string[]): Promise<string[]> {
    const where = { variant: { line: { makerId: among(makerIds) } } };
    return (await this.database.client.spool.findMany({ where, select: { id: true } })).map(({ id }) => id);
  }

  /** Those among proposals by which a spool was re-identified. */
  async reidentifiedBy(proposalIds: readonly string[], reader: Transaction = this.database.client): Promise<string[]> {
    const rows = await reader.spoolReidentification.findMany({ where: { proposalId: among(proposalIds) }, select: { proposalId: true } });
    return rows.flatMap(({ proposalId }) => proposalId ?? []);
  }

  /** Re-identifications since a moment. */
  reidentifiedSince(moment: Date) {
    return this.database.client.spoolReidentification.findMany({ where: { at: { gt: moment } }, select: { spoolId: true, at: true } });
  }
}
