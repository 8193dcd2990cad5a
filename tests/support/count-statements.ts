import pg from 'pg';

/** Statements that this process sends to the database while the work lasts, but for what a watch asks by the clock on a connection of its own. */
export const countStatements = async (work: () => PromiseLike<unknown>): Promise<number> => (await statementsOf(work)).length;

/** How many values the statement that has most takes with it. */
export const mostValues = async (work: () => PromiseLike<unknown>): Promise<number> => Math.max(...(await statementsOf(work)));

/** Values of each statement. */
async function statementsOf(work: () => PromiseLike<unknown>): Promise<number[]> {
  const query = Reflect.get(pg.Client.prototype, 'query') as (...args: unknown[]) => unknown;
  const found: number[] = [];
  pg.Client.prototype.query = function counted(this: pg.Client, ...sent: unknown[]) {
    const { application_name: name } = Reflect.get(this, 'connectionParameters') as { application_name?: string };
    if (!name?.startsWith('fairpull: watch')) found.push(valuesIn(sent));
    return Reflect.apply(query, this, sent);
  } as typeof pg.Client.prototype.query;
  try {
    await work();
    return found;
  } finally {
    pg.Client.prototype.query = query as typeof pg.Client.prototype.query;
  }
}

const valuesIn = ([statement, values]: unknown[]): number =>
  ((values ?? (statement as { readonly values?: unknown } | undefined)?.values ?? []) as { readonly length?: number }).length ?? 0;
