/**
 * `npm run verify -- <folder or address>`: recomputes releases of any age and says what differs.
 * Ends with 0 when all is equal, 1 when anything differs, 2 when there is nothing to verify.
 */
import { verifyAny } from './verify-any.js';
import { reportOn, saying } from './verify-report.js';

const [place = '.'] = process.argv.slice(2);
process.exitCode = await saying(() => reportOn(place, verifyAny));
