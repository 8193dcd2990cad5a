import type { Manifest } from '../../contract/documents/release-documents.js';
import type { FileStore } from '../../platform/file-store/file-store.js';
import { sha256 } from '../../platform/identifiers/identifiers.js';
import { canonicalJson } from '../../reckoning/canonical-json.js';
import { Archive, ARCHIVE, ARCHIVE_TYPE } from '../../reckoning/release-archive.js';
import { manifestOf } from '../../reckoning/release-files.js';
import type { NamedFile } from '../../reckoning/release-files.js';

/** A release while its files are written: each goes to disk, and of it no more than its digest is kept. */
export class HalfWrittenRelease {
  private readonly listed: Manifest['files'] = [];

  private constructor(
    private readonly files: FileStore,
    private readonly folder: string,
  ) {}

  /** @param folder of its own; what an attempt before left there is taken away */
  static async begin(files: FileStore, folder: string): Promise<HalfWrittenRelease> {
    await files.remove(folder);
    return new HalfWrittenRelease(files, folder);
  }

  async write({ path, mediaType }: NamedFile, bytes: Uint8Array): Promise<void> {
    this.listed.push({ path, mediaType, sizeBytes: bytes.length, sha256: sha256(bytes) });
    await this.files.write(`${this.folder}/${path}`, bytes);
  }

  /** All files in one, once they are written. */
  async writeArchive(): Promise<void> {
    const archive = new Archive();
    const parts: Uint8Array[] = [];
    for (const { path } of this.listed.toSorted((one, other) => (one.path < other.path ? -1 : 1))) {
      const bytes = await this.files.read(`${this.folder}/${path}`);
      if (!bytes) throw new Error(`${path} is gone from ${this.folder}, where it was just written. Publish again.`);
      parts.push(archive.add(path, bytes));
    }
    await this.write({ path: ARCHIVE, mediaType: ARCHIVE_TYPE }, Buffer.concat([...parts, ...archive.end()]));
  }

  /** @returns text of the manifest of all that was written, which is written too */
  async seal(heading: Omit<Manifest, 'files' | 'formatVersion'>): Promise<string> {
    const manifest = canonicalJson(manifestOf(this.listed, heading));
    await this.files.write(`${this.folder}/manifest.json`, manifest);
    return manifest;
  }

  /** From its own folder to the one that it is read from. */
  async moveTo(folder: string): Promise<void> {
    await this.files.move(this.folder, folder);
  }
}
