import { runSql } from './run-sql.js';

interface More {
  /** ISO day; 2026-02-01 where it does not matter */
  readonly closesOn?: string;
  readonly blindKey?: string;
}

/** An edition of one division and no entries, past the application and its rules: nothing is measured in it. */
export async function insertEdition(
  databaseUrl: string,
  slug: string,
  state: 'planned' | 'open' | 'closed' | 'published',
  { closesOn = '2026-02-01', blindKey }: More = {},
): Promise<void> {
  await runSql(
    databaseUrl,
    `BEGIN;
     SET LOCAL session_replication_role = replica;
     INSERT INTO scheme (id, slug, number, name, words, rules) VALUES (gen_random_uuid(), 'plain', 1, 'Plain', 'Words', '{}') ON CONFLICT DO NOTHING;
     INSERT INTO edition (id, slug, name, state, opens_on, closes_on, blind_key)
       VALUES (gen_random_uuid(), '${slug}', '${slug}', '${state}', '2026-01-01', '${closesOn}', ${blindKey === undefined ? 'NULL' : `'${blindKey}'`});
     INSERT INTO division (id, edition_id, position, materials, constructions, scheme_id)
       SELECT gen_random_uuid(), e.id, 0, '{}', '{}', s.id FROM edition e, scheme s WHERE e.slug = '${slug}' AND s.slug = 'plain';
     COMMIT`,
  );
}
