import pg from 'pg';

/**
 * Runs the work while no other process on this database runs its own under the same name; others wait.
 * The lock belongs to a connection of its own, so it is let go at once however its holder dies, and no transaction stays open for it.
 */
export async function withDatabaseLock<Result>(databaseUrl: string, name: string, work: () => Promise<Result>): Promise<Result> {
  const client = new pg.Client({ connectionString: databaseUrl, application_name: 'fairpull: lock', keepAlive: true });
  // A connection that breaks lets go of the lock; what the work changes must therefore stand by itself.
  client.on('error', () => undefined);
  await client.connect();
  try {
    await client.query('SELECT pg_advisory_lock(hashtextextended($1, 0))', [name]);
    return await work();
  } finally {
    await client.end().catch(() => undefined);
  }
}
