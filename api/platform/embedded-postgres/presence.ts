import pg from 'pg';

const APPLICATION_NAME = 'fairpull: keeps the server up';
const TRY_AGAIN_MS = 500;

/** Our mark on a shared server. */
export interface Presence {
  /** Takes the mark away and counts the marks of other living processes; undefined when the server is gone. */
  leave(): Promise<number | undefined>;
}

/**
 * Marks the server as in use by this process through one open connection: the mark vanishes with the process, however it dies.
 * A connection that breaks (the server restarted after a crash of its own) is made again.
 */
export async function markPresence(url: string): Promise<Presence> {
  let current = await openMark(url);
  let isLeaving = false;
  let retry: NodeJS.Timeout | undefined;

  const reopen = () => {
    if (isLeaving) return;
    openMark(url).then(
      (client) => {
        current = client;
        watch();
      },
      () => {
        retry = setTimeout(reopen, TRY_AGAIN_MS);
      },
    );
  };
  const watch = () => {
    current.once('end', reopen);
  };
  watch();

  return {
    async leave() {
      isLeaving = true;
      clearTimeout(retry);
      const others = await countOthers(current);
      await current.end().catch(() => undefined);
      return others;
    },
  };
}

async function openMark(url: string): Promise<pg.Client> {
  const client = new pg.Client({ connectionString: url, application_name: APPLICATION_NAME, connectionTimeoutMillis: 5000 });
  // "end" follows every "error"; without a listener the error would end the process.
  client.on('error', () => undefined);
  await client.connect();
  return client;
}

async function countOthers(client: pg.Client): Promise<number | undefined> {
  const sql = 'SELECT count(*)::int AS others FROM pg_stat_activity WHERE application_name = $1 AND pid <> pg_backend_pid()';
  const answer = await client.query<{ others: number }>(sql, [APPLICATION_NAME]).catch(() => undefined);
  return answer?.rows[0]?.others;
}
