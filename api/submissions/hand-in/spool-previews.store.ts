import { Injectable } from '@nestjs/common';
import type { Transaction } from '../../platform/database/database.js';

/** The only writer of how often a tester looked at previews of a spool. */
@Injectable()
export class SpoolPreviewsStore {
  /**
   * @param previews id of a spool → how many of this request
   * @returns how many it are now
   */
  async count(tx: Transaction, testerId: string, previews: ReadonlyMap<string, number>, at: Date): Promise<Map<string, number>> {
    const ids = [...previews.keys()].sort();
    const rows = await tx.$queryRaw<{ spoolId: string; count: number }[]>`
      INSERT INTO "spool_previews" ("tester_id", "spool_id", "count", "last_at")
      SELECT ${testerId}::uuid, n."id", n."count", ${at}
      FROM unnest(${ids}::uuid[], ${ids.map((id) => previews.get(id) ?? 0)}::int[]) AS n("id", "count")
      ON CONFLICT ("tester_id", "spool_id") DO UPDATE SET "count" = "spool_previews"."count" + EXCLUDED."count", "last_at" = EXCLUDED."last_at"
      RETURNING "spool_id"::text AS "spoolId", "count"`;
    return new Map(rows.map(({ spoolId, count }) => [spoolId, count]));
  }
}
