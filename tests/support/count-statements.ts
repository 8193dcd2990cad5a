import pg from 'pg';

/** Statements that this process sends to the database while the work lasts. */
export async function countStatements(work: () => PromiseLike<unknown>): Promise<number> {
  const { query } = pg.Client.prototype;
  let count = 0;
  pg.Client.prototype.query = function counted(this: pg.Client, ...query_: unknown[]) {
    count += 1;
    return Reflect.apply(query, this, query_) as unknown;
  } as typeof query;
  try {
    await work();
    return count;
  } finally {
    pg.Client.prototype.query = query;
  }
}
