/**
 * A house of the first version is brought up to this one: every row of it is still there, and the program works on with it. No version has
 * a tag yet, so that the first state of the database stands for the oldest version. Its releases are in `tests/releases/golden/`.
 */
import { cp, mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readConfig } from '../../api/config.js';
import { createApp } from '../../api/create-app.js';
import { hashPassword } from '../../api/accounts/hash-password.js';
import { applyMigrations, MIGRATIONS_FOLDER } from '../../api/platform/migrations/apply-migrations.js';
import { runSql } from '../support/run-sql.js';
import { createTestDatabase } from '../support/test-database.js';
import request from 'supertest';
import type { TestDatabase } from '../support/test-database.js';

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
