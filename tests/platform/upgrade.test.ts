/**
 * Houses of earlier programs are brought up to this one: every row is still there, what they published stays as it is, and the program works
 * on with them. One has the first state of the database; another was written by commit 447d2a38, the last whose releases have format 2, in
 * a season of `tests/support/season.ts` and backed up by its own `npm run backup`: 2026 published, of 2027 everything handed in. The last, of commit
 * b98ab964, gave places to stresses over the diameter of one piece each. A next format gets a house of the last program of this one, beside them.
 */
import { unzipSync } from 'fflate';
import { execFile } from 'node:child_process';
import { cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { promisify } from 'node:util';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { readConfig } from '../../api/config.js';
import { createApp } from '../../api/create-app.js';
import { hashPassword } from '../../api/accounts/hash-password.js';
import { applyMigrations, MIGRATIONS_FOLDER } from '../../api/platform/migrations/apply-migrations.js';
import type { Role } from '../../api/contract/roles.js';
import { readBackupList } from '../../api/platform/backup/backup-list.js';
import type { BackupList } from '../../api/platform/backup/backup-list.js';
import { restoreBackup } from '../../api/platform/backup/restore-backup.js';
import { sha256 } from '../../api/platform/identifiers/identifiers.js';
import { grantToProgram } from '../../api/platform/migrations/grant-program.js';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { BuildSite } from '../../api/releases/site/build-site.js';
import { acceptAll, erratumFor, moveEdition, publish } from '../support/season.js';
import { HOUSE_STATEMENT } from '../support/state-house.js';
import { PASSWORD as PASSWORD_OF_TESTS, SetClock, signIn } from '../support/test-application.js';
import type { Method } from '../support/test-application.js';
import { runSql } from '../support/run-sql.js';
import { createTestDatabase } from '../support/test-database.js';
import request from 'supertest';
import type { TestDatabase } from '../support/test-database.js';

const HOUSE_OF_BEFORE = 'tests/platform/fixtures/house-of-format-2.zip';
const HOUSE_OF_ONE_PIECE = 'tests/platform/fixtures/house-of-one-piece.zip';
const PASSWORD = 'kept since the first version';
/** What there was to say in the first version, and stands in the same tables now. */
const ROWS = `
  SELECT 'account' AS of, id, email AS a, display_name AS b FROM account UNION ALL SELECT 'maker', id, slug, name FROM maker
  UNION ALL SELECT 'line', id, slug, name || density_g_per_cm3 FROM line UNION ALL SELECT 'variant', id, slug, size || colour FROM variant
  UNION ALL SELECT 'spool', id, blind_code, place || obtained_on FROM spool ORDER BY of`;

let database: TestDatabase;
let folder: string;
const sql = (statement: string, values: unknown[] = []) => runSql(database.url, statement, values);

beforeAll(async () => {
  database = await createTestDatabase();
  folder = await mkdtemp(join(tmpdir(), 'fairpull-upgrade-'));
  await sql('DROP SCHEMA public CASCADE');
  await sql('CREATE SCHEMA public');
  const [oldest = ''] = (await readdir(MIGRATIONS_FOLDER)).sort();
  await cp(join(MIGRATIONS_FOLDER, oldest), join(folder, oldest), { recursive: true });
  expect(await applyMigrations(database.url, folder)).toEqual([oldest]);
});
afterAll(async () => {
  await database.drop();
  await rm(folder, { recursive: true });
});

test('rows of the first version stand as they were; who had an account signs in and works on with what is there', async () => {
  await sql(
    `INSERT INTO account (id, email, display_name, password_hash, roles, created_at)
     VALUES (gen_random_uuid(), 'editor@bench.example', 'E. Sallow', $1, '{editor}', '2024-01-05')`,
    [await hashPassword(PASSWORD)],
  );
  await sql(`INSERT INTO maker (id, slug, name) VALUES (gen_random_uuid(), 'gannetweave', 'Gannetweave')`);
  await sql(`INSERT INTO line (id, slug, maker_id, name, material, construction, carriers, density_g_per_cm3)
    SELECT gen_random_uuid(), 'gannet', id, 'Gannet', 'UHMWPE', 'braided', 8, 0.97 FROM maker`);
  await sql(`INSERT INTO variant (id, slug, line_id, size, colour) SELECT gen_random_uuid(), 'gannet-20', id, '0.20', 'grey' FROM line`);
  await sql(`INSERT INTO spool (id, blind_code, variant_id, source, obtained_on, place)
    SELECT gen_random_uuid(), 'K7M2QX4', id, 'bought', '2024-01-06', 'A shop by the harbour' FROM variant`);
  const before = await sql(ROWS);
  expect(before).toHaveLength(5);
  expect((await applyMigrations(database.url)).length).toBe((await readdir(MIGRATIONS_FOLDER)).length - 2);
  expect(await sql(ROWS)).toEqual(before);

  const app = await createApp({ config: readConfig({ DATABASE_URL: database.url, DATA_FOLDER: folder, LOG_LEVEL: 'error' }) });
  try {
    const session = await request(app.getHttpServer()).post('/v1/sessions').send({ email: 'editor@bench.example', password: PASSWORD });
    expect(session.status).toBe(201);
    const { body } = await request(app.getHttpServer())
      .post('/v1/catalogue/spools')
      .set('Cookie', session.get('Set-Cookie') ?? [])
      .set('X-CSRF-Token', session.body.csrfToken)
      .send({ variant: 'gannet-20', source: 'bought', obtainedOn: '2026-03-01', place: 'The same shop', lot: null, lengthM: '150' })
      .expect(201);
    expect(body.blindCode).toMatch(/^[A-Z0-9]{7}$/);
  } finally {
    await app.close();
  }
});

/** A house as its own program backed it up, in a database of its own, with the program of today. */
function houseFrom(packed: string) {
  const own = join(tmpdir(), `fairpull-${basename(packed)}-${process.pid}`);
  let house: { readonly database: TestDatabase; readonly dataFolder: string };
  let backed: BackupList['tables'];
  let app: NestFastifyApplication;
  const call = (method: Method, path: string) => request(app.getHttpServer())[method](path);
  const caller = (nth: number, role: Role) =>
    signIn(call, { accountId: '', email: `person-${nth}@bench.example` }, PASSWORD_OF_TESTS, [role]);
  const filesOf = async (release: string) => {
    const top = join(house.dataFolder, 'files/releases', release);
    const entries = (await readdir(top, { recursive: true, withFileTypes: true })).filter((entry) => entry.isFile());
    return Promise.all(entries.map(async ({ parentPath, name }) => [name, sha256(await readFile(join(parentPath, name)))]));
  };

  beforeAll(async () => {
    for (const [path, bytes] of Object.entries(unzipSync(await readFile(packed)))) {
      if (path.endsWith('/')) continue;
      await mkdir(dirname(join(own, path)), { recursive: true });
      await writeFile(join(own, path), bytes);
    }
    const [backup = ''] = (await readdir(own)).filter((name) => name.startsWith('fairpull-'));
    ({ tables: backed } = await readBackupList(join(own, backup)));
    house = { database: await createTestDatabase(), dataFolder: join(own, 'data') };
    await runSql(house.database.url, 'DROP SCHEMA public CASCADE; CREATE SCHEMA public');
    await restoreBackup(join(own, backup), { databaseUrl: house.database.url, dataFolder: house.dataFolder }, () => undefined);
    await grantToProgram(house.database.url, house.database.programUrl);
    const config = { DATABASE_URL: house.database.programUrl, DATA_FOLDER: house.dataFolder, LOG_LEVEL: 'error' };
    app = await createApp({ config: readConfig(config), clock: new SetClock() });
  });
  afterAll(async () => {
    await app.close();
    await house.database.drop();
    await rm(own, { recursive: true });
  });
  const startWork = () => app.select(ReleasesModule).get(ReleaseWork).start(false);
  return { call, caller, filesOf, startWork, of: () => ({ ...house, backed, app }) };
}

describe('a house that published in the format before', () => {
  const { caller, filesOf, startWork, of } = houseFrom(HOUSE_OF_BEFORE);

  test('ends the season that it was in and corrects the one before; what was published stays to the byte, all of it verifies, and the site shows it', async () => {
    const { app, backed, ...house } = of();
    for (const { name, rows } of backed)
      expect([name, await runSql(house.database.url, `SELECT count(*)::int AS rows FROM "${name}"`)]).toEqual([name, [{ rows }]]);
    const before = await filesOf('2026/1');
    expect(before.length).toBeGreaterThan(50);
    const [editor, reviewer] = [await caller(1, 'editor'), await caller(2, 'reviewer')];
    await editor.call('post', '/v1/house-statement').send(HOUSE_STATEMENT).expect(201);
    await startWork();
    await acceptAll(reviewer, '2027');
    await moveEdition(editor, '2027', 'closure');
    expect(await publish(editor, '2027')).toBe(1);
    expect(await publish(editor, '2026', await erratumFor(editor, '2026', 'catalogueError', 'A name was misread.'))).toBe(2);
    expect(await filesOf('2026/1')).toEqual(before);

    const verify = [...process.execArgv, 'api/releases/verify/verify-any-command.ts', join(house.dataFolder, 'files')];
    const { stdout } = await promisify(execFile)(process.execPath, verify);
    expect(stdout).toMatch(/^2026, revision 1 [^]*\n  recomputed by the program that lies in it\n2026, revision 2 /);
    expect(stdout.match(/by the program that lies in it/g)).toHaveLength(1);
    expect(stdout).toMatch(/\n\d{4,} figures recomputed, all equal; \d+ files, every one as signed\.\n$/);

    await app.select(ReleasesModule).get(BuildSite).run();
    const page = (path: string) => readFile(join(house.dataFolder, 'site/current', path, 'index.html'), 'utf8');
    expect(await page('editions/2026')).toContain('A name was misread.');
    for (const path of ['editions/2027', 'editions/2026/revisions/1']) expect(await page(path)).toContain('gannet-20');
  });
});

describe('a house that gave places to what nothing tells the scatter of', () => {
  const { call, caller, filesOf, startWork } = houseFrom(HOUSE_OF_ONE_PIECE);

  test('corrects an edition in which places stood without intervals: they are taken back with a reason, and the others keep theirs', async () => {
    const published = await filesOf('2026/1');
    const read = async (path: string) => (await call('get', `/v1/editions/2026${path}`).expect(200)).body;
    const placesIn = async () => (await read('/standings/stress')).rows.map(({ place }: any) => place);
    expect(await placesIn()).toEqual([1, 2, 3, 4, 5]);
    const editor = await caller(1, 'editor');
    await startWork();
    expect(await publish(editor, '2026', await erratumFor(editor, '2026', 'catalogueError', 'A name was misread.'))).toBe(2);
    expect(await placesIn()).toEqual([null, null, null, null, null]);
    const { overall, incomplete, scheme, erratum } = await read('');
    expect([overall.length, incomplete, scheme.categories[0].unplaced]).toEqual([5, [], 'nothingKnownOfScatter']);
    for (const { placeInterval } of overall) expect(placeInterval).not.toBeNull();
    expect(erratum.changes.filter(({ where }: any) => where.startsWith('stress, ') && where.endsWith(', place'))).toHaveLength(5);
    expect(await filesOf('2026/1')).toEqual(published);
  });
});
