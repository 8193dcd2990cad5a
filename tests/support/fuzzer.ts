/**
 * Asks every operation of the description for things that fit its schema, nearly fit it, or do not, as everybody who may ask.
 * Seeded: the same seed asks the same. Over real sockets on the loopback, one request at a time.
 */
import { request } from 'node:http';
import { Draws } from './invented/draws.js';

export type Json = null | boolean | number | string | Json[] | { [name: string]: Json };
interface Schema {
  readonly [keyword: string]: unknown;
}
interface Parameter {
  readonly name: string;
  readonly in: string;
  readonly schema?: Schema;
  readonly required?: boolean;
}
interface Operation {
  readonly parameters?: readonly Parameter[];
  readonly requestBody?: { readonly content: Readonly<Record<string, { readonly schema?: Schema }>> };
}
export interface Description {
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
  readonly components?: { readonly schemas?: Readonly<Record<string, Schema>> };
}

export interface Answer {
  readonly what: string;
  readonly status: number;
  readonly ms: number;
  readonly type: string;
  readonly text: string;
}

const VERBS = ['get', 'post', 'put', 'patch', 'delete'];
const MOST_DEPTH = 6;
/** What readers of text trip over. */
const ODD_TEXTS = [
  '',
  ' ',
  '\u0000',
  '\ud800',
  '\u202egnirts',
  'ﬀ',
  '0',
  '-1',
  '1e400',
  '9'.repeat(400),
  'x'.repeat(5000),
  'NaN',
  '2026-02-30',
  '0000-00-00',
  '+275760-09-13',
  "'; SELECT 1; --",
  '%00',
  '../../etc',
  '<b>',
  '=1+1',
  '[]',
  '{"a":1}',
  'null',
  '𝄞'.repeat(300),
];
const ODD_VALUES: readonly Json[] = [
  null,
  true,
  0,
  -1,
  1e308,
  2 ** 53,
  0.1,
  [],
  {},
  [[[[[[]]]]]],
  { __proto__x: 1, constructor: 1 },
  ...ODD_TEXTS,
];

/** Asks what a description offers. */
export class Fuzzer {
  private readonly draws: Draws;
  private readonly operations: readonly (readonly [verb: string, path: string, operation: Operation])[];
  private readonly wellKnown: Fuzzer['operations'];
  /** Names that answers gave, so that some requests are about things that are there. */
  private readonly seen: string[];

  constructor(
    private readonly description: Description,
    seed: number,
    seen: readonly string[],
    /** Operation → a body that is good, or was once; it is asked with slips. */
    private readonly good: Readonly<Record<string, Json>> = {},
  ) {
    this.draws = new Draws(seed);
    this.seen = [...seen];
    this.operations = Object.entries(description.paths).flatMap(([path, item]) =>
      Object.entries(item)
        .filter(([verb]) => VERBS.includes(verb))
        // Who ends their own sessions asks nothing more.
        .filter(([verb]) => !(verb === 'delete' && path.includes('sessions')))
        .map(([verb, operation]) => [verb, path, operation] as const),
    );
    this.wellKnown = this.operations.filter(([verb, path]) => `${verb.toUpperCase()} ${path}` in good);
  }

  get count(): number {
    return this.operations.length;
  }

  /** One request, drawn. */
  async ask(port: number, token: string | null): Promise<Answer> {
    const [verb, template, operation] = this.draws.pick(this.chance(0.4) ? this.wellKnown : this.operations);
    const path = template.replaceAll(/\{(\w+)\}|\*/g, () => encodeURIComponent(this.name()).replaceAll('.', '%2E'));
    const query = (operation.parameters ?? [])
      .filter((parameter) => parameter.in === 'query' && this.chance(0.5))
      .map(({ name, schema }) => `${name}=${encodeURIComponent(asText(this.value(schema ?? {}, 0)))}`)
      .join('&');
    const { type, body } = this.body(operation, this.good[`${verb.toUpperCase()} ${template}`]);
    const headers: Record<string, string> = {
      ...(token === null ? {} : { authorization: `Bearer ${token}` }),
      ...(type === null ? {} : { 'content-type': type }),
      ...(this.chance(0.6) ? { 'if-match': this.draws.pick(['"1"', '"2"', '"3"', '*', '1', 'W/"1"', '"x"']) } : {}),
      ...(this.chance(0.1) ? { 'idempotency-key': this.draws.pick(['a', 'b', 'x'.repeat(300)]) } : {}),
    };
    const answer = await send(port, verb.toUpperCase(), query === '' ? path : `${path}?${query}`, headers, body);
    for (const [, name] of answer.text.matchAll(/"(?:id|reference|slug|blindCode|code)":"([^"]{1,80})"/g))
      if (this.seen.length < 500) this.seen.push(name ?? '');
      else this.seen[Math.floor(this.draws.uniform() * 500)] = name ?? '';
    return { ...answer, what: `${verb.toUpperCase()} ${template}` };
  }

