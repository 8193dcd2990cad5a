import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** What the person who typed `npm start` wishes. */
export interface StartOptions {
  /** A PostgreSQL server of their own; undefined: the embedded one. */
  readonly databaseUrl: string | undefined;
  /** Address by which that server is migrated; undefined: by the same. */
  readonly ownerUrl: string | undefined;
  readonly dataFolder: string;
  readonly host: string;
  readonly port: number;
  /** True when PORT was given: then this port or none. */
  readonly isPortFixed: boolean;
  /** False with --empty. */
  readonly wantsDemo: boolean;
}

export const ROOT = fileURLToPath(new URL('../../..', import.meta.url));
const DEFAULT_PORT = 3000;
const LAST_PORT = 65_535;

/**
 * Reads the environment and the arguments after `npm start --`.
 * @throws Error naming an argument that is not known, or a PORT that is none
 */
export function readStartOptions(args: readonly string[], env: Readonly<Record<string, string | undefined>>): StartOptions {
  const unknown = args.find((arg) => arg !== '--empty');
  if (unknown !== undefined) throw new Error(`npm start does not know "${unknown}". It knows --empty: start without the demo.`);
  const port = Number(env['PORT'] || DEFAULT_PORT);
  if (!Number.isInteger(port) || port < 1 || port > LAST_PORT) {
    throw new Error(`PORT is "${String(env['PORT'])}"; expected a whole number from 1 to ${LAST_PORT}. Correct it or leave it unset.`);
  }
  return {
    databaseUrl: env['DATABASE_URL'] || undefined,
    ownerUrl: env['DATABASE_OWNER_URL'] || undefined,
    dataFolder: resolve(ROOT, env['DATA_FOLDER'] || '.data'),
    host: env['HOST'] || '127.0.0.1',
    port,
    isPortFixed: Boolean(env['PORT']),
    wantsDemo: !args.includes('--empty'),
  };
}
