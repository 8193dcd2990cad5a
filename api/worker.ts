import 'reflect-metadata';
import { Logger } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import { AppModule } from './app.module.js';
import { buildDesk } from './build-desk.js';
import { cleanUpHourly } from './clean-up.js';
import { readConfig } from './config.js';
import { nightlyBackup } from './platform/backup/nightly-backup.js';
import { BACKUPS } from './platform/jobs/jobs.module.js';
import { Jobs } from './platform/jobs/jobs.js';
import { keepGivingSigns } from './platform/jobs/sign-of-life.js';
import { jsonLog } from './platform/http/json-log.js';
import { ReleaseWork } from './releases/publication/release-work.js';
import { ReleasesModule } from './releases/releases.module.js';
import { WebhookWork } from './webhooks/webhook-work.js';
import { WebhooksModule } from './webhooks/webhooks.module.js';

const config = readConfig();
const log = new Logger('worker');
await buildDesk(config.DATA_FOLDER, config.PATH);
/** Carries out orders: publishes releases and rebuilds the site; cleans up every hour. As many of them as one likes may run. */
const context = await NestFactory.createApplicationContext(AppModule.with({ config }), { logger: jsonLog(config.LOG_LEVEL) });
context.enableShutdownHooks();
await cleanUpHourly(context);
await scheduleBackups(context.get(Jobs));
await context.select(ReleasesModule).get(ReleaseWork).start(true);
await context.select(WebhooksModule).get(WebhookWork).start();
keepGivingSigns(context.get(Jobs));

/** One of all workers makes the backup; where none is wished for any more, none is. */
async function scheduleBackups(jobs: Jobs): Promise<void> {
  const { BACKUP_FOLDER, BACKUP_AT, BACKUP_KEEP, DATABASE_URL, DATA_FOLDER } = config;
  if (BACKUP_FOLDER === '') return jobs.noLonger(BACKUPS.name);
  await jobs.every(BACKUPS.name, BACKUP_AT, async () => {
    const words = await nightlyBackup({ databaseUrl: DATABASE_URL, dataFolder: DATA_FOLDER }, BACKUP_FOLDER, BACKUP_KEEP);
    log.log(words);
    return words;
  });
}
