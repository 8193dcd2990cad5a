import { Injectable } from '@nestjs/common';
import { CatalogueReadModel } from '../../catalogue/catalogue.read-model.js';
import { MethodsReadModel } from '../../methods/methods.read-model.js';
import { among } from '../../platform/database/by-id.js';
import { Database } from '../../platform/database/database.js';
import { claimedForceN } from './subject.js';

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
  constructor(
    private readonly database: Database,
    private readonly catalogue: CatalogueReadModel,
    private readonly methods: MethodsReadModel,
  ) {}

  /** Submissions that hold the very same readings, by the digest of these. */
  async sameReadings(digests: readonly string[]): Promise<Map<string, EarlierReadings[]>> {
    const rows = await this.database.client.submissionRevision.findMany({
      where: { readingsDigest: among(digests), submission: { state: { not: 'takenBack' } } },
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
    const rows = await this.database.client.spoolPreviews.findMany({ where: { testerId, spoolId: among(spoolIds) } });
    return new Map(rows.map(({ spoolId, count }) => [spoolId, count]));
  }

  /** Submissions that stand with the very same content, by its digest. */
  async sameContent(digests: readonly string[]): Promise<Map<string, EarlierReadings>> {
    const rows = await this.database.client.submission.findMany({
      where: { contentDigest: among(digests), state: { not: 'takenBack' } },
      select: { id: true, reference: true, contentDigest: true },
    });
    return new Map(rows.map(({ id, reference, contentDigest }) => [contentDigest ?? '', { submissionId: id, reference }]));
  }

  /** Cross-section of each variant by its accepted submission of the latest bench day that states one [mm²]. */
  async knownAreasMm2(variantIds: readonly string[]): Promise<Map<string, number>> {
    const variants = await this.catalogue.variantsOfSpools([...new Set(variantIds)]);
    const rows = await this.database.client.$queryRaw<{ spoolId: string; areaMm2: number }[]>`
      SELECT s."spool_id"::text AS "spoolId", r."areaMm2"
      FROM "submission" s
      CROSS JOIN LATERAL (
        -- One is all there is; said so, it is looked up instead of found by reading every revision of every season.
        SELECT ("figures"->>'areaMm2')::float8 AS "areaMm2" FROM "submission_revision"
        WHERE "submission_id" = s."id" AND "number" = s."revision" LIMIT 1
      ) r
      WHERE s."spool_id" = ANY(${[...variants.keys()]}::uuid[]) AND s."state" = 'accepted' AND r."areaMm2" IS NOT NULL
      ORDER BY s."bench_day", s."reference"`;
    return new Map(rows.map(({ spoolId, areaMm2 }) => [variants.of(spoolId), areaMm2]));
  }

  /** Handed in by a tester, of any of these spools or on any of these bench days. */
  async ofTester(testerId: string, spoolIds: readonly string[], benchDays: readonly string[]): Promise<OwnSubmission[]> {
    const rows = await this.database.client.$queryRaw<OwnRow[]>`
      SELECT s."id"::text AS "submissionId", s."spool_id"::text AS "spoolId", s."method_version_id"::text AS "methodVersionId",
        to_char(s."bench_day", 'YYYY-MM-DD') AS "benchDay", s."state" = 'takenBack' AS "isTakenBack",
        (r."figures"->'breakingForceN'->>'mean')::float8 AS "forceN", (r."figures"->'diameterMm'->>'mean')::float8 AS "diameterMm"
      FROM "submission" s
      JOIN "submission_revision" r ON r."submission_id" = s."id" AND r."number" = s."revision"
      WHERE s."tester_id" = ${testerId}::uuid
        AND (s."spool_id" = ANY(${[...new Set(spoolIds)]}::uuid[]) OR s."bench_day" = ANY(${[...new Set(benchDays)]}::date[]))`;
    if (rows.length === 0) return [];
    const [spools, versions] = await Promise.all([
      this.catalogue.spoolsById(rows.map(({ spoolId }) => spoolId)),
      this.methods.versionRows(rows.map(({ methodVersionId }) => methodVersionId)),
    ]);
    return rows.map(({ methodVersionId, ...row }) => {
      const { variant } = spools.of(row.spoolId);
      return { ...row, variantId: variant.id, method: versions.of(methodVersionId).method.slug, claimedN: claimedForceN(variant) };
    });
  }
}

type OwnRow = Omit<OwnSubmission, 'variantId' | 'method' | 'claimedN'> & { readonly methodVersionId: string };
