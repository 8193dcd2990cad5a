import helmet from '@fastify/helmet';
import type { FastifyInstance } from 'fastify';
import type { Config } from '../../../config.js';

/** The page that shows the description of the API runs its own scripts, and nobody else's. */
const CSP_OF_DOCS =
  "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; font-src 'self' data:; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

/** Whether browsers reach this house by TLS: only then may they be told to use nothing else. */
export const isBehindTls = ({ PUBLIC_URL, SECURE_COOKIES }: Config): boolean => SECURE_COOKIES || PUBLIC_URL.startsWith('https:');

/** Headers that every answer carries. The promise of TLS is for this host alone: what else stands under its name is not ours to judge. */
export async function registerSecurityHeaders(fastify: FastifyInstance, config: Config): Promise<void> {
  const strictTransportSecurity = isBehindTls(config) ? { includeSubDomains: false } : false;
  await fastify.register(helmet, { contentSecurityPolicy: false, strictTransportSecurity });
  fastify.addHook('onRequest', (request, reply, done) => {
    if (/^\/docs(\/|\?|$)/.test(request.url)) void reply.header('Content-Security-Policy', CSP_OF_DOCS);
    done();
  });
}
