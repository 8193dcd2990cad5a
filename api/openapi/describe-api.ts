import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { DocumentBuilder, SwaggerModule } from '@nestjs/swagger';
import type { OpenAPIObject } from '@nestjs/swagger';
import type { ZodType } from 'zod';
import type { Config } from '../config.js';
import { SESSION_COOKIE } from '../platform/http/access.js';
import { problemSchema } from '../contract/problem.js';
import { submissionContent } from '../contract/submission-content.js';
import { Components } from './components.js';
import { describeConventions } from './describe-conventions.js';
import { describeEvents } from './describe-events.js';
import { addExamples } from './examples.js';

type Operation = NonNullable<OpenAPIObject['paths'][string]['get']>;

/** Names of operations: whatever the method is called, it reads with get and says else what it does. */
const DONE: Readonly<Record<string, string>> = { post: 'create', put: 'replace', patch: 'change', list: 'get', read: 'get' };
const operationId = (method: string): string => method.replace(/^(post|put|patch|list|read)(?=[A-Z])/, (verb) => DONE[verb] ?? verb);

/** The OpenAPI 3.1 document, made from the schemas that validate and serialise. */
export function describeApi(app: NestFastifyApplication, config: Config): OpenAPIObject {
  const heading = new DocumentBuilder()
    .setOpenAPIVersion('3.1.0')
    .setTitle('Fairpull')
    .setDescription(
      `Bench record and published results of independent fishing-line tests. Figures describe the spools tested and are no basis for lifting, climbing, towing or rescue.

What is published can be read and tried without an account. For the rest sign in here by POST /v1/sessions, which keeps you signed in for reading; for changes put the csrfToken that it answers under Authorize, csrf. Programs take a token (POST /v1/tokens).`,
    )
    .setExternalDoc('Worked examples', `${config.PUBLIC_URL}/read/programs/`)
    .setVersion('1')
    .setLicense('MIT', 'https://opensource.org/license/mit')
    .addServer(config.PUBLIC_URL)
    .addBearerAuth({ type: 'http', scheme: 'bearer', bearerFormat: 'opaque' }, 'token')
    .addApiKey(
      { type: 'apiKey', in: 'cookie', name: SESSION_COOKIE, description: 'Session of a person at a browser (POST /v1/sessions)' },
      'session',
    )
    .addApiKey(
      { type: 'apiKey', in: 'header', name: 'X-CSRF-Token', description: 'csrfToken of the sign-in, with every change of a session' },
      'csrf',
    )
    .build();
  const components = new Components();
  const document = SwaggerModule.createDocument(app, heading, {
    operationIdFactory: (_controller, method) => operationId(method),
    standardSchemaConverter: (schema, { schemaType }) => ({ schema: components.convert(schema as ZodType, schemaType) }),
  });
  components.convert(problemSchema, 'output');
  components.convert(submissionContent, 'input');
  describeEvents(document, components);
  document.components = { ...document.components, schemas: components.schemas };
  document.paths = openReadsFirst(document.paths);
  nameGroups(document.paths);
  describeConventions(document);
  addExamples(document);
  return document;
}

/** PublishedReleases → Published releases. */
function nameGroups(paths: OpenAPIObject['paths']): void {
  for (const operation of Object.values(paths).flatMap((path) => Object.values(path) as Operation[]))
    operation.tags = operation.tags?.map((tag) => tag.replace(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)) ?? [];
}

/** Groups that anybody may read and try without an account come first, as the page shows them; else as the program has it. */
function openReadsFirst(paths: OpenAPIObject['paths']): OpenAPIObject['paths'] {
  const operationsOf = (path: OpenAPIObject['paths'][string]) => Object.entries(path) as [string, Operation][];
  const closed = Object.values(paths)
    .flatMap(operationsOf)
    .filter(([verb, { security }]) => verb !== 'get' || security?.length !== 0)
    .flatMap(([, { tags = [] }]) => tags);
  const rankOf = (path: OpenAPIObject['paths'][string]) =>
    operationsOf(path).some(([, { tags = [] }]) => tags.some((tag) => closed.includes(tag))) ? 1 : 0;
  return Object.fromEntries(Object.entries(paths).toSorted(([, a], [, b]) => rankOf(a) - rankOf(b)));
}

/** Serves the document at /v1/openapi.json and a page to read it at /docs. */
export function serveOpenApi(app: NestFastifyApplication, config: Config): void {
  SwaggerModule.setup('docs', app, () => describeApi(app, config), {
    jsonDocumentUrl: 'v1/openapi.json',
    customSiteTitle: 'Fairpull API',
    // The page asks the server that it came from, under whichever name.
    patchDocumentOnRequest: (request, _response, document) =>
      (request as { url: string }).url.endsWith('.js') ? { ...document, servers: [{ url: '/' }] } : document,
  });
}
