import { Injectable } from '@nestjs/common';
import type { Prisma } from '../../platform/database/generated/client.js';
import type { Transaction } from '../../platform/database/database.js';
import type { SpoolSource } from '../../contract/spool-sources.js';

interface NewSpool {
  readonly blindCode: string;
  readonly variantId: string;
  readonly source: SpoolSource;
  readonly obtainedOn: Date;
  readonly place: string;
  readonly lot: string | null;
  readonly lengthM: string | null;
}

interface SecondSpool {
  /** What it is under its first code. */
  readonly spoolId: string;
  readonly blindCode: string;
  readonly drawId: string;
  readonly submissionId: string;
}

interface Reidentification {
  readonly spoolId: string;
  readonly fromVariantId: string;
  readonly toVariantId: string;
  readonly proposalId: string;
  readonly reason: string;
  readonly byId: string;
  readonly at: Date;
}

/** The only writer of spools, of their re-identifications and of what they stand for a second time. */
@Injectable()
export class SpoolsStore {
  async isTaken(tx: Transaction, blindCode: string): Promise<boolean> {
    return (await tx.spool.count({ where: { blindCode } })) > 0;
  }

  create(tx: Transaction, data: NewSpool) {
    return tx.spool.create({ data });
  }

  /** The same spool under another code, which stands for a result that is tested again. */
  async putBack(tx: Transaction, { spoolId, blindCode, ...stands }: SecondSpool): Promise<void> {
    const { variantId, source, obtainedOn, place, lot, lengthM } = await tx.spool.findUniqueOrThrow({ where: { id: spoolId } });
    const { id } = await tx.spool.create({ data: { blindCode, variantId, source, obtainedOn, place, lot, lengthM } });
    await tx.retest.create({ data: { spoolId: id, ...stands } });
  }

  /** The spool with its variant, locked until the transaction ends; null when there is none. */
  async lock(tx: Transaction, blindCode: string) {
    await tx.$queryRaw`SELECT 1 FROM spool WHERE blind_code = ${blindCode} FOR UPDATE`;
    return tx.spool.findUnique({ where: { blindCode }, include: { variant: true } });
  }

  /** Whether the key that was sealed at the opening of an edition names it. */
  async isSealed(tx: Transaction, blindCode: string): Promise<boolean> {
    return (await tx.edition.count({ where: { blindKey: { contains: `${blindCode} ` } } })) > 0;
  }

  change(tx: Transaction, id: string, fields: Prisma.SpoolUncheckedUpdateInput) {
    return tx.spool.update({ where: { id }, data: { ...fields, version: { increment: 1 } } });
  }

  /** Whether an account handed in anything on a spool; a draft does not count. */
  async hasTested(tx: Transaction, spoolId: string, testerId: string): Promise<boolean> {
    return (await tx.submission.count({ where: { spoolId, testerId, revision: { gt: 0 } } })) > 0;
  }

  /** Puts the re-identification on record first: the database moves a spool for no other reason. */
  async reidentify(tx: Transaction, data: Reidentification): Promise<void> {
    await tx.spoolReidentification.create({ data });
    await tx.spool.update({ where: { id: data.spoolId }, data: { variantId: data.toVariantId, version: { increment: 1 } } });
  }
}
