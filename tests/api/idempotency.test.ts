import pg from 'pg';
import { Database } from '../../api/platform/database/database.js';
import { IdempotentAnswersStore } from '../../api/platform/http/idempotency/idempotent-answers.store.js';
import { runSql } from '../support/run-sql.js';
import { createTestApplication } from '../support/test-application.js';
import type { Caller, TestApplication } from '../support/test-application.js';

let t: TestApplication;
let editor: Caller;
let admin: Caller;
beforeAll(async () => {
  t = await createTestApplication();
  editor = await t.caller(['editor']);
  admin = await t.caller(['admin']);
});
afterAll(() => t.close());

const maker = (key: string, slug: string) =>
  editor
    .call('post', '/v1/catalogue/makers')
    .set('Idempotency-Key', key)
    .send({ slug, name: `Maker ${slug}` });
const makersCalled = async (slug: string) =>
  Number((await runSql(t.databaseUrl, 'SELECT count(*) FROM maker WHERE slug = $1', [slug]))[0]!['count']);
const rowOf = async (key: string) => (await runSql(t.databaseUrl, 'SELECT * FROM idempotent_answer WHERE key = $1', [key]))[0];
const later = (ms: number) => (t.clock.time = new Date(t.clock.time.getTime() + ms));

test('the same key replays the first answer, and refuses another body', async () => {
  const first = await maker('one', 'alder').expect(201);
  const again = await maker('one', 'alder').expect(201);
  expect(again.body).toEqual(first.body);
  expect(again.headers['idempotency-replayed']).toBe('true');
  expect(again.headers['etag']).toBe(first.headers['etag']);
  expect((await maker('one', 'birch').expect(422)).body.code).toBe('request/key-reused');
  expect(await makersCalled('alder')).toBe(1);
});

test('the answer is stored in the transaction of the work: neither is there without the other', async () => {
  await runSql(
    t.databaseUrl,
    `CREATE FUNCTION no_answer() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN RAISE division_by_zero; END $$;
     CREATE TRIGGER no_answer BEFORE UPDATE ON idempotent_answer FOR EACH ROW WHEN (NEW.status IS NOT NULL) EXECUTE FUNCTION no_answer();`,
  );
  const { status } = await maker('torn', 'cedar');
  await runSql(t.databaseUrl, 'DROP TRIGGER no_answer ON idempotent_answer');
  expect(status).toBeGreaterThanOrEqual(400);
  expect(await makersCalled('cedar')).toBe(0);
  await maker('torn', 'cedar').expect(201);
  expect(await makersCalled('cedar')).toBe(1);
});

test('an attempt that died holds its key for half a minute, no longer', async () => {
  const store = t.app.get(IdempotentAnswersStore, { strict: false });
  await store.claim({ accountId: editor.accountId, key: 'died' });
  const busy = await maker('died', 'dogwood').expect(409);
  expect(busy.body.code).toBe('request/key-busy');
  expect(busy.headers['retry-after']).toBe('1');
  later(31_000);
  await maker('died', 'dogwood').expect(201);
  expect(await makersCalled('dogwood')).toBe(1);
});

test('an attempt that lives keeps its key, and one that was overtaken leaves nothing', async () => {
  const store = t.app.get(IdempotentAnswersStore, { strict: false });
  const database = t.app.get(Database, { strict: false });
  const place = { accountId: editor.accountId, key: 'slow' };
  const slow = (await store.claim(place))!;
  later(20_000);
  await store.renew(slow);
  later(20_000);
  expect(await store.claim(place)).toBeNull();
  later(31_000);
  const answer = { requestDigest: 'x', status: 201, body: 'null', headers: {} };
  const overtaken = database.withAnswer(
    async () => {
      await database.transaction((tx) => tx.maker.create({ data: { slug: 'elder', name: 'Elder' } }));
      expect(await store.claim(place)).not.toBeNull();
    },
    (tx) => store.keep(tx, slow, answer),
  );
  await expect(overtaken).rejects.toThrow(/key-busy/);
  expect(await makersCalled('elder')).toBe(0);
});

test('a secret is never kept: the repeat is told that it was done', async () => {
  const invite = () =>
    admin
      .call('post', '/v1/invitations')
      .set('Idempotency-Key', 'secret')
      .send({ roles: ['tester'], note: 'once' });
  const first = await invite().expect(201);
  expect((await invite().expect(409)).body.code).toBe('request/secret-not-kept');
  expect(await rowOf('secret')).toMatchObject({ status: 201, body: null });
  const kept = await runSql(t.databaseUrl, 'SELECT * FROM idempotent_answer');
  expect(JSON.stringify(kept)).not.toContain(first.body.secret);
});

