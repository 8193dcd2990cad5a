// Jest loads this file without its own module mapping, so it is plain JavaScript that brings the TypeScript loader along.
import '../../.config/load-typescript.mjs';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Before all tests: one PostgreSQL server for the whole run, and a folder for what its files share. */
export default async function globalSetup() {
  const { startTestServer } = await import('./test-server.ts');
  globalThis.testServer = await startTestServer();
  process.env.TEST_SERVER_URL = globalThis.testServer.url;
  process.env.TEST_RUN_FOLDER = await mkdtemp(join(tmpdir(), 'fairpull-run-'));
}
