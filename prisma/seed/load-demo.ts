/** Loads the demo: the North Quay Line Trials, invented, into the empty database that DATABASE_URL names. */
import { readConfig } from '../../api/config.js';
import { HOUSE } from './house/house-name.js';
import { inventDemo } from './demo.js';
import { loadWithOwnServer } from './loader/with-house-server.js';

const config = readConfig({ ...process.env, HOUSE_NAME: process.env['HOUSE_NAME'] ?? HOUSE, IS_DEMO: 'true' });
const startedMs = performance.now();
const say = (line: string): void => {
  console.log(`  ${line} (${((performance.now() - startedMs) / 1000).toFixed(1)} s)`);
};
await loadWithOwnServer(config, inventDemo(), say);