test('a failed attempt frees its key, and keys are short and plain', async () => {
  await maker('fails', 'NOT A SLUG').expect(422);
  await maker('fails', 'fir').expect(201);
  for (const key of ['x'.repeat(201), 'with space'])
    expect((await maker(key, 'gorse').expect(400)).body.code).toBe('request/key-malformed');
});

test('a day later the key is free, and the answer is cleaned away', async () => {
  await maker('old', 'hazel').expect(201);
  later(24 * 3_600_000 + 1000);
  await maker('old', 'holly').expect(201);
  const store = t.app.get(IdempotentAnswersStore, { strict: false });
  await store.forgetOld();
  expect(await rowOf('old')).toBeDefined();
  later(24 * 3_600_000 + 1000);
  await store.forgetOld();
  expect(await runSql(t.databaseUrl, 'SELECT * FROM idempotent_answer')).toEqual([]);
});

test('the description says how long a key stands', async () => {
  const { body } = await t.call('get', '/v1/openapi.json').expect(200);
  const named = (path: string) => body.paths[path].post.parameters.find((one: { name: string }) => one.name === 'Idempotency-Key');
  expect(named('/v1/tokens').description).toContain('24 hours');
  expect(named('/v1/sessions')).toBeUndefined();
});

test('who holds a connection never waits for a second one: 40 changes at once that read besides', async () => {
  const database = t.app.get(Database, { strict: false });
  // Those that wait for one another give up with a refusal.
  const counted = await Promise.all(
    Array.from({ length: 40 }, () =>
      database.transaction(async (tx) => {
        await tx.$queryRaw`SELECT pg_advisory_xact_lock(7)::text`;
        await database.client.account.count();
        return database.transaction((inner) => inner.account.count());
      }),
    ),
  );
  expect(new Set(counted).size).toBe(1);
});

test('statements of one transaction reach the database one after the other, also the parts of one answer', async () => {
  const query = Reflect.get(pg.Client.prototype, 'query') as (...args: unknown[]) => unknown;
  const running = new Map<unknown, number>();
  let most = 0;
  pg.Client.prototype.query = function counted(this: pg.Client, ...sent: unknown[]) {
    const answer = Reflect.apply(query, this, sent) as unknown;
    if (!(answer instanceof Promise)) return answer;
    running.set(this, (running.get(this) ?? 0) + 1);
    most = Math.max(most, running.get(this)!);
    return answer.finally(() => running.set(this, running.get(this)! - 1));
  } as typeof pg.Client.prototype.query;
  try {
    await t.app
      .get(Database, { strict: false })
      .transaction((tx) => tx.account.findMany({ include: { sessions: true, tokens: true, reviews: true } }));
  } finally {
    pg.Client.prototype.query = query as typeof pg.Client.prototype.query;
  }
  expect(most).toBe(1);
});

test('what is read inside a transaction sees what it wrote, and afterwards the pool is asked', async () => {
  const database = t.app.get(Database, { strict: false });
  const seen = () => database.client.maker.count({ where: { slug: 'juniper' } });
  const work = database.transaction(async (tx) => {
    await tx.maker.create({ data: { slug: 'juniper', name: 'Juniper' } });
    expect(await seen()).toBe(1);
    throw new Error('not this time');
  });
  await expect(work).rejects.toThrow('not this time');
  expect(await seen()).toBe(0);
});

test('a lock that is held too long is told as busy', async () => {
  const database = t.app.get(Database, { strict: false });
  const made = await maker('lock', 'larch').expect(201);
  const isHeld = Promise.withResolvers<undefined>();
  const isAnswered = Promise.withResolvers<undefined>();
  const holding = database.transaction(async (tx) => {
    await tx.$queryRaw`SELECT 1 FROM maker WHERE slug = 'larch' FOR UPDATE`;
    isHeld.resolve(undefined);
    await isAnswered.promise;
  });
  await isHeld.promise;
  const answer = await editor
    .call('patch', '/v1/catalogue/makers/larch')
    .set('If-Match', made.headers['etag'] ?? '')
    .send({ name: 'Larch & Sons' });
  isAnswered.resolve(undefined);
  await holding;
  expect(answer.status).toBe(503);
  expect(answer.body.code).toBe('record/busy');
  expect(answer.headers['retry-after']).toBe('1');
});
