import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parse } from 'yaml';
import { basename } from 'node:path';
import { readConfig } from '../../api/config.js';
import { SERVER_OPTIONS } from '../../api/platform/start-up/server-options.js';
import { SIGN_OF_LIFE } from '../../api/platform/jobs/sign-of-life.js';

interface Service {
  readonly image: string;
  readonly user?: string;
  readonly restart: string;
  readonly read_only?: boolean;
  readonly cap_drop: readonly string[];
  readonly security_opt: readonly string[];
  readonly command?: readonly string[];
  readonly build?: { readonly dockerfile: string };
  readonly mem_limit?: string;
  readonly pids_limit?: number;
  readonly networks?: unknown;
  readonly environment?: Readonly<Record<string, string>>;
  readonly volumes?: readonly string[];
  readonly ports?: readonly string[];
  readonly healthcheck?: { readonly test: readonly string[] };
  readonly depends_on?: Readonly<Record<string, { readonly condition: string }>>;
}

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const TEXT = readFileSync(`${ROOT}docker-compose.yml`, 'utf8');
const compose = parse(TEXT, { merge: true }) as {
  services: Record<string, Service>;
  volumes: Record<string, unknown>;
  configs: Record<string, { content: string }>;
  networks: Record<string, { ipam: { config: unknown[] } }>;
};
const { api, worker, migrate, proxy } = compose.services as Record<'api' | 'worker' | 'migrate' | 'proxy', Service>;
const services = Object.entries(compose.services);
const ours = services.filter(([, { build }]) => build !== undefined);
const known = Object.keys(readConfig({ DATABASE_URL: 'postgresql://127.0.0.1/' }));
const proxyConfig = compose.configs['proxy']!.content;

/** Text as Compose hands it on, with the variables given and the defaults of the others. */
const interpolated = (text: string, given: Readonly<Record<string, string>> = {}): string =>
  text.replace(/\$\{(\w+)(?::[-?]([^}]*))?\}/g, (_, name: string, otherwise = '') => given[name] ?? (otherwise as string));
const environmentOf = ({ environment = {} }: Service, given: Readonly<Record<string, string>> = {}) =>
  Object.fromEntries(Object.entries(environment).map(([name, value]) => [name, interpolated(value, given)]));
/** Of the proxy, the addresses of the location that has these words. */
const locationWith = (words: string): RegExp => {
  const [, path = ''] = [...proxyConfig.matchAll(/location ~ (\S+) \{[^}]*\}/g)].find(([whole]) => whole.includes(words))!;
  return new RegExp(path.replaceAll('$$', '$'));
};
const conditionsOn = (name: string) =>
  services.flatMap(([, { depends_on = {} }]) =>
    Object.entries(depends_on).flatMap(([on, { condition }]) => (on === name ? [condition] : [])),
  );

test('the five services are there', () => {
  expect(Object.keys(compose.services)).toEqual(['db', 'migrate', 'api', 'worker', 'proxy']);
  expect(ours.map(([name]) => name)).toEqual(['migrate', 'api', 'worker']);
});

test('no secret stands in the file: each comes from the environment, and without it nothing starts', () => {
  for (const [, { environment = {} }] of services) {
    for (const [name, value] of Object.entries(environment)) {
      // Object storage is a wish: without it there is no key to it, and no other.
      const isWish = name.startsWith('OBJECT_STORAGE');
      if (/password|secret|token|key/i.test(name)) expect(value).toMatch(isWish ? /^\$\{\w+:-\}$/ : /^\$\{\w+:\?[^}]+\}$/);
      const login = /:\/\/[^:@/]+:(.+)@/.exec(value);
      if (login) expect(login[1]).toMatch(/^\$\{\w+:\?[^}]+\}$/);
    }
  }
  expect(api.environment!['DATABASE_URL']).toContain('${PROGRAM_PASSWORD:?');
});

test.each(services)('%s tells its health, or runs once and what waits for it waits for its success', (name, service) => {
  if (service.healthcheck) {
    expect(service.healthcheck.test[0]).toBe('CMD');
    expect(service.healthcheck.test.length).toBeGreaterThan(1);
    expect(service.restart).toBe('unless-stopped');
  } else {
    expect(service.restart).toBe('no');
    expect(conditionsOn(name)).toContain('service_completed_successfully');
  }
});

test.each(services)('%s has no root, no capability and no way to gain one', (_, { user, cap_drop, security_opt }) => {
  expect(user).toMatch(/^[a-z]+$/);
  expect(user).not.toBe('root');
  expect(cap_drop).toEqual(['ALL']);
  expect(security_opt).toEqual(['no-new-privileges:true']);
});

