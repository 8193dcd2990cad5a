import { createPublicKey, verify } from 'node:crypto';
import { sha256 } from '../../platform/identifiers/identifiers.js';
import { FORMAT_VERSION } from '../../contract/documents/release-documents.js';
import type { Manifest, ReleaseSignature } from '../../contract/documents/release-documents.js';
import { canonicalJson } from '../../reckoning/canonical-json.js';
import { computeRelease } from '../../reckoning/compute-release.js';
import { RETOLD } from '../../reckoning/documents/retold.js';
import { SENSITIVITY } from '../../reckoning/documents/sensitivity.js';
import type { Bundle } from '../../reckoning/documents/bundle.js';
import { ARCHIVE, archiveOf } from '../../reckoning/release-archive.js';
import { citationFiles } from '../../reckoning/citation/citation-files.js';
import { countFigures, differencesOf } from './differences.js';
import type { Difference } from './differences.js';

/** A release to verify: a folder or an address. */
export interface ReleaseSource {
  readonly name: string;
  /** Bytes of a file; null when there is none. */
  readonly read: (path: string) => Promise<Uint8Array | null>;
  /** Paths of all files there are; null where they cannot be listed. */
  readonly list: () => Promise<string[] | null>;
}

export interface Verdict {
  readonly name: string;
  readonly edition: string;
  readonly revision: number;
  /** SHA-256 of the manifest. */
  readonly digest: string;
  readonly previousDigest: string | null;
  /** SHA-256 of the public key, hex. */
  readonly keyFingerprint: string | null;
  readonly files: number;
  /** Null of a format that this program does not compute: the one that lies in the release does. */
  readonly figures: number | null;
  readonly differences: readonly Difference[];
  /** What this program computes otherwise than the one that lies in the release, which is another; none where it is this one. */
  readonly otherwise: readonly Difference[];
}

/** Not computed from the inputs: the program that computes. */
export const SCRIPT = 'verify.mjs';
const SEALS = ['manifest.json', 'signature.json'];

/**
 * Checks every file against the manifest and the manifest against its signature, then computes the whole release again
 * from the inputs in its bundle and compares every byte.
 * @param program SHA-256 of the script that this program puts into releases: of a release with another script, what is computed otherwise
 * is told apart from what is wrong. Without it this is that script.
 * @throws Error when there is no manifest or no bundle to start from
 */
export async function verifyRelease(source: ReleaseSource, program?: string): Promise<Verdict> {
  const manifestText = await textOf(source, 'manifest.json');
  const manifest = parsed(source, 'manifest.json', manifestText) as Manifest;
  const texts = new Map<string, string>();
  const sealed = (await Promise.all(manifest.files.map((file) => againstManifest(source, file, texts)))).flat();
  const signature = await source.read('signature.json');
  const computed = recompute(source, manifest, texts);
  const isOwn = program === undefined || manifest.files.some(({ path, sha256: of }) => path === SCRIPT && of === program);
  return {
    name: source.name,
    edition: manifest.edition,
    revision: manifest.revision,
    digest: sha256(manifestText),
    previousDigest: manifest.previousDigest,
    keyFingerprint: signature && fingerprintOf(signature),
    files: manifest.files.length,
    figures: computed.figures,
    differences: [
      ...canonical('manifest.json', manifestText),
      ...(sealed.length > 0 ? sealed : archiveFaults(manifest, texts)),
      ...signatureFaults(signature, manifestText),
      ...(await unlisted(source, manifest)),
      ...(isOwn ? computed.differences : []),
    ],
    otherwise: isOwn ? [] : computed.differences,
  };
}

async function textOf(source: ReleaseSource, path: string): Promise<string> {
  const bytes = await source.read(path);
  if (!bytes) throw new Error(`${source.name} has no ${path}; expected the folder or address of a release.`);
  return new TextDecoder().decode(bytes);
}

function parsed(source: ReleaseSource, path: string, text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw new Error(`${path} of ${source.name} is not JSON; it is damaged. Fetch the release again.`);
  }
}

const canonical = (file: string, text: string): Difference[] => differencesOf(file, text, canonicalJson(JSON.parse(text)));

async function againstManifest(source: ReleaseSource, file: Manifest['files'][number], texts: Map<string, string>): Promise<Difference[]> {
  const bytes = await source.read(file.path);
  // Whoever unpacked the archive has all that is in it.
  if (!bytes && file.path === ARCHIVE) return [];
  if (!bytes) return [{ file: file.path, where: '', found: 'no such file', expected: 'the file that the manifest lists' }];
  texts.set(file.path, new TextDecoder().decode(bytes));
  const found = `${bytes.length} bytes, SHA-256 ${sha256(bytes)}`;
  const expected = `${file.sizeBytes} bytes, SHA-256 ${file.sha256}`;
  return found === expected ? [] : [{ file: file.path, where: '', found, expected }];
}