  private chance(share: number): boolean {
    return this.draws.uniform() < share;
  }

  private name(): string {
    return this.chance(0.75) ? this.draws.pick(this.seen) : wellFormed(this.draws.pick(ODD_TEXTS)) || 'x';
  }

  private body({ requestBody }: Operation, good: Json | undefined): { type: string | null; body: string | Buffer } {
    if (!requestBody) return this.chance(0.05) ? { type: 'application/json', body: '{"x":1}' } : { type: null, body: '' };
    if (good !== undefined && this.chance(0.6)) {
      const slips = Math.floor(3 * this.draws.uniform());
      const body = Array.from({ length: slips }).reduce<Json>((value) => this.slip(value), good);
      return { type: 'application/json', body: JSON.stringify(body) };
    }
    const [type, { schema = {} }] = this.draws.pick(Object.entries(requestBody.content));
    if (type === 'multipart/form-data') return this.form();
    if (type !== 'application/json' || this.chance(0.03)) return { type, body: this.nonsense() };
    const value = JSON.stringify(this.value(schema, 0));
    return { type, body: this.chance(0.03) ? value.slice(0, Math.floor(value.length / 2)) : value };
  }

  /** The same with one value, somewhere in it, another one, away or new. */
  private slip(value: Json): Json {
    if (Array.isArray(value) && value.length > 0 && this.chance(0.9)) {
      const at = Math.floor(this.draws.uniform() * value.length);
      return value.map((part, index) => (index === at ? this.slip(part) : part));
    }
    if (value !== null && typeof value === 'object' && !Array.isArray(value)) {
      const name = this.chance(0.95) && Object.keys(value).length > 0 ? this.draws.pick(Object.keys(value)) : 'notKnown';
      if (this.chance(0.1)) return Object.fromEntries(Object.entries(value).filter(([other]) => other !== name));
      return { ...value, [name]: this.slip(value[name] ?? null) };
    }
    return this.chance(0.5)
      ? this.draws.pick(ODD_VALUES)
      : this.text({ pattern: typeof value === 'string' && /\d/.test(value) ? '\\d' : '' });
  }

  private form(): { type: string; body: string } {
    const part = `--b\r\nContent-Disposition: form-data; name="file"; filename="x.csv"\r\nContent-Type: text/csv\r\n\r\n${this.nonsense()}\r\n`;
    const body = this.draws.pick([`${part}--b--\r\n`, part, `${part}${part}--b--\r\n`, '--b', '', part.replace('name="file"', 'name=')]);
    return { type: this.draws.pick(['multipart/form-data; boundary=b', 'multipart/form-data']), body };
  }

  /** Text that is no file, or nearly one. */
  private nonsense(): string {
    const letters = [',', ';', '\t', '\n', '\r', '"', '1', '.', 'x', 'Force (N)', 'edition', 'spool', ' ', '\u0000', 'é'];
    const length = Math.floor(400 * this.draws.uniform() ** 2);
    return Array.from({ length }, () => this.draws.pick(letters)).join('');
  }

