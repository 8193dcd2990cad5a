import { stat, statfs } from 'node:fs/promises';
import { join } from 'node:path';

/** What grows in the data folder and may be a volume of its own: files, the site, the embedded database. */
const GROWING = ['.', 'files', 'site', 'postgres'];

export interface Disk {
  /** Within the data folder; `.` is the data folder itself. */
  readonly folder: string;
  readonly freeBytes: number;
  readonly sizeBytes: number;
}

/** The disks that a data folder lies on, each once. A folder that is not there, or of which nothing can be told, has none. */
export async function disksOf(dataFolder: string): Promise<Disk[]> {
  const disks = new Map<number, Disk>();
  for (const folder of GROWING) {
    const path = join(dataFolder, folder);
    const found = await Promise.all([stat(path), statfs(path)]).catch(() => null);
    if (!found) continue;
    const [{ dev }, { bavail, blocks, bsize }] = found;
    if (!disks.has(dev)) disks.set(dev, { folder, freeBytes: bavail * bsize, sizeBytes: blocks * bsize });
  }
  return [...disks.values()];
}
