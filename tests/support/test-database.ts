import { randomBytes } from 'node:crypto';
import pg from 'pg';
import { programUrlOf, TEMPLATE } from './test-server.js';

/** A migrated, empty database that one test file has to itself. */
export interface TestDatabase {
  readonly url: string;
  /** The same for the role that server and worker have. */
  readonly programUrl: string;
  /** Call it in `afterAll`, when everything that used the database is closed. */
  drop(): Promise<void>;
}

/**
 * A fresh copy of the migrated template (about 50 ms).
 * @throws Error outside of a test run that was started with .config/jest.json
 */
export async function createTestDatabase(): Promise<TestDatabase> {
  const serverUrl = process.env['TEST_SERVER_URL'];
  if (serverUrl === undefined)
    throw new Error('TEST_SERVER_URL is not set: run tests with --config .config/jest.json, which starts the test server.');
  const name = `test_${randomBytes(8).toString('hex')}`;
  await runOn(serverUrl, `CREATE DATABASE ${name} TEMPLATE ${TEMPLATE}`);
  const url = new URL(serverUrl);
  url.pathname = `/${name}`;
  return {
    url: url.href,
    programUrl: programUrlOf(url.href),
    drop: () => runOn(serverUrl, `DROP DATABASE IF EXISTS ${name} WITH (FORCE)`),
  };
}

async function runOn(url: string, sql: string): Promise<void> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
}
