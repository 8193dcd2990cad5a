/**
 * What contributors do with prisma/models/, by the parts of Prisma that npm carries whole (its command line would download more):
 * the client in api/platform/database/generated/, and the SQL that leads from the migrations to the models.
 */
import { randomBytes } from 'node:crypto';
import { createRequire } from 'node:module';
import { readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { PrismaPg } from '@prisma/adapter-pg';
import { bindMigrationAwareSqlAdapterFactory, ColumnTypeEnum } from '@prisma/driver-adapter-utils';
import type { SqlMigrationAwareDriverAdapterFactory, SqlQuery } from '@prisma/driver-adapter-utils';
import type * as clientGenerator from '@prisma/client-generator-ts';
import type * as internals from '@prisma/internals';
import pg from 'pg';
import { applyMigrations } from '../api/platform/migrations/apply-migrations.js';

const MODELS = fileURLToPath(new URL('../prisma', import.meta.url));
export const CLIENT = fileURLToPath(new URL('../api/platform/database/generated', import.meta.url));
// These packages' own ES modules name files that are not there; the others are whole.
const require = createRequire(import.meta.url);

type SchemaFile = [path: string, content: string];

async function readModels(): Promise<SchemaFile[]> {
  const names = (await readdir(MODELS, { recursive: true })).filter((name) => name.endsWith('.prisma')).sort();
  return Promise.all(names.map(async (name): Promise<SchemaFile> => [join(MODELS, name), await readFile(join(MODELS, name), 'utf8')]));
}

/** Writes the client that belongs to the models into a folder; what was there goes. */
export async function generateClient(folder: string): Promise<void> {
  const { getConfig, getDMMF } = require('@prisma/internals') as typeof internals;
  const { PrismaClientTsGenerator } = require('@prisma/client-generator-ts') as typeof clientGenerator;
  const datamodel = await readModels();
  const { generators, datasources } = await getConfig({ datamodel });
  const [generator] = generators;
  if (generator === undefined) throw new Error(`${MODELS}/schema.prisma names no generator.`);
  await rm(folder, { recursive: true, force: true });
  await new PrismaClientTsGenerator().generate({
    generator: { ...generator, output: { value: folder, fromEnvVar: null }, binaryTargets: [] },
    otherGenerators: [],
    schemaPath: join(MODELS, 'schema.prisma'),
    dmmf: await getDMMF({ datamodel }),
    datasources,
    datamodel: datamodel.map(([, content]) => content).join('\n'),
    version: '',
    binaryPaths: {},
  });
}

/**
 * SQL that leads from what all migrations make to the models; empty when they agree.
 * @param serverUrl address of any database of a server, on which an empty one is made for the comparison and dropped again
 */
export async function sqlFromMigrationsToModels(serverUrl: string): Promise<string> {
  const name = `compare_models_${randomBytes(6).toString('hex')}`;
  const url = new URL(serverUrl);
  url.pathname = `/${name}`;
  await runOn(serverUrl, `CREATE DATABASE ${name}`);
  try {
    await applyMigrations(url.href);
    return await sqlToModels(url.href);
  } finally {
    await runOn(serverUrl, `DROP DATABASE ${name} WITH (FORCE)`);
  }
}

/** SQL that leads from a database as it is to the models. */
export async function sqlToModels(databaseUrl: string): Promise<string> {
  const files = (await readModels()).map(([path, content]) => ({ path, content }));
  const wasm = await (engineModule ??= loadEngine());
  const factory = { provider: 'postgres' as const, adapterName: '@prisma/adapter-pg', connect: () => connect(databaseUrl) };
  const engine = await wasm.SchemaEngine.new(
    { datamodels: files.map(({ path, content }): SchemaFile => [path, content]) },
    () => undefined,
    bindMigrationAwareSqlAdapterFactory(factory as unknown as SqlMigrationAwareDriverAdapterFactory),
  );
  const { stdout } = await engine.diff({
    from: { tag: 'schemaDatasource', files, configDir: MODELS },
    to: { tag: 'schemaDatamodel', files },
    script: true,
    exitCode: null,
    filters: { externalTables: [], externalEnums: [] },
  });
  // The engine's way to say that there is nothing to do is a comment.
  return stdout === null || stdout.trim() === '-- This is an empty migration.' ? '' : stdout;
}

async function runOn(url: string, sql: string): Promise<void> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  await client.query(sql).finally(() => client.end());
}

/** The one-byte "char" of PostgreSQL's catalogue and its text (pg_type.dat). */
const OID_CHAR = 18;
const OID_TEXT = 25;

interface Told {
  fields?: { dataTypeID: number }[];
}

/** The adapter does not know the catalogue's type "char": such columns are read as text, and told to the engine as characters. */
async function connect(connectionString: string) {
  const adapter = await new PrismaPg({ connectionString, max: 1 }).connect();
  const inner = adapter as unknown as { performIO: (query: SqlQuery) => Promise<Told> };
  const performIO = inner.performIO.bind(adapter);
  const queryRaw = adapter.queryRaw.bind(adapter);
  let charColumns: number[] = [];
  inner.performIO = async (query) => {
    const answer = await performIO(query);
    charColumns = [];
    answer.fields?.forEach((field, column) => {
      if (field.dataTypeID !== OID_CHAR) return;
      field.dataTypeID = OID_TEXT;
      charColumns.push(column);
    });
    return answer;
  };
  adapter.queryRaw = async (query) => {
    const answer = await queryRaw(query);
    for (const column of charColumns) answer.columnTypes[column] = ColumnTypeEnum.Character;
    return answer;
  };
  return adapter;
}

interface Instantiation {
  instance: { exports: { __wbindgen_start?: () => void } };
}

/** Loaded once: its JavaScript half keeps the WebAssembly instance for all. */
let engineModule: ReturnType<typeof loadEngine> | undefined;

async function loadEngine() {
  const wasm = await import('@prisma/schema-engine-wasm/schema_engine_bg');
  const bytes = await readFile(new URL('./schema_engine_bg.wasm', import.meta.resolve('@prisma/schema-engine-wasm/schema_engine_bg')));
  const { instantiate } = (
    globalThis as unknown as { WebAssembly: { instantiate: (bytes: Buffer, imports: object) => Promise<Instantiation> } }
  ).WebAssembly;
  const { instance } = await instantiate(bytes, { './schema_engine_bg.js': wasm });
  wasm.__wbg_set_wasm(instance.exports);
  instance.exports.__wbindgen_start?.();
  return wasm;
}
