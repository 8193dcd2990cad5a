import type { OpenAPIObject } from '@nestjs/swagger';
import { isDeprecated } from '../contract/deprecated-addresses.js';
import { LARGEST_FILE_BYTES, sizeWords } from '../contract/body-sizes.js';
import { KEPT_HOURS } from '../platform/http/idempotency/idempotent-answers.store.js';
import type { Json } from './components.js';
import { FIELDS, PARTS, PATH_PARAMETERS } from './field-words.js';
import { withUnit } from './unit-words.js';
import { refusal, refusalComponents } from './refusals.js';
import { answerHeaders, headerComponents } from './answer-headers.js';

type Operation = NonNullable<OpenAPIObject['paths'][string]['get']>;

const IDEMPOTENCY_KEY = {
  name: 'Idempotency-Key',
  in: 'header',
  required: false,
  description: `A key of your own, e.g. a UUID. The first answer is stored together with the work and replayed for ${KEPT_HOURS} hours; the same key with another body is refused. An answer that holds a secret is not kept: the repeat is told that it was done. If the server dies at the work, nothing of it stays and the key is free after 30 seconds.`,
  schema: { type: 'string', minLength: 1, maxLength: 200, pattern: '^[\\x21-\\x7e]+$' },
} as const;

const IF_NONE_MATCH = {
  name: 'If-None-Match',
  in: 'header',
  required: false,
  description: 'ETag of what you have; 304 when it is still the same',
  schema: { type: 'string' },
} as const;

/** Adds to every operation what holds for all of its kind: limits, versions, keys of changes that are sent again, refusals, headers, credentials. */
export function describeConventions(document: OpenAPIObject): void {
  const schemas = (document.components?.schemas ?? {}) as Record<string, Json>;
  document.components = { ...document.components, responses: refusalComponents(), headers: headerComponents() };
  for (const [address, path] of Object.entries(document.paths)) {
    for (const [verb, operation] of Object.entries(path) as [string, Operation][]) describeOperation(address, verb, operation, schemas);
  }
  describeFields(document);
  describeParts(document, schemas);
}

const isOpen = ({ security }: Operation): boolean => security?.length === 0;
const has = ({ parameters = [] }: Operation, place: string): boolean => parameters.some((one) => 'in' in one && one.in === place);

function describeOperation(address: string, verb: string, operation: Operation, schemas: Readonly<Record<string, Json>>): void {
  const isCached = verb === 'get' && isOpen(operation) && address.startsWith('/v1/');
  if (isDeprecated(address)) operation.deprecated = true;
  const parameters = (operation.parameters ??= []);
  describePath(parameters);
  describeBody(operation);
  const needsMatch = parameters.some((parameter) => 'name' in parameter && parameter.name === 'If-Match');
  if (verb === 'post' && !isOpen(operation)) parameters.push(IDEMPOTENCY_KEY);
  if (isCached) parameters.push(IF_NONE_MATCH);
  if (verb !== 'get') operation.security = operation.security?.map((one) => ('session' in one ? { ...one, csrf: [] } : one)) ?? [];
  answerHeaders(operation, isCached, schemas);
  if (operation.deprecated) Object.assign(headersOf(operation), RETIRING_HEADERS);
  if (isCached)
    operation.responses['304'] = { description: 'You have it already', headers: { ETag: { $ref: '#/components/headers/Digest' } } };
  for (const status of refusalsOf(address, verb, operation, needsMatch)) operation.responses[String(status)] = refusal(status);
}

const RETIRING_HEADERS = { Deprecation: { $ref: '#/components/headers/Deprecation' }, Sunset: { $ref: '#/components/headers/Sunset' } };

function headersOf({ responses }: Operation): object {
  const answer = responses['200'];
  return answer && 'description' in answer ? (answer.headers ??= {}) : {};
}

