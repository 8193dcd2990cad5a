import pg from 'pg';

/** Runs one statement past the application, as somebody with the database's password could. */
export async function runSql(url: string, sql: string, values: unknown[] = []): Promise<Record<string, unknown>[]> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return (await client.query<Record<string, unknown>>(sql, values)).rows;
  } finally {
    await client.end();
  }
}
