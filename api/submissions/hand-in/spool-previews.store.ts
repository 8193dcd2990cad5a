import { Injectable } from '@nestjs/common';
import type { Transaction } from '../../platform/database/database.js';

/** Previews of one spool: how many in this request, and with all before. */
export interface PreviewsOfSpool {
  readonly blindCode: string;
  readonly count: number;
}

/** The only writer of how often a tester looked at previews of a spool. */
@Injectable()
export class SpoolPreviewsStore {
  /**
   * @param previews blind code → how many of this request
   * @returns how many it are now, by blind code; of a code that no spool carries there are none
   */
  count(tx: Transaction, testerId: string, previews: ReadonlyMap<string, number>, at: Date): Promise<PreviewsOfSpool[]> {
    const codes = [...previews.keys()];
    return tx.$queryRaw<PreviewsOfSpool[]>`
      WITH counted AS (
        INSERT INTO "spool_previews" ("tester_id", "spool_id", "count", "last_at")
        SELECT ${testerId}::uuid, p."id", n."count", ${at}
        FROM unnest(${codes}::text[], ${codes.map((code) => previews.get(code) ?? 0)}::int[]) AS n("code", "count") JOIN "spool" p ON p."blind_code" = n."code"
        ORDER BY p."id"
        ON CONFLICT ("tester_id", "spool_id") DO UPDATE SET "count" = "spool_previews"."count" + EXCLUDED."count", "last_at" = EXCLUDED."last_at"
        RETURNING "spool_id", "count")
      SELECT p."blind_code" AS "blindCode", c."count" FROM counted c JOIN "spool" p ON p."id" = c."spool_id" ORDER BY p."blind_code"`;
  }
}
