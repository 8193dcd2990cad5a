import { Injectable } from '@nestjs/common';
import { FileStore } from '../../platform/file-store/file-store.js';
import { releaseFolder, ReleasesReadModel } from '../releases.read-model.js';
import { compressFile } from './compressed-files.js';
import type { PublishReleaseOrder } from './release-orders.js';

/**
 * Makes the compressed forms of a release that is published, one after the other: readers do not wait for them, and what is not there yet is
 * compressed when somebody asks for it. Doing it twice is doing it once.
 */
@Injectable()
export class CompressRelease {
  constructor(
    private readonly releases: ReleasesReadModel,
    private readonly files: FileStore,
  ) {}

  async run({ edition, revision }: PublishReleaseOrder): Promise<void> {
    const release = await this.releases.find(edition, revision);
    if (!release) return;
    const folder = releaseFolder(edition, revision, release.digest);
    for (const path of [...release.manifest.files.map((file) => file.path), 'manifest.json', 'signature.json']) {
      const bytes = await this.files.read(`${folder}/${path}`);
      // What is lost is told by whoever is asked for it.
      if (bytes) await compressFile(this.files, folder, path, bytes);
    }
  }
}
