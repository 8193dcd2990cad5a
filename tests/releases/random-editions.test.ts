/** Editions that nobody has looked at: what the application computes, the script inside a release computes as well, wherever it runs. `npm run bench -- random-editions` does it for a thousand. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inventInputs } from '../support/invent-inputs.js';
import { runVerify, SURROUNDINGS } from '../support/run-verify.js';
import { writeRelease } from '../support/write-release.js';

const EDITIONS = 6;
let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'fairpull-random-'));
  for (let seed = 1; seed <= EDITIONS; seed += 1) await writeRelease(join(folder, String(seed)), inventInputs(seed));
});
afterAll(() => rm(folder, { recursive: true }));

test.each(SURROUNDINGS)(
  'recomputed in $TZ with $LC_ALL',
  async (surroundings) => {
    const { code, output } = await runVerify(join(folder, '1/verify.mjs'), folder, surroundings);
    expect(output).toMatch(/figures recomputed, all equal/);
    expect(output.match(/revision 1/g)).toHaveLength(EDITIONS);
    expect(code).toBe(0);
  },
  60_000,
);
