import type { OpenAPIObject } from '@nestjs/swagger';
import type { PublicChange } from '../contract/documents/changes.js';
import { PAUSED_AFTER_DAYS, webhookEventSchema } from '../contract/endpoints/webhooks.js';
import type { Components } from './components.js';

const header = (name: string, description: string, example: string) =>
  ({ name, in: 'header', required: true, description, schema: { type: 'string', examples: [example] } }) as const;

const HEADERS = [
  header('webhook-id', 'The same for every attempt at the same change, also when it is told again: drop what you have', 'change_12'),
  header('webhook-timestamp', 'When this attempt was made, seconds since 1970: refuse what is old', '1796083200'),
  header(
    'webhook-signature',
    'v1, a comma, and the base64 of HMAC-SHA256 over webhook-id, webhook-timestamp and the body as it came, joined by full stops; its key is the base64 of the secret after whsec_',
    'v1,g0hM9SsE+OTPJTGt/tmIKtSyZlE3uFJELVlNIOLJ1OE=',
  ),
];

const CHANGE: PublicChange = {
  number: 12,
  at: '2026-03-07T09:00:00.000Z',
  kind: 'release.published',
  edition: '2026',
  thing: null,
  revision: 1,
  digest: '9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08',
  manifest: '/v1/releases/2026/1/manifest.json',
  erratum: null,
};

/** Says what is posted to those who are told of changes, and what becomes of what they answer. */
export function describeEvents(document: OpenAPIObject, components: Components): void {
  const schema = components.convert(webhookEventSchema, 'output');
  const example = { type: CHANGE.kind, timestamp: CHANGE.at, data: CHANGE };
  document.webhooks = {
    change: {
      post: {
        operationId: 'tellChange',
        tags: ['Webhooks'],
        summary: 'A change, as it is told to a webhook.',
        description:
          'Posted for each change of the kinds that the webhook takes, in the order in which they became true, and again until it is taken. Signed after the Standard Webhooks conventions with the secret that POST /v1/webhooks answered.',
        parameters: HEADERS,
        // Who it is from is told by the signature.
        security: [],
        requestBody: { required: true, content: { 'application/json': { schema, example } } },
        responses: {
          '2XX': { description: 'Taken: the next one follows' },
          default: {
            description: `Anything else, and no answer in time: tried again with growing waits before anything later is told; the webhook is paused when every attempt of ${PAUSED_AFTER_DAYS} days failed, by 410 at once. Redirects are not followed`,
          },
        },
      },
    },
  };
}
