/**
 * Invents editions and has each recomputed by the script inside its release, in three time zones and two languages.
 * npm run bench -- random-editions [how many, 1000]
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inventInputs } from '../support/invent-inputs.js';
import { runVerify, SURROUNDINGS } from '../support/run-verify.js';
import { writeRelease } from '../support/write-release.js';

const count = Number(process.argv[2] ?? 1000);
const folder = await mkdtemp(join(tmpdir(), 'fairpull-random-'));
try {
  const began = performance.now();
  for (let seed = 1; seed <= count; seed += 1) await writeRelease(join(folder, String(seed)), inventInputs(seed));
  console.log(`${count} editions computed and written by the application: ${((performance.now() - began) / 1000).toFixed(0)} s`);
  for (const surroundings of SURROUNDINGS) {
    const { output } = await runVerify(join(folder, '1/verify.mjs'), folder, surroundings);
    console.log(`${surroundings.TZ}, ${surroundings.LC_ALL}: ${output.trim().split('\n').at(-1)}`);
  }
} finally {
  await rm(folder, { recursive: true, force: true });
}
