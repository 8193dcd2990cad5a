import 'reflect-metadata';
import { NestFactory } from '@nestjs/core';
import { AccountsModule } from './accounts/accounts.module.js';
import { ForgetExpired } from './accounts/forget-expired.js';
import { AppModule } from './app.module.js';
import { buildDesk } from './build-desk.js';
import { readConfig } from './config.js';
import { IdempotentAnswersStore } from './platform/http/idempotent-answers.store.js';
import { Jobs } from './platform/jobs/jobs.js';
import { jsonLog } from './platform/http/json-log.js';
import { ReleaseWork } from './releases/release-work.js';
import { ReleasesModule } from './releases/releases.module.js';

const config = readConfig();
await buildDesk(config.DATA_FOLDER, config.PATH);
/** Carries out orders: publishes releases and rebuilds the site; cleans up every hour. As many of them as one likes may run. */
const context = await NestFactory.createApplicationContext(AppModule.with({ config }), { logger: jsonLog(config.LOG_LEVEL) });
context.enableShutdownHooks();
await context.get(Jobs).every('clean-up', '17 * * * *', async () => {
  await context.get(IdempotentAnswersStore).forgetOld();
  await context.select(AccountsModule).get(ForgetExpired).run();
});
await context.select(ReleasesModule).get(ReleaseWork).start(true);
