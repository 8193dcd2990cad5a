/**
 * Changes one byte of a release, or one link of a chain, at random, and asks the verification.
 * npm run bench -- tampering [how many, 1000]
 */
import { cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sha256 } from '../../api/platform/identifiers/identifiers.js';
import { releasesAt } from '../../api/releases/verify/release-source.js';
import { chainFaults } from '../../api/releases/verify/verify-chain.js';
import { verifyRelease } from '../../api/releases/verify/verify-release.js';
import type { Verdict } from '../../api/releases/verify/verify-release.js';
import { inventInputs } from '../support/invent-inputs.js';
import { Draws } from '../support/invented/draws.js';
import { writeRelease } from '../support/write-release.js';

const count = Number(process.argv[2] ?? 1000);
const draws = new Draws(20_261_125);
const below = (limit: number): number => Math.floor(draws.uniform() * limit);
const folder = await mkdtemp(join(tmpdir(), 'fairpull-tampering-'));
const SMALL = { variants: 3, testers: 2, rigs: 2, specimens: 3 };

/** Verdicts of all releases of a folder; null where one cannot even be read. */
const verdicts = async (place: string): Promise<Verdict[] | null> => {
  const found = [];
  for (const source of await releasesAt(place)) {
    const verdict = await verifyRelease(source).catch(() => null);
    if (!verdict) return null;
    found.push(verdict);
  }
  return found;
};

try {
  const whole = join(folder, 'whole');
  const first = inventInputs(1, SMALL);
  const digest = sha256(await writeRelease(join(whole, '1'), first));
  await writeRelease(join(whole, '2'), { ...first, revision: 2, previousDigest: digest });
  const files = (await readdir(whole, { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name));
  let [bytes, links, unseen] = [0, 0, 0];
  const copy = join(folder, 'copy');
  await cp(whole, copy, { recursive: true });
  for (let i = 0; i < count; i += 1) {
    if (i % 10 === 0) {
      // The first release computed, sealed and signed anew with one reading changed: sound by itself, but not the one that the second names.
      const changed = structuredClone(first) as typeof first & { publishedAt: string };
      changed.publishedAt = new Date(Date.parse(first.publishedAt) + 1000 * (1 + below(1e6))).toISOString();
      await rm(join(copy, '1'), { recursive: true });
      await writeRelease(join(copy, '1'), changed);
      const found = await verdicts(copy);
      if (found && chainFaults(found).length === 0) unseen += 1;
      links += 1;
      await rm(join(copy, '1'), { recursive: true });
      await cp(join(whole, '1'), join(copy, '1'), { recursive: true });
      continue;
    }
    const original = files[below(files.length)] ?? '';
    const target = original.replace(whole, copy);
    const content = await readFile(original);
    const spoilt = Buffer.from(content);
    const at = below(content.length);
    spoilt[at] = ((spoilt[at] ?? 0) + 1 + below(255)) % 256;
    await writeFile(target, spoilt);
    const found = await verdicts(target.startsWith(join(copy, '1')) ? join(copy, '1') : join(copy, '2'));
    if (found?.every(({ differences }) => differences.length === 0)) unseen += 1;
    bytes += 1;
    await writeFile(target, content);
  }
  console.log(`${bytes} bytes and ${links} links changed, one at a time: ${unseen} were not seen.`);
} finally {
  await rm(folder, { recursive: true, force: true });
}
