import { Injectable } from '@nestjs/common';
import { Database } from '../platform/database/database.js';
import type { PublicChange } from '../contract/documents/changes.js';

/** What became true, in the order of commits. A writer holds the others back until its commit, so what follows a number that was read is never put before it. */
@Injectable()
export class ChangesReadModel {
  constructor(private readonly database: Database) {}

  /** @param after number of the last change that is known; 0 for none */
  async after(after: number, limit: number): Promise<PublicChange[]> {
    const rows = await this.database.client.change.findMany({
      where: { number: { gt: after } },
      orderBy: { number: 'asc' },
      take: limit,
      include: { edition: { select: { slug: true } }, release: { select: { revision: true, digest: true, erratum: true } } },
    });
    return rows.map(({ number, at, kind, edition, release, thing }) => ({
      number: Number(number),
      at: at.toISOString(),
      kind: kind as PublicChange['kind'],
      edition: edition?.slug ?? null,
      thing: thing as PublicChange['thing'],
      revision: release?.revision ?? null,
      digest: release?.digest ?? null,
      manifest: edition && release ? `/v1/releases/${edition.slug}/${release.revision}/manifest.json` : null,
      erratum: (release?.erratum ?? null) as PublicChange['erratum'],
    }));
  }
}
