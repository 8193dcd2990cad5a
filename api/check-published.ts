/** `npm run check-published`: looks at everything that is published by the standing checks; ends with 1 when one finds a fault. */
import { inProgram } from './in-program.js';
import { ReleasesModule } from './releases/releases.module.js';
import { RunStandingChecks } from './releases/standing-checks/run-standing-checks.js';

await inProgram(async (program) => {
  const faults = await program.select(ReleasesModule).get(RunStandingChecks).run();
  for (const { check, where, words } of faults) process.stdout.write(`${where}: ${words} (${check})\n`);
  process.stdout.write(faults.length === 0 ? 'Everything that is published stands.\n' : `${faults.length} faults.\n`);
  process.exitCode = faults.length === 0 ? 0 : 1;
});
