import fastifyStatic from '@fastify/static';
import type { FastifyInstance, FastifyReply } from 'fastify';
import { existsSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { posix, resolve } from 'node:path';
import { currentDesk } from './build-desk.js';
import type { Config } from './config.js';

/** Folder that always points at the whole, current site. */
export const currentSite = (config: Config): string => resolve(config.DATA_FOLDER, 'site', 'current');

const BELOW_API = '/v1/';
const BELOW_DESK = '/desk/';
/** What other people's pages take of us. What they show runs no script and nothing can be done in it, so that anybody may put it into a frame. */
const FOR_ANY_PAGE = /^\/(?:client|(?:[a-z]{2}\/)?embed)\//;
const NOT_BUILT =
  '<!doctype html><html lang="en"><title>Fairpull</title><p>The site is being built. Try again in a few seconds.</p></html>';

/** Serves the built site, and the desk below it, at the same address as the API; what is not there gets their own 404 page. */
export async function serveSite(fastify: FastifyInstance, config: Config): Promise<void> {
  await mkdir(resolve(config.DATA_FOLDER, 'site'), { recursive: true });
  await fastify.register(fastifyStatic, {
    root: resolve(config.DATA_FOLDER, 'site'),
    serve: false,
    // Types of a program; the name is also that of a film.
    setHeaders: (reply, path) => void (path.endsWith('.mts') && reply.type('text/plain; charset=utf-8')),
  });
  fastify.get('/*', { config: { rateLimit: false } }, async (request, reply) => {
    const asked = `/${(request.params as { '*': string })['*']}`;
    const path = posix.normalize(asked);
    if ([asked, path].some((one) => one.startsWith(BELOW_API))) {
      reply.callNotFound();
      return reply;
    }
    if (path === BELOW_DESK.slice(0, -1)) return reply.redirect(BELOW_DESK);
    const isDesk = path.startsWith(BELOW_DESK);
    const root = isDesk ? currentDesk(config.DATA_FOLDER) : currentSite(config);
    if (!existsSync(root)) return reply.status(503).header('Retry-After', '3').type('text/html').send(NOT_BUILT);
    const below = isDesk ? path.slice(BELOW_DESK.length - 1) : path;
    const file = below.endsWith('/') ? `${below}index.html` : below;
    const found = existsSync(resolve(root, `.${file}`));
    if (!found) return reply.status(404).sendFile(pageForMissing(below, root), root);
    if (FOR_ANY_PAGE.test(path)) openToAnyPage(reply);
    else reply.header('Content-Security-Policy', "frame-ancestors 'none'");
    return reply.sendFile(file, root);
  });
}

/** The page that says so in the language that the address is below. */
function pageForMissing(path: string, root: string): string {
  const own = `${/^\/[a-z]{2}\//.exec(path)?.[0] ?? '/'}404.html`;
  return existsSync(resolve(root, `.${own}`)) ? own : '/404.html';
}

/** The nginx of docker-compose.yml sends the same. */
function openToAnyPage(reply: FastifyReply): void {
  reply
    .header('Content-Security-Policy', 'frame-ancestors *')
    .header('Access-Control-Allow-Origin', '*')
    .header('Cross-Origin-Resource-Policy', 'cross-origin')
    .removeHeader('X-Frame-Options');
}
