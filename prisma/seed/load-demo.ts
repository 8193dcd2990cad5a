/**
 * Loads the demo: the North Quay Line Trials, invented, into the empty database that DATABASE_URL names. The bench work of its winters is
 * laid as `npm run keep-demo` keeps it, where that fits; else it is played through the API, as it was then. Both give the same record.
 * WITH_SITE=true builds the site as well.
 */
import { readConfig } from '../../api/config.js';
import { FileStore } from '../../api/platform/file-store/file-store.js';
import { HOUSE } from './house/house-name.js';
import { inventDemo } from './demo.js';
import { keptWinters, layingOf } from './kept/lay-winter.js';
import { loadWithOwnServer } from './loader/with-house-server.js';

const config = readConfig({ ...process.env, HOUSE_NAME: process.env['HOUSE_NAME'] ?? HOUSE, IS_DEMO: 'true' });
const startedMs = performance.now();
const say = (line: string): void => {
  console.log(`  ${line} (${((performance.now() - startedMs) / 1000).toFixed(1)} s)`);
};
const demo = inventDemo();
const ownerUrl = config.DATABASE_OWNER_URL || config.DATABASE_URL;
const winters = await keptWinters(
  ownerUrl,
  demo.seasons.map(({ season }) => season.slug),
);
if (!winters) say('The winters are played, spool by spool, as what is kept of them does not fit this database');
const laid = winters && { lay: layingOf(winters, { seed: demo.seed, ownerUrl, files: new FileStore(config) }) };
await loadWithOwnServer(config, demo, say, { ...laid, withSite: process.env['WITH_SITE'] === 'true' });
