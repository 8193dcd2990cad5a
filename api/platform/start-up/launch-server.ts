import { findFreePort } from '../embedded-postgres/free-port.js';
import type { ClosingList } from './closing-list.js';
import { startProgram } from './program.js';
import type { Program } from './program.js';
import { SERVER_OPTIONS } from './server-options.js';
import type { StartOptions } from './start-options.js';
import { waitUntilReady } from './wait-until-ready.js';

/** Another start may take the free port between our look and the server's start. */
const ATTEMPTS = 3;

/** A server that answers. */
export interface RunningServer {
  readonly program: Program;
  /** Without a slash at the end. */
  readonly url: string;
}

/**
 * Starts api/main.ts and waits until it is ready: on PORT when that was given, else on the first free port from 3000 upwards.
 * @throws Error when PORT is taken, or when the server ends before it is ready
 */
export async function launchServer(
  options: StartOptions,
  env: Readonly<Record<string, string>>,
  closing: ClosingList,
): Promise<RunningServer> {
  for (let attempt = 1, from = options.port; attempt <= ATTEMPTS; attempt += 1) {
    const port = await findFreePort(from);
    if (options.isPortFixed && port !== options.port) {
      throw new Error(`PORT ${options.port} is taken by another program. Stop that one, name another port, or leave PORT unset.`);
    }
    const url = `http://127.0.0.1:${port}`;
    const settings = { ...withAddresses(env, url), PORT: String(port), HOST: options.host };
    const program = startProgram(closing, 'The server', 'api/main.ts', settings, SERVER_OPTIONS);
    if (await waitUntilReady(program, url)) return { program, url };
    from = port + 1;
    const wasTaken = (await findFreePort(port)) !== port;
    if (!wasTaken) break;
  }
  throw new Error('The server ended before it was ready; its own words stand above.');
}

/** The address by which readers know the server; one that was given stays. */
export function withAddresses(env: Readonly<Record<string, string>>, url: string): Record<string, string> {
  return { ...env, PUBLIC_URL: process.env['PUBLIC_URL'] || url };
}
