import { existsSync } from 'node:fs';
import { mkdtemp, rename } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildSite } from './build-site.js';
import { makeReleases } from './make-release.js';
import { serveFolders } from './serve-folder.js';

/** A built site of three invented editions, the last of one revision; `api` holds the releases it was built from. Both are for reading alone. */
export interface SharedSite {
  readonly site: string;
  readonly api: string;
}

/** The site that tests read: built once by each of the run's workers, whatever the number of files that read it. */
export async function sharedSite(): Promise<SharedSite> {
  const run = process.env['TEST_RUN_FOLDER'] ?? tmpdir();
  const folder = join(run, `site-${process.env['JEST_WORKER_ID'] ?? '1'}`);
  const [site, api] = ['site', 'api'].map((part) => join(folder, part)) as [string, string];
  if (existsSync(folder)) return { site, api };
  // What broke off half-way is not there under the name.
  const made = await mkdtemp(join(run, 'making-site-'));
  await makeReleases(join(made, 'api'), { editions: 3, variants: 13 });
  const server = await serveFolders(join(made, 'api'));
  await buildSite({ apiUrl: server.url, publicUrl: 'https://trials.example', out: join(made, 'site') });
  await server.close();
  await rename(made, folder);
  return { site, api };
}
