import { Injectable, Logger } from '@nestjs/common';
import { FileStore } from '../../platform/file-store/file-store.js';
import { BUILT } from './build-release.js';
import { BESIDE } from './compressed-files.js';
import { ReleasesReadModel } from '../releases.read-model.js';

/** A folder that was written to lately may be of a publication that is under way. */
const OLD_MS = 24 * 3_600_000;
const TOP = 'releases';

/** Takes away folders that a publication left which never came to its end: no release names them, and they are old. */
@Injectable()
export class SweepReleaseFolders {
  private readonly log = new Logger(SweepReleaseFolders.name);

  constructor(
    private readonly files: FileStore,
    private readonly releases: ReleasesReadModel,
  ) {}

  async run(): Promise<void> {
    await this.forgetBuilds();
    // The list of folders comes first: what is published after it is not in it.
    const found = await this.found();
    const named = new Set((await this.releases.list()).map(({ digest }) => digest));
    for (const { path, name } of found) {
      if (
        named.has(name.endsWith(BESIDE) ? name.slice(0, -BESIDE.length) : name) ||
        Date.now() - (await this.files.changedAt(path)).getTime() < OLD_MS
      )
        continue;
      await this.files.remove(path);
      this.log.warn(`Took away ${path}: no release names it.`);
    }
  }

  /** What is known of builds is of use while their release waits. */
  private async forgetBuilds(): Promise<void> {
    const noted = await this.files.folders(BUILT);
    const waiting = new Set((await this.releases.waiting()).map(({ id }) => id));
    for (const id of noted) if (!waiting.has(id)) await this.files.remove(`${BUILT}/${id}`);
  }

  private async found(): Promise<{ path: string; name: string }[]> {
    const below = async (path: string) => (await this.files.folders(path)).map((name) => ({ path: `${path}/${name}`, name }));
    const editions = await below(TOP);
    const revisions = (await Promise.all(editions.map(({ path }) => below(path)))).flat();
    return (await Promise.all(revisions.map(({ path }) => below(path)))).flat();
  }
}
