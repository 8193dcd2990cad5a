import { createHash } from 'node:crypto';
import { sha256 } from '../../platform/identifiers/identifiers.js';
import { FORMAT_VERSION } from '../../contract/documents/release-documents.js';
import type { Manifest } from '../../contract/documents/release-documents.js';
import { canonicalJson } from '../../reckoning/canonical-json.js';
import { RETOLD } from '../../reckoning/documents/retold.js';
import { SENSITIVITY } from '../../reckoning/documents/sensitivity.js';
import type { Bundle } from '../../reckoning/documents/bundle.js';
import type { ReleaseInputs } from '../../reckoning/release-inputs.js';
import { citationFiles } from '../../reckoning/citation/citation-files.js';
import { Archive, ARCHIVE } from '../../reckoning/release-archive.js';
import { whole } from '../../reckoning/release-files.js';
import { filesOf } from '../../reckoning/sealed-files.js';
import { countFigures, differencesOf } from './differences.js';
import type { Difference } from './differences.js';
import { fingerprintOf, signatureFaults } from './signature-faults.js';

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
  const manifestText = await textIn(source, 'manifest.json');
  if (manifestText === null) throw new Error(`${source.name} has no manifest.json; expected the folder or address of a release.`);
  const manifest = parsed(source, 'manifest.json', manifestText) as Manifest;
  const found = await againstManifest(source, manifest);
  const signature = await source.read('signature.json');
  const computed = await recompute(source, manifest, found.digests);
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
      ...found.differences,
      ...signatureFaults(signature, manifestText),
      ...(await unlisted(source, manifest)),
      ...(isOwn ? computed.differences : []),
    ],
    otherwise: isOwn ? [] : computed.differences,
  };
}

async function textIn(source: ReleaseSource, path: string): Promise<string | null> {
  const bytes = await source.read(path);
  return bytes && new TextDecoder().decode(bytes);
}

function parsed(source: ReleaseSource, path: string, text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw new Error(`${path} of ${source.name} is not JSON; it is damaged. Fetch the release again.`);
  }
}

const canonical = (file: string, text: string): Difference[] => differencesOf(file, text, canonicalJson(JSON.parse(text)));

interface Found {
  readonly differences: readonly Difference[];
  /** Path → SHA-256 of what is there. */
  readonly digests: ReadonlyMap<string, string>;
}

/** So many files are asked for at once; of a large release nobody holds all. */
const AT_ONCE = 16;

/** Holds every file against the manifest, and all of them against the archive, which is to hold what lies beside it, byte for byte. */
async function againstManifest(source: ReleaseSource, { files }: Manifest): Promise<Found> {
  const differences: Difference[] = [];
  const digests = new Map<string, string>();
  const [archive, archived] = [new Archive(), createHash('sha256')];
  for (let at = 0; at < files.length; at += AT_ONCE) {
    const some = files.slice(at, at + AT_ONCE);
    const contents = await Promise.all(some.map(({ path }) => source.read(path)));
    for (const [i, file] of some.entries()) {
      const bytes = contents[i] ?? null;
      if (bytes) digests.set(file.path, sha256(bytes));
      differences.push(...unlike(file, bytes, digests.get(file.path)));
      if (!bytes) continue;
      if (file.path !== ARCHIVE) archived.update(archive.add(file.path, bytes));
    }
  }
  for (const part of archive.end()) archived.update(part);
  return { differences: differences.length > 0 ? differences : archiveFaults(files, archived.digest('hex')), digests };
}

function unlike(file: Manifest['files'][number], bytes: Uint8Array | null, digest = ''): Difference[] {
  // Whoever unpacked the archive has all that is in it.
  if (!bytes && file.path === ARCHIVE) return [];
  if (!bytes) return [{ file: file.path, where: '', found: 'no such file', expected: 'the file that the manifest lists' }];
  const found = `${bytes.length} bytes, SHA-256 ${digest}`;
  const expected = `${file.sizeBytes} bytes, SHA-256 ${file.sha256}`;
  return found === expected ? [] : [{ file: file.path, where: '', found, expected }];
}

function archiveFaults(files: Manifest['files'], expected: string): Difference[] {
  const found = files.find(({ path }) => path === ARCHIVE)?.sha256 ?? expected;
  return found === expected ? [] : [{ file: ARCHIVE, where: '', found: `SHA-256 ${found}`, expected: `SHA-256 ${expected}` }];
}

/** A file that nobody signed for is not part of the release. */
async function unlisted(source: ReleaseSource, { files }: Manifest): Promise<Difference[]> {
  const known = new Set([...files.map(({ path }) => path), ...SEALS]);
  const paths = (await source.list()) ?? [];
  return paths
    .filter((path) => !known.has(path))
    .map((file) => ({ file, where: '', found: 'a file that the manifest does not list', expected: 'no such file' }));
}

async function recompute(source: ReleaseSource, manifest: Manifest, digests: ReadonlyMap<string, string>) {
  const inputs = await inputsIn(source);
  if (inputs === null) return { figures: null, differences: [] };
  const listed = new Set(manifest.files.map(({ path }) => path));
  const paths = new Set([SCRIPT, ARCHIVE]);
  const differences: Difference[] = [];
  let figures = 0;
  for (const file of filesOf(inputs)) {
    const { path, content } = whole(file);
    if (!listed.has(path) && isLater(inputs, path)) continue;
    paths.add(path);
    if (path.startsWith('documents/')) figures += countFigures(JSON.parse(content));
    // What is as it was computed is not asked for again.
    if (digests.get(path) !== sha256(content)) differences.push(...differencesOf(path, (await textIn(source, path)) ?? '', content));
  }
  const extra = manifest.files
    .filter(({ path }) => !paths.has(path))
    .map(({ path }) => ({ file: path, where: '', found: 'a file that nothing computes', expected: 'no such file' }));
  return { figures, differences: [...differences, ...extra, ...misheaded(manifest, inputs)] };
}

/** Null of a format that this program does not compute. */
async function inputsIn(source: ReleaseSource): Promise<ReleaseInputs | null> {
  const bundle = await textIn(source, 'bundle.json');
  if (bundle === null) throw new Error(`${source.name} has no bundle.json; there is nothing to compute from.`);
  const { formatVersion, inputs } = parsed(source, 'bundle.json', bundle) as Pick<Bundle, 'inputs'> & { readonly formatVersion: number };
  return formatVersion === FORMAT_VERSION ? inputs : null;
}

/** Releases of before there was such a file have none, and lack nothing. */
const isLater = (inputs: ReleaseInputs, path: string): boolean =>
  path === RETOLD || path.endsWith(`/${SENSITIVITY}`) || citationFiles(inputs, []).some((file) => file.path === path);

function misheaded(manifest: Manifest, inputs: ReleaseInputs): Difference[] {
  const headings = [
    ['edition', manifest.edition, inputs.evidence.edition.slug],
    ['revision', manifest.revision, inputs.revision],
    ['publishedAt', manifest.publishedAt, inputs.publishedAt],
    ['softwareVersion', manifest.softwareVersion, inputs.softwareVersion],
    ['previousDigest', manifest.previousDigest, inputs.previousDigest],
  ] as const;
  return headings
    .filter(([, found, expected]) => found !== expected)
    .map(([name, found, expected]) => ({ file: 'manifest.json', where: `/${name}`, found: String(found), expected: String(expected) }));
}
