#!/usr/bin/env node
// Prisma's command line talks to a native program, its schema engine, which it would download from its maker's host.
// This program answers in its place: the same arguments and the same JSON-RPC over standard input and output, backed by the same
// engine compiled to WebAssembly (@prisma/schema-engine-wasm, pinned to the version of the command line) and by the pg driver.
// Used by `npm run db:…`, through PRISMA_SCHEMA_ENGINE_BINARY; the program itself applies migrations without any of this.
import { randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { parseArgs } from 'node:util';
import { PrismaPg } from '@prisma/adapter-pg';
import { bindMigrationAwareSqlAdapterFactory, ColumnTypeEnum } from '@prisma/driver-adapter-utils';
import * as wasm from '@prisma/schema-engine-wasm/schema_engine_bg';
import pg from 'pg';

/** Parameters of an address that Prisma understands and the pg driver does not. */
const PRISMA_ONLY_PARAMETERS = ['schema', 'connection_limit', 'pool_timeout'];
/** PostgreSQL's one-byte "char" and its text (pg_type.dat). */
const OID_CHAR = 18;
const OID_TEXT = 25;
/** Prisma's error codes for what goes wrong before the engine is asked (its error reference). */
const CONNECTION_ERRORS = {
  '3D000': ['P1003', 'Database does not exist'],
  '28P01': ['P1000', 'Authentication failed'],
  ECONNREFUSED: ['P1001', "Can't reach database server"],
};
const JSON_RPC_SERVER_ERROR = 4466;

function driverUrl(url, database) {
  const clean = new URL(url);
  for (const name of PRISMA_ONLY_PARAMETERS) clean.searchParams.delete(name);
  if (database) clean.pathname = `/${database}`;
  return clean.href;
}

async function withClient(url, database, work) {
  const client = new pg.Client({ connectionString: driverUrl(url, database), connectionTimeoutMillis: 5000 });
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end();
  }
}

const databaseOf = (url) => decodeURIComponent(new URL(url).pathname.slice(1));
const quoted = (name) => `"${name.replaceAll('"', '""')}"`;
const createDatabase = (url, name) => withClient(url, 'postgres', (client) => client.query(`CREATE DATABASE ${quoted(name)}`));
const dropDatabase = (url, name) => withClient(url, 'postgres', (client) => client.query(`DROP DATABASE ${quoted(name)} WITH (FORCE)`));

/** The adapter of @prisma/adapter-pg with two gaps closed that only migrations meet. */
async function connect(url, schema) {
  const adapter = await new PrismaPg({ connectionString: driverUrl(url), max: 1 }, { schema }).connect();
  // The adapter splits scripts at every ';', which breaks function bodies between $$.
  adapter.executeScript = async (sql) => {
    try {
      await adapter.underlyingDriver().query(sql);
    } catch (error) {
      adapter.onError(error);
    }
  };
  readCharColumns(adapter);
  return adapter;
}

/** The adapter does not know the catalogue's type "char": such columns are read as text, and told to the engine as characters. */
function readCharColumns(adapter) {
  const performIO = adapter.performIO.bind(adapter);
  const queryRaw = adapter.queryRaw.bind(adapter);
  let charColumns = [];
  adapter.performIO = async (query) => {
    const result = await performIO(query);
    charColumns = [];
    result.fields?.forEach((field, index) => {
      if (field.dataTypeID !== OID_CHAR) return;
      field.dataTypeID = OID_TEXT;
      charColumns.push(index);
    });
    return result;
  };
  adapter.queryRaw = async (query) => {
    const result = await queryRaw(query);
    for (const index of charColumns) result.columnTypes[index] = ColumnTypeEnum.Character;
    return result;
  };
}

/** Hands the engine its connections: to the database, and to a throw-away one in which it replays the history. */
class AdapterFactory {
  provider = 'postgres';
  adapterName = '@prisma/adapter-pg';

  constructor(datasource) {
    this.datasource = datasource;
    this.schema = new URL(datasource.url).searchParams.get('schema') ?? undefined;
  }

  connect() {
    return connect(this.datasource.url, this.schema);
  }

  async connectToShadowDb() {
    const { url, shadowDatabaseUrl } = this.datasource;
    if (shadowDatabaseUrl) return connect(shadowDatabaseUrl, this.schema);
    const name = `prisma_migrate_shadow_db_${randomUUID()}`;
    await createDatabase(url, name);
    const shadow = await connect(driverUrl(url, name), this.schema);
    const dispose = shadow.dispose.bind(shadow);
    shadow.dispose = async () => {
      await dispose();
      await dropDatabase(url, name);
    };
    return shadow;
  }
}

