import { rm } from 'node:fs/promises';

/** After all tests: the server, its data and what the files shared go. */
export default async function globalTeardown() {
  await globalThis.testServer?.stop();
  await rm(process.env.TEST_RUN_FOLDER, { recursive: true, force: true });
}
