import { readFile, rename } from 'node:fs/promises';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { readConfig } from '../../api/config.js';
import { createApp } from '../../api/create-app.js';
import { Jobs } from '../../api/platform/jobs/jobs.js';
import { addressOf } from '../../api/public-api/address.js';
import { PublishedReleases } from '../../api/releases/published-releases.read-model.js';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { createHouse, workEdition } from '../support/house.js';
import type { House } from '../support/house.js';
import { insertEdition } from '../support/insert-edition.js';
import { runSql } from '../support/run-sql.js';
import { erratumFor, moveEdition, publish } from '../support/season.js';

const FILE = 'documents/variants/gannet-20.json';
const PATH = `/v1/releases/2026/1/${FILE}`;

interface Server {
  readonly url: string;
  close(): Promise<void>;
}

let house: House;
let digest: string;
let second: Server;

/** A server process's worth of application on the same database and files. */
async function startServer(env: Record<string, string> = {}): Promise<Server> {
  const config = readConfig({ DATABASE_URL: house.t.databaseUrl, DATA_FOLDER: house.t.dataFolder, LOG_LEVEL: 'silent', ...env });
  const app = await createApp({ config });
  await app.listen(0, '127.0.0.1');
  return { url: `http://127.0.0.1:${(app.getHttpServer().address() as AddressInfo).port}`, close: () => app.close() };
}

beforeAll(async () => {
  house = await createHouse();
  await workEdition(house, '2026');
  await moveEdition(house.editor, '2026', 'closure');
  await house.t.app.select(ReleasesModule).get(ReleaseWork).start(false);
  await publish(house.editor, '2026');
  ({ digest } = (await house.t.call('get', '/v1/releases').expect(200)).body.items[0]);
  second = await startServer({ REQUESTS_PER_MINUTE: '3' });
});
afterAll(async () => {
  await second.close();
  await house.t.close();
});

const stored = (path: string, folder = digest) => readFile(join(house.t.dataFolder, 'files/releases/2026/1', folder, path));
/** An answer as it comes over the wire. */
async function read(path: string, headers: Record<string, string> = {}, method: 'GET' | 'HEAD' = 'GET', { url } = second) {
  const { request } = await import('node:http');
  return new Promise<{ status: number; headers: Record<string, unknown>; bytes: Buffer }>((done, fail) => {
    const sent = request(url + path, { method, headers }, (answer) => {
      const pieces: Buffer[] = [];
      answer.on('data', (piece: Buffer) => pieces.push(piece));
      answer.on('end', () => done({ status: answer.statusCode ?? 0, headers: answer.headers, bytes: Buffer.concat(pieces) }));
    });
    sent.on('error', fail).end();
  });
}

test('a release is read compressed before its pressed forms are made; these come by an order of their own, beside it, and are the same content', async () => {
  await expect(stored(`${FILE}.br`, `${digest}.pressed`)).rejects.toThrow('ENOENT');
  const early = await read('/v1/releases/2026/1/bundle.json', { 'accept-encoding': 'br' });
  expect(early.headers['content-encoding']).toBe('br');
  expect(brotliDecompressSync(early.bytes).equals(await stored('bundle.json'))).toBe(true);
  const order = `FROM pgboss.job WHERE name = 'release-compression'`;
  await runSql(house.t.databaseUrl, `UPDATE pgboss.job SET start_after = now() WHERE id = (SELECT id ${order})`);
  while (((await runSql(house.t.databaseUrl, `SELECT state ${order}`)) as { state: string }[])[0]?.state !== 'completed')
    await new Promise((resume) => setTimeout(resume, 50));
  const plain = await stored(FILE);
  expect(brotliDecompressSync(await stored(`${FILE}.br`, `${digest}.pressed`)).equals(plain)).toBe(true);
  expect(gunzipSync(await stored(`${FILE}.gz`, `${digest}.pressed`)).equals(plain)).toBe(true);
});

