/** `npm run new-signing-key -- "<why>"`: the signing key is lost for good; a new one signs from now on, and the audit trail says why. */
import { inProgram } from './in-program.js';
import { ReleasesModule } from './releases/releases.module.js';
import { ReplaceSigningKey } from './releases/signing/replace-signing-key.js';

const LEAST_REASON = 8;

await inProgram(async (program) => {
  const reason = process.argv.slice(2).join(' ').trim();
  if (reason.length < LEAST_REASON)
    throw new Error('Say why, in a sentence: npm run new-signing-key -- "The disk broke; no copy was kept."');
  const fingerprint = await program.select(ReleasesModule).get(ReplaceSigningKey).run(reason);
  console.log(`From now on the key ${fingerprint} signs. Tell your readers, and keep a copy of keys/ in the data folder.`);
});