test('every root folder but that of the proxy, into which its configuration is written, is read-only', () => {
  expect(services.filter(([, service]) => !service.read_only).map(([name]) => name)).toEqual(['proxy']);
  expect(proxy.volumes).toEqual(['site:/data/site:ro']);
});

test('only the proxy is reached from outside, and only from this machine', () => {
  expect(services.filter(([, { ports }]) => ports).map(([name]) => name)).toEqual(['proxy']);
  expect(proxy.ports!.map((port) => interpolated(port))).toEqual(['127.0.0.1:8080:8080']);
});

test('every command is a program of ours, compiled, and what starts all of it is not in the image', () => {
  const commands = [api, worker, migrate].map(({ command }) => command!);
  expect(commands.map(([program]) => program)).toEqual(['node', 'node', 'node']);
  expect(api.command!.slice(1, -1)).toEqual(SERVER_OPTIONS);
  for (const file of [api.command!.at(-1), worker.command![1], migrate.command![1]]) {
    expect(file).toMatch(/^api\/.*\.js$/);
    expect(existsSync(ROOT + file!.replace(/js$/, 'ts'))).toBe(true);
  }
});

test('what the image is made from is there; what runs comes from the last stage and runs without rights', () => {
  expect(new Set(ours.map(([, { build }]) => build!.dockerfile)).size).toBe(1);
  const dockerfile = readFileSync(ROOT + ours[0]![1].build!.dockerfile, 'utf8');
  const copied = [...dockerfile.matchAll(/^COPY (?!--from)(.+) \S+$/gm)].flatMap(([, sources]) => sources!.split(' '));
  expect(copied).toEqual(expect.arrayContaining(['package.json', 'package-lock.json', 'prisma/migrations', 'api', 'site']));
  for (const source of copied) expect(existsSync(ROOT + source)).toBe(true);
  const last = dockerfile.slice(dockerfile.lastIndexOf('\nFROM '));
  expect([...last.matchAll(/^COPY (.+)$/gm)].map(([, line]) => line)).toEqual([
    '--from=needed /app/node_modules node_modules',
    '--from=compiled /compiled ./',
    'site site',
    'package.json package-lock.json ./',
  ]);
  expect(dockerfile).toMatch(/npm ci --omit=dev /);
  expect(dockerfile).toMatch(/rm -rf [^&]*@swc/);
  expect(last).toMatch(/\nUSER node\n$/);
});

const SECRETS = { POSTGRES_PASSWORD: 'c0ffee', PROGRAM_PASSWORD: 'f00d' };

test.each(ours)('%s is given variables that the program reads, and can start with them', (_, service) => {
  const environment = environmentOf(service, SECRETS);
  expect(Object.keys(environment).filter((name) => !known.includes(name))).toEqual([]);
  expect(readConfig(environment)).toMatchObject({
    DATABASE_URL: 'postgresql://fairpull_program:f00d@db:5432/fairpull',
    DATA_FOLDER: '/data',
  });
});

test('only the migrations know the owner of the record', () => {
  const owners = ours.filter(([, service]) => JSON.stringify(environmentOf(service, SECRETS)).includes('c0ffee')).map(([name]) => name);
  expect(owners).toEqual(['migrate']);
  expect(environmentOf(migrate, SECRETS)['DATABASE_OWNER_URL']).toBe('postgresql://fairpull:c0ffee@db:5432/fairpull');
});

test('no service takes more memory or processes than it is given', () => {
  for (const [name, { mem_limit, pids_limit }] of services)
    expect([name, mem_limit, pids_limit]).toEqual([name, expect.stringMatching(/^\d+[mg]$/), 256]);
});

test('the only proxies that are believed are the one of this file and this machine', () => {
  const [own, machine] = environmentOf(api)['TRUSTED_PROXIES']!.split(',');
  expect(proxy.networks).toEqual({ inside: { ipv4_address: own } });
  const [{ subnet, ip_range }] = compose.networks['inside']!.ipam.config as [{ subnet: string; ip_range: string }];
  expect([machine, subnet, ip_range]).toEqual(['172.30.64.1', '172.30.64.0/24', '172.30.64.128/25']);
});

test('the health of a worker is the age of the sign that it gives', () => {
  expect(worker.healthcheck!.test.join(' ')).toContain(`find /tmp/${basename(SIGN_OF_LIFE)} -mmin -5`);
});

