import { runSql } from './run-sql.js';

/** Waits until a statement of somebody else waits for a row or table that is locked in this database. */
export async function waitForLock(databaseUrl: string): Promise<void> {
  const giveUpAt = Date.now() + 20_000;
  const waiting = "SELECT 1 FROM pg_stat_activity WHERE datname = current_database() AND wait_event_type = 'Lock'";
  while ((await runSql(databaseUrl, waiting)).length === 0) {
    if (Date.now() > giveUpAt) throw new Error('Nothing waited for a lock within 20 s.');
  }
}
