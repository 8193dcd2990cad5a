import { Injectable } from '@nestjs/common';
import type { Prisma } from '../platform/database/generated/client.js';
import type { Transaction } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { requireSameVersion } from '../platform/http/headers/if-match.js';
import { WITH_DIVISIONS } from './divisions.js';
import { requireState } from './edition.js';
import type { EditionState } from './edition.js';
import type { DivisionRow } from './edition-parts.read-model.js';
import type { SchemeRequest } from '../contract/endpoints/schemes.js';

/** The only writer of schemes, editions with their divisions, entries, exclusions and overrulings. */
@Injectable()
export class EditionsStore {
  createScheme(tx: Transaction, { rules, ...named }: SchemeRequest) {
    return tx.scheme.create({ data: { ...named, rules: rules } });
  }

  createEdition(
    tx: Transaction,
    data: Prisma.EditionUncheckedCreateInput,
    divisions: readonly DivisionRow[],
    methodVersionIds: readonly string[],
  ) {
    return tx.edition.create({
      data: {
        ...data,
        divisions: { create: [...divisions] },
        methods: { create: methodVersionIds.map((methodVersionId) => ({ methodVersionId })) },
      },
    });
  }

  /** Other divisions in place of those of a planned edition; what was overruled stays so in a division that keeps its name. */
  async divideInstead(tx: Transaction, editionId: string, divisions: readonly DivisionRow[]): Promise<void> {
    const overrulings = await tx.overruling.findMany({ where: { division: { editionId } }, include: { division: true } });
    await tx.overruling.deleteMany({ where: { division: { editionId } } });
    await tx.division.deleteMany({ where: { editionId } });
    for (const division of divisions) {
      const { id, slug } = await tx.division.create({ data: { editionId, ...division } });
      const kept = overrulings.filter(({ division: { slug: before } }) => before !== null && before === slug);
      await tx.overruling.createMany({ data: kept.map(({ division: _, ...overruling }) => ({ ...overruling, divisionId: id })) });
    }
  }

  /** Locks the edition's row for a change of state and gives it as it stands. */
  async lock(tx: Transaction, slug: string) {
    await tx.$queryRaw`SELECT 1 FROM edition WHERE slug = ${slug} FOR UPDATE`;
    return tx.edition.findUnique({ where: { slug }, include: { ...WITH_DIVISIONS, methods: true } });
  }

  /**
   * Locks the edition for a change of state.
   * @throws Problem where there is none, where somebody changed it since it was read, or where its state does not allow the change
   */
  async lockIn(tx: Transaction, slug: string, version: number, allowed: readonly EditionState[], wayOn = '') {
    const edition = await this.lock(tx, slug);
    if (!edition) throw new Problem(platformProblems['request/not-found'], `No edition is called ${slug}.`);
    requireSameVersion(edition.version, version);
    requireState(edition, allowed, wayOn);
    return edition;
  }

  touch(tx: Transaction, id: string, change: Prisma.EditionUncheckedUpdateInput = {}) {
    return tx.edition.update({ where: { id }, data: { ...change, version: { increment: 1 } } });
  }

  /** The edition comes out with its first release; later ones leave it as it is. */
  async markPublished(tx: Transaction, id: string): Promise<void> {
    await tx.edition.updateMany({ where: { id, state: 'closed' }, data: { state: 'published', version: { increment: 1 } } });
  }

  /**
   * Takes running numbers of an open edition. The row's lock, held to the end of the transaction, lets nobody take the same and
   * nobody close the edition meanwhile.
   * @returns the first of the numbers; null when the edition is not open
   */
  async takeNumbers(tx: Transaction, editionId: string, count: number): Promise<number | null> {
    const rows = await tx.$queryRaw<{ last: number }[]>`
      UPDATE "edition" SET "submissions_numbered" = "submissions_numbered" + ${count}
      WHERE "id" = ${editionId}::uuid AND "state" = 'open' RETURNING "submissions_numbered" AS "last"`;
    return rows[0] ? rows[0].last - count + 1 : null;
  }

  /** Whether the edition is open, and stays so to the end of the transaction. */
  async holdOpen(tx: Transaction, editionId: string): Promise<boolean> {
    const rows = await tx.$queryRaw<unknown[]>`SELECT 1 FROM "edition" WHERE "id" = ${editionId}::uuid AND "state" = 'open' FOR SHARE`;
    return rows.length > 0;
  }

  pin(tx: Transaction, editionId: string, methodVersionIds: readonly string[]) {
    return tx.editionMethod.createMany({ data: methodVersionIds.map((methodVersionId) => ({ editionId, methodVersionId })) });
  }

  /** Other method versions in place of those that a planned edition was to pin. */
  async pinInstead(tx: Transaction, editionId: string, methodVersionIds: readonly string[]): Promise<void> {
    await tx.editionMethod.deleteMany({ where: { editionId } });
    await this.pin(tx, editionId, methodVersionIds);
  }

  amend(tx: Transaction, data: { editionId: string; reason: string; changes: object; byId: string; at: Date }) {
    return tx.editionAmendment.create({ data });
  }

  async removeEntry(tx: Transaction, id: string): Promise<void> {
    await tx.exclusion.deleteMany({ where: { entryId: id } });
    await tx.overruling.deleteMany({ where: { entryId: id } });
    await tx.entry.delete({ where: { id } });
  }

  /** Takes a planned edition away with all that was planned of it. */
  async delete(tx: Transaction, id: string): Promise<void> {
    await tx.exclusion.deleteMany({ where: { entry: { editionId: id } } });
    await tx.overruling.deleteMany({ where: { entry: { editionId: id } } });
    await tx.division.deleteMany({ where: { editionId: id } });
    await tx.entry.deleteMany({ where: { editionId: id } });
    await tx.editionMethod.deleteMany({ where: { editionId: id } });
    await tx.edition.delete({ where: { id } });
  }

  addEntries(tx: Transaction, editionId: string, variantIds: readonly string[]) {
    return tx.entry.createMany({ data: variantIds.map((variantId) => ({ editionId, variantId })) });
  }

  findEntry(tx: Transaction, editionId: string, variantId: string) {
    return tx.entry.findFirst({
      where: { editionId, variantId },
      include: { exclusion: true, overruling: { include: { division: true } } },
    });
  }

  exclude(tx: Transaction, data: { entryId: string; reasonCode: string; words: string; effect: string; byId: string; at: Date }) {
    return tx.exclusion.create({ data });
  }

  async overrule(tx: Transaction, data: { entryId: string; divisionId: string; reason: string; byId: string; at: Date }): Promise<void> {
    await this.follow(tx, data.entryId);
    await tx.overruling.create({ data });
  }

  /** The rule decides again. */
  follow(tx: Transaction, entryId: string) {
    return tx.overruling.deleteMany({ where: { entryId } });
  }

  readmit(tx: Transaction, entryId: string) {
    return tx.exclusion.delete({ where: { entryId } });
  }
}
