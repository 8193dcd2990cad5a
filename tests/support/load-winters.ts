/**
 * `load-winters.ts laid|played <winters>`: loads the first winters of the demo into the database and folder that the environment names;
 * prints its progress line by line. A program of its own, as its user starts it: what winters need of memory goes with it.
 */
import { readConfig } from '../../api/config.js';
import { FileStore } from '../../api/platform/file-store/file-store.js';
import { inventDemo } from '../../prisma/seed/demo.js';
import { keptWinters, layingOf } from '../../prisma/seed/kept/lay-winter.js';
import { loadWithOwnServer } from '../../prisma/seed/loader/with-house-server.js';

const [way, winters] = process.argv.slice(2);
const config = readConfig(process.env);
const ownerUrl = config.DATABASE_URL;
const whole = inventDemo();
const demo = { ...whole, seasons: whole.seasons.slice(0, Number(winters)) };
const slugs = demo.seasons.map(({ season }) => season.slug);
const kept = way === 'laid' ? await keptWinters(ownerUrl, slugs) : null;
if (way === 'laid' && !kept) throw new Error('What is kept of the winters does not fit the schema: npm run keep-demo.');
const beside = kept ? { lay: layingOf(kept, { seed: demo.seed, ownerUrl, files: new FileStore(config) }) } : {};
await loadWithOwnServer(config, demo, (line) => console.log(line), beside);
