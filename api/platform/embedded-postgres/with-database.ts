import { fileURLToPath } from 'node:url';
import { join } from 'node:path';
import { startEmbeddedPostgres } from './start-embedded-postgres.js';

const ROOT = fileURLToPath(new URL('../../..', import.meta.url));

/** Where a command finds what the program keeps. */
export interface Place {
  readonly databaseUrl: string;
  readonly dataFolder: string;
}

/** Runs a command on the database that DATABASE_URL names, else on the embedded server of DATA_FOLDER, which it starts or joins. */
export async function withDatabase<Answer>(env: NodeJS.ProcessEnv, work: (place: Place) => Promise<Answer>): Promise<Answer> {
  const dataFolder = env['DATA_FOLDER'] || join(ROOT, '.data');
  if (env['DATABASE_URL']) return work({ databaseUrl: env['DATABASE_URL'], dataFolder });
  const server = await startEmbeddedPostgres(dataFolder);
  try {
    return await work({ databaseUrl: server.url, dataFolder });
  } finally {
    await server.stop();
  }
}
