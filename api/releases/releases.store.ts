import { Injectable } from '@nestjs/common';
import type { Prisma } from '../platform/database/generated/client.js';
import type { Transaction } from '../platform/database/database.js';

/** The only writer of releases. */
@Injectable()
export class ReleasesStore {
  /** Locks the edition so that two requests cannot take the same revision number. */
  async lockEdition(tx: Transaction, slug: string) {
    await tx.$queryRaw`SELECT 1 FROM edition WHERE slug = ${slug} FOR UPDATE`;
    return tx.edition.findUnique({ where: { slug }, include: { releases: { orderBy: { revision: 'desc' }, take: 1 } } });
  }

  startBuilding(
    tx: Transaction,
    data: { editionId: string; revision: number; requestedById: string; requestedAt: Date; erratum?: Prisma.InputJsonValue },
  ) {
    return tx.release.create({ data: { ...data, state: 'building' } });
  }

  /** Publishes what was built: the revision before is superseded and the edition is published, all at once. */
  async publish(
    tx: Transaction,
    release: { id: string; editionId: string },
    built: { digest: string; previousDigest: string | null; manifest: string; publishedAt: Date; erratum?: Prisma.InputJsonValue },
  ) {
    await tx.release.updateMany({ where: { editionId: release.editionId, state: 'published' }, data: { state: 'superseded' } });
    const { count } = await tx.release.updateMany({ where: { id: release.id, state: 'building' }, data: { ...built, state: 'published' } });
    await tx.edition.updateMany({
      where: { id: release.editionId, state: 'closed' },
      data: { state: 'published', version: { increment: 1 } },
    });
    return count === 1;
  }
}
