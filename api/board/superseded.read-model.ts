import { Injectable } from '@nestjs/common';
import type { Superseded } from '../contract/superseded.js';
import { Database } from '../platform/database/database.js';

interface Row extends Pick<Superseded, 'kind' | 'what' | 'reason' | 'submissions'> {
  readonly was: Readonly<Record<string, unknown>>;
  readonly at: Date;
}

/** What was put right after results of an edition rested on it. */
@Injectable()
export class SupersededReadModel {
  constructor(private readonly database: Database) {}

  /** Oldest first, with those of these references that rested on it; what none of them rested on is left out. */
  async under(edition: string, references: ReadonlySet<string>): Promise<Superseded[]> {
    const rows = await this.database.client.$queryRaw<Row[]>`
      SELECT x."kind", x."was", x."reason", x."at", x."rested" -> 'submissions' AS "submissions", coalesce(
        (SELECT "slug" FROM "maker" WHERE "id" = x."object_id"), (SELECT "slug" FROM "line" WHERE "id" = x."object_id"),
        (SELECT "slug" FROM "variant" WHERE "id" = x."object_id"), (SELECT "blind_code" FROM "spool" WHERE "id" = x."object_id"),
        (SELECT v."slug" || ' ' || c."quantity" FROM "claim" c JOIN "variant" v ON v."id" = c."variant_id" WHERE c."id" = x."object_id"),
        (SELECT c."certificate" || ' of ' || i."code" FROM "calibration" c JOIN "instrument" i ON i."id" = c."instrument_id" WHERE c."id" = x."object_id")
      ) AS "what"
      FROM "superseded_row" x WHERE jsonb_exists(x."rested" -> 'editions', ${edition}) ORDER BY x."at", x."id"`;
    return rows
      .map(({ was, at, submissions, ...row }) => ({
        ...row,
        was: inWords(was),
        on: at.toISOString().slice(0, 10),
        submissions: submissions.filter((reference) => references.has(reference)),
      }))
      .filter(({ submissions }) => submissions.length > 0);
  }
}

/** `{ coverageFactor: '2', lot: null }` → "coverage factor 2, no lot". */
const inWords = (was: Row['was']): string =>
  Object.entries(was)
    .map(([name, value]) => [name.replaceAll(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`), value] as const)
    .map(([name, value]) => (value === null ? `no ${name}` : `${name} ${textOf(value)}`))
    .join(', ');

const textOf = (value: unknown): string => (typeof value === 'object' && value !== null ? Object.values(value).join(' ') : String(value));
