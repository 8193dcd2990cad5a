import { Injectable } from '@nestjs/common';
import { ById } from '../../platform/database/by-id.js';
import { Database } from '../../platform/database/database.js';
import type { AreaRule } from '../../readings/submission-figures.js';

/** What a submission's row points at. */
export interface Pointers {
  readonly editionId: string;
  readonly spoolId: string;
  readonly methodVersionId: string;
  readonly testerId: string;
}

export interface NamesOfSubmission {
  /** Slug. */
  readonly edition: string;
  /** Blind code. */
  readonly spool: string;
  readonly method: { readonly slug: string; readonly number: number };
  readonly areaFrom: AreaRule;
  readonly tester: string;
}

interface Named {
  readonly id: string;
  readonly name: string;
  /** This and what follows: of versions of methods alone. */
  readonly number: number;
  readonly areaFrom: AreaRule;
}

/** Names by which people know what submissions are about, each kept by another feature. */
@Injectable()
export class SubmissionNames {
  constructor(private readonly database: Database) {}

  /** In one statement, for one submission as for thousands: every screen of a submission asks for it. */
  async of(rows: readonly Pointers[]): Promise<(row: Pointers) => NamesOfSubmission> {
    const idsOf = (pointer: keyof Pointers): string[] => [...new Set(rows.map((row) => row[pointer]))];
    const found = await this.database.client.$queryRaw<Named[]>`
      SELECT "id"::text, "slug" AS "name", NULL::int AS "number", NULL::text AS "areaFrom" FROM "edition" WHERE "id" = ANY(${idsOf('editionId')}::uuid[])
      UNION ALL SELECT "id"::text, "blind_code", NULL, NULL FROM "spool" WHERE "id" = ANY(${idsOf('spoolId')}::uuid[])
      UNION ALL SELECT "id"::text, "display_name", NULL, NULL FROM "account" WHERE "id" = ANY(${idsOf('testerId')}::uuid[])
      UNION ALL SELECT v."id"::text, m."slug", v."number", v."parameters"->>'areaFrom' FROM "method_version" v JOIN "method" m ON m."id" = v."method_id"
        WHERE v."id" = ANY(${idsOf('methodVersionId')}::uuid[])`;
    const names = new ById(found.map((named) => [named.id, named]));
    return ({ editionId, spoolId, methodVersionId, testerId }) => {
      const { name: slug, number, areaFrom } = names.of(methodVersionId);
      return {
        edition: names.of(editionId).name,
        spool: names.of(spoolId).name,
        method: { slug, number },
        areaFrom,
        tester: names.of(testerId).name,
      };
    };
  }
}