test('of a release that has none, as those of before there was such an order, a worker that starts orders them; of one that has them it does not', async () => {
  const work = house.t.app.select(ReleasesModule).get(ReleaseWork);
  const jobs = house.t.app.get(Jobs);
  const [forms, aside] = ['pressed', 'aside'].map((end) => join(house.t.dataFolder, `files/releases/2026/1/${digest}.${end}`));
  const ordered = jest.spyOn(jobs, 'order').mockResolvedValue();
  jest.spyOn(jobs, 'carryOut').mockResolvedValue();
  const orders = async () => {
    ordered.mockClear();
    await work.start(false);
    return ordered.mock.calls.map(([, { name }, order, wishes]) => [name, order, wishes?.key]);
  };
  const has = await orders();
  await rename(forms!, aside!);
  const hasNone = await orders();
  await rename(aside!, forms!);
  jest.restoreAllMocks();
  expect([has, hasNone]).toEqual([[], [['release-compression', { edition: '2026', revision: 1 }, digest]]]);
});

test.each([
  ['br, gzip', 'br', `${FILE}.br`],
  ['gzip', 'gzip', `${FILE}.gz`],
  ['br;q=0, gzip', 'gzip', `${FILE}.gz`],
  ['gzip;q=0', undefined, null],
])('a client that takes "%s" gets %s, as stored', async (accepts, coding, file) => {
  const answer = await read(PATH, { 'accept-encoding': accepts });
  expect(answer.status).toBe(200);
  expect(answer.headers['content-encoding']).toBe(coding);
  expect(answer.bytes.equals(file === null ? await stored(FILE) : await stored(file, `${digest}.pressed`))).toBe(true);
  const again = await read(PATH, { 'accept-encoding': accepts, 'if-none-match': String(answer.headers['etag']) });
  expect([again.status, again.bytes.length, again.headers['etag']]).toEqual([304, 0, answer.headers['etag']]);
  expect((await read(PATH, { 'accept-encoding': accepts, 'if-none-match': '"another"' })).status).toBe(200);
});

test('who has it already is told what a cache keeps anew and who may look, as with the whole, and nothing else', async () => {
  const whole = await read(PATH);
  const again = await read(PATH, { 'if-none-match': `"another", ${String(whole.headers['etag'])}` });
  const { 'access-control-expose-headers': exposed, ...told } = again.headers;
  expect(again.status).toBe(304);
  expect(String(exposed).split(', ')).toEqual(expect.arrayContaining(['ETag', 'Deprecation']));
  const kept = ['etag', 'cache-control', 'vary', 'access-control-allow-origin', 'connection', 'keep-alive'];
  expect(told).toEqual({ ...Object.fromEntries(kept.map((name) => [name, whole.headers[name]])), date: expect.any(String) });
});

test('HEAD tells the same headers and sends nothing', async () => {
  const [whole, head] = [await read(PATH), await read(PATH, {}, 'HEAD')];
  expect([head.status, head.bytes.length, head.headers['content-length']]).toEqual([200, 0, whole.headers['content-length']]);
  expect(head.headers['etag']).toBe(whole.headers['etag']);
});

test('reads of what is published are not limited; what has to be worked out is', async () => {
  const answers = [];
  for (let i = 0; i < 12; i += 1) answers.push((await read('/v1/editions/2026')).status);
  expect(new Set(answers)).toEqual(new Set([200]));
  const filtered = [];
  for (let i = 0; i < 5; i += 1) filtered.push((await read('/v1/editions/2026/standings/stress?carriers=8')).status);
  expect(filtered).toContain(429);
  const refused = await read('/v1/editions/2026/standings/stress?carriers=8', { origin: 'https://other.example' });
  expect([refused.status, refused.headers['access-control-allow-origin']]).toEqual([429, '*']);
});

