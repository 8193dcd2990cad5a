/**
 * `npm run openapi:lint [-- <document> [option of the linter …]]`: makes the OpenAPI document as the program serves it, or takes the one
 * that is named, and holds it against .config/redocly.yaml and what generators of clients need.
 */
import { spawnSync } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gapsOf } from '../tests/support/description-gaps.js';

const ROOT = fileURLToPath(new URL('..', import.meta.url));

async function writeDocument(folder: string): Promise<string> {
  // Loads the whole program, which a document that is named does not need.
  const { describeAlone } = await import('../api/describe-alone.js');
  const file = join(folder, 'openapi.json');
  await writeFile(file, JSON.stringify(await describeAlone('https://trials.example'), null, 2));
  return file;
}

/** Says how many gaps of each kind there are, and where, beside what the linter says. */
function countGaps(document: unknown): number {
  const kinds = Object.entries(gapsOf(document));
  for (const [kind, places] of kinds) process.stderr.write([`${places.length} ${kind}`, ...places].join('\n  ') + '\n');
  return kinds.reduce((sum, [, places]) => sum + places.length, 0);
}

const [named, ...options] = process.argv.slice(2);
const folder = await mkdtemp(join(tmpdir(), 'fairpull-openapi-'));
try {
  const file = named ?? (await writeDocument(folder));
  const gaps = countGaps(JSON.parse(await readFile(file, 'utf8')));
  const linter = join(ROOT, 'node_modules', '@redocly', 'cli', 'bin', 'cli.js');
  const env = { ...process.env, NODE_OPTIONS: '', REDOCLY_TELEMETRY: 'off', REDOCLY_SUPPRESS_UPDATE_NOTICE: 'true' };
  const rules = join(ROOT, '.config', 'redocly.yaml');
  const { status } = spawnSync(process.execPath, [linter, 'lint', file, '--config', rules, ...options], { env, stdio: 'inherit' });
  process.exitCode = gaps > 0 ? 1 : (status ?? 1);
} finally {
  await rm(folder, { recursive: true });
}
