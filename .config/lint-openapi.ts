/** `npm run openapi:lint`: makes the OpenAPI document as the program serves it, and holds it against .config/redocly.yaml. */
import { spawnSync } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readConfig } from '../api/config.js';
import { createApp } from '../api/create-app.js';
import { describeApi } from '../api/openapi/describe-api.js';

const ROOT = fileURLToPath(new URL('..', import.meta.url));

/** The document needs no database: connections are made when they are first used. */
async function writeDocument(folder: string): Promise<string> {
  const config = readConfig({
    DATABASE_URL: 'postgresql://127.0.0.1/none',
    DATA_FOLDER: folder,
    PUBLIC_URL: 'https://trials.example',
    LOG_LEVEL: 'error',
  });
  const app = await createApp({ config });
  const file = join(folder, 'openapi.json');
  await writeFile(file, JSON.stringify(describeApi(app, config), null, 2));
  await app.close();
  return file;
}

const folder = await mkdtemp(join(tmpdir(), 'fairpull-openapi-'));
try {
  const file = await writeDocument(folder);
  const linter = join(ROOT, 'node_modules', '@redocly', 'cli', 'bin', 'cli.js');
  const env = { ...process.env, NODE_OPTIONS: '', REDOCLY_TELEMETRY: 'off', REDOCLY_SUPPRESS_UPDATE_NOTICE: 'true' };
  const { status } = spawnSync(process.execPath, [linter, 'lint', file, '--config', join(ROOT, '.config', 'redocly.yaml')], {
    env,
    stdio: 'inherit',
  });
  process.exitCode = status ?? 1;
} finally {
  await rm(folder, { recursive: true });
}
