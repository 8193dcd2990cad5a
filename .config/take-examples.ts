/**
 * `node --import ./.config/load-typescript.mjs .config/take-examples.ts <description> <exchanges>`: makes api/openapi/examples.json from what
 * tests sent and got (`NOTE_EXCHANGES=<file> npm test -- tests/api tests/stories`), the shortest of each operation, lists cut to two items.
 */
import { readFile, writeFile } from 'node:fs/promises';
import { schemaChecker } from '../tests/support/schema-checker.js';
import type { Exchange } from '../tests/support/note-exchanges.js';

interface Body {
  readonly content?: { readonly 'application/json'?: { readonly schema: object } };
}

/** What is read of the description. */
interface Description {
  readonly paths: Readonly<
    Record<
      string,
      Readonly<
        Record<string, { readonly operationId: string; readonly requestBody?: Body; readonly responses: Readonly<Record<string, Body>> }>
      >
    >
  >;
}

const LONGEST = 2;
/** What nobody is to take for a secret of theirs. */
const SECRETS: Readonly<Record<string, string>> = {
  password: 'a long enough password',
  currentPassword: 'a long enough password',
  csrfToken: 'dHMtJ3Mgbm90IGEgc2VjcmV0',
  token: 'fp_0000000000000000000000000000000000000000000',
  secret: 'MDAwMDAwMDAwMDAwMDAwMDAwMDAwMA',
};

const [, , described = '', noted = ''] = process.argv;
const document = JSON.parse(await readFile(described, 'utf8')) as Description;
const exchanges = (await readFile(noted, 'utf8'))
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line) as Exchange);
const isValid = schemaChecker(document);

/** A value without its long lists and secrets. */
function shortened(value: unknown, key = ''): unknown {
  if (Array.isArray(value)) return value.slice(0, LONGEST).map((one) => shortened(one));
  if (typeof value === 'string') return SECRETS[key] ?? value;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, shortened(one, name)]));
}

/** The fullest of the values that are short: an empty list is no example. */
function bestOf(values: readonly unknown[], schema: unknown): unknown {
  const fitting = values.map((value) => shortened(value)).filter((value) => isValid(schema, value));
  const isEmptyList = (value: unknown) => (value as { items?: unknown[] } | null)?.items?.length === 0;
  const emptiness = (value: unknown) => (JSON.stringify(value).match(/\[\]|null/g) ?? []).length;
  const rank = (value: unknown) => (isEmptyList(value) ? 1e6 : 0) + emptiness(value) * 400 + JSON.stringify(value).length;
  return fitting.toSorted((a, b) => rank(a) - rank(b))[0];
}

const examples: Record<string, { body?: unknown; answer?: unknown }> = {};
const fits = (template: string, path: string) =>
  new RegExp(`^${template.replace(/[.]/g, '\\.').replace(/\{[^}]+\}/g, '[^/]+')}$`).test(path);
const templates = Object.keys(document.paths).toSorted((a, b) => a.split('{').length - b.split('{').length);
const byOperation = Map.groupBy(exchanges, ({ method, path }) => `${method} ${templates.find((one) => fits(one, path)) ?? ''}`);
for (const [path, item] of Object.entries(document.paths))
  for (const [method, operation] of Object.entries(item)) {
    const own = byOperation.get(`${method} ${path}`) ?? [];
    const answer = Object.entries(operation.responses).find(([status]) => status.startsWith('2'))?.[1].content?.['application/json'];
    const body = operation.requestBody?.content?.['application/json'];
    const example = {
      ...(body && {
        body: bestOf(
          own.flatMap(({ sent }) => (sent ? [sent] : [])),
          body.schema,
        ),
      }),
      ...(answer && {
        answer: bestOf(
          own.map((one) => one.answer),
          answer.schema,
        ),
      }),
    };
    examples[operation.operationId] = example;
    for (const [part, of] of [
      ['body', body],
      ['answer', answer],
    ] as const)
      if (of && example[part] === undefined) process.stdout.write(`No ${part}: ${method} ${path} (${own.length} exchanges)\n`);
  }
const lines = Object.entries(examples)
  .filter(([, one]) => Object.keys(one).length > 0)
  .toSorted(([a], [b]) => (a < b ? -1 : 1));
await writeFile(
  'api/openapi/examples.json',
  `{\n${lines.map(([id, one]) => `${JSON.stringify(id)}: ${JSON.stringify(one)}`).join(',\n')}\n}\n`,
);
