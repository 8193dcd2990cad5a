import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { typedClient } from '../../api/openapi/typed-client.js';
import { compileAgainst } from '../support/compile-client.js';
import { gapsOf } from '../support/description-gaps.js';
import { schemaChecker } from '../support/schema-checker.js';
import { createTestApplication } from '../support/test-application.js';
import type { TestApplication } from '../support/test-application.js';

const run = promisify(execFile);
const VERBS = ['get', 'post', 'put', 'patch', 'delete'];

let t: TestApplication;
let document: any;
beforeAll(async () => {
  t = await createTestApplication({ PUBLIC_URL: 'https://trials.example' });
  document = (await t.call('get', '/v1/openapi.json').expect(200)).body;
});
afterAll(() => t.close());

const operations = (): [string, any][] => operationsOf(document);
const operationsOf = (described: any): [string, any][] =>
  Object.entries<any>(described.paths).flatMap(([path, item]) =>
    Object.entries<any>(item)
      .filter(([verb]) => VERBS.includes(verb))
      .map(([verb, operation]): [string, any] => [`${verb.toUpperCase()} ${path}`, operation]),
  );
const named = (isFaulty: (operation: any, name: string) => boolean): string[] =>
  operations()
    .filter(([name, operation]) => isFaulty(operation, name))
    .map(([name]) => name);

test('the page that shows it begins with groups that anybody may read without an account', () => {
  const groups = [...new Set(operations().flatMap(([, { tags }]) => tags as string[]))];
  const isOpen = (group: string) =>
    named(({ tags }) => tags.includes(group)).length ===
    named(({ tags, security }, name) => tags.includes(group) && name.startsWith('GET ') && security.length === 0).length;
  const open = groups.filter(isOpen);
  expect(open.length).toBeGreaterThan(5);
  expect(groups.slice(0, open.length)).toEqual(open);
});

interface Broken {
  readonly ruleId: string;
  readonly message: string;
  readonly location: readonly { readonly pointer?: string }[];
}

/** What `npm run openapi:lint` says of a document, by a linter that knows nothing of this program but .config/redocly.yaml, and how it ends. */
async function lint(described: unknown): Promise<{ problems: Broken[]; code: number }> {
  const folder = await mkdtemp(join(tmpdir(), 'openapi-'));
  try {
    const file = join(folder, 'openapi.json');
    await writeFile(file, JSON.stringify(described));
    const args = ['--import', './.config/load-typescript.mjs', '.config/lint-openapi.ts', file, '--format', 'json'];
    const ended = await run(process.execPath, args, { maxBuffer: 20_000_000 }).catch(
      (error: unknown) => error as { stdout: string; code: number },
    );
    return { problems: JSON.parse(ended.stdout).problems, code: 'code' in ended ? ended.code : 0 };
  } finally {
    await rm(folder, { recursive: true });
  }
}

test('the document passes the strict rules of a linter and the conventions of this API', async () => {
  const { problems, code } = await lint(document);
  expect(problems.map(({ ruleId, message, location }) => `${ruleId}: ${message} at ${location[0]?.pointer ?? ''}`)).toEqual([]);
  expect(code).toBe(0);
});

test('a document that leaves a convention is refused by the rule for it', async () => {
  const broken = structuredClone(document);
  const { get, post } = broken.paths['/v1/catalogue/makers'];
  const { patch } = broken.paths['/v1/catalogue/makers/{slug}'];
  delete get.responses['429'];
  get.responses['404'] = { description: 'Without a body' };
  delete get.description;
  get.tags.push('Second');
  delete post.responses['409'];
  delete patch.responses['428'];
  delete patch.parameters[0].description;
  patch.requestBody.content = { 'application/xml': { schema: { type: 'object', properties: { snake_case: { type: 'string' } } } } };
  broken.paths['/elsewhere/oddOnes'] = { get: broken.paths['/v1/catalogue/lines'].get };
  delete broken.paths['/v1/catalogue/lines'];
  const { problems, code } = await lint(broken);
  expect(code).toBe(1);
  expect([...new Set(problems.map(({ ruleId }) => ruleId))].sort()).toEqual([
    'no-unused-components',
    'operation-4xx-problem-details-rfc7807',
    'operation-description',
    'operation-singular-tag',
    'parameter-description',
    'paths-kebab-case',
    'request-mime-type',
    'rule/changes-are-refused-without-the-version',
    'rule/fields-in-camel-case',
    'rule/limits-are-told',
    'rule/paths-under-a-version',
    'rule/posts-take-an-idempotency-key',
  ]);
});