/** A file that nobody signed for is not part of the release. */
async function unlisted(source: ReleaseSource, { files }: Manifest): Promise<Difference[]> {
  const known = new Set([...files.map(({ path }) => path), ...SEALS]);
  const paths = (await source.list()) ?? [];
  return paths
    .filter((path) => !known.has(path))
    .map((file) => ({ file, where: '', found: 'a file that the manifest does not list', expected: 'no such file' }));
}

function signatureFaults(bytes: Uint8Array | null, manifestText: string): Difference[] {
  const fault = (found: string): Difference[] => [
    { file: 'signature.json', where: '', found, expected: 'the publisher’s signature of manifest.json' },
  ];
  if (!bytes) return fault('no such file');
  try {
    const { publicKey, signature, ...rest } = JSON.parse(new TextDecoder().decode(bytes)) as ReleaseSignature;
    if (canonicalJson({ publicKey, signature, ...rest }) !== new TextDecoder().decode(bytes))
      return fault('another form than the canonical one');
    if (canonicalJson(rest) !== canonicalJson({ formatVersion: 1, algorithm: 'Ed25519', signed: 'manifest.json' }))
      return fault('another kind of signature');
    const key = createPublicKey({ key: Buffer.from(publicKey, 'base64'), format: 'der', type: 'spki' });
    const isCanonical = [publicKey, signature].every((text) => Buffer.from(text, 'base64').toString('base64') === text);
    return isCanonical && verify(null, Buffer.from(manifestText), key, Buffer.from(signature, 'base64'))
      ? []
      : fault('a signature that does not fit');
  } catch {
    return fault('what is not a signature');
  }
}

/** What is in the archive is what lies beside it, byte for byte. */
function archiveFaults({ files }: Manifest, texts: ReadonlyMap<string, string>): Difference[] {
  const found = files.find(({ path }) => path === ARCHIVE)?.sha256;
  if (found === undefined) return [];
  const inside = files.filter(({ path }) => path !== ARCHIVE).map(({ path }) => ({ path, mediaType: '', content: texts.get(path) ?? '' }));
  const expected = sha256(archiveOf(inside).content);
  return found === expected ? [] : [{ file: ARCHIVE, where: '', found: `SHA-256 ${found}`, expected: `SHA-256 ${expected}` }];
}

function fingerprintOf(bytes: Uint8Array): string | null {
  try {
    return sha256(Buffer.from((JSON.parse(new TextDecoder().decode(bytes)) as ReleaseSignature).publicKey, 'base64'));
  } catch {
    return null;
  }
}

function recompute(source: ReleaseSource, manifest: Manifest, texts: ReadonlyMap<string, string>) {
  const bundle = texts.get('bundle.json');
  if (bundle === undefined) throw new Error(`${source.name} has no bundle.json; there is nothing to compute from.`);
  const { formatVersion, inputs } = parsed(source, 'bundle.json', bundle) as Pick<Bundle, 'inputs'> & { readonly formatVersion: number };
  if (formatVersion !== FORMAT_VERSION) return { figures: null, differences: [] };
  const listed = new Set(manifest.files.map(({ path }) => path));
  const release = computeRelease(inputs);
  const citations = citationFiles(inputs, release);
  // Releases of before there were such files have none, and lack nothing.
  const later = new Set([RETOLD, ...citations.map(({ path }) => path)]);
  const isLater = (path: string): boolean => later.has(path) || path.endsWith(`/${SENSITIVITY}`);
  const computed = [...release, ...citations].filter(({ path }) => listed.has(path) || !isLater(path));
  const paths = new Set([...computed.map(({ path }) => path), SCRIPT, ARCHIVE]);
  const differences = computed.flatMap(({ path, content }) => differencesOf(path, texts.get(path) ?? '', content));
  const extra = manifest.files
    .filter(({ path }) => !paths.has(path))
    .map(({ path }) => ({ file: path, where: '', found: 'a file that nothing computes', expected: 'no such file' }));
  const headings = [
    ['edition', manifest.edition, inputs.evidence.edition.slug],
    ['revision', manifest.revision, inputs.revision],
    ['publishedAt', manifest.publishedAt, inputs.publishedAt],
    ['softwareVersion', manifest.softwareVersion, inputs.softwareVersion],
    ['previousDigest', manifest.previousDigest, inputs.previousDigest],
  ] as const;
  const headed = headings
    .filter(([, found, expected]) => found !== expected)
    .map(([name, found, expected]) => ({ file: 'manifest.json', where: `/${name}`, found: String(found), expected: String(expected) }));
  const documents = computed.filter(({ path }) => path.startsWith('documents/'));
  return {
    figures: documents.reduce((sum, { content }) => sum + countFigures(JSON.parse(content)), 0),
    differences: [...differences, ...extra, ...headed],
  };
}
