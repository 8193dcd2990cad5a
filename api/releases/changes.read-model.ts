import { Injectable } from '@nestjs/common';
import { EditionsReadModel } from '../editions/editions.read-model.js';
import { Database } from '../platform/database/database.js';
import type { PublicChange } from '../contract/documents/changes.js';

/** What became true, in the order of commits. A writer holds the others back until its commit, so what follows a number that was read is never put before it. */
@Injectable()
export class ChangesReadModel {
  constructor(
    private readonly database: Database,
    private readonly editions: EditionsReadModel,
  ) {}

  /** @param after number of the last change that is known; 0 for none */
  async after(after: number, limit: number): Promise<PublicChange[]> {
    const rows = await this.database.client.change.findMany({
      where: { number: { gt: after } },
      orderBy: { number: 'asc' },
      take: limit,
      include: { release: { select: { revision: true, digest: true, erratum: true } } },
    });
    const slugs = await this.editions.slugs(rows.flatMap(({ editionId }) => editionId ?? []));
    return rows.map(({ number, at, kind, editionId, release, thing }) => {
      const edition = editionId && slugs.of(editionId);
      return {
        number: Number(number),
        at: at.toISOString(),
        kind: kind as PublicChange['kind'],
        edition,
        thing: thing as PublicChange['thing'],
        revision: release?.revision ?? null,
        digest: release?.digest ?? null,
        manifest: edition !== null && release ? `/v1/releases/${edition}/${release.revision}/manifest.json` : null,
        erratum: (release?.erratum ?? null) as PublicChange['erratum'],
      };
    });
  }
}
