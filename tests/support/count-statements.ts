import pg from 'pg';

/** Statements that this process sends to the database while the work lasts, but for what a watch asks by the clock on a connection of its own. */
export async function countStatements(work: () => PromiseLike<unknown>): Promise<number> {
  const query = Reflect.get(pg.Client.prototype, 'query') as (...args: unknown[]) => unknown;
  let count = 0;
  pg.Client.prototype.query = function counted(this: pg.Client, ...sent: unknown[]) {
    const { application_name: name } = Reflect.get(this, 'connectionParameters') as { application_name?: string };
    if (!name?.startsWith('fairpull: watch')) count += 1;
    return Reflect.apply(query, this, sent);
  } as typeof pg.Client.prototype.query;
  try {
    await work();
    return count;
  } finally {
    pg.Client.prototype.query = query as typeof pg.Client.prototype.query;
  }
}
