import 'reflect-metadata';
import compress from '@fastify/compress';
import cookie from '@fastify/cookie';
import multipart from '@fastify/multipart';
import rateLimit from '@fastify/rate-limit';
import { NestFactory } from '@nestjs/core';
import { FastifyAdapter } from '@nestjs/platform-fastify';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import type { FastifyInstance } from 'fastify';
import { randomUUID } from 'node:crypto';
import { AppModule } from './app.module.js';
import { CatalogueModule } from './catalogue/catalogue.module.js';
import { SuccessionsReadModel } from './catalogue/successions.read-model.js';
import type { Config } from './config.js';
import { addHouseMetrics } from './house-metrics.js';
import { serveOpenApi } from './openapi/describe-api.js';
import { registerCrossOrigin } from './platform/http/headers/cross-origin.js';
import { registerSecurityHeaders } from './platform/http/headers/security-headers.js';
import { registerBodyRules } from './platform/http/body-rules.js';
import { registerConditionalReads } from './platform/http/headers/conditional-reads.js';
import { frameworkErrors } from './platform/http/problems/framework-errors.js';
import { jsonLog } from './platform/http/json-log.js';
import { Metrics, MetricsModule } from './platform/http/health/metrics.module.js';
import { Jobs } from './platform/jobs/jobs.js';
import { LARGEST_FILE_BYTES, LARGEST_JSON_BYTES } from './contract/body-sizes.js';
import { FrontDoor } from './platform/http/front-door.js';
import { Readiness } from './platform/http/health/readiness.js';
import { MINUTE_MS, RequestCounts, storeOf } from './platform/http/limits/request-counts.js';
import { requireDeclaredAccess } from './platform/http/require-declared-access.js';
import type { PlatformOptions } from './platform/platform.module.js';
import { inTrace } from './platform/trace/trace-context.js';
import { PublicApiModule } from './public-api/public-api.module.js';
import { PublishedFiles } from './public-api/published-files.js';
import { takePublishedReads } from './public-api/serve-published.js';
import { PublishedReleases } from './releases/published-releases.read-model.js';
import { ReleasesModule } from './releases/releases.module.js';
import { serveSite } from './serve-site.js';
import { redirectToSuccessor } from './redirect-to-successor.js';
import { successorAddress } from './successor-address.js';

/**
 * Makes the server, ready to listen.
 * @param options checked configuration; a clock or identifiers of one's own for a season played back
 * @throws Error when a route declares no access
 */
export async function createApp(options: PlatformOptions): Promise<NestFastifyApplication> {
  const { config } = options;
  const proxies = config.TRUSTED_PROXIES.split(',').filter((address) => address !== '');
  const door = new FrontDoor(config.HEAD_WITHIN_SECONDS);
  const adapter = new FastifyAdapter({
    bodyLimit: LARGEST_JSON_BYTES,
    trustProxy: proxies.length > 0 ? proxies : false,
    requestIdHeader: false,
    ...frameworkErrors(config.PUBLIC_URL),
    genReqId: () => randomUUID(),
    return503OnClosing: false,
    serverFactory: (handle: Parameters<FrontDoor['serverFor']>[0]) => door.serverFor(handle),
  });
  const app = await NestFactory.create<NestFastifyApplication>(AppModule.with(options), adapter, {
    logger: jsonLog(config.LOG_LEVEL),
    abortOnError: false,
  });
  watchAnswers(adapter.getInstance<FastifyInstance>(), app.select(MetricsModule).get(Metrics));
  await registerPlugins(adapter.getInstance<FastifyInstance>(), config, app.get(RequestCounts, { strict: false }));
  requireDeclaredAccess(app);
  serveOpenApi(app, config);
  await serveSite(adapter.getInstance<FastifyInstance>(), config);
  app.enableShutdownHooks();
  await app.init();
  const successions = app.select(CatalogueModule).get(SuccessionsReadModel);
  const releases = app.select(ReleasesModule).get(PublishedReleases);
  await releases.start();
  await successions.start();
  const files = app.select(PublicApiModule).get(PublishedFiles);
  addHouseMetrics(app.select(MetricsModule).get(Metrics), { releases, files, jobs: app.get(Jobs, { strict: false }) }, config);
  const readiness = app.get(Readiness, { strict: false });
  const leading = (address: string) => successorAddress(address, (kind, slug) => successions.successorOf(kind, slug));
  door.open(redirectToSuccessor(leading, takePublishedReads(files)), () => readiness.isEnding());
  await adapter.getInstance().ready();
  return app;
}

async function registerPlugins(fastify: FastifyInstance, config: Config, counts: RequestCounts): Promise<void> {
  registerBodyRules(fastify);
  await fastify.register(cookie);
  await registerSecurityHeaders(fastify, config);
  await registerCrossOrigin(fastify);
  registerConditionalReads(fastify);
  await fastify.register(compress, { global: true, threshold: 1024 });
  await fastify.register(multipart, { limits: { files: 1, fileSize: LARGEST_FILE_BYTES } });
  await fastify.register(rateLimit, {
    max: config.REQUESTS_PER_MINUTE,
    timeWindow: MINUTE_MS,
    store: storeOf(counts),
    enableDraftSpec: true,
  });
  fastify.addContentTypeParser(['text/csv', 'image/jpeg', 'image/png', 'image/webp'], (_request, payload, done) => {
    done(null, payload);
  });
}

/** Sends the id under which the log tells of a request, takes up its trace, and counts the answer by its route: no address, so no secret in one. */
function watchAnswers(fastify: FastifyInstance, metrics: Metrics): void {
  fastify.addHook('onRequest', (request, reply, done) => {
    reply.header('X-Request-Id', request.id);
    done();
  });
  // Behind the reading of the body, which would lose the trace.
  fastify.addHook('preValidation', ({ headers }, _reply, done) => {
    inTrace(headers['traceparent'], done);
  });
  fastify.addHook('onResponse', (request, reply, done) => {
    metrics.countAnswer(request.method, request.routeOptions.url ?? 'none', reply.statusCode, reply.elapsedTime / 1000);
    done();
  });
}
