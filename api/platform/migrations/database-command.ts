/**
 * `npm run db:migrate | db:status | db:diff | db:new-migration -- <name>`: the database commands of contributors,
 * on DATABASE_URL or else on the embedded server of this checkout.
 */
import { spawn } from 'node:child_process';
import { copyFile, mkdir, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { startEmbeddedPostgres } from '../embedded-postgres/start-embedded-postgres.js';
import { applyMigrations, MIGRATIONS_FOLDER } from './apply-migrations.js';

const ROOT = fileURLToPath(new URL('../../..', import.meta.url));
const FROM_HISTORY_TO_SCHEMA = ['migrate', 'diff', '--from-migrations', 'prisma/migrations', '--to-schema', 'prisma', '--script'];
/** Exit code of `migrate diff --exit-code` when there is a difference. */
const DIFFERS = 2;

async function main([command, name]: readonly string[]): Promise<number> {
  const given = process.env['DATABASE_URL'];
  const server = given === undefined ? await startEmbeddedPostgres(process.env['DATA_FOLDER'] ?? join(ROOT, '.data')) : undefined;
  try {
    return await runCommand(command, name, given ?? server?.url ?? '');
  } finally {
    await server?.stop();
  }
}

async function runCommand(command: string | undefined, name: string | undefined, databaseUrl: string): Promise<number> {
  switch (command) {
    case 'migrate': {
      const applied = await applyMigrations(databaseUrl);
      console.log(applied.length === 0 ? 'The database is up to date.' : `Applied: ${applied.join(', ')}`);
      return 0;
    }
    case 'status':
      return runPrisma(['migrate', 'status'], databaseUrl);
    case 'diff':
      return runPrisma(FROM_HISTORY_TO_SCHEMA, databaseUrl);
    case 'new-migration':
      return writeMigration(name, databaseUrl);
    default:
      console.error(`Unknown command "${command ?? ''}"; known: migrate, status, diff, new-migration <name>.`);
      return 1;
  }
}

async function writeMigration(name: string | undefined, databaseUrl: string): Promise<number> {
  if (name === undefined || !/^[a-z0-9_]+$/.test(name)) {
    console.error(
      `A migration's name is small letters, digits and _, e.g. npm run db:new-migration -- add_spool_length. Found: "${name ?? ''}".`,
    );
    return 1;
  }
  // Written elsewhere first: the comparison refuses a history with a folder that has no migration.sql.
  const draft = join(await mkdtemp(join(tmpdir(), 'fairpull-migration-')), 'migration.sql');
  const exitCode = await runPrisma([...FROM_HISTORY_TO_SCHEMA, '--exit-code', '-o', draft], databaseUrl);
  if (exitCode !== 0 && exitCode !== DIFFERS) return exitCode;
  const folder = join(MIGRATIONS_FOLDER, `${new Date().toISOString().replace(/\D/g, '').slice(0, 14)}_${name}`);
  await mkdir(folder);
  await copyFile(draft, join(folder, 'migration.sql'));
  await rm(dirname(draft), { recursive: true });
  console.log(`Wrote ${join(folder, 'migration.sql')}. Read it before you commit it.`);
  if (exitCode === 0)
    console.log('The schema says nothing new; the file is empty. Write the SQL of triggers and constraints there by hand.');
  return 0;
}

function runPrisma(args: readonly string[], databaseUrl: string): Promise<number> {
  const program = join(ROOT, 'node_modules', 'prisma', 'build', 'index.js');
  const child = spawn(process.execPath, [program, ...args, '--config', join(ROOT, '.config', 'prisma.ts')], {
    cwd: ROOT,
    stdio: 'inherit',
    env: {
      ...process.env,
      DATABASE_URL: databaseUrl,
      PRISMA_SCHEMA_ENGINE_BINARY: join(ROOT, '.config', 'schema-engine.mjs'),
      CHECKPOINT_DISABLE: '1',
    },
  });
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('exit', (exitCode) => {
      resolve(exitCode ?? 1);
    });
  });
}

process.exitCode = await main(process.argv.slice(2));
