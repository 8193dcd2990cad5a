/** A backup is made while the program works, restored elsewhere, and holds every row and every release. */
import { createReadStream } from 'node:fs';
import { appendFile, cp, mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { createGunzip } from 'node:zlib';
import pg from 'pg';
import sharp from 'sharp';
import request from 'supertest';
import { readConfig } from '../../api/config.js';
import { createApp } from '../../api/create-app.js';
import { drill } from '../../api/backup-drill.js';
import { readBackupList } from '../../api/platform/backup/backup-list.js';
import type { BackupList } from '../../api/platform/backup/backup-list.js';
import { checkBackup } from '../../api/platform/backup/check-backup.js';
import { nightlyBackup } from '../../api/platform/backup/nightly-backup.js';
import { forgetOldBackups, makeBackup } from '../../api/platform/backup/make-backup.js';
import { restoreBackup, tablesThatDiffer } from '../../api/platform/backup/restore-backup.js';
import { releasesAt } from '../../api/releases/verify/release-source.js';
import { verifyRelease } from '../../api/releases/verify/verify-release.js';
import { createHouse, workEdition } from '../support/house.js';
import type { House } from '../support/house.js';
import { runSql } from '../support/run-sql.js';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { moveEdition, publish } from '../support/season.js';
import { createTestDatabase } from '../support/test-database.js';
import type { TestDatabase } from '../support/test-database.js';

const silent = () => undefined;
const temporary = (name: string) => mkdtemp(join(tmpdir(), `fairpull-${name}-`));

let house: House;
let folder: string;
let backup: string;
let list: BackupList;
/** Id of the tester's photo of a break. */
let photo: string;

beforeAll(async () => {
  house = await createHouse();
  await workEdition(house, '2026');
  photo = await photographed();
  await moveEdition(house.editor, '2026', 'closure');
  await house.t.app.select(ReleasesModule).get(ReleaseWork).start(false);
  await publish(house.editor, '2026');
  folder = await temporary('backups');
  await writeFile(join(house.t.dataFolder, 'standing-exceptions.json'), '[]');
  backup = await makeBackup(source(), folder, silent);
  list = await readBackupList(backup);
});

afterAll(async () => {
  await house.t.close();
  await rm(folder, { recursive: true, force: true });
});

async function photographed(): Promise<string> {
  const [spool] = house.codes.values();
  const content = { edition: '2026', spool, method: 'straight-pull', methodVersion: 1, benchDay: '2026-03-10' };
  const draft = await house.tester.call('post', '/v1/drafts').send({ content }).expect(201);
  const { reference } = draft.body as { reference: string };
  const bytes = await sharp({ create: { width: 40, height: 30, channels: 3, background: '#864' } })
    .png()
    .toBuffer();
  const sent = house.tester.call('post', `/v1/submissions/${reference}/photos`).set('Content-Type', 'image/png').send(bytes);
  return ((await sent.expect(201)).body as { items: { id: string }[] }).items[0]!.id;
}

const source = () => ({ databaseUrl: house.t.databaseUrl, dataFolder: house.t.dataFolder });

/** An empty database and an empty folder. */
async function elsewhere<Answer>(work: (place: { databaseUrl: string; dataFolder: string }) => Promise<Answer>): Promise<Answer> {
  const database: TestDatabase = await createTestDatabase();
  const dataFolder = await temporary('restored');
  try {
    await runSql(database.url, 'DROP SCHEMA public CASCADE; CREATE SCHEMA public');
    return await work({ databaseUrl: database.url, dataFolder });
  } finally {
    await database.drop();
    await rm(dataFolder, { recursive: true, force: true });
  }
}

const copied = async <Answer>(work: (copy: string) => Promise<Answer>): Promise<Answer> => {
  const copy = await temporary('copy');
  await cp(backup, copy, { recursive: true });
  return work(copy).finally(() => rm(copy, { recursive: true, force: true }));
};

test('it holds rows, files and the key, and every part is as its list says', async () => {
  expect(list.tables.find(({ name }) => name === 'reading')?.rows).toBeGreaterThan(100);
  expect(list.files.map(({ path }) => path)).toEqual(expect.arrayContaining(['keys/signing-key.pem', 'standing-exceptions.json']));
  expect((await stat(join(backup, 'data/keys/signing-key.pem'))).mode & 0o777).toBe(0o600);
  expect((await checkBackup(backup)).faults).toEqual([]);
});

test('restored elsewhere it has equal rows, rules that still stand, and releases that verify', async () => {
  await elsewhere(async (place) => {
    await restoreBackup(backup, place, silent);
    expect(await tablesThatDiffer(list, place.databaseUrl)).toEqual([]);
    const releases = await releasesAt(join(place.dataFolder, 'files'));
    expect(releases).toHaveLength(1);
    for (const release of releases) {
      const { differences, figures } = await verifyRelease(release);
      expect(differences).toEqual([]);
      expect(figures).toBeGreaterThan(100);
    }
    expect((await stat(join(place.dataFolder, 'keys/signing-key.pem'))).mode & 0o777).toBe(0o600);
    await expect(runSql(place.databaseUrl, 'DELETE FROM reading')).rejects.toThrow(/record_is_append_only/);
    const count = `SELECT count(*)::int AS n FROM pg_constraint WHERE contype = 'f' AND connamespace = 'public'::regnamespace AND convalidated`;
    expect(await runSql(place.databaseUrl, count)).toEqual(await runSql(house.t.databaseUrl, count));
  });
});

test('a drill says what would not come back as it was, and leaves nothing behind', async () => {
  const databases = () => runSql(house.t.databaseUrl, `SELECT datname FROM pg_database WHERE datname LIKE 'fairpull_drill_%'`);
  const folders = async () => (await readdir(tmpdir())).filter((name) => name.startsWith('fairpull-drill-'));
  const before = [await databases(), await folders()];
  const said: string[] = [];
  const tables = list.tables.map((table) => (table.name === 'maker' ? { ...table, sha256: '0'.repeat(64) } : table));
  const faults = await drill(backup, { ...list, tables }, (line) => void said.push(line), house.t.databaseUrl);
  expect(faults).toEqual(['The rows of maker are not those of the backup.']);
  expect(said).toEqual([
    'Restoring into a database of its own …',
    expect.stringMatching(/^1 releases verified, \d{3,} figures recomputed\.$/),
  ]);
  expect([await databases(), await folders()]).toEqual(before);
});

test('a photo that was restored is there for its tester, the same to the byte, and for nobody else', async () => {
  const bytesOf = async (answer: request.Test) => (await answer.buffer(true).expect(200)).body as Buffer;
  const kept = await bytesOf(house.tester.call('get', `/v1/photos/${photo}`));
  await elsewhere(async ({ databaseUrl, dataFolder }) => {
    await restoreBackup(backup, { databaseUrl, dataFolder }, silent);
    const app = await createApp({ config: readConfig({ DATABASE_URL: databaseUrl, DATA_FOLDER: dataFolder, LOG_LEVEL: 'error' }) });
    const read = (token: string) => request(app.getHttpServer()).get(`/v1/photos/${photo}`).set('Authorization', `Bearer ${token}`);
    expect(Buffer.compare(await bytesOf(read(house.tester.token)), kept)).toBe(0);
    await read(house.reviewer.token).expect(404);
    await app.close();
  });
});

test('a restore overwrites no record and no file', async () => {
  await expect(restoreBackup(backup, source(), silent)).rejects.toThrow(/holds a record already .* overwrites nothing/);
  await elsewhere(async (place) => {
    await writeFile(join(place.dataFolder, 'standing-exceptions.json'), '[ ]');
    await expect(restoreBackup(backup, place, silent)).rejects.toThrow(/standing-exceptions\.json is there already and is another file/);
  });
});

test('a restore that was cut off is done by the same command', async () => {
  await elsewhere(async (place) => {
    await copied(async (copy) => {
      await appendFile(join(copy, list.tables.at(-1)?.file ?? ''), 'cut');
      await expect(restoreBackup(copy, place, silent)).rejects.toThrow();
    });
    await restoreBackup(backup, place, silent);
    expect(await tablesThatDiffer(list, place.databaseUrl)).toEqual([]);
  });
});

test('a changed part is named, by a check and by a restore', async () => {
  await copied(async (copy) => {
    const file = list.tables.find(({ name }) => name === 'maker')?.file ?? '';
    const release = list.files.find(({ path }) => path.endsWith('/bundle.json'))?.path ?? '';
    await cp(join(backup, list.tables.find(({ name }) => name === 'line')?.file ?? ''), join(copy, file));
    await appendFile(join(copy, 'data', release), ' ');
    await rm(join(copy, 'data/keys/signing-key.pem'));
    expect((await checkBackup(copy)).faults.map((fault) => fault.split(':')[0]).sort()).toEqual(
      [file, 'keys/signing-key.pem', release].sort(),
    );
  });
  await copied(async (copy) => {
    const { name, file } = list.tables.find(({ rows }) => rows > 3) ?? { name: '', file: '' };
    const other = list.tables.find((table) => table.name !== name && table.rows === 0)?.file ?? '';
    await cp(join(backup, other), join(copy, file));
    await elsewhere(async (place) => {
      await expect(restoreBackup(copy, place, silent)).rejects.toThrow(`${file} of the backup was changed: 0 rows`);
      expect(await runSql(place.databaseUrl, 'SELECT count(*)::int AS n FROM account')).toEqual([{ n: 0 }]);
    });
  });
});

test('what changes while a backup is made is in it wholly or not at all', async () => {
  const pool = new pg.Pool({ connectionString: house.t.databaseUrl, max: 1 });
  const beside = await temporary('beside');
  let made = 0;
  // Between every two tables somebody adds a maker.
  const making = makeBackup(source(), beside, () => {
    made += 1;
    const id = `00000000-0000-7000-8000-${String(made).padStart(12, '0')}`;
    void pool.query(`INSERT INTO maker (id, slug, name) VALUES ('${id}', 'beside-${made}', 'Beside ${made}')`).catch(() => undefined);
  });
  const { tables } = await readBackupList(await making);
  expect((await pool.query(`SELECT 1 FROM maker WHERE slug LIKE 'beside-%'`)).rowCount).toBeGreaterThan(0);
  await pool.end();
  const makers = await text(
    createReadStream(join(await newest(beside), tables.find(({ name }) => name === 'maker')?.file ?? '')).pipe(createGunzip()),
  );
  expect(made).toBeGreaterThan(20);
  expect(makers).not.toContain('beside-');
  await rm(beside, { recursive: true });
});

const newest = async (of: string) => join(of, (await readdir(of)).sort().at(-1) ?? '');

test('a backup that cannot be made leaves nothing of itself, and says so', async () => {
  const beside = await temporary('unmade');
  await expect(makeBackup({ ...source(), databaseUrl: 'postgresql://nobody:x@127.0.0.1:1/none' }, beside, silent)).rejects.toThrow(
    /^The backup was not made, and nothing of it is left; those before stay\. .*ECONNREFUSED/,
  );
  await elsewhere((place) => expect(makeBackup(place, beside, silent)).rejects.toThrow(/holds no house, not even an empty one/));
  expect(await readdir(beside)).toEqual([]);
  await rm(beside, { recursive: true });
});

test('a folder that is no finished backup is refused', async () => {
  const beside = await temporary('no-backup');
  await expect(checkBackup(beside)).rejects.toThrow(/is no finished backup: it has no backup\.json/);
  await writeFile(join(beside, 'backup.json'), '{"format":2}');
  await expect(checkBackup(beside)).rejects.toThrow(/cannot be read: at format: .*newer version/s);
  await rm(beside, { recursive: true });
});

test('a backup of a newer program is refused by its history', async () => {
  await copied(async (copy) => {
    const migrations = [...list.migrations, { name: '20991231000000_of_tomorrow', checksum: '0'.repeat(64) }];
    await writeFile(join(copy, 'backup.json'), JSON.stringify({ ...list, migrations }));
    await elsewhere((place) => expect(restoreBackup(copy, place, silent)).rejects.toThrow(/of_tomorrow.*Start the newer version/));
  });
});

test('the newest stay, the oldest go, what was cut off goes when a later one is whole, and what has another name stays', async () => {
  const beside = await temporary('many');
  const day = (d: number) => new Date(Date.UTC(2026, 0, d, 2, 30));
  await makeBackup(source(), beside, silent, day(1));
  for (const name of [
    'fairpull-2026-01-02T02-30-00Z',
    'fairpull-2026-01-03T02-30-00Z',
    'fairpull-2026-01-02T09-00-00Z.part',
    'fairpull-2026-01-09T02-30-00Z.part',
    'fairpull-2025-12-31T02-30-00Z-before-upgrade',
    'fairpull-of-the-other-house',
  ])
    await cp(await first(beside), join(beside, name), { recursive: true });
  expect(await forgetOldBackups(beside, 2)).toEqual(['fairpull-2026-01-01T02-30-00Z', 'fairpull-2026-01-02T09-00-00Z.part']);
  expect((await readdir(beside)).sort()).toEqual([
    'fairpull-2025-12-31T02-30-00Z-before-upgrade',
    'fairpull-2026-01-02T02-30-00Z',
    'fairpull-2026-01-03T02-30-00Z',
    'fairpull-2026-01-09T02-30-00Z.part',
    'fairpull-of-the-other-house',
  ]);
  await rm(beside, { recursive: true });
});

test('every night the new one is read through before the oldest go', async () => {
  const beside = join(await temporary('nights'), 'made-when-missing');
  expect(await nightlyBackup(source(), beside, 1)).toMatch(/is made and read through\.$/);
  const [before = ''] = await readdir(beside);
  await cp(join(beside, before), join(beside, 'fairpull-2026-01-01T02-30-00Z'), { recursive: true });
  await rm(join(beside, before), { recursive: true });
  expect(await nightlyBackup(source(), beside, 1)).toMatch(/read through; taken away: fairpull-2026-01-01T02-30-00Z\.$/);
  expect(await readdir(beside)).toHaveLength(1);
  await rm(beside, { recursive: true });
});

const first = async (of: string) => join(of, (await readdir(of)).sort()[0] ?? '');

test('the list of a backup is made for people too', async () => {
  const read = JSON.parse(await readFile(join(backup, 'backup.json'), 'utf8')) as BackupList;
  expect(read.program.version).toMatch(/^\d+\.\d+\.\d+$/);
  expect(read.postgres).toMatch(/^18/);
});
