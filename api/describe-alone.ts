import 'reflect-metadata';
import { NestFactory } from '@nestjs/core';
import { FastifyAdapter } from '@nestjs/platform-fastify';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import type { OpenAPIObject } from '@nestjs/swagger';
import { AppModule } from './app.module.js';
import { readConfig } from './config.js';
import { describeApi } from './openapi/describe-api.js';

/** The description of the API of a house at an address, where none listens: its routes are read, no database is asked and no port opened. */
export async function describeAlone(publicUrl: string): Promise<OpenAPIObject> {
  const config = readConfig({ DATABASE_URL: 'postgresql://127.0.0.1/none', PUBLIC_URL: publicUrl });
  const app = await NestFactory.create<NestFastifyApplication>(AppModule.with({ config }), new FastifyAdapter(), {
    logger: false,
    abortOnError: false,
  });
  try {
    return describeApi(app, config);
  } finally {
    await app.close();
  }
}
