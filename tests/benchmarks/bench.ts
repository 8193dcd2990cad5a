/** Runs a benchmark by its name: npm run bench -- ranking [sizes …] */
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { SERVER_OPTIONS } from '../../api/platform/start-up/server-options.js';

const HERE = fileURLToPath(new URL('.', import.meta.url));
const names = readdirSync(HERE).flatMap((file) => /^(.+)\.bench\.ts$/.exec(file)?.[1] ?? []);
/** In their own process. */
const HOLDS_THE_SERVER = ['hand-in'];
const [name = '', ...rest] = process.argv.slice(2);
if (names.includes(name)) {
  process.exitCode =
    spawnSync(
      process.execPath,
      [...(HOLDS_THE_SERVER.includes(name) ? SERVER_OPTIONS : []), ...process.execArgv, `${HERE}${name}.bench.ts`, ...rest],
      { stdio: 'inherit' },
    ).status ?? 1;
} else {
  console.error(`bench: found "${name}", expected one of: ${names.join(', ')}. Say npm run bench -- ${names[0] ?? 'name'}.`);
  process.exitCode = 1;
}
