import pg from 'pg';
import { sha256 } from '../../api/platform/identifiers/identifiers.js';

const ID = /[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[0-9a-f]{4}-[0-9a-f]{12}/g;
/** An id stands for its row, this for the row that the row names, and so on: a reading for its specimen, submission, spool, variant. */
const STEPS = 5;
/** Drawn or signed anew in each house, or a digest of what it has ids for. */
const OF_ONE_HOUSE = ['password_hash', 'token_hash', 'content_digest', 'signature'];
/** Whoever publishes signs in: where winters are laid, nobody did so to work in them. Counted requests are forgotten within minutes. */
const OF_THE_HOUR = new Set(['api_token', 'session', 'sign_in_failure', 'request_count', '_prisma_migrations']);
const OF_SIGNING_IN = /"action": "(account\.signedIn|token\.made|token\.revoked)"/;
interface Row {
  readonly table: string;
  readonly id: string | null;
  readonly text: string;
}

/** What stands in each table, with ids told by what they stand for: two houses in which the same was done say the same. */
export async function recordOf(databaseUrl: string): Promise<Map<string, string[]>> {
  const rows = await readRows(databaseUrl);
  let names = new Map<string, string>(rows.flatMap(({ id, table }) => (id === null ? [] : [[id, table] as const])));
  const tell = ({ id, text }: Row): string => text.replace(ID, (found) => (found === id ? 'this' : (names.get(found) ?? 'unknown')));
  for (let step = 0; step < STEPS; step += 1) {
    const next = rows.flatMap((row) => (row.id === null ? [] : [[row.id, sha256(`${row.table} ${tell(row)}`)] as const]));
    names = new Map(next);
  }
  const told = Map.groupBy(rows, ({ table }) => table);
  return new Map([...told].map(([table, own]) => [table, own.map(tell).sort()]));
}

async function readRows(databaseUrl: string): Promise<Row[]> {
  const client = new pg.Client({ connectionString: databaseUrl });
  await client.connect();
  try {
    const tables = await client.query<{ name: string }>(
      `SELECT relname AS name FROM pg_class WHERE relkind = 'r' AND relnamespace = current_schema()::regnamespace ORDER BY relname`,
    );
    const rows: Row[] = [];
    for (const { name } of tables.rows.filter((table) => !OF_THE_HOUR.has(table.name))) {
      const found = await client.query<{ id: string | null; text: string }>(
        `SELECT to_jsonb(t) ->> 'id' AS id, (to_jsonb(t) - $1::text[])::text AS text FROM "${name}" t`,
        // A change tells the time of the database and not of the season.
        [name === 'change' ? [...OF_ONE_HOUSE, 'at'] : OF_ONE_HOUSE],
      );
      rows.push(...found.rows.filter(({ text }) => !OF_SIGNING_IN.test(text)).map((row) => ({ table: name, ...row })));
    }
    return rows;
  } finally {
    await client.end();
  }
}