test('every operation has a name of its own, a summary and one tag', () => {
  expect(operations().length).toBeGreaterThan(80);
  expect(named(({ summary }) => !summary)).toEqual([]);
  expect(named(({ tags }) => tags?.length !== 1)).toEqual([]);
  const ids = operations().map(([, { operationId }]) => operationId as string);
  expect(ids.filter((id, i) => !id || ids.indexOf(id) !== i)).toEqual([]);
});

test('it tells who may call: credentials where they are needed, none where anyone may', () => {
  const isOpen = (operation: any) => JSON.stringify(operation.security) === '[]';
  const saysAnyone = (operation: any) => /For: anyone\.$/.test(operation.description);
  expect(named((operation) => isOpen(operation) !== saysAnyone(operation))).toEqual([]);
  expect(named((operation) => !isOpen(operation) && !(operation.security?.length > 0))).toEqual([]);
});

test('every answer says what it is, refusals included', () => {
  const answers = operations().flatMap(([name, { responses }]) =>
    Object.entries<any>(responses).map(([status, response]): [string, string, any] => [name, status, response]),
  );
  const bare = answers.filter(
    ([, status, response]) =>
      !['204', '304'].includes(status) && !response.$ref && !Object.values<any>(response.content ?? {}).some(({ schema }) => schema),
  );
  expect(bare.map(([name, status]) => `${name} ${status}`)).toEqual([]);
  expect(named(({ responses }) => !Object.keys(responses).some((status) => status.startsWith('4')))).toEqual([]);
});

test('nothing is missing that a generator of clients needs', () => {
  expect(Object.keys(document.components.schemas).length).toBeGreaterThan(150);
  expect(Object.entries(gapsOf(document)).filter(([, places]) => places.length > 0)).toEqual([]);
});

test('each kind of gap is found', () => {
  const broken = structuredClone(document);
  const { get, post } = broken.paths['/v1/catalogue/makers'];
  const open = broken.paths['/v1/makers'].get;
  const file = broken.paths['/v1/submissions'].post;
  open.responses['200'].content['application/json'].schema = { type: 'string' };
  post.requestBody.content['application/json'].schema = { type: 'object' };
  delete broken.components.schemas.Figure.description;
  delete broken.components.schemas.Figure.properties.value.description;
  broken.components.schemas.Figure.properties.forceN = { type: 'string', description: 'A force' };
  delete get.parameters[0].description;
  for (const one of broken.paths['/v1/methods/{method}/versions/{number}'].get.parameters) one.schema = { type: 'string' };
  delete get.responses['429'];
  delete get.responses['401'];
  delete open.responses['304'];
  delete get.responses['200'].headers;
  post.parameters = [];
  post.security = [{ session: [] }];
  file.requestBody.content['text/csv'].schema = { type: 'object' };
  post.operationId = 'postCatalogueMaker';
  broken.paths['/v1/queries'].get.parameters = broken.paths['/v1/queries'].get.parameters.filter(({ name }: any) => name !== 'limit');
  const empty = Object.entries(gapsOf(broken)).filter(([, places]) => places.length === 0);
  expect(empty.map(([kind]) => kind)).toEqual([]);
});

test('a gap alone, of which a linter knows nothing, is refused too', async () => {
  const broken = structuredClone(document);
  delete broken.components.schemas.Figure.description;
  expect(await lint(broken)).toEqual({ problems: [], code: 1 });
});

interface Part {
  readonly where: string;
  readonly schema: any;
  readonly example: any;
}

