import { generateKeyPairSync, randomUUID } from 'node:crypto';
import { existsSync } from 'node:fs';
import { link, mkdir, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';

/** Place of the private key in the data folder that what is published is signed with (Ed25519, PKCS #8, PEM). */
export const SIGNING_KEY_FILE = 'keys/signing-key.pem';

/** Makes the signing key when there is none yet; an existing one is never replaced. */
export async function ensureSigningKey(dataFolder: string): Promise<void> {
  const file = join(dataFolder, SIGNING_KEY_FILE);
  if (existsSync(file)) return;
  await mkdir(dirname(file), { recursive: true });
  const { privateKey } = generateKeyPairSync('ed25519');
  const draft = `${file}.${randomUUID()}`;
  await writeFile(draft, privateKey.export({ type: 'pkcs8', format: 'pem' }), { mode: 0o600 });
  // A link, unlike a rename, fails when another start was quicker: its key stays.
  await link(draft, file).catch((error: unknown) => {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
  });
  await rm(draft);
}
