/**
 * verify.mjs inside each release: `node verify.mjs [folder or address]` recomputes releases and says what differs.
 * Ends with 0 when all is equal, 1 when anything differs, 2 when there is nothing to verify, or something that only the program inside
 * it can compute again.
 */
import './node-20.js';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { reportOn, saying } from './verify-report.js';
import { verifyRelease } from './verify-release.js';

const ownFolder = dirname(fileURLToPath(import.meta.url));
const [place = ownFolder] = process.argv.slice(2);
process.exitCode = await saying(() => reportOn(place, (source) => verifyRelease(source)));
