import { Injectable } from '@nestjs/common';
import { Database } from '../platform/database/database.js';

export interface EarlierReadings {
  readonly submissionId: string;
  readonly reference: string;
}

/** What earlier submissions tell about one that is handed in. */
@Injectable()
export class EvidenceReadModel {
  constructor(private readonly database: Database) {}

  /** Submissions that hold the very same readings, by the digest of these. */
  async sameReadings(digests: readonly string[]): Promise<Map<string, EarlierReadings[]>> {
    const rows = await this.database.client.submissionRevision.findMany({
      where: { readingsDigest: { in: [...new Set(digests)] } },
      select: { readingsDigest: true, submissionId: true, submission: { select: { reference: true } } },
      orderBy: [{ submission: { reference: 'asc' } }, { number: 'asc' }],
    });
    return Map.groupBy(
      rows.map(({ readingsDigest, submissionId, submission }) => ({ readingsDigest, submissionId, reference: submission.reference })),
      (row) => row.readingsDigest,
    );
  }

  /** Cross-section of each variant by its accepted submission of the latest bench day that states one [mm²]. */
  async knownAreasMm2(variantIds: readonly string[]): Promise<Map<string, number>> {
    const rows = await this.database.client.$queryRaw<{ variantId: string; areaMm2: number }[]>`
      SELECT DISTINCT ON (p."variant_id") p."variant_id"::text AS "variantId", (r."figures"->>'areaMm2')::float8 AS "areaMm2"
      FROM "submission" s
      JOIN "spool" p ON p."id" = s."spool_id"
      JOIN "submission_revision" r ON r."submission_id" = s."id" AND r."number" = s."revision"
      WHERE p."variant_id" = ANY(${[...new Set(variantIds)]}::uuid[]) AND s."state" = 'accepted' AND r."figures"->>'areaMm2' IS NOT NULL
      ORDER BY p."variant_id", s."bench_day" DESC, s."reference" DESC`;
    return new Map(rows.map(({ variantId, areaMm2 }) => [variantId, areaMm2]));
  }
}
