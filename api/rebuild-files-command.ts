/** `npm run rebuild-files`: makes lost or changed files of releases again, from the record and from what is left of them. */
import { inProgram } from './in-program.js';
import { RebuildFiles } from './releases/publication/rebuild-files.js';
import { ReleasesModule } from './releases/releases.module.js';

await inProgram(async (program) => {
  const done = await program.select(ReleasesModule).get(RebuildFiles).run();
  for (const { release, rebuilt, lost } of done) {
    console.log(`${release}: ${rebuilt.length} files made again, as they were signed.`);
    for (const path of lost) console.log(`  lost: ${path}. Take it from a backup.`);
  }
  if (done.length === 0) console.log('No file of any release is lost.');
  process.exitCode = done.some(({ lost }) => lost.length > 0) ? 1 : 0;
});
