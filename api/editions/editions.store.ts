import { Injectable } from '@nestjs/common';
import type { Prisma } from '../platform/database/generated/client.js';
import type { Transaction } from '../platform/database/database.js';
import type { PreviewCells } from './preview.js';
import type { SchemeRequest } from './editions.schemas.js';

/** The only writer of schemes, editions, entries and exclusions. */
@Injectable()
export class EditionsStore {
  createScheme(tx: Transaction, { rules, ...named }: SchemeRequest) {
    return tx.scheme.create({ data: { ...named, rules: rules } });
  }

  createEdition(tx: Transaction, data: Prisma.EditionUncheckedCreateInput, methodVersionIds: readonly string[]) {
    return tx.edition.create({ data: { ...data, methods: { create: methodVersionIds.map((methodVersionId) => ({ methodVersionId })) } } });
  }

  /** Locks the edition's row for a change of state and gives it as it stands. */
  async lock(tx: Transaction, slug: string) {
    await tx.$queryRaw`SELECT 1 FROM edition WHERE slug = ${slug} FOR UPDATE`;
    return tx.edition.findUnique({ where: { slug } });
  }

  touch(tx: Transaction, id: string, change: Prisma.EditionUncheckedUpdateInput = {}) {
    return tx.edition.update({ where: { id }, data: { ...change, version: { increment: 1 } } });
  }

  addEntries(tx: Transaction, editionId: string, variantIds: readonly string[]) {
    return tx.entry.createMany({ data: variantIds.map((variantId) => ({ editionId, variantId })) });
  }

  /** Blind codes of the spools of the edition's entries with what they are: the key that is sealed. */
  async blindKey(tx: Transaction, editionId: string): Promise<string> {
    const spools = await tx.spool.findMany({
      where: { variant: { entries: { some: { editionId } } } },
      orderBy: { blindCode: 'asc' },
      select: { blindCode: true, variant: { select: { slug: true } } },
    });
    return spools.map((spool) => `${spool.blindCode} ${spool.variant.slug}\n`).join('');
  }

  /** Keeps what an editor has looked at in place of the look before, and gives that one. */
  async keepPreview(tx: Transaction, slug: string, look: { byId: string; at: Date; cells: PreviewCells }) {
    const { id } = await tx.edition.findUniqueOrThrow({ where: { slug }, select: { id: true } });
    const key = { editionId: id, byId: look.byId };
    const last = await tx.editionPreview.findUnique({ where: { editionId_byId: key } });
    await tx.editionPreview.upsert({
      where: { editionId_byId: key },
      create: { ...key, at: look.at, cells: look.cells },
      update: { at: look.at, cells: look.cells },
    });
    return last && { at: last.at, cells: last.cells as PreviewCells };
  }

  countEntries(tx: Transaction, editionId: string): Promise<number> {
    return tx.entry.count({ where: { editionId } });
  }

  countSubmissions(tx: Transaction, editionId: string, states: readonly string[]): Promise<number> {
    return tx.submission.count({ where: { editionId, state: { in: [...states] } } });
  }

  /** Accepted submissions with a held finding that nobody has answered. */
  async countDoubted(tx: Transaction, editionId: string): Promise<number> {
    const [row] = await tx.$queryRaw<{ count: number }[]>`
      SELECT count(DISTINCT s."id")::int AS "count" FROM "submission" s
      JOIN "submission_revision" r ON r."submission_id" = s."id" AND r."number" = s."revision"
      JOIN "finding" f ON f."revision_id" = r."id"
      WHERE s."edition_id" = ${editionId}::uuid AND s."state" = 'accepted' AND f."severity" = 'held' AND f."resolution" IS NULL`;
    return row?.count ?? 0;
  }

  findEntry(tx: Transaction, editionId: string, variantSlug: string) {
    return tx.entry.findFirst({
      where: { editionId, variant: { slug: variantSlug } },
      include: { exclusion: true, variant: { include: { line: true } } },
    });
  }

  exclude(tx: Transaction, data: { entryId: string; reasonCode: string; words: string; effect: string; byId: string; at: Date }) {
    return tx.exclusion.create({ data });
  }

  readmit(tx: Transaction, entryId: string) {
    return tx.exclusion.delete({ where: { entryId } });
  }
}
