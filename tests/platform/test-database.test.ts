import pg from 'pg';
import { createTestDatabase } from '../support/test-database.js';

async function read(url: string, sql: string): Promise<unknown[]> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return (await client.query<Record<string, unknown>>(sql)).rows;
  } finally {
    await client.end();
  }
}

test('two test databases do not see each other', async () => {
  const [one, other] = await Promise.all([createTestDatabase(), createTestDatabase()]);
  await read(one.url, 'CREATE TABLE only_here (id int)');
  await expect(read(other.url, 'SELECT * FROM only_here')).rejects.toThrow(/does not exist/);
  await Promise.all([one.drop(), other.drop()]);
});

test('a dropped test database is gone', async () => {
  const database = await createTestDatabase();
  await database.drop();
  await expect(read(database.url, 'SELECT 1')).rejects.toThrow(/does not exist/);
});
