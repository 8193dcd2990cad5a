import pg from 'pg';

/** Statements that this process sends to the database while the work lasts. */
export async function countStatements(work: () => PromiseLike<unknown>): Promise<number> {
  const query = Reflect.get(pg.Client.prototype, 'query') as (...args: unknown[]) => unknown;
  let count = 0;
  pg.Client.prototype.query = function counted(this: pg.Client, ...sent: unknown[]) {
    count += 1;
    return Reflect.apply(query, this, sent);
  } as typeof pg.Client.prototype.query;
  try {
    await work();
    return count;
  } finally {
    pg.Client.prototype.query = query as typeof pg.Client.prototype.query;
  }
}
