import { Injectable } from '@nestjs/common';
import { EditionRows } from '../editions/edition-rows.read-model.js';
import { EditionsStore } from '../editions/editions.store.js';
import type { Prisma } from '../platform/database/generated/client.js';
import type { Transaction } from '../platform/database/database.js';

/** What a release becomes when it is published. */
export interface BuiltRelease {
  readonly digest: string;
  readonly previousDigest: string | null;
  /** Text of manifest.json. */
  readonly manifest: string;
  /** Text of signature.json. */
  readonly signature: string;
  readonly publishedAt: Date;
  readonly erratum?: Prisma.InputJsonValue;
}

/** The only writer of releases. */
@Injectable()
export class ReleasesStore {
  constructor(
    private readonly editions: EditionsStore,
    private readonly rows: EditionRows,
  ) {}

  /** Locks the edition so that two requests cannot take the same revision number, and gives it with its last release. */
  async lockEdition(tx: Transaction, slug: string) {
    const edition = await this.rows.hold(tx, slug);
    if (!edition) return null;
    const [last] = await tx.release.findMany({ where: { editionId: edition.id }, orderBy: { revision: 'desc' }, take: 1 });
    return { ...edition, last };
  }

  startBuilding(
    tx: Transaction,
    data: {
      editionId: string;
      revision: number;
      requestedById: string;
      requestedAt: Date;
      publishAt: Date | null;
      erratum?: Prisma.InputJsonValue;
    },
  ) {
    return tx.release.create({ data: { ...data, state: 'building' } });
  }

  /** Takes away one that is not published; the database refuses every other. */
  async remove(tx: Transaction, id: string): Promise<void> {
    await tx.release.delete({ where: { id } });
  }

  /**
   * Fixes the time that a release will bear, so that whoever takes its building up again makes the very same files.
   * A time that was fixed long ago is given anew: a release does not claim to be older than it is, nor older than the revision before it,
   * wherever the clock has jumped.
   * @returns null when it is not being built
   */
  async fixTime(tx: Transaction, id: string, now: Date, lasts: { readonly ms: number }): Promise<Date | null> {
    const since = new Date(now.getTime() - lasts.ms);
    const [row] = await tx.$queryRaw<{ publishedAt: Date }[]>`
      UPDATE release SET published_at = CASE WHEN published_at BETWEEN ${since} AND ${now} THEN published_at
        ELSE greatest(${now}, (SELECT max(b.published_at) + interval '1 ms' FROM release b
          WHERE b.edition_id = release.edition_id AND b.revision < release.revision)) END
      WHERE id = ${id}::uuid AND state = 'building' RETURNING published_at AS "publishedAt"`;
    return row?.publishedAt ?? null;
  }

  /**
   * Publishes what was built: the revision before is superseded and the edition is published, all at once.
   * @returns false when another worker has published it already; then nothing is changed
   */
  async publish(tx: Transaction, release: { id: string; editionId: string }, built: BuiltRelease): Promise<boolean> {
    const waiting = await tx.$queryRaw<unknown[]>`SELECT 1 FROM release WHERE id = ${release.id}::uuid AND state = 'building' FOR UPDATE`;
    if (waiting.length === 0) return false;
    await tx.release.updateMany({ where: { editionId: release.editionId, state: 'published' }, data: { state: 'superseded' } });
    await tx.release.update({ where: { id: release.id }, data: { ...built, state: 'published' } });
    await this.editions.markPublished(tx, release.editionId);
    return true;
  }
}
