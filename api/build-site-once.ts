/** Builds the site of what is published by now, and ends: shows a first edition while others are still loaded. */
import 'reflect-metadata';
import { NestFactory } from '@nestjs/core';
import { AppModule } from './app.module.js';
import { readConfig } from './config.js';
import { jsonLog } from './platform/http/json-log.js';
import { BuildSite } from './releases/site/build-site.js';
import { ReleasesModule } from './releases/releases.module.js';

const config = readConfig();
const context = await NestFactory.createApplicationContext(AppModule.with({ config }), { logger: jsonLog(config.LOG_LEVEL) });
try {
  await context.select(ReleasesModule).get(BuildSite).run();
} finally {
  await context.close();
}
