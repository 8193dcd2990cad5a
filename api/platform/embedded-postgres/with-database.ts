import { fileURLToPath } from 'node:url';
import { join } from 'node:path';
import { startEmbeddedPostgres } from './start-embedded-postgres.js';

const ROOT = fileURLToPath(new URL('../../..', import.meta.url));

/** Where a command finds what the program keeps. */
export interface DatabasePlace {
  /** Address for the owner of the record. */
  readonly databaseUrl: string;
  /** Address for the program; the same where it has no role of its own. */
  readonly programUrl: string;
  readonly dataFolder: string;
}

/**
 * Runs a command on the database that DATABASE_URL names, else on the embedded server of DATA_FOLDER, which it starts or joins.
 * @throws Error when there is no such server, unless the command may make one
 */
export async function withDatabase<Answer>(
  env: NodeJS.ProcessEnv,
  work: (place: DatabasePlace) => Promise<Answer>,
  { mayMake = false } = {},
): Promise<Answer> {
  const dataFolder = env['DATA_FOLDER'] || join(ROOT, '.data');
  const given = env['DATABASE_URL'];
  if (given) return work({ databaseUrl: env['DATABASE_OWNER_URL'] || given, programUrl: given, dataFolder });
  const server = await startEmbeddedPostgres(dataFolder, { mayMake });
  try {
    return await work({ databaseUrl: server.url, programUrl: server.programUrl, dataFolder });
  } finally {
    await server.stop();
  }
}