test('what the operator may set is a password of the database, an image by its digest, the commit, or a variable of the program', () => {
  const names = [...TEXT.matchAll(/(?<!\$)\$\{(\w+)/g)].map(([, name]) => name!);
  expect(names.length).toBeGreaterThan(5);
  expect([...new Set(names)].filter((name) => !known.includes(name)).sort()).toEqual([
    'COMMIT',
    'POSTGRES_IMAGE',
    'POSTGRES_PASSWORD',
    'PROGRAM_PASSWORD',
    'PROXY_IMAGE',
  ]);
});

test('what stands in for a variable that is not set is what the program has for it, but where a container needs another', () => {
  const defaults = new Map([...TEXT.matchAll(/(?<!\$)\$\{(\w+):-([^}]*)\}/g)].map(([, name, value]) => [name!, value!]));
  const own = readConfig({ DATABASE_URL: 'postgresql://127.0.0.1/' }) as Readonly<Record<string, unknown>>;
  const others = [...defaults].filter(([name, value]) => known.includes(name) && value !== String(own[name])).map(([name]) => name);
  expect(others.sort()).toEqual(['BACKUP_FOLDER', 'LOG_LEVEL', 'PORT', 'PUBLIC_URL']);
});

test('volumes and the order of starting name what exists', () => {
  for (const [, { volumes = [], depends_on = {} }] of services) {
    for (const volume of volumes) expect(compose.volumes).toHaveProperty(volume.split(':')[0]!);
    for (const on of Object.keys(depends_on)) expect(compose.services).toHaveProperty(on);
  }
});

test('the proxy serves the site that the worker builds and hands the rest to the API', () => {
  const { PORT, DATA_FOLDER } = environmentOf(api);
  expect(proxyConfig).toContain(`proxy_pass $$api`);
  expect(proxyConfig).toContain(`set $$api http://api:${PORT};`);
  expect(proxyConfig).toContain(`root ${DATA_FOLDER}/site/current;`);
  const path = locationWith('docs');
  expect(['/v1/releases', '/docs', '/docs/', '/health/ready'].filter((one) => !path.test(one))).toEqual([]);
  expect(['/', '/lines/', '/docsx', '/variants/v1/'].filter((one) => path.test(one))).toEqual([]);
});

test('the proxy asks the API where what has a successor leads, and nobody for a list', () => {
  const [, path = ''] = /location ~ (\^\S+\(makers\S+) \{\s+proxy_pass \$\$api;/.exec(proxyConfig)!;
  const asked = new RegExp(path.replaceAll('$$', '$'));
  expect(['/makers/x/', '/lines/x/', '/variants/x/', '/variants/x', '/de/lines/x/'].filter((one) => !asked.test(one))).toEqual([]);
  expect(['/', '/lines/', '/lines/index.html', '/editions/2026/variants/x/'].filter((one) => asked.test(one))).toEqual([]);
});

test('what other pages take of us goes out with the same headers as from the API, and nothing else may be framed', () => {
  const headersOf = (location: string) => {
    const [block = ''] = (proxyConfig.split(`location ${location} {`)[1] ?? '').split('}');
    return [...block.matchAll(/add_header (\S+) (?:"([^"]+)"|(\S+)) always;/g)].map(
      ([, name, quoted, bare]) => `${name}: ${quoted ?? bare}`,
    );
  };
  expect(locationWith('frame-ancestors *').source).toBe('^\\/(client|([a-z][a-z]\\/)?embed)\\/');
  expect(headersOf('~ ^/(client|([a-z][a-z]/)?embed)/')).toEqual(
    expect.arrayContaining([
      'Content-Security-Policy: frame-ancestors *',
      'Access-Control-Allow-Origin: *',
      'Cross-Origin-Resource-Policy: cross-origin',
    ]),
  );
  for (const closed of ['/', '/desk/', '@page']) expect(headersOf(closed)).toContain(`Content-Security-Policy: frame-ancestors 'none'`);
});

test('the proxy keeps what never changes: the files of a revision, and nothing else', () => {
  const kept = locationWith('proxy_cache ');
  expect(['/v1/releases/2026/1/manifest.json', '/v1/releases/2026/12/csv/results.csv'].filter((one) => !kept.test(one))).toEqual([]);
  expect(['/v1/releases', '/v1/releases/2026/1', '/v1/editions/2026', '/v1/variants/a'].filter((one) => kept.test(one))).toEqual([]);
  // The first that matches is taken.
  expect(proxyConfig.indexOf('proxy_cache kept')).toBeLessThan(proxyConfig.indexOf('(v1/|'));
});

test('no variable of the proxy is left for Compose to replace', () => {
  expect(proxyConfig.replaceAll('$$', '')).not.toContain('$');
});
