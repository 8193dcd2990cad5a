import { generateKeyPairSync, sign } from 'node:crypto';
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { canonicalJson } from '../../api/reckoning/canonical-json.js';
import { ARCHIVE } from '../../api/reckoning/release-archive.js';
import { manifestOf } from '../../api/reckoning/release-files.js';
import { archiveOf } from './archive-of.js';
import { listed } from './listed.js';

/** Changes files of a copy, then seals and signs it with a key of one's own. */
export async function sealAnew(
  copy: string,
  change: (read: (path: string) => Promise<string>) => Promise<Map<string, string>>,
): Promise<void> {
  const read = (path: string) => readFile(join(copy, path), 'utf8');
  const { files, formatVersion: _, ...heading } = JSON.parse(await read('manifest.json'));
  const changed = await change(read);
  const all = [];
  for (const { path, mediaType } of files) {
    if (path === ARCHIVE) continue;
    const content = changed.get(path) ?? (await read(path));
    await writeFile(join(copy, path), content);
    all.push({ path, mediaType, content });
  }
  const archive = archiveOf(all);
  await writeFile(join(copy, ARCHIVE), archive.content);
  const text = canonicalJson(manifestOf([...all, archive].map(listed), heading));
  const { publicKey, privateKey } = generateKeyPairSync('ed25519');
  await writeFile(join(copy, 'manifest.json'), text);
  const signature = {
    formatVersion: 1,
    algorithm: 'Ed25519',
    signed: 'manifest.json',
    publicKey: publicKey.export({ type: 'spki', format: 'der' }).toString('base64'),
    signature: sign(null, Buffer.from(text), privateKey).toString('base64'),
  };
  await writeFile(join(copy, 'signature.json'), canonicalJson(signature));
}
