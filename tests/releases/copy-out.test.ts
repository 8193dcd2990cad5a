import { readFileSync } from 'node:fs';
import { mkdir, mkdtemp, readdir, rm, symlink, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { Logger } from '@nestjs/common';
import { AwsClient } from 'aws4fetch';
import { readConfig } from '../../api/config.js';
import type { Config } from '../../api/config.js';
import { sha256 } from '../../api/platform/identifiers/identifiers.js';
import { ObjectStorage } from '../../api/platform/object-storage/object-storage.js';
import { CopyOut } from '../../api/releases/site/copy-out.js';
import type { ReleasesReadModel } from '../../api/releases/releases.read-model.js';

/** A server program that speaks S3 and knows one pair of keys; it comes without types. */
type StorageServer = new (options: object) => {
  readonly middleware: ((asked: { readonly path: string; status: number }, next: () => Promise<void>) => Promise<void>)[];
  run(): Promise<{ port: number }>;
  close(): Promise<void>;
};
const S3rver = createRequire(import.meta.url)('s3rver') as StorageServer;
const KEYS = { OBJECT_STORAGE_KEY: 'S3RVER', OBJECT_STORAGE_SECRET: 'S3RVER' };

const CSV = 'place,variant\n1,gannet-20\n';
/** Two published releases as the read model gives them: their manifests name one file. */
const RELEASES = [1, 2].map((revision) => ({
  edition: '2026',
  revision,
  digest: sha256(String(revision)),
  signature: '{}',
  manifestBytes: `{"revision":${revision}}`,
  manifest: { files: [{ path: 'csv/standings.csv', sha256: sha256(CSV), mediaType: 'text/csv; charset=utf-8', bytes: CSV.length }] },
}));

let folder: string;
let server: InstanceType<StorageServer>;
let bucket: string;
let published: typeof RELEASES;
/** Address that the storage takes nothing at, as one whose owner forbids it. */
let refused = '';

const configWith = (more: object): Config => readConfig({ DATABASE_URL: 'postgresql://unused', DATA_FOLDER: folder, ...more });
function copyOut(more: object = { OBJECT_STORAGE: bucket, ...KEYS }): CopyOut {
  const config = configWith(more);
  const releases = {
    list: () => Promise.resolve(published),
    find: (_edition: string, revision: number) => Promise.resolve(published.find((one) => one.revision === revision) ?? null),
    bytes: () => Promise.resolve({ bytes: Buffer.from(CSV), mediaType: 'text/csv; charset=utf-8', digest: sha256(CSV) }),
  };
  return new CopyOut(config, new ObjectStorage(config), releases as unknown as ReleasesReadModel);
}

/** What the server keeps, without its own notes. */
async function kept(): Promise<string[]> {
  const entries = await readdir(join(folder, 's3/results'), { recursive: true, withFileTypes: true });
  const paths = entries
    .filter((entry) => entry.isFile())
    .map((entry) => relative(join(folder, 's3/results'), join(entry.parentPath, entry.name)));
  return paths.flatMap((path) => /^(.+)\._S3rver_object$/.exec(path)?.[1] ?? []).sort();
}
const read = (key: string) => new ObjectStorage(configWith({ OBJECT_STORAGE: bucket, ...KEYS })).read(key);

async function build(version: string, files: Record<string, string>): Promise<void> {
  for (const [path, text] of Object.entries(files)) {
    await mkdir(dirname(join(folder, 'site', version, path)), { recursive: true });
    await writeFile(join(folder, 'site', version, path), text);
  }
  await rm(join(folder, 'site/current'), { force: true });
  await symlink(version, join(folder, 'site/current'));
}

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'fairpull-storage-'));
  const options = {
    port: 0,
    address: '127.0.0.1',
    silent: true,
    directory: join(folder, 's3'),
    configureBuckets: [{ name: 'results', configs: [] }],
  };
  server = new S3rver(options);
  server.middleware.unshift(async (asked, next) => {
    if (asked.path === refused) asked.status = 403;
    else await next();
  });
  bucket = `http://127.0.0.1:${(await server.run()).port}/results`;
  published = RELEASES.slice(0, 1);
  Logger.overrideLogger(false);
});
afterAll(async () => {
  await server.close();
  await rm(folder, { recursive: true });
});

