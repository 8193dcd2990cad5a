import { Inject, Injectable, Logger } from '@nestjs/common';
import { readdir, readFile, readlink } from 'node:fs/promises';
import { extname, join, relative, resolve, sep } from 'node:path';
import { CONFIG } from '../../config.js';
import type { Config } from '../../config.js';
import { A_MINUTE, FOREVER } from '../../platform/http/headers/cache-lifetimes.js';
import { ObjectStorage } from '../../platform/object-storage/object-storage.js';
import { ReleasesReadModel } from '../releases.read-model.js';

const AT_ONCE = 8;
/** Which folder of the storage is the site; read by whatever serves it. */
export const POINTER = 'site/current.json';
/** Their names have a digest of their content in them. */
const NAMED_BY_CONTENT = /^_astro\//;
const MEDIA_TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.mts': 'text/plain; charset=utf-8',
  '.json': 'application/json',
  '.csv': 'text/csv; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.xml': 'application/xml',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.ico': 'image/x-icon',
};

/**
 * Copies what is published to object storage, where that is wished: the files of every release under the addresses that they have in the API,
 * the site under a folder of its own version, and last the pointer to it, so that readers get the old site or the new one.
 */
@Injectable()
export class CopyOut {
  private readonly log = new Logger('storage');
  private readonly site: string;

  constructor(
    @Inject(CONFIG) config: Config,
    private readonly storage: ObjectStorage,
    private readonly releases: ReleasesReadModel,
  ) {
    this.site = resolve(config.DATA_FOLDER, 'site');
  }

  /** Does nothing when the storage points at the site that is shown here; what broke off is done by the next run. */
  async run(): Promise<void> {
    if (!this.storage.isWished) return;
    const version = await readlink(join(this.site, 'current'));
    const pointer = `${JSON.stringify({ folder: `site/${version}/` })}\n`;
    if ((await this.storage.read(POINTER)) === pointer) return;
    const copied = await this.copyReleases();
    const pages = await this.copySite(version);
    await this.storage.write(POINTER, Buffer.from(pointer), { 'Content-Type': 'application/json', 'Cache-Control': 'no-cache' });
    this.log.log(`Object storage shows the site of ${pages} files; ${copied} releases were new to it.`);
  }

  /** The manifest of a release goes last: where it is, all of the release is. */
  private async copyReleases(): Promise<number> {
    let copied = 0;
    for (const { edition, revision } of await this.releases.list()) {
      const release = await this.releases.find(edition, revision);
      const address = `v1/releases/${edition}/${revision}`;
      if (!release || (await this.storage.has(`${address}/manifest.json`))) continue;
      await eachOf(release.manifest.files, async ({ path }) => {
        const file = await this.releases.bytes(release, path);
        if (file) await this.storage.write(`${address}/${path}`, Buffer.from(file.bytes), headersOf(file.mediaType, FOREVER));
      });
      const seals = { 'signature.json': release.signature, 'manifest.json': release.manifestBytes };
      for (const [name, text] of Object.entries(seals))
        await this.storage.write(`${address}/${name}`, Buffer.from(text), headersOf('application/json', FOREVER));
      copied += 1;
    }
    return copied;
  }

  private async copySite(version: string): Promise<number> {
    const folder = join(this.site, version);
    const entries = await readdir(folder, { recursive: true, withFileTypes: true });
    const paths = entries.filter((entry) => entry.isFile()).map((entry) => relative(folder, join(entry.parentPath, entry.name)));
    await eachOf(paths, async (path) => {
      const name = path.split(sep).join('/');
      const mediaType = MEDIA_TYPES[extname(name)] ?? 'application/octet-stream';
      const caching = NAMED_BY_CONTENT.test(name) ? FOREVER : A_MINUTE;
      await this.storage.write(`site/${version}/${name}`, await readFile(join(folder, path)), headersOf(mediaType, caching));
    });
    return paths.length;
  }
}

const headersOf = (mediaType: string, caching: string) => ({ 'Content-Type': mediaType, 'Cache-Control': caching });

/** A few at a time; the first failure ends it. */
async function eachOf<Item>(items: readonly Item[], work: (item: Item) => Promise<void>): Promise<void> {
  const waiting = [...items];
  const carry = async (): Promise<void> => {
    for (let item = waiting.pop(); item !== undefined; item = waiting.pop()) await work(item);
  };
  await Promise.all(Array.from({ length: AT_ONCE }, carry));
}
