import 'reflect-metadata';
import { NestFactory } from '@nestjs/core';
import { AppModule } from './app.module.js';
import { readConfig } from './config.js';
import { jsonLog } from './platform/http/json-log.js';
import { ReleaseWork } from './releases/release-work.js';
import { ReleasesModule } from './releases/releases.module.js';

const config = readConfig();
/** Carries out orders: publishes releases and rebuilds the site. As many of them as one likes may run. */
const context = await NestFactory.createApplicationContext(AppModule.with({ config }), { logger: jsonLog(config.LOG_LEVEL) });
context.enableShutdownHooks();
await context.select(ReleasesModule).get(ReleaseWork).start(true);
