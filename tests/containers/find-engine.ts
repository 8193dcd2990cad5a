import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const PROGRAM = fileURLToPath(new URL('./engine.sh', import.meta.url));
/** What engine.sh ends with where it can bring none up. */
const SKIPPED = 3;

/** Variables that reach a container engine; null, with the reason said, where none can be had. */
export function findEngine(scratch: string): Record<string, string> | null {
  const found = spawnSync(PROGRAM, [scratch], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
  if (found.status === SKIPPED) {
    console.log(`SKIPPED: the containers were not checked; ${found.stderr.trim()}.`);
    return null;
  }
  if (found.status !== 0) throw new Error(`engine.sh ended with ${String(found.status)}: ${found.stderr}`);
  const pairs = found.stdout.split('\n').flatMap((line) => {
    const [, name, value] = /^(\w+)=(.*)$/.exec(line) ?? [];
    return name === undefined || value === undefined ? [] : [[name, value] as const];
  });
  return Object.fromEntries(pairs);
}
