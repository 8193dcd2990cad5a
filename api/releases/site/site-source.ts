import { Injectable } from '@nestjs/common';
import { mkdir, symlink, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { ReleaseSummary } from '../../contract/documents/release-documents.js';
import { FileStore } from '../../platform/file-store/file-store.js';
import { SITE_LISTS } from '../../site-lists.js';
import { releaseFolder } from '../releases.read-model.js';

/** Lays out in a folder what the site is built from, at the paths of the API: lists as files, releases as links into the file store. */
@Injectable()
export class SiteSource {
  constructor(private readonly files: FileStore) {}

  async layOut(folder: string, items: readonly ReleaseSummary[]): Promise<void> {
    for (const [path, list] of Object.entries({ ...SITE_LISTS, '/v1/releases': { items } })) {
      const file = join(folder, `${path}.json`);
      await mkdir(dirname(file), { recursive: true });
      await writeFile(file, JSON.stringify(list));
    }
    for (const { edition, revision, digest } of items) {
      const link = join(folder, 'v1/releases', edition, String(revision));
      await mkdir(dirname(link), { recursive: true });
      // Windows makes this kind of link without special rights; elsewhere the word means nothing.
      await symlink(this.files.absolute(releaseFolder(edition, revision, digest)), link, 'junction');
    }
  }
}