function describePath(parameters: NonNullable<Operation['parameters']>): void {
  for (const parameter of parameters) {
    if (!('in' in parameter) || parameter.in !== 'path') continue;
    const description = PATH_PARAMETERS[parameter.name];
    if (description !== undefined) parameter.description ??= description;
  }
}

/** Read from the request itself, as it may be a stream. */
const HAND_IN = '#/components/schemas/SubmissionContentInput';
const PICTURE = { description: 'One picture', type: 'string', contentMediaType: 'application/octet-stream' } as const;
const FILE = { description: 'One file of the kind that text/csv takes', type: 'string', contentMediaType: 'text/csv' } as const;

/** A body that may be a file: JSON has its schema, a file is text, a form carries one file. */
function describeBody(operation: Operation): void {
  const { requestBody } = operation;
  if (!requestBody || !('content' in requestBody)) return;
  const { content } = requestBody;
  if (content['text/csv'])
    content['text/csv'] = {
      schema: { type: 'string', description: `CSV with a header row (RFC 4180), UTF-8, at most ${sizeWords(LARGEST_FILE_BYTES)}` },
    };
  if (content['multipart/form-data'])
    content['multipart/form-data'] = {
      schema: {
        type: 'object',
        description: 'A form with one file',
        properties: { file: content['text/csv'] ? FILE : PICTURE },
        required: ['file'],
      },
    };
  const sent = content['application/json']?.schema;
  if (sent && 'text/csv' in content) content['application/json'] = { schema: { $ref: HAND_IN } };
}

function refusalsOf(address: string, verb: string, operation: Operation, needsMatch: boolean): number[] {
  const isChange = verb !== 'get';
  const takesBody = operation.requestBody !== undefined;
  const isRead = isOpen(operation) && !isChange;
  return [
    400,
    ...(isOpen(operation) ? [] : [401, 403]),
    ...(isOpen(operation) && isChange ? [401] : []),
    ...(has(operation, 'path') || isRead ? [404] : []),
    ...(isChange ? [409] : []),
    ...(address.includes('{secret}') ? [410] : []),
    ...(takesBody ? [413, 415] : []),
    ...(takesBody || has(operation, 'query') || has(operation, 'path') || (verb === 'post' && !isOpen(operation)) ? [422] : []),
    ...(needsMatch ? [412, 428] : []),
    429,
    503,
  ];
}

/** A field that says nothing of itself is what its name says everywhere; so is its unit. */
function describeFields(document: OpenAPIObject): void {
  const visit = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return;
    const { type, properties } = node as { type?: unknown; properties?: Record<string, Json> };
    if (type === 'object' && properties) for (const [name, property] of Object.entries(properties)) describeField(name, property);
    Object.values(node).forEach(visit);
  };
  for (const [name, schema] of Object.entries(document.components?.schemas ?? {}))
    (schema as Json)['description'] ??= PARTS[name.replace(/Input$/, '')];
  visit(document.components?.schemas);
  visit(document.paths);
}

function describeField(name: string, property: Json): void {
  if (FIELDS[name] !== undefined) property['description'] ??= FIELDS[name];
  const words = withUnit(name, property['description']);
  if (words !== null) property['description'] = words;
}

/** A body or an answer that says nothing of itself is what its operation is about. */
function describeParts(document: OpenAPIObject, schemas: Readonly<Record<string, Json>>): void {
  const tell = (schema: unknown, words: string): void => {
    const name = ((schema as Json | undefined)?.['$ref'] as string | undefined)?.split('/').at(-1) ?? '';
    if (schemas[name]) schemas[name]['description'] ??= words;
  };
  for (const path of Object.values(document.paths)) {
    for (const operation of Object.values(path) as Operation[]) {
      const { requestBody, responses, summary = '' } = operation;
      if (requestBody && 'content' in requestBody) tell(requestBody.content['application/json']?.schema, `Body of: ${summary}`);
      for (const response of Object.values(responses))
        if (response && 'content' in response) tell(response.content['application/json']?.schema, `Answer of: ${summary}`);
    }
  }
}
