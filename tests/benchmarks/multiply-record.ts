/** Puts many times what a worked edition has on record beside it, in the database alone: over HTTP it would take hours. */
import pg from 'pg';

const EVIDENCE = ['entry', 'submission', 'submission_revision', 'submission_instrument', 'specimen', 'reading', 'finding', 'review'];
/** What each copy has for itself; whatever else a row names is the same for all. */
const IDS_OF_WORK = ['entry_id', 'submission_id', 'revision_id', 'specimen_id'];
const VARIANTS = {
  tables: ['line', 'variant', 'claim', 'spool', ...EVIDENCE],
  ids: ['id', 'line_id', 'variant_id', 'spool_id', ...IDS_OF_WORK],
};
const EDITIONS = { tables: ['edition', 'division', 'edition_method', ...EVIDENCE], ids: ['id', 'edition_id', ...IDS_OF_WORK] };

const SUBMISSION = {
  reference: `"reference" || '-' || k`,
  content_digest: `md5("content_digest" || k) || md5(k || "content_digest")`,
};
/** Texts that no two rows may share, and readings, which no two lines do. */
const OTHERWISE: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  // A page names all variants of its line: with one line for all, pages would grow with the record.
  line: { slug: `"slug" || '-' || k` },
  variant: { slug: `"slug" || '-' || k`, size: `"size" || '-' || k` },
  spool: { blind_code: `upper(left(md5("blind_code" || k), 12))` },
  submission: SUBMISSION,
  reading: { entered_text: forceTimes(`"entered_text"`), value_si: `${forceTimes('"value_si"')}::numeric` },
};

function forceTimes(column: string): string {
  return `CASE WHEN "entered_unit" = 'N' THEN round(${column}::numeric * (1 + 0.0013 * (k % 37)), 2)::text ELSE ${column}::text END`;
}

/** So many times the variants of an edition, those that are there in a division of their own, each copy in another. @param byId who put them there */
export async function multiplyVariants(databaseUrl: string, edition: string, times: number, byId: string): Promise<void> {
  await pastTheRules(databaseUrl, async (client) => {
    await copy(client, VARIANTS, times - 1, OTHERWISE);
    const of = `(SELECT "id" FROM "edition" WHERE "slug" = '${edition}')`;
    const divisionOf = (k: string) => `md5('division' || ${k})::uuid`;
    await client.query(`
      INSERT INTO "division" ("id", "edition_id", "position", "slug", "name", "materials", "constructions", "scheme_id")
      SELECT ${divisionOf('k')}, ${of}, k + 100, 'division-' || k, 'Division ' || k, '{}', '{}', d."scheme_id"
      FROM "division" d, generate_series(0, ${times - 1}) k WHERE d."edition_id" = ${of};
      DELETE FROM "division" WHERE "edition_id" = ${of} AND "slug" IS NULL`);
    // A copy is in the division of its number; whatever is no copy, in the first.
    await client.query(`
      INSERT INTO "overruling" ("entry_id", "division_id", "reason", "by_id", "at")
      SELECT e."id", coalesce(${divisionOf('c.k')}, ${divisionOf('0')}), 'Put here to be compared.', '${byId}', now()
      FROM "entry" e LEFT JOIN (
        SELECT md5(o."id"::text || k)::uuid AS "id", k FROM "entry" o, generate_series(1, ${times - 1}) k WHERE o."edition_id" = ${of}
      ) c ON c."id" = e."id" WHERE e."edition_id" = ${of}`);
  });
}

/** So many editions before one, each with the same work, which names the newest of them as the one before it. @returns their slugs, oldest first */
export async function editionsBefore(databaseUrl: string, edition: string, count: number): Promise<string[]> {
  await pastTheRules(databaseUrl, async (client) => {
    await copy(client, EDITIONS, count, {
      edition: { slug: `("slug"::int - k)::text`, previous_id: `CASE WHEN k < ${count} THEN md5("id"::text || (k + 1))::uuid END` },
      submission: SUBMISSION,
      reading: OTHERWISE['reading'] ?? {},
    });
    await client.query(`UPDATE "edition" SET "previous_id" = md5("id"::text || 1)::uuid WHERE "slug" = '${edition}'`);
  });
  return Array.from({ length: count }, (_, i) => String(Number(edition) - count + i));
}

async function copy(
  client: pg.Client,
  { tables, ids }: typeof VARIANTS,
  times: number,
  otherwise: Readonly<Record<string, Readonly<Record<string, string>>>>,
): Promise<void> {
  for (const table of tables) {
    const { rows } = await client.query<{ name: string }>(
      'SELECT column_name AS name FROM information_schema.columns WHERE table_schema = current_schema() AND table_name = $1',
      [table],
    );
    const valueOf = (name: string): string =>
      otherwise[table]?.[name] ?? (ids.includes(name) ? `md5("${name}"::text || k)::uuid` : `"${name}"`);
    const names = rows.map(({ name }) => name);
    await client.query(
      `INSERT INTO "${table}" (${names.map((name) => `"${name}"`).join()}) SELECT ${names.map(valueOf).join()} FROM "${table}", generate_series(1, ${times}) k`,
    );
  }
  await client.query('ANALYZE');
}

/** The record is written by its rules alone; here they are off. */
async function pastTheRules(url: string, work: (client: pg.Client) => Promise<void>): Promise<void> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query('SET session_replication_role = replica');
    await work(client);
  } finally {
    await client.end();
  }
}
