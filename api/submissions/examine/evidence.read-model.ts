import { Injectable } from '@nestjs/common';
import { Database } from '../../platform/database/database.js';

export interface EarlierReadings {
  readonly submissionId: string;
  readonly reference: string;
}

/** A submission of the tester, handed in now or before: what it says of its spool and its bench day. */
export interface OwnSubmission {
  readonly submissionId: string | null;
  readonly spoolId: string;
  readonly variantId: string;
  readonly method: string;
  readonly benchDay: string;
  readonly isTakenBack: boolean;
  readonly forceN: number | null;
  readonly diameterMm: number | null;
  /** Breaking force on the label [N]. */
  readonly claimedN: number | null;
}

/** What earlier submissions tell about one that is handed in. */
@Injectable()
export class EvidenceReadModel {
  constructor(private readonly database: Database) {}

  /** Submissions that hold the very same readings, by the digest of these. */
  async sameReadings(digests: readonly string[]): Promise<Map<string, EarlierReadings[]>> {
    const rows = await this.database.client.submissionRevision.findMany({
      where: { readingsDigest: { in: [...new Set(digests)] }, submission: { state: { not: 'takenBack' } } },
      select: { readingsDigest: true, submissionId: true, submission: { select: { reference: true } } },
      orderBy: [{ submission: { reference: 'asc' } }, { number: 'asc' }],
    });
    return Map.groupBy(
      rows.map(({ readingsDigest, submissionId, submission }) => ({ readingsDigest, submissionId, reference: submission.reference })),
      (row) => row.readingsDigest,
    );
  }

  /** How many previews of spools a tester has looked at, by the id of each. */
  async previewsOf(testerId: string, spoolIds: readonly string[]): Promise<Map<string, number>> {
    const rows = await this.database.client.spoolPreviews.findMany({ where: { testerId, spoolId: { in: [...new Set(spoolIds)] } } });
    return new Map(rows.map(({ spoolId, count }) => [spoolId, count]));
  }

  /** Submissions that stand with the very same content, by its digest. */
  async sameContent(digests: readonly string[]): Promise<Map<string, EarlierReadings>> {
    const rows = await this.database.client.submission.findMany({
      where: { contentDigest: { in: [...new Set(digests)] }, state: { not: 'takenBack' } },
      select: { id: true, reference: true, contentDigest: true },
    });
    return new Map(rows.map(({ id, reference, contentDigest }) => [contentDigest ?? '', { submissionId: id, reference }]));
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

  /** Handed in by a tester, of any of these spools or on any of these bench days. */
  ofTester(testerId: string, spoolIds: readonly string[], benchDays: readonly string[]): Promise<OwnSubmission[]> {
    return this.database.client.$queryRaw<OwnSubmission[]>`
      SELECT s."id"::text AS "submissionId", s."spool_id"::text AS "spoolId", p."variant_id"::text AS "variantId", m."slug" AS "method",
        to_char(s."bench_day", 'YYYY-MM-DD') AS "benchDay", s."state" = 'takenBack' AS "isTakenBack",
        (r."figures"->'breakingForceN'->>'mean')::float8 AS "forceN", (r."figures"->'diameterMm'->>'mean')::float8 AS "diameterMm",
        c."value_si"::float8 AS "claimedN"
      FROM "submission" s
      JOIN "spool" p ON p."id" = s."spool_id"
      JOIN "method_version" v ON v."id" = s."method_version_id"
      JOIN "method" m ON m."id" = v."method_id"
      JOIN "submission_revision" r ON r."submission_id" = s."id" AND r."number" = s."revision"
      LEFT JOIN "claim" c ON c."variant_id" = p."variant_id" AND c."quantity" = 'breakingForce'
      WHERE s."tester_id" = ${testerId}::uuid
        AND (s."spool_id" = ANY(${[...new Set(spoolIds)]}::uuid[]) OR s."bench_day" = ANY(${[...new Set(benchDays)]}::date[]))`;
  }
}