  /** Mostly what the schema asks for; now and then something else. */
  private value(schema: Schema, depth: number): Json {
    if (this.chance(0.04)) return this.draws.pick(ODD_VALUES);
    const resolved = this.resolve(schema);
    const options = (resolved['oneOf'] ?? resolved['anyOf']) as readonly Schema[] | undefined;
    if (options && options.length > 0) return this.value(this.draws.pick(options), depth + 1);
    const all = resolved['allOf'] as readonly Schema[] | undefined;
    if (all && all.length > 0) return this.value(all[0] ?? {}, depth + 1);
    if ('const' in resolved) return resolved['const'] as Json;
    const choices = resolved['enum'] as readonly Json[] | undefined;
    if (choices && choices.length > 0) return this.draws.pick(choices);
    const type = Array.isArray(resolved['type']) ? this.draws.pick(resolved['type'] as string[]) : resolved['type'];
    if (depth > MOST_DEPTH) return type === 'array' ? [] : type === 'object' ? {} : this.text(resolved);
    if (type === 'object' || resolved['properties']) return this.object(resolved, depth);
    if (type === 'array') {
      const [least, most] = [Number(resolved['minItems'] ?? 0), Math.min(Number(resolved['maxItems'] ?? 3), 4)];
      const length = this.chance(0.1) ? 0 : least + Math.floor(this.draws.uniform() * (most - least + 1));
      return Array.from({ length: Math.max(0, length) }, () => this.value((resolved['items'] ?? {}) as Schema, depth + 1));
    }
    if (type === 'integer' || type === 'number')
      return this.draws.pick([Number(resolved['minimum'] ?? 0), 1, 2, 7, 100, Number(resolved['maximum'] ?? 5)]);
    if (type === 'boolean') return this.chance(0.5);
    if (type === 'null') return null;
    return this.text(resolved);
  }

  private object(schema: Schema, depth: number): Json {
    const required = (schema['required'] ?? []) as readonly string[];
    const made: Record<string, Json> = {};
    for (const [name, property] of Object.entries((schema['properties'] ?? {}) as Record<string, Schema>))
      if (this.chance(required.includes(name) ? 0.98 : 0.6)) made[name] = this.value(property, depth + 1);
    if (this.chance(0.03)) made['notKnown'] = 1;
    return made;
  }

  private text(schema: Schema): string {
    if (this.chance(0.08)) return this.draws.pick(ODD_TEXTS);
    const { format, pattern } = schema as { format?: string; pattern?: string };
    if (format === 'date') return this.draws.pick(['2026-01-17', '2026-03-10', '2027-01-01', '2025-12-31']);
    if (format === 'date-time') return this.draws.pick(['2026-03-10T12:00:00Z', '2030-01-01T00:00:00Z']);
    if (format === 'uuid') return this.draws.pick(['01a216d0-5d4d-7002-9806-bc8c7ea9a4fb', ...this.seen]);
    if (format === 'email') return `person-${Math.floor(this.draws.uniform() * 9)}@bench.example`;
    if (pattern?.includes('\\d') === true) return this.draws.pick(['1', '36.52', '0.97', '150', '20.5', '0.25']);
    return this.chance(0.6)
      ? this.draws.pick(this.seen)
      : this.draws.pick(['N', 'mm', 's', 'lbf', '°C', 'R1', 'M1', '2026', 'straight-pull', 'A few words that say why.']);
  }

  private resolve(schema: Schema): Schema {
    const reference = schema['$ref'];
    if (typeof reference !== 'string') return schema;
    return this.description.components?.schemas?.[reference.split('/').at(-1) ?? ''] ?? {};
  }
}

const wellFormed = (text: string): string => Buffer.from(text, 'utf8').toString('utf8');
const asText = (value: Json): string => wellFormed(typeof value === 'string' ? value : JSON.stringify(value));

/** What has no answer by then will have none. */
const LONGEST_MS = 20_000;

function send(
  port: number,
  method: string,
  path: string,
  headers: Record<string, string>,
  body: string | Buffer,
): Promise<Omit<Answer, 'what'>> {
  return new Promise((resolve, reject) => {
    const began = performance.now();
    const bytes = Buffer.from(body);
    const sent = request(
      {
        host: '127.0.0.1',
        port,
        method,
        path,
        headers: { ...headers, ...(bytes.length > 0 ? { 'content-length': String(bytes.length) } : {}) },
      },
      (answer) => {
        let text = '';
        answer.setEncoding('utf8');
        answer.on('data', (piece: string) => (text += piece));
        answer.on('end', () => {
          resolve({ status: answer.statusCode ?? 0, ms: performance.now() - began, type: answer.headers['content-type'] ?? '', text });
        });
        answer.on('error', reject);
      },
    );
    sent.on('error', reject);
    sent.setTimeout(LONGEST_MS, () =>
      sent.destroy(new Error(`No answer within ${LONGEST_MS} ms to ${method} ${path}: ${bytes.toString()}`)),
    );
    sent.end(bytes);
  });
}
