/**
 * `npm run keep-demo`: plays the demo into a server of its own and keeps what the bench work of each winter wrote, in prisma/seed/kept/.
 * Run it when a migration, or a rule of handing in or reviewing, changed what is written.
 */
import { chmod, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readConfig } from '../../api/config.js';
import { startEmbeddedPostgres } from '../../api/platform/embedded-postgres/start-embedded-postgres.js';
import { applyMigrations } from '../../api/platform/migrations/apply-migrations.js';
import { ensureSigningKey } from '../../api/platform/start-up/ensure-signing-key.js';
import { inventDemo } from './demo.js';
import { HOUSE } from './house/house-name.js';
import { WinterKeeper } from './kept/keep-winters.js';
import { loadWithOwnServer } from './loader/with-house-server.js';

const dataFolder = await mkdtemp(join(tmpdir(), 'fairpull-keep-'));
await chmod(dataFolder, 0o711);
const server = await startEmbeddedPostgres(dataFolder, { settings: { fsync: 'off' } });
try {
  await applyMigrations(server.url);
  await ensureSigningKey(dataFolder);
  const config = readConfig({ ...process.env, DATABASE_URL: server.url, DATA_FOLDER: dataFolder, HOUSE_NAME: HOUSE, IS_DEMO: 'true' });
  await loadWithOwnServer(config, inventDemo(), (line) => console.log(line), { onlooker: new WinterKeeper(server.url) });
} finally {
  await server.stop();
  await rm(dataFolder, { recursive: true, force: true });
}
