import 'reflect-metadata';
import type { INestApplicationContext } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import { AppModule } from './app.module.js';
import { readConfig } from './config.js';
import { withDatabase } from './platform/embedded-postgres/with-database.js';

/**
 * Runs a command of an operator with the parts of the program, on DATABASE_URL or else on the embedded server of DATA_FOLDER, beside a house
 * that runs or without one. What it throws is told in a sentence, and ends it with 1.
 */
export async function inProgram(work: (program: INestApplicationContext) => Promise<void>): Promise<void> {
  try {
    await withDatabase(process.env, async ({ programUrl, dataFolder }) => {
      const config = readConfig({ ...process.env, DATABASE_URL: programUrl, DATA_FOLDER: dataFolder });
      const program = await NestFactory.createApplicationContext(AppModule.with({ config }), { logger: false });
      await work(program).finally(() => program.close());
    });
  } catch (error) {
    console.error(error instanceof Error ? error.message : String(error));
    process.exitCode = 1;
  }
}
