import 'reflect-metadata';
import { NestFactory } from '@nestjs/core';
import { AppModule } from './app.module.js';
import { buildDesk } from './build-desk.js';
import { readConfig } from './config.js';
import { ReleaseWork } from './releases/release-work.js';
import { ReleasesModule } from './releases/releases.module.js';

/** Carries out orders: publishes releases and rebuilds the site. As many of them as one likes may run. */
const config = readConfig();
await buildDesk(config.DATA_FOLDER, config.PATH);
const context = await NestFactory.createApplicationContext(AppModule.with({ config }), { logger: ['error', 'warn'] });
context.enableShutdownHooks();
await context.select(ReleasesModule).get(ReleaseWork).start(true);