test('releases lie under their lasting addresses, the site under its version, and the pointer names it', async () => {
  await build('built-1', { 'index.html': 'first', 'editions/2026/index.html': 'first', '_astro/page.abc.css': 'a{}' });
  await copyOut().run();
  expect(await kept()).toEqual([
    'site/built-1/_astro/page.abc.css',
    'site/built-1/editions/2026/index.html',
    'site/built-1/index.html',
    'site/current.json',
    'v1/releases/2026/1/csv/standings.csv',
    'v1/releases/2026/1/manifest.json',
    'v1/releases/2026/1/signature.json',
  ]);
  expect(await read('site/current.json')).toBe('{"folder":"site/built-1/"}\n');
  expect(await read('v1/releases/2026/1/csv/standings.csv')).toBe(CSV);
});

test('what never changes is kept for good, pages for a minute and the pointer not at all, each with its type, as the README tells who sets up a CDN', async () => {
  const client = new AwsClient({ accessKeyId: 'S3RVER', secretAccessKey: 'S3RVER', region: 'us-east-1', service: 's3' });
  const headersAt = async (key: string) => {
    const { headers } = await client.fetch(`${bucket}/${key}`, { method: 'HEAD' });
    return [key, headers.get('cache-control'), headers.get('content-type')];
  };
  const [forGood, aMinute] = ['public, max-age=31536000, immutable', 'public, max-age=60, stale-while-revalidate=600'];
  const [csv, json, html] = ['text/csv; charset=utf-8', 'application/json', 'text/html; charset=utf-8'];
  expect(await Promise.all((await kept()).map(headersAt))).toEqual([
    ['site/built-1/_astro/page.abc.css', forGood, 'text/css; charset=utf-8'],
    ['site/built-1/editions/2026/index.html', aMinute, html],
    ['site/built-1/index.html', aMinute, html],
    ['site/current.json', 'no-cache', json],
    ['v1/releases/2026/1/csv/standings.csv', forGood, csv],
    ['v1/releases/2026/1/manifest.json', forGood, json],
    ['v1/releases/2026/1/signature.json', forGood, json],
  ]);
  const [guidance = ''] = /\*\*From object storage[^\n]+/.exec(readFileSync('README.md', 'utf8')) ?? [];
  for (const words of [
    '`/v1/releases/…`, never changed, `immutable`',
    '`/site/current.json`, which names that folder (`no-cache`)',
    'pages for the minute',
  ])
    expect(guidance).toContain(words);
});

test('a next site lies beside the one before; a release that is there is not sent again', async () => {
  published = RELEASES;
  await build('built-2', { 'index.html': 'second' });
  await new ObjectStorage(configWith({ OBJECT_STORAGE: bucket, ...KEYS })).write(
    'v1/releases/2026/1/csv/standings.csv',
    Buffer.from('as it was'),
    {
      'Content-Type': 'text/csv',
      'Cache-Control': 'no-cache',
    },
  );
  await copyOut().run();
  expect([await read('site/built-1/index.html'), await read('site/built-2/index.html')]).toEqual(['first', 'second']);
  expect(await read('site/current.json')).toBe('{"folder":"site/built-2/"}\n');
  expect(await read('v1/releases/2026/1/csv/standings.csv')).toBe('as it was');
  expect(await read('v1/releases/2026/2/manifest.json')).toBe('{"revision":2}');
});

test('a copy that fails says what was answered and what to do; the pointer stays at the site before until a next one is whole', async () => {
  await build('built-3', { 'index.html': 'third' });
  await expect(copyOut({ OBJECT_STORAGE: `${bucket}-of-nobody`, ...KEYS }).run()).rejects.toThrow(
    /The object storage answered 404 to PUT .*NoSuchBucket.*Look at OBJECT_STORAGE and its key/s,
  );
  await build('built-3', { 'read/page.html': 'third' });
  refused = '/results/site/built-3/read/page.html';
  await expect(copyOut().run()).rejects.toThrow(/The object storage answered 403 to PUT .*page\.html/);
  expect(await read('site/current.json')).toBe('{"folder":"site/built-2/"}\n');
  refused = '';
  await copyOut().run();
  expect(await read('site/current.json')).toBe('{"folder":"site/built-3/"}\n');
});

test('without an address nothing is copied', async () => {
  await build('built-4', { 'index.html': 'fourth' });
  await copyOut({}).run();
  expect(await read('site/current.json')).toBe('{"folder":"site/built-3/"}\n');
});
