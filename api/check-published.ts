/** `npm run check-published`: looks at everything that is published by the standing checks; ends with 1 when one finds a fault. */
import 'reflect-metadata';
import { NestFactory } from '@nestjs/core';
import { AppModule } from './app.module.js';
import { readConfig } from './config.js';
import { ReleasesModule } from './releases/releases.module.js';
import { RunStandingChecks } from './releases/standing-checks/run-standing-checks.js';

const context = await NestFactory.createApplicationContext(AppModule.with({ config: readConfig() }), { logger: false });
const faults = await context.select(ReleasesModule).get(RunStandingChecks).run();
for (const { check, where, words } of faults) process.stdout.write(`${where}: ${words} (${check})\n`);
process.stdout.write(faults.length === 0 ? 'Everything that is published stands.\n' : `${faults.length} faults.\n`);
process.exitCode = faults.length === 0 ? 0 : 1;
await context.close();
