/**
 * `npm run db:migrate | db:status | db:diff | db:new-migration -- <name>`: the database commands, on DATABASE_URL or else on the
 * embedded server of this checkout. All but `migrate` and `status` need the packages for development.
 */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { DatabasePlace } from '../embedded-postgres/with-database.js';
import { withDatabase } from '../embedded-postgres/with-database.js';
import { letProgramIn } from './grant-program.js';
import { applyMigrations, MIGRATIONS_FOLDER, pendingMigrations } from './apply-migrations.js';

async function runCommand(
  command: string | undefined,
  name: string | undefined,
  { databaseUrl, programUrl }: DatabasePlace,
): Promise<number> {
  switch (command) {
    case 'migrate': {
      const applied = await applyMigrations(databaseUrl);
      await letProgramIn(databaseUrl, programUrl);
      console.log(applied.length === 0 ? 'The database is up to date.' : `Applied: ${applied.join(', ')}`);
      return 0;
    }
    case 'status': {
      const pending = await pendingMigrations(databaseUrl);
      console.log(pending.length === 0 ? 'The database is up to date.' : `Not applied yet: ${pending.join(', ')}`);
      return pending.length === 0 ? 0 : 1;
    }
    case 'diff':
      process.stdout.write(await missingSql(databaseUrl));
      return 0;
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
  const sql = await missingSql(databaseUrl);
  const folder = join(MIGRATIONS_FOLDER, `${new Date().toISOString().replace(/\D/g, '').slice(0, 14)}_${name}`);
  await mkdir(folder);
  await writeFile(join(folder, 'migration.sql'), sql);
  console.log(`Wrote ${join(folder, 'migration.sql')}. Read it before you commit it.`);
  if (sql === '') console.log('The models say nothing new; the file is empty. Write the SQL of triggers and constraints there by hand.');
  return 0;
}

async function missingSql(databaseUrl: string): Promise<string> {
  const { sqlFromMigrationsToModels } = await import('../../../.config/models.js');
  return sqlFromMigrationsToModels(databaseUrl);
}

const [command, name] = process.argv.slice(2);
process.exitCode = await withDatabase(process.env, (place) => runCommand(command, name, place), { mayMake: true });
