import { execFile } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { readConfig } from '../../api/config.js';
import { createApp } from '../../api/create-app.js';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { writeClient } from '../../api/releases/site/run-beside.js';
import { createTestDatabase } from './test-database.js';

/** A server on a house into which the demo was loaded. */
export interface DemoHouse {
  readonly url: string;
  readonly databaseUrl: string;
  readonly dataFolder: string;
  /** What the loader printed, line by line. */
  readonly told: readonly string[];
  /** Publishes what was ordered, as a worker does. */
  publishDue(): Promise<void>;
  close(): Promise<void>;
}

/**
 * @param loader a program and what it is told: prisma/seed/load-demo.ts, as a start runs it, or tests/support/load-winters.ts
 */
export async function loadDemoHouse(...loader: readonly string[]): Promise<DemoHouse> {
  const database = await createTestDatabase();
  const dataFolder = await mkdtemp(join(tmpdir(), 'fairpull-demo-'));
  const house = {
    DATABASE_URL: database.url,
    DATA_FOLDER: dataFolder,
    LOG_LEVEL: 'error',
    IS_DEMO: 'true',
    HOUSE_NAME: 'North Quay Line Trials',
  };
  const program = ['--import', './.config/load-typescript.mjs', ...(loader.length > 0 ? loader : ['prisma/seed/load-demo.ts'])];
  const { stdout } = await promisify(execFile)(process.execPath, program, { env: { ...process.env, ...house } });
  // With every site comes the client for programs; of this house none is built.
  await writeClient(join(dataFolder, 'site', 'current', 'client'), process.env['PATH'] ?? '');
  const app = await createApp({ config: readConfig(house) });
  await app.listen(0, '127.0.0.1');
  return {
    url: `http://127.0.0.1:${(app.getHttpServer().address() as AddressInfo).port}`,
    databaseUrl: database.url,
    dataFolder,
    told: stdout.trim().split('\n'),
    publishDue: () => app.select(ReleasesModule).get(ReleaseWork).publishDue(),
    close: async () => {
      await app.close();
      await database.drop();
      await rm(dataFolder, { recursive: true, force: true });
    },
  };
}
