import type { OpenAPIObject } from '@nestjs/swagger';
import { KEPT_HOURS } from './platform/http/idempotent-answers.store.js';

type Operation = NonNullable<OpenAPIObject['paths'][string]['get']>;

/** What stands in a path, for everybody who reads the description. */
const PATH_PARAMETERS: Readonly<Record<string, string>> = {
  category: 'Slug of a category of the edition',
  certificate: 'Number of the certificate',
  code: 'Code on the label of the spool or of the instrument',
  edition: 'Slug of the edition',
  id: 'Identifier, a UUID',
  method: 'Slug of the method',
  number: 'Number of the version, from 1',
  quantity: 'Quantity that is claimed',
  reference: 'Reference of the submission or draft',
  revision: 'Number of the revision, from 1',
  secret: 'Secret of the invitation',
  slug: 'Slug, as it stands in public addresses',
  variant: 'Slug of the variant',
};

const IDEMPOTENCY_KEY = {
  name: 'Idempotency-Key',
  in: 'header',
  required: false,
  description: `A key of your own, e.g. a UUID. The first answer is stored together with the work and replayed for ${KEPT_HOURS} hours; the same key with another body is refused. An answer that holds a secret is not kept: the repeat is told that it was done. If the server dies at the work, nothing of it stays and the key is free after 30 seconds.`,
  schema: { type: 'string', minLength: 1, maxLength: 200, pattern: '^[\\x21-\\x7e]+$' },
} as const;

const refusal = (description: string) => ({
  description,
  content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } },
});

/** Adds to every operation what holds for all of its kind: the limit, the version in If-Match, the key of a change that is sent again. */
export function describeConventions(document: OpenAPIObject): void {
  for (const path of Object.values(document.paths)) {
    for (const [verb, operation] of Object.entries(path) as [string, Operation][]) describeOperation(verb, operation);
  }
}

function describeOperation(verb: string, operation: Operation): void {
  const parameters = (operation.parameters ??= []);
  for (const parameter of parameters) {
    if (!('in' in parameter) || parameter.in !== 'path') continue;
    const description = PATH_PARAMETERS[parameter.name];
    if (description !== undefined) parameter.description ??= description;
  }
  operation.responses['429'] = refusal('Too many requests; Retry-After says when to come back');
  if (parameters.some((parameter) => 'name' in parameter && parameter.name === 'If-Match')) {
    operation.responses['412'] = refusal('If-Match is stale: read the resource again');
    operation.responses['428'] = refusal('If-Match is missing');
  }
  if (verb === 'post' && operation.security?.length !== 0) {
    parameters.push(IDEMPOTENCY_KEY);
    operation.responses['409'] = refusal('The first request with this Idempotency-Key still runs, or the state of the resource forbids it');
    operation.responses['422'] = refusal('What was sent is not valid, or this Idempotency-Key stood with another body');
  }
}
