/** A house from before method versions stated their series goes on: its versions and schemes say the same in the new words. */
import { cp, mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { schemeRules } from '../../api/contract/endpoints/schemes.js';
import { keyOf } from '../../api/reckoning/results/quantity.js';
import { methodParametersSchema } from '../../api/contract/endpoints/methods.js';
import { methodSeriesListSchema } from '../../api/contract/method-series.js';
import { applyMigrations, MIGRATIONS_FOLDER } from '../../api/platform/migrations/apply-migrations.js';
import { keyNow } from '../../api/reckoning/documents/format-1.js';
import { runSql } from '../support/run-sql.js';
import { SCHEME } from '../support/season.js';
import { createTestDatabase } from '../support/test-database.js';
import type { TestDatabase } from '../support/test-database.js';

const MIGRATION = '20261126020000_series_of_a_version';
const METHODS = ['straight-pull', 'named-knot', 'abrasion', 'diameter', 'linear-density', 'house-pull'];
const QUANTITIES: Readonly<Record<string, string>> = {
  apparentStress: 'straight-pull',
  breakingForce: 'straight-pull',
  knotRetention: 'named-knot',
  abrasionRetention: 'abrasion',
  strengthHonesty: 'straight-pull',
  diameter: 'diameter',
  outOfRoundness: 'diameter',
  linearDensity: 'linear-density',
};

let database: TestDatabase;
let folder: string;
const sql = (statement: string, values: unknown[] = []) => runSql(database.url, statement, values);

beforeAll(async () => {
  database = await createTestDatabase();
  await sql('DROP SCHEMA public CASCADE');
  await sql('CREATE SCHEMA public');
  folder = await mkdtemp(join(tmpdir(), 'fairpull-before-'));
  for (const name of (await readdir(MIGRATIONS_FOLDER)).filter((one) => one < MIGRATION))
    await cp(join(MIGRATIONS_FOLDER, name), join(folder, name), { recursive: true });
  await applyMigrations(database.url, folder);
  for (const slug of METHODS) await writeOldVersion(slug);
  const { series: _, section: __, quantity: ___, ...category } = SCHEME.rules.categories[0] as Record<string, unknown>;
  const categories = Object.entries(QUANTITIES).map(([quantity, method]) => ({
    ...category,
    code: quantity.toLowerCase(),
    quantity,
    method,
  }));
  await sql(`INSERT INTO scheme (id, slug, number, name, words, rules) VALUES (gen_random_uuid(), 's', 1, 's', 's', $1)`, [
    JSON.stringify({ ...SCHEME.rules, categories }),
  ]);
  expect((await applyMigrations(database.url))[0]).toBe(MIGRATION);
});
afterAll(async () => {
  await database.drop();
  await rm(folder, { recursive: true });
});

async function writeOldVersion(slug: string): Promise<void> {
  await sql(`INSERT INTO method (id, slug, name) VALUES (gen_random_uuid(), $1, $2)`, [slug, `The ${slug}`]);
  const places = slug === 'named-knot' ? { knotRetention: 1, breakingForce: 2 } : { breakingForce: 2 };
  const parameters = { areaFrom: null, knot: slug === 'named-knot' ? 'Palomar, dry' : null, abrasion: null, places, settings: [] };
  await sql(
    `INSERT INTO method_version (id, method_id, number, effective_from, limits, parameters, wording, is_comparable_with_previous)
     SELECT gen_random_uuid(), id, 1, '2025-01-01', '{}', $2, '{}', false FROM method WHERE slug = $1`,
    [slug, JSON.stringify(parameters)],
  );
}

test('its method versions yield what they were read for', async () => {
  const rows = await sql(`SELECT m.slug, v.series, v.parameters FROM method_version v JOIN method m ON m.id = v.method_id`);
  const found = new Map(rows.map(({ slug, series, parameters }) => [slug as string, { series, parameters }]));
  const codes = (slug: string) => methodSeriesListSchema.parse(found.get(slug)!.series).map(({ code, kind }) => `${code} ${kind}`);
  expect(METHODS.map(codes)).toEqual([
    ['untreated breakingForce'],
    ['untreated breakingForce', 'knotted breakingForce'],
    ['untreated breakingForce', 'abraded breakingForce'],
    ['outline diameterAlongStations'],
    ['mass linearDensity'],
    ['untreated breakingForce'],
  ]);
  expect(methodSeriesListSchema.parse(found.get('named-knot')!.series)[1]).toMatchObject({
    treatment: { kind: 'knot', name: 'The named-knot', words: 'Palomar, dry' },
  });
  expect(methodParametersSchema.parse(found.get('named-knot')!.parameters).places).toEqual({ retention: 1, breakingForce: 2 });
  expect(methodParametersSchema.parse(found.get('straight-pull')!.parameters).places).toEqual({ breakingForce: 2 });
});

test('its schemes rank what they ranked, by the keys that its earlier releases are read with', async () => {
  const [row] = await sql('SELECT rules FROM scheme');
  const { categories } = schemeRules.parse(row!['rules']);
  expect(categories.map(keyOf)).toEqual(Object.keys(QUANTITIES).map(keyNow));
});

test('versions and schemes stand as firmly as before, and a version without a series is none', async () => {
  for (const change of [`UPDATE method_version SET number = 2`, `UPDATE scheme SET name = 'other'`])
    await expect(sql(change)).rejects.toMatchObject({ code: 'FP001' });
  const insert = (series: string) =>
    sql(`INSERT INTO method_version (id, method_id, number, effective_from, limits, series, parameters, wording, is_comparable_with_previous)
      SELECT gen_random_uuid(), id, 2, '2026-01-01', '{}', '${series}', '{}', '{}', false FROM method WHERE slug = 'abrasion'`);
  for (const series of ['[]', '{}']) await expect(insert(series)).rejects.toThrow(/method_version_yields_a_series/);
});
