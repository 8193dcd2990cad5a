import { Injectable } from '@nestjs/common';
import type { Prisma } from '../../platform/database/generated/client.js';
import type { Transaction } from '../../platform/database/database.js';
import { normaliseBlindCode } from '../../contract/blind-code.js';
import type { SpoolSource } from '../../contract/spool-sources.js';
import { notValid } from '../../platform/http/validation.js';
import { spoolNotOnRecord, unknownReference } from '../catalogue-problems.js';

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
  /** Slug of the variant that it is. */
  readonly variant: string;
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

  /**
   * The spool with its variant, locked until the transaction ends.
   * @throws Problem where none carries the code
   */
  async lock(tx: Transaction, typed: string) {
    const blindCode = normaliseBlindCode(typed);
    await tx.$queryRaw`SELECT 1 FROM spool WHERE blind_code = ${blindCode} FOR UPDATE`;
    const spool = await tx.spool.findUnique({ where: { blindCode }, include: { variant: true } });
    if (!spool) throw spoolNotOnRecord(typed);
    return spool;
  }

  /** Whether the key that was sealed at the opening of an edition names it. */
  async isSealed(tx: Transaction, blindCode: string): Promise<boolean> {
    return (await tx.edition.count({ where: { blindKey: { contains: `${blindCode} ` } } })) > 0;
  }

  change(tx: Transaction, id: string, fields: Prisma.SpoolUncheckedUpdateInput) {
    return tx.spool.update({ where: { id }, data: { ...fields, version: { increment: 1 } } });
  }

  /**
   * Puts the re-identification of a locked spool on record first: the database moves a spool for no other reason.
   * @throws Problem where there is no such variant, or the spool is it already
   */
  async reidentify(
    tx: Transaction,
    spool: { readonly id: string; readonly variantId: string },
    { variant: slug, ...reidentification }: Reidentification,
  ): Promise<void> {
    const [variant] = await tx.$queryRaw<{ id: string }[]>`SELECT "id"::text FROM "variant" WHERE "slug" = ${slug} FOR UPDATE`;
    if (!variant) throw unknownReference('/variant', 'variant', slug);
    if (variant.id === spool.variantId)
      throw notValid([
        { pointer: '/variant', detail: `The spool is "${slug}" on record already; expected another variant.`, code: 'unchanged' },
      ]);
    const data = { ...reidentification, spoolId: spool.id, fromVariantId: spool.variantId, toVariantId: variant.id };
    await tx.spoolReidentification.create({ data });
    await this.change(tx, spool.id, { variantId: variant.id });
  }
}
