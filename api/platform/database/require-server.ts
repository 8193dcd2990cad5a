import type pg from 'pg';

/** The oldest major version that the migrations and the job queue run on. */
const OLDEST_SERVER = 15;
/** In server_version_num, which is 180004 for 18.4. */
const PER_MAJOR = 10_000;

/** @throws Error when the server is older than the program can work with */
export async function requireServer(client: pg.Client): Promise<void> {
  const { rows } = await client.query<{ number: number; version: string }>(
    `SELECT current_setting('server_version_num')::int AS number, current_setting('server_version') AS version`,
  );
  const [{ number, version } = { number: 0, version: 'unknown' }] = rows;
  if (number >= OLDEST_SERVER * PER_MAJOR) return;
  throw new Error(
    `The server is PostgreSQL ${version}; this program needs ${OLDEST_SERVER} or newer. Upgrade it, or name another in DATABASE_URL.`,
  );
}
