/** `npm run openapi:lint`: makes the OpenAPI document as the program serves it, and holds it against .config/redocly.yaml and what generators of clients need. */
import { spawnSync } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describeAlone } from '../api/describe-alone.js';
import { gapsOf } from '../tests/support/description-gaps.js';

const ROOT = fileURLToPath(new URL('..', import.meta.url));

async function writeDocument(folder: string): Promise<{ file: string; gaps: number }> {
  const file = join(folder, 'openapi.json');
  const document = await describeAlone('https://trials.example');
  await writeFile(file, JSON.stringify(document, null, 2));
  return { file, gaps: countGaps(document) };
}

/** Prints how many gaps of each kind there are, and where. */
function countGaps(document: unknown): number {
  const kinds = Object.entries(gapsOf(document));
  for (const [kind, places] of kinds) process.stdout.write([`${places.length} ${kind}`, ...places].join('\n  ') + '\n');
  return kinds.reduce((sum, [, places]) => sum + places.length, 0);
}

const folder = await mkdtemp(join(tmpdir(), 'fairpull-openapi-'));
try {
  const { file, gaps } = await writeDocument(folder);
  const linter = join(ROOT, 'node_modules', '@redocly', 'cli', 'bin', 'cli.js');
  const env = { ...process.env, NODE_OPTIONS: '', REDOCLY_TELEMETRY: 'off', REDOCLY_SUPPRESS_UPDATE_NOTICE: 'true' };
  const { status } = spawnSync(process.execPath, [linter, 'lint', file, '--config', join(ROOT, '.config', 'redocly.yaml')], {
    env,
    stdio: 'inherit',
  });
  process.exitCode = gaps > 0 ? 1 : (status ?? 1);
} finally {
  await rm(folder, { recursive: true });
}