/** `schema-engine cli …`: one question about the database, answered by the exit code. */
async function answerCli(command, datasource) {
  const name = databaseOf(datasource.url);
  const commands = {
    'can-connect-to-database': () => withClient(datasource.url, undefined, (client) => client.query('SELECT 1')),
    'create-database': () => createDatabase(datasource.url, name),
    'drop-database': () => dropDatabase(datasource.url, name),
  };
  try {
    if (!commands[command]) throw new Error(`schema-engine: unknown command "${command}"; known: ${Object.keys(commands).join(', ')}.`);
    await commands[command]();
    return 0;
  } catch (error) {
    const [error_code, words] = CONNECTION_ERRORS[error.code] ?? ['P1010', ''];
    const line = { level: 'ERROR', target: 'schema_engine::logger', fields: { message: `${words} ${error.message}`.trim(), error_code } };
    process.stderr.write(`\n${JSON.stringify(line)}`);
    return 1;
  }
}

async function loadEngine() {
  const glue = new URL(import.meta.resolve('@prisma/schema-engine-wasm/schema_engine_bg'));
  const bytes = readFileSync(new URL('./schema_engine_bg.wasm', glue));
  const { instance } = await WebAssembly.instantiate(bytes, { './schema_engine_bg.js': wasm });
  wasm.__wbg_set_wasm(instance.exports);
  instance.exports.__wbindgen_start?.();
}

const send = (message) => process.stdout.write(`${JSON.stringify({ jsonrpc: '2.0', ...message })}\n`);

/** The methods of the engine, with those that differ between the native one and this one put right. */
function makeMethods(datasource, datamodels) {
  let engine;
  const call = async (method, params) => {
    engine ??= await wasm.SchemaEngine.new({ datamodels }, () => {}, bindMigrationAwareSqlAdapterFactory(new AdapterFactory(datasource)));
    return engine[method](params);
  };
  // These replay the history but are never given the throw-away database; devDiagnostic is, and keeps the result for them.
  const afterReplay = (method) => async (params) => {
    await call('devDiagnostic', { migrationsList: params.migrationsList, filters: params.filters });
    return call(method, params);
  };
  return {
    call,
    createDatabase: async () => {
      const databaseName = databaseOf(datasource.url);
      await createDatabase(datasource.url, databaseName);
      return { databaseName };
    },
    getDatabaseVersion: (params) => call('version', params),
    evaluateDataLoss: afterReplay('evaluateDataLoss'),
    createMigration: afterReplay('createMigration'),
    diff: async (params) => {
      const { stdout, exitCode } = await call('diff', params);
      if (stdout) send({ id: 0, method: 'print', params: { content: stdout } });
      return { exitCode, stdout: null };
    },
  };
}

async function answer({ id, method, params }, methods) {
  try {
    const result = method !== 'call' && methods[method] ? await methods[method](params) : await methods.call(method, params);
    send({ id, result: result ?? {} });
  } catch (error) {
    const message = error.message ?? String(error);
    send({
      id,
      error: { code: JSON_RPC_SERVER_ERROR, message, data: { is_panic: false, message, error_code: error.code, meta: error.meta } },
    });
  }
}

async function main() {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      datasource: { type: 'string' },
      datamodels: { type: 'string', multiple: true, short: 'd' },
      'enabled-preview-features': { type: 'string' },
      'extension-types': { type: 'string' },
      version: { type: 'boolean', short: 'V' },
    },
  });
  await loadEngine();
  if (values.version) {
    console.log(`schema-engine-cli ${wasm.version()}`);
    return;
  }
  const datasource = values.datasource && JSON.parse(values.datasource);
  if (positionals[0] === 'cli') process.exit(await answerCli(positionals[1], datasource));

  const methods = makeMethods(
    datasource,
    values.datamodels?.map((path) => [path, readFileSync(path, 'utf8')]),
  );
  let queue = Promise.resolve();
  const lines = createInterface({ input: process.stdin });
  lines.on('line', (line) => {
    const message = JSON.parse(line);
    if (message.method) queue = queue.then(() => answer(message, methods));
  });
  lines.on('close', () => void queue.finally(() => process.exit(0)));
}

await main();
