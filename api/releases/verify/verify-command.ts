/**
 * `npm run verify -- <folder or address>`, and verify.mjs inside each release: recomputes releases and says what differs.
 * Ends with 0 when all is equal, 1 when anything differs, 2 when there is nothing to verify, or something that only the program inside
 * it can compute again.
 */
import './node-20.js';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { releasesAt } from './release-source.js';
import { chainFaults } from './verify-chain.js';
import { verifyRelease } from './verify-release.js';
import type { Difference } from './differences.js';

const MOST_SHOWN = 50;

const show = ({ file, where, found, expected }: Difference): string =>
  `  ${file}${where === '' ? '' : ` ${where}`}: found ${found}; expected ${expected}`;

const say = (line: string): boolean => process.stdout.write(`${line}\n`);

async function run(place: string): Promise<number> {
  const verdicts = [];
  for (const source of await releasesAt(place)) {
    const verdict = await verifyRelease(source);
    verdicts.push(verdict);
    say(`${verdict.edition}, revision ${verdict.revision} (${verdict.name})`);
    say(`  digest ${verdict.digest}`);
    say(`  signed by the key ${verdict.keyFingerprint ?? 'of nobody'}`);
    if (verdict.figures === null)
      say('  NOT recomputed: it is of another format than this program computes. Run the verify.mjs that lies in it.');
  }
  const differences = [...verdicts.flatMap((verdict) => verdict.differences), ...chainFaults(verdicts)];
  const figures = verdicts.reduce((sum, verdict) => sum + (verdict.figures ?? 0), 0);
  const files = verdicts.reduce((sum, verdict) => sum + verdict.files, 0);
  if (differences.length === 0) {
    say(`${figures} figures recomputed, all equal; ${files} files, every one as signed.`);
    return verdicts.some((verdict) => verdict.figures === null) ? 2 : 0;
  }
  say(`${figures} figures recomputed; ${differences.length} differences:`);
  for (const difference of differences.slice(0, MOST_SHOWN)) say(show(difference));
  if (differences.length > MOST_SHOWN) say(`  … and ${differences.length - MOST_SHOWN} more`);
  return 1;
}

const ownFolder = dirname(fileURLToPath(import.meta.url));
const [place = ownFolder] = process.argv.slice(2);
process.exitCode = await run(place).catch((error: unknown) => {
  say(error instanceof Error ? error.message : String(error));
  return 2;
});
