import { Counter, Gauge } from 'prom-client';
import type { Registry } from 'prom-client';
import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { Config } from './config.js';
import { disksOf } from './platform/file-store/disks.js';
import type { Disk } from './platform/file-store/disks.js';
import type { Metrics } from './platform/http/health/metrics.module.js';
import type { Jobs } from './platform/jobs/jobs.js';
import { BACKUPS } from './platform/jobs/jobs.module.js';
import type { PublishedFiles } from './public-api/published-files.js';
import type { PublishedReleases } from './releases/published-releases.read-model.js';
import { currentSite } from './serve-site.js';

const PER_SECOND = 1000;

/** What knows the figures. */
interface TellingParts {
  readonly releases: PublishedReleases;
  readonly files: PublishedFiles;
  readonly jobs: Jobs;
}

/** Figures of the house beside those of the program: what is published, when the site was built, room on the disk, the newest backup. */
export function addHouseMetrics({ registry }: Metrics, { releases, files, jobs }: TellingParts, config: Config): void {
  const registers = [registry];
  const measured = (name: string, help: string, value: () => Promise<number | null> | number | null) => {
    new Gauge({
      name,
      help,
      registers,
      async collect() {
        // What cannot be told is left out: a nought would look like a figure.
        this.reset();
        const found = await Promise.resolve()
          .then(value)
          .catch(() => null);
        if (found === null) this.remove();
        else this.set(found);
      },
    });
  };
  countReads(registry, files);
  measureDisks(registry, config.DATA_FOLDER);
  measured('fairpull_releases', 'Published revisions.', () => releases.all().length);
  measured('fairpull_last_publication_timestamp_seconds', 'When a release was published last.', () => lastOf(releases));
  measured('fairpull_site_built_timestamp_seconds', 'When the site was built last.', () =>
    changedAt(join(currentSite(config), 'built-from.txt')),
  );
  // Of the record: a server has no way to the folder of backups, which hold the signing key.
  measured('fairpull_last_backup_timestamp_seconds', 'When the worker made a backup last and read it through.', async () => {
    const made = (await jobs.lastOf(BACKUPS)).find(({ state }) => state === 'done');
    return made?.endedAt ? Date.parse(made.endedAt) / PER_SECOND : null;
  });
}

function measureDisks(registry: Registry, dataFolder: string): void {
  const measured = (name: string, help: string, value: (disk: Disk) => number) => {
    new Gauge({
      name,
      help,
      labelNames: ['folder'],
      registers: [registry],
      async collect() {
        this.reset();
        for (const disk of await disksOf(dataFolder)) this.set({ folder: disk.folder }, value(disk));
      },
    });
  };
  measured('fairpull_disk_free_bytes', 'Room on each disk that the data folder lies on.', ({ freeBytes }) => freeBytes);
  measured('fairpull_disk_size_bytes', 'Size of each disk that the data folder lies on.', ({ sizeBytes }) => sizeBytes);
}

function countReads(registry: Registry, files: PublishedFiles): void {
  new Counter({
    name: 'fairpull_published_reads_total',
    help: 'Reads of published files, which are answered at the door and stand in no other figure.',
    registers: [registry],
    collect() {
      this.reset();
      this.inc(files.readsAtTheDoor);
    },
  });
}

function lastOf(releases: PublishedReleases): number | null {
  const times = releases.all().map(({ publishedAt }) => Date.parse(publishedAt));
  return times.length === 0 ? null : Math.max(...times) / PER_SECOND;
}

async function changedAt(file: string): Promise<number> {
  return (await stat(file)).mtimeMs / PER_SECOND;
}
