/** How the database goes about what the program asks: the statements that it sends, each explained. */
import pg from 'pg';

export interface Sent {
  readonly text: string;
  readonly values: readonly unknown[];
}

/** Distinct SELECTs that this process sends to the database while the work lasts. */
export async function statementsOf(work: () => PromiseLike<unknown>): Promise<Sent[]> {
  const query = Reflect.get(pg.Client.prototype, 'query') as (...args: unknown[]) => unknown;
  const sent = new Map<string, Sent>();
  pg.Client.prototype.query = function noted(this: pg.Client, ...args: unknown[]) {
    const [first, second] = args as [string | { text: string; values?: unknown[] }, unknown];
    const text = typeof first === 'string' ? first : first.text;
    const values = typeof first === 'string' ? (Array.isArray(second) ? second : []) : (first.values ?? []);
    if (/^\s*(SELECT|WITH)\b/i.test(text)) sent.set(text, { text, values });
    return Reflect.apply(query, this, args);
  } as typeof pg.Client.prototype.query;
  try {
    await work();
    return [...sent.values()];
  } finally {
    pg.Client.prototype.query = query as typeof pg.Client.prototype.query;
  }
}

export interface Plan {
  readonly text: string;
  readonly lines: string;
  /** Tables that it reads from the first row to the last. */
  readonly readThrough: readonly string[];
}

/**
 * Plans of statements.
 * @param isSmall of a database too small for an index to pay: then a table is read through only where no index leads to its rows
 */
export async function plansOf(url: string, statements: readonly Sent[], isSmall: boolean): Promise<Plan[]> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    if (isSmall) await client.query('SET enable_seqscan = off');
    const plans: Plan[] = [];
    for (const { text, values } of statements) {
      const { rows } = await client.query<{ 'QUERY PLAN': string }>(`EXPLAIN ${text}`, [...values]);
      const lines = rows.map((row) => row['QUERY PLAN']).join('\n');
      const readThrough = [...lines.matchAll(/Seq Scan on "?(\w+)"?/g)].map(([, table = '']) => table);
      plans.push({ text, lines, readThrough });
    }
    return plans;
  } finally {
    await client.end();
  }
}
