// Jest loads this file without its own module mapping, so it is plain JavaScript that brings the TypeScript loader along.
import '../../.config/load-typescript.mjs';

/** Before all tests: one PostgreSQL server for the whole run. */
export default async function globalSetup() {
  const { startTestServer } = await import('./test-server.ts');
  globalThis.testServer = await startTestServer();
  process.env.TEST_SERVER_URL = globalThis.testServer.url;
}
