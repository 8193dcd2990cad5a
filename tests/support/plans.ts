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
  /** Tables that it reads from the first row to the last, as they lie or along the whole of an index. */
  readonly readThrough: readonly string[];
}

/** https://www.postgresql.org/docs/18/using-explain.html: a node of a plan, as EXPLAIN (FORMAT JSON) gives it. */
interface Node {
  readonly 'Node Type': string;
  readonly 'Relation Name'?: string;
  readonly 'Index Cond'?: string;
  readonly Filter?: string;
  readonly Plans?: readonly Node[];
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
      const { rows } = await client.query<{ 'QUERY PLAN': [{ Plan: Node }] }>(`EXPLAIN (FORMAT JSON) ${text}`, [...values]);
      const root = rows[0]?.['QUERY PLAN'][0].Plan;
      plans.push({ text, lines: JSON.stringify(root, null, 1), readThrough: root ? readThrough(root, false) : [] });
    }
    return plans;
  } finally {
    await client.end();
  }
}

/** Tables that a plan reads whole. A page is no walk along an index, for it ends where it is full; one that throws rows away on its way is. */
function readThrough(node: Node, isPage: boolean): string[] {
  const isWalked = WALKS[node['Node Type']]?.(node, isPage) === true;
  const below = (node.Plans ?? []).flatMap((one) =>
    readThrough(one, node['Node Type'] === 'Limit' || (isPage && PASSES_ON.has(node['Node Type']))),
  );
  return isWalked ? [node['Relation Name'] ?? '', ...below] : below;
}

/** Nodes that ask for no more rows than are asked of them. */
const PASSES_ON = new Set(['Nested Loop', 'Subquery Scan', 'Incremental Sort', 'Result', 'Memoize']);
const alongIndex = (node: Node, isPage: boolean): boolean => node['Index Cond'] === undefined && (!isPage || node.Filter !== undefined);
const WALKS: Readonly<Record<string, (node: Node, isPage: boolean) => boolean>> = {
  'Seq Scan': () => true,
  'Index Scan': alongIndex,
  'Index Only Scan': alongIndex,
  'Bitmap Heap Scan': ({ Plans }) =>
    Plans?.some((one) => one['Node Type'] === 'Bitmap Index Scan' && one['Index Cond'] === undefined) === true,
};
