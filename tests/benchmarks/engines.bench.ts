/**
 * The same figures on other versions of Node: fetches each from npm and has it recompute invented releases.
 * npm run bench -- engines [major versions, 20 22 24]
 */
import { execFileSync } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { arch, platform, tmpdir } from 'node:os';
import { join } from 'node:path';
import { inventInputs } from '../support/invent-inputs.js';
import { runVerify, SURROUNDINGS } from '../support/run-verify.js';
import { writeRelease } from '../support/write-release.js';

const EDITIONS = 20;
const wanted = process.argv.slice(2).length > 0 ? process.argv.slice(2) : ['20', '22', '24'];
const folder = await mkdtemp(join(tmpdir(), 'fairpull-engines-'));
try {
  const releases = join(folder, 'releases');
  for (let seed = 1; seed <= EDITIONS; seed += 1) await writeRelease(join(releases, String(seed)), inventInputs(seed));
  for (const major of wanted) {
    const home = join(folder, `node-${major}`);
    const name = `node-${platform()}-${arch()}`;
    execFileSync('npm', ['install', '--prefix', home, '--no-save', '--no-audit', '--no-fund', `${name}@${major}`], { stdio: 'ignore' });
    const node = join(home, 'node_modules', name, 'bin', 'node');
    const version = execFileSync(node, ['--version'], { encoding: 'utf8' }).trim();
    for (const surroundings of SURROUNDINGS) {
      const { output } = await runVerify(join(releases, '1/verify.mjs'), releases, surroundings, node);
      console.log(`${version}, ${surroundings.TZ}, ${surroundings.LC_ALL}: ${output.trim().split('\n').at(-1)}`);
    }
  }
} finally {
  await rm(folder, { recursive: true, force: true });
}