test('an address leads to one file, and nowhere else', () => {
  const at = (edition: string | null, revision: number | null, path: string) => ({ edition, revision, path });
  expect(addressOf('/v1/releases/2026/3/csv/results.csv')).toEqual(at('2026', 3, 'csv/results.csv'));
  expect(addressOf('/v1/editions/2026')).toEqual(at('2026', null, 'documents/edition.json'));
  expect(addressOf('/v1/editions/2026/retest-results')).toEqual(at('2026', null, 'documents/retests.json'));
  expect(addressOf('/v1/editions/2026/standings/knot')).toEqual(at('2026', null, 'documents/standings/knot.json'));
  expect(addressOf('/v1/variants/a%20b')).toEqual(at(null, null, 'documents/variants/a b.json'));
  expect(addressOf('/v1/methods/abrasion/versions/2')).toEqual(at(null, null, 'documents/methods/abrasion-2.json'));
  for (const path of [
    '/v1/releases/2026/first/manifest.json',
    '/v1/releases/2026/1',
    '/v1/editions/2026/',
    '/v1/editions/2026/toString',
    '/v1/editions/2026/board',
    '/v1/editions/2026/releases/1',
    '/v1/editions/2026/variants/x/provenance',
    '/v1/variants/x/history',
    '/v1/variants/%',
    '/v2/editions/2026',
    '/',
  ])
    expect([path, addressOf(path)]).toEqual([path, null]);
});

const revisionAt = async (): Promise<number> => JSON.parse((await read('/v1/editions/2026')).bytes.toString()).revision as number;
/** Comes back when the other server shows a revision; says how long that took, which is the machine's as much as the program's. */
const shown = async (revision: number): Promise<void> => {
  const began = performance.now();
  while ((await revisionAt()) !== revision) await new Promise((resume) => setTimeout(resume, 10));
  console.log(`The other server shows revision ${revision} after ${((performance.now() - began) / 1000).toFixed(2)} s.`);
};

test('another server shows a new release', async () => {
  const revision = await publish(house.editor, '2026', await erratumFor(house.editor, '2026', 'catalogueError', 'A name.'));
  await shown(revision);
});

test('and also when the telling is lost', async () => {
  await runSql(house.t.databaseUrl, 'DROP TRIGGER "releases_are_told" ON release');
  const revision = await publish(house.editor, '2026', await erratumFor(house.editor, '2026', 'catalogueError', 'Another name.'));
  await shown(revision);
});

test('a server that never reached its database says that it does not know yet, not that there is nothing', async () => {
  const lonely = await startServer({ DATABASE_URL: 'postgresql://nobody@127.0.0.1:1/none' });
  const answer = await read('/v1/editions/2026', {}, 'GET', lonely);
  await lonely.close();
  expect([answer.status, JSON.parse(answer.bytes.toString()).code, answer.headers['retry-after']]).toEqual([
    503,
    'releases/not-loaded',
    '5',
  ]);
});

test('a release that the database has no readable manifest of is left out, and holds up no other', async () => {
  const put = async (edition: string, manifest: string) => {
    await insertEdition(house.t.databaseUrl, edition, 'closed');
    await runSql(
      house.t.databaseUrl,
      `INSERT INTO release (id, edition_id, revision, state, requested_by_id, requested_at, published_at, digest, manifest, signature)
       SELECT gen_random_uuid(), id, 1, 'published', gen_random_uuid(), now(), now(), slug, $2, '{"publicKey":""}' FROM edition WHERE slug = $1`,
      [edition, manifest],
    );
  };
  await put('unreadable', '{}');
  await put('readable', '{"files":[]}');
  await house.t.app.select(ReleasesModule).get(PublishedReleases).catchUp();
  const { items } = (await house.t.call('get', '/v1/releases').expect(200)).body as { items: { edition: string }[] };
  expect([...new Set(items.map(({ edition }) => edition))]).toEqual(['readable', '2026']);
});

test('while the database is gone everything published goes on', async () => {
  const database = new URL(house.t.databaseUrl);
  const name = database.pathname.slice(1);
  database.pathname = '/postgres';
  await runSql(database.href, `ALTER DATABASE "${name}" ALLOW_CONNECTIONS false`);
  await runSql(database.href, 'SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = $1', [name]);
  try {
    for (const path of [
      '/v1/editions/2026',
      '/v1/editions/2026/standings/knot',
      '/v1/releases/2026/1/csv/results.csv',
      '/v1/variants/petrel-40',
    ])
      expect([path, (await read(path)).status]).toEqual([path, 200]);
  } finally {
    await runSql(database.href, `ALTER DATABASE "${name}" ALLOW_CONNECTIONS true`);
  }
});
