import { Injectable } from '@nestjs/common';
import { among } from '../platform/database/by-id.js';
import { Database } from '../platform/database/database.js';

/** Which editions have releases, for features that ask what is due. */
@Injectable()
export class ReleaseRows {
  constructor(private readonly database: Database) {}

  /** Those among editions of which a release was ordered. */
  async orderedOf(editionIds: readonly string[]): Promise<Set<string>> {
    const rows = await this.database.client.release.findMany({ where: { editionId: among(editionIds) }, select: { editionId: true } });
    return new Set(rows.map(({ editionId }) => editionId));
  }

  /** The release of each edition that readers see, with when it came out. */
  async current(): Promise<{ editionId: string; publishedAt: Date }[]> {
    const rows = await this.database.client.release.findMany({
      where: { state: 'published' },
      select: { editionId: true, publishedAt: true },
    });
    return rows.flatMap(({ editionId, publishedAt }) => (publishedAt ? [{ editionId, publishedAt }] : []));
  }
}
