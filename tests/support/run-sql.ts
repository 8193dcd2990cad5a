import pg from 'pg';

/** Runs one statement past the application, as somebody with the database's password could. */
export function runSql(url: string, sql: string, values: unknown[] = []): Promise<Record<string, unknown>[]> {
  return withClient(url, async (client) => (await client.query<Record<string, unknown>>(sql, values)).rows);
}

/** The same with several on one connection. */
export async function withClient<Answer>(url: string, work: (client: pg.Client) => Promise<Answer>): Promise<Answer> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end();
  }
}