/** Every body, and every answer to what was done, that carries something. */
const partsOf = (described: any): Part[] =>
  operationsOf(described).flatMap(([where, { requestBody, responses }]) => {
    const answers = Object.entries<any>(responses).flatMap(([status, one]) => (status.startsWith('2') ? [one] : []));
    return [requestBody, ...answers].flatMap((one) => contentOf(where, one));
  });
const contentOf = (where: string, one: any): Part[] =>
  Object.entries<any>(one?.content ?? {}).map(([type, { schema, example }]) => ({ where: `${where} ${type}`, schema, example }));

test('every body and every answer has an example, which its schema takes (JSON Schema 2020-12, by another validator)', () => {
  const isValid = schemaChecker(document);
  expect(isValid({ $ref: '#/components/schemas/ReleasesResponse' }, { items: [{}], nextCursor: null })).toBe(false);
  const parts = [
    ...partsOf(document),
    ...Object.values<any>(document.webhooks).flatMap(({ post }) => contentOf('webhooks', post.requestBody)),
  ];
  expect(parts.length).toBeGreaterThan(180);
  // Where one is missing: NOTE_EXCHANGES=<file> npm test -- <tests that send it>, then .config/take-examples.ts.
  expect(parts.filter(({ example }) => example === undefined).map(({ where }) => where)).toEqual([]);
  expect(parts.filter(({ schema, example }) => !isValid(schema, example)).map(({ where }) => where)).toEqual([]);
  // Nothing of what an item is can be read off an empty list.
  expect(parts.filter(({ example }) => example.items?.length === 0).map(({ where }) => where)).toEqual([]);
});

test('examples of bodies are sent as they stand: none is refused for its form', async () => {
  const admin = await t.caller(['admin', 'editor', 'reviewer', 'tester']);
  const refused: string[] = [];
  for (const [where, { requestBody, parameters = [] }] of operations()) {
    const [verb, path = ''] = where.split(' ');
    const at = path.replace(/\{(\w+)\}/g, (_, name) => (name === 'id' ? '01a218e2-2132-74aa-9e40-a9fa2e25ace9' : 'none'));
    for (const type of ['application/json', 'text/csv']) {
      const example = requestBody?.content?.[type]?.example;
      if (example === undefined || path.startsWith('/v1/sessions') || path.startsWith('/v1/invitations')) continue;
      const call = admin.browse(verb!.toLowerCase() as 'post', at).set('Content-Type', type);
      if (parameters.some(({ name }: any) => name === 'If-Match')) void call.set('If-Match', '"1"');
      const { status, body } = await call.send(example);
      if (status === 400 || status >= 500 || (body.errors ?? []).some(({ code }: any) => FORM.includes(code)))
        refused.push(`${where} ${type}: ${status} ${JSON.stringify(body.errors ?? body)}`);
    }
  }
  expect(refused).toEqual([]);
});

/** Codes of faults that a schema finds, or whoever reads the heading of a file. */
const FORM = [
  ...['invalid_type', 'unrecognized_keys', 'invalid_union', 'invalid_value', 'invalid_format'],
  ...['column_missing', 'column_unknown', 'unit_missing', 'unit_unknown'],
];

test('a program that reads every public document compiles with a client made from the description, without a cast', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'client-'));
  try {
    const program = 'tests/clients/read-everything.mts';
    expect(await readFile(program, 'utf8')).not.toMatch(/\bas\b (?!const)|\bany\b|@ts-|!\./);
    const client = await typedClient(document);
    expect(await compileAgainst(folder, program, client)).toBe('');
    const other = { ...client, types: client.types.replaceAll('sha256: string', 'digest256: string') };
    expect(await compileAgainst(folder, program, other)).toContain("'sha256' does not exist");
  } finally {
    await rm(folder, { recursive: true });
  }
});

test('what needs If-Match says so', () => {
  const needs = named(({ parameters }) => (parameters ?? []).some((one: any) => one.name.toLowerCase() === 'if-match' && one.required));
  expect(needs).toContain('POST /v1/editions/{edition}/closure');
  const stateful = named((_, name) => /^(PUT|PATCH)/.test(name));
  // A password is not read before it is changed; who changes it tells the one until now.
  expect(stateful.filter((name) => !needs.includes(name))).toEqual([]);
});
