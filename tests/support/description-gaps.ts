/** What is missing in the API's description for those who generate clients from it, by kind of gap. */

export type Gaps = Readonly<Record<string, readonly string[]>>;

interface Operation {
  readonly where: string;
  readonly verb: string;
  readonly path: string;
  readonly it: any;
}

const VERBS = ['get', 'post', 'put', 'patch', 'delete'];
const JSON_TYPE = 'application/json';

/** @param document the description, as served @returns each kind of gap with the places where it is found */
export function gapsOf(document: any): Gaps {
  const operations = operationsOf(document);
  const properties = [...propertiesIn(document.components.schemas, 'components'), ...propertiesIn(document.paths, 'paths')];
  const among = (isGap: (operation: Operation) => boolean) => operations.filter(isGap).map(({ where }) => where);
  return {
    'JSON answers without a named schema': among(({ it, path }) => path.startsWith('/v1/') && answersOf(it).some(isUnnamed)),
    'JSON bodies without a named schema': among(({ it }) => it.requestBody?.content[JSON_TYPE] && isUnnamed(it.requestBody)),
    'schemas without a description': Object.entries<any>(document.components.schemas).flatMap(([name, one]) =>
      one.description ? [] : [name],
    ),
    'properties without a description': properties.flatMap(([where, one]) => (one.description || one.$ref ? [] : [where])),
    'properties without the unit that their names say': properties.flatMap(([where, one]) =>
      /[a-z](Percent|MPa|Tex|Bytes|Ms|Mm|N|S|M)$/.test(where) && one.description && !/\[.+\]/.test(one.description) ? [where] : [],
    ),
    'parameters without a description': among(({ it }) => (it.parameters ?? []).some((one: any) => !one.description)),
    'numbers in addresses that are said to be text': among(({ it }) =>
      (it.parameters ?? []).some(
        (one: any) =>
          one.in === 'path' && ['number', 'revision', 'specimen', 'version'].includes(one.name) && one.schema.type !== 'integer',
      ),
    ),
    'refusals that are not told by status': among(
      ({ it }) => !['400', '429', '503'].every((status) => it.responses[status]) || it.responses['4XX'],
    ),
    'readers by a key that are not told of refusal': among(
      ({ it }) => it.security?.length > 0 && !(it.responses['401'] && it.responses['403']),
    ),
    'public reads without 304, ETag and If-None-Match': among(({ it, verb, path }) => isPublicRead(it, verb, path) && !isCached(it)),
    'answers without headers': among(({ it }) => answersOf(it).some(({ headers }) => Object.keys(headers ?? {}).length === 0)),
    'posts of an account without Idempotency-Key': among(
      ({ it, verb }) =>
        verb === 'post' && it.security?.length > 0 && !(it.parameters ?? []).some(({ name }: any) => name === 'Idempotency-Key'),
    ),
    'changes by a session without CSRF token': among(
      ({ it, verb }) => verb !== 'get' && (it.security ?? []).some((one: any) => one.session && !one.csrf),
    ),
    'files that are said to be JSON': among(({ it }) =>
      ['text/csv', 'multipart/form-data'].some((type) => isJson(it.requestBody?.content[type]?.schema, type)),
    ),
    'pages whose length cannot be asked for': among(({ it }) => hasParameter(it, 'cursor') && !hasParameter(it, 'limit')),
    'names of operations in another style': among(({ it, verb }) => !isNamedWell(it.operationId, verb)),
  };
}

const operationsOf = (document: any): Operation[] =>
  Object.entries<any>(document.paths).flatMap(([path, item]) =>
    VERBS.filter((verb) => item[verb]).map((verb) => ({ where: `${verb.toUpperCase()} ${path}`, verb, path, it: item[verb] })),
  );

const answersOf = (operation: any): any[] =>
  Object.entries<any>(operation.responses).flatMap(([status, one]) => (status.startsWith('2') ? [one] : []));
const isUnnamed = ({ content }: any): boolean => content?.[JSON_TYPE] !== undefined && !content[JSON_TYPE].schema?.$ref;
const isPublicRead = ({ security }: any, verb: string, path: string): boolean =>
  verb === 'get' && path.startsWith('/v1/') && security?.length === 0;
const isCached = (it: any): boolean =>
  it.responses['304'] &&
  answersOf(it).every(({ headers }) => headers?.ETag) &&
  it.parameters.some(({ name }: any) => name === 'If-None-Match');
const hasParameter = ({ parameters = [] }: any, wanted: string): boolean => parameters.some(({ name }: any) => name === wanted);
const isJson = (schema: any, type: string): boolean =>
  schema && (type === 'text/csv' ? schema.type !== 'string' : schema.type !== 'object' || !schema.properties);

/** A verb and what it is done to: reads begin with get, and nothing is called after a verb of HTTP that says nothing. */
function isNamedWell(id: string, verb: string): boolean {
  if (!/^[a-z]+[A-Z][A-Za-z]*$/.test(id) || /^(post|put|patch|list|read)[A-Z]/.test(id)) return false;
  return (verb === 'get') === id.startsWith('get');
}

/** Every property of every object, with where it stands. */
function* propertiesIn(node: any, where: string): Generator<[string, any]> {
  if (typeof node !== 'object' || node === null) return;
  if (node.type === 'object' && node.properties)
    for (const [name, property] of Object.entries<any>(node.properties)) yield [`${where}.${name}`, property];
  for (const [key, value] of Object.entries(node))
    if (key !== 'example' && key !== 'examples') yield* propertiesIn(value, `${where}/${key}`);
}
