import 'reflect-metadata';
import compress from '@fastify/compress';
import cookie from '@fastify/cookie';
import multipart from '@fastify/multipart';
import rateLimit from '@fastify/rate-limit';
import { NestFactory } from '@nestjs/core';
import { FastifyAdapter } from '@nestjs/platform-fastify';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import type { FastifyInstance } from 'fastify';
import { AppModule } from './app.module.js';
import type { Config } from './config.js';
import { serveOpenApi } from './openapi.js';
import { registerAnswerHeaders } from './platform/http/answer-headers.js';
import { MOST_JSON_BYTES, registerBodyRules } from './platform/http/body-rules.js';
import { frameworkErrors } from './platform/http/framework-errors.js';
import { requireDeclaredAccess } from './platform/http/require-declared-access.js';
import type { PlatformOptions } from './platform/platform.module.js';
import { serveSite } from './serve-site.js';

const LARGEST_FILE_BYTES = 50 * 1024 * 1024;
/** Who sends slower than this is cut off, so that slow connections do not take all places. */
const HEADERS_WITHIN_MS = 15_000;
const BODY_WITHIN_MS = 120_000;

/**
 * Makes the server, ready to listen.
 * @param options checked configuration; a clock or identifiers of one's own for a season played back
 * @throws Error when a route declares no access
 */
export async function createApp(options: PlatformOptions): Promise<NestFastifyApplication> {
  const { config } = options;
  const proxies = config.TRUSTED_PROXIES.split(',').filter((address) => address !== '');
  const adapter = new FastifyAdapter({
    bodyLimit: MOST_JSON_BYTES,
    trustProxy: proxies.length > 0 ? proxies : false,
    requestIdHeader: false,
    requestTimeout: BODY_WITHIN_MS,
    http: { headersTimeout: HEADERS_WITHIN_MS, connectionsCheckingInterval: 5000 },
    ...frameworkErrors(config.PUBLIC_URL),
  });
  const app = await NestFactory.create<NestFastifyApplication>(AppModule.with(options), adapter, {
    logger: config.LOG_LEVEL === 'silent' ? false : levelsFrom(config.LOG_LEVEL),
    abortOnError: false,
  });
  await registerPlugins(adapter.getInstance<FastifyInstance>(), config);
  requireDeclaredAccess(app);
  serveOpenApi(app, config);
  await serveSite(adapter.getInstance<FastifyInstance>(), config);
  app.enableShutdownHooks();
  await app.init();
  await adapter.getInstance().ready();
  return app;
}

async function registerPlugins(fastify: FastifyInstance, config: Config): Promise<void> {
  registerBodyRules(fastify);
  await fastify.register(cookie);
  await registerAnswerHeaders(fastify, config);
  await fastify.register(compress, { global: true, threshold: 1024 });
  await fastify.register(multipart, { limits: { files: 1, fileSize: LARGEST_FILE_BYTES } });
  await fastify.register(rateLimit, { max: config.REQUESTS_PER_MINUTE, timeWindow: '1 minute', enableDraftSpec: true });
  fastify.addContentTypeParser('text/csv', (_request, payload, done) => {
    done(null, payload);
  });
}

const LEVELS = ['error', 'warn', 'log', 'debug'] as const;

function levelsFrom(level: 'error' | 'warn' | 'info' | 'debug'): (typeof LEVELS)[number][] {
  return LEVELS.slice(0, LEVELS.indexOf(level === 'info' ? 'log' : level) + 1);
}
