import pg from 'pg';
import { insertEdition } from '../support/insert-edition.js';
import { runSql } from '../support/run-sql.js';
import { createTestApplication } from '../support/test-application.js';
import type { TestApplication } from '../support/test-application.js';

const EDITIONS = 20;
const REVISIONS = 50;
const WRITERS = 8;

let t: TestApplication;
let writerId = '';
beforeAll(async () => {
  t = await createTestApplication();
});
afterAll(() => t.close());

const changes = async (query = ''): Promise<{ items: any[]; lastNumber: number }> =>
  (await t.call('get', `/v1/changes${query}`).expect(200)).body;

/** Closed editions without entries, past the application: nothing is measured here. */
async function makeEditions(): Promise<void> {
  const { accountId } = await t.caller(['editor']);
  for (let n = 0; n < EDITIONS; n++) await insertEdition(t.databaseUrl, `e-${n}`, 'published');
  writerId = accountId;
}

const PUBLISH = `UPDATE release SET state = 'published', published_at = now(), digest = $2, manifest = '{"files":[]}', signature = '{"publicKey":""}' WHERE id = $1`;

/** One that fails after its change was numbered leaves no gap. */
async function undo(client: pg.Client, id: string): Promise<void> {
  await client.query('BEGIN');
  await client.query(
    `UPDATE release SET state = 'superseded' WHERE edition_id = (SELECT edition_id FROM release WHERE id = $1) AND state = 'published'`,
    [id],
  );
  await client.query(PUBLISH, [id, 'undone']);
  await client.query('SET CONSTRAINTS ALL IMMEDIATE');
  await client.query('ROLLBACK');
}

/** Publishes revisions of one edition one after the other, as the program does: the one before is superseded in the same transaction. */
async function publishAll(client: pg.Client, edition: string): Promise<void> {
  for (let revision = 1; revision <= REVISIONS; revision++) {
    const erratum = revision === 1 ? null : JSON.stringify(ERRATUM);
    const { rows } = await client.query<{ id: string; edition_id: string }>(
      `INSERT INTO release (id, edition_id, revision, state, requested_by_id, requested_at, erratum)
       SELECT gen_random_uuid(), id, $2, 'building', $3, now(), $4 FROM edition WHERE slug = $1 RETURNING id, edition_id`,
      [edition, revision, writerId, erratum],
    );
    if (revision % 10 === 0) await undo(client, rows[0]?.id ?? '');
    await client.query('BEGIN');
    await client.query(`UPDATE release SET state = 'superseded' WHERE edition_id = $1 AND state = 'published'`, [rows[0]?.edition_id]);
    await client.query(PUBLISH, [rows[0]?.id, `${edition}/${revision}`]);
    // Some take long to end.
    if (revision % 7 === 0) await client.query('SELECT pg_sleep(0.01)');
    await client.query('COMMIT');
  }
}

const ERRATUM = { reasonCode: 'catalogueError', words: 'A name.', expected: [], changes: [], consequences: 'none' };

test('a thousand releases and errata by writers at once: who follows misses none, gets none twice, and numbers have no gap', async () => {
  await makeEditions();
  const waiting = Array.from({ length: EDITIONS }, (_, n) => `e-${n}`);
  let isOver = false;
  const writer = async () => {
    const client = new pg.Client({ connectionString: t.databaseUrl });
    await client.connect();
    try {
      for (let edition = waiting.shift(); edition !== undefined; edition = waiting.shift()) await publishAll(client, edition);
    } finally {
      await client.end();
    }
  };
  const followed: any[] = [];
  const follow = async () => {
    for (let after = 0, isLast = false; ;) {
      isLast = isOver;
      const { items, lastNumber } = await changes(`?after=${after}&limit=1000`);
      followed.push(...items);
      after = lastNumber;
      if (isLast && items.length === 0) return;
    }
  };
  const writers = Promise.all(Array.from({ length: WRITERS }, writer)).finally(() => (isOver = true));
  await Promise.all([writers, follow()]);
  expect(followed.map(({ number }) => number)).toEqual(Array.from({ length: EDITIONS * REVISIONS }, (_, i) => i + 1));
  expect(new Set(followed.map(({ digest }) => digest)).size).toBe(EDITIONS * REVISIONS);
  for (let n = 0; n < EDITIONS; n++) {
    const own = followed.filter(({ edition }) => edition === `e-${n}`);
    expect(own.map(({ revision }) => revision)).toEqual(Array.from({ length: REVISIONS }, (_, i) => i + 1));
    expect(own.map(({ kind, erratum }) => [kind, erratum?.words])).toEqual(
      own.map(({ revision }) => (revision === 1 ? ['release.published', undefined] : ['erratum.published', 'A name.'])),
    );
  }
});

test('who has all of it gets nothing, in pages of what was asked for, and is told when the address is not understood', async () => {
  expect((await changes('?after=10&limit=3')).items.map(({ number }) => number)).toEqual([11, 12, 13]);
  expect(await changes(`?after=${EDITIONS * REVISIONS}`)).toEqual({ items: [], lastNumber: EDITIONS * REVISIONS });
  await t.call('get', '/v1/changes?after=yesterday').expect(422);
  await t.call('get', '/v1/changes?limit=1001').expect(422);
});

test('what was told stays told', async () => {
  for (const act of [`UPDATE change SET at = now()`, `DELETE FROM change`, `TRUNCATE change CASCADE`])
    await expect(runSql(t.databaseUrl, act)).rejects.toThrow(/record_is_append_only/);
});
