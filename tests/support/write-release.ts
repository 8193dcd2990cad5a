import { generateKeyPairSync, sign } from 'node:crypto';
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { canonicalJson } from '../../api/reckoning/canonical-json.js';
import { sealedFiles } from '../../api/reckoning/sealed-files.js';
import { manifestOf, whole } from '../../api/reckoning/release-files.js';
import type { ReleaseInputs } from '../../api/reckoning/release-inputs.js';
import { verifyScript } from '../../api/releases/verify/verify-script.js';
import { archiveOf } from './archive-of.js';
import { listed } from './listed.js';

const { publicKey, privateKey } = generateKeyPairSync('ed25519');

/** Writes the folder of a release as the program publishes it, signed with a key of the test; answers the text of its manifest. */
export async function writeRelease(folder: string, inputs: ReleaseInputs): Promise<string> {
  const inside = [...sealedFiles(inputs, await verifyScript())].map(whole);
  const files = [...inside, archiveOf(inside)];
  const { revision, publishedAt, softwareVersion, previousDigest } = inputs;
  const manifest = canonicalJson(
    manifestOf(files.map(listed), { edition: inputs.evidence.edition.slug, revision, publishedAt, softwareVersion, previousDigest }),
  );
  const signature = canonicalJson({
    formatVersion: 1,
    algorithm: 'Ed25519',
    signed: 'manifest.json',
    publicKey: publicKey.export({ type: 'spki', format: 'der' }).toString('base64'),
    signature: sign(null, Buffer.from(manifest), privateKey).toString('base64'),
  });
  for (const { path, content } of [
    ...files,
    { path: 'manifest.json', content: manifest },
    { path: 'signature.json', content: signature },
  ]) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), content);
  }
  return manifest;
}
