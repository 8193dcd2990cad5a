import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { parse as parseCsv } from 'csv-parse/sync';
import { unzipSync } from 'fflate';
import { parquetReadObjects } from 'hyparquet';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { documentsFitTheirSchemas } from '../support/documents-fit-their-schemas.js';
import { createHouse, workEdition } from '../support/house.js';
import type { House } from '../support/house.js';
import { moveEdition, publish } from '../support/season.js';

const EDITION_FILE = '/v1/releases/2026/1/documents/edition.json';

let house: House;
let digest: string;
let files: { path: string; mediaType: string; sha256: string }[];
beforeAll(async () => {
  house = await createHouse();
  await workEdition(house, '2026');
  await moveEdition(house.editor, '2026', 'closure');
  await house.t.app.select(ReleasesModule).get(ReleaseWork).start(false);
  await publish(house.editor, '2026');
  ({ digest } = (await house.t.call('get', '/v1/releases').expect(200)).body.items[0]);
  ({ files } = JSON.parse((await house.t.call('get', '/v1/releases/2026/1/manifest.json').expect(200)).text));
});
afterAll(() => house.t.close());

/** An answer as it comes over the wire: supertest would unpack it. */
const inject = (url: string, headers: Record<string, string> = {}) => house.t.app.inject({ method: 'GET', url, headers });
const shaOf = (path: string): string => files.find((file) => file.path === path)!.sha256;

test('bytes are sent as they are stored', async () => {
  for (const { path, mediaType } of files) {
    const sent = await inject(`/v1/releases/2026/1/${path}`);
    const stored = await readFile(join(house.t.dataFolder, 'files/releases/2026/1', digest, path));
    expect([path, sent.statusCode, sent.rawPayload.equals(stored)]).toEqual([path, 200, true]);
    expect(sent.headers['content-type']).toContain(mediaType);
  }
  const edition = await inject('/v1/editions/2026');
  expect(edition.rawPayload.equals((await inject(EDITION_FILE)).rawPayload)).toBe(true);
});

test('the ETag is the digest; who has it gets 304 without a body', async () => {
  const { headers } = await inject(EDITION_FILE);
  const etag = `"${shaOf('documents/edition.json')}"`;
  expect(headers['etag']).toBe(etag);
  for (const seen of [etag, `W/${etag}`, `"other", ${etag}`, '*']) {
    const again = await inject(EDITION_FILE, { 'if-none-match': seen });
    expect([seen, again.statusCode, again.rawPayload.length, again.headers['etag']]).toEqual([seen, 304, 0, etag]);
  }
  expect((await inject(EDITION_FILE, { 'if-none-match': '"other"' })).statusCode).toBe(200);
});

test('the gzip form is the same content under the same digest, a weak ETag as its bytes are others (RFC 9110, 8.8.1)', async () => {
  const plain = await inject(EDITION_FILE);
  const pressed = await inject(EDITION_FILE, { 'accept-encoding': 'gzip' });
  expect(pressed.headers['content-encoding']).toBe('gzip');
  expect(pressed.headers['etag']).toBe(`W/${String(plain.headers['etag'])}`);
  expect(pressed.rawPayload.length).toBeLessThan(plain.rawPayload.length);
  expect(gunzipSync(pressed.rawPayload).equals(plain.rawPayload)).toBe(true);
  for (const answer of [plain, pressed]) expect(answer.headers['vary']).toMatch(/accept-encoding/i);
  for (const { headers } of [plain, pressed])
    expect((await inject(EDITION_FILE, { 'accept-encoding': 'gzip', 'if-none-match': String(headers['etag']) })).statusCode).toBe(304);
});

test('lists have the digest of what they say as ETag too', async () => {
  for (const path of [
    '/v1/editions',
    '/v1/releases',
    '/v1/signing-keys',
    '/v1/problems',
    '/v1/openapi.json',
    '/v1/makers',
    '/v1/commitments',
  ]) {
    const answer = await inject(path, { 'accept-encoding': 'identity' });
    const etag = String(answer.headers['etag']);
    expect([path, etag.replace('W/', '')]).toEqual([path, `"${createHash('sha256').update(answer.rawPayload).digest('hex')}"`]);
    for (const coding of ['identity', 'gzip']) {
      const again = await inject(path, { 'accept-encoding': coding, 'if-none-match': etag });
      expect([path, again.statusCode, again.rawPayload.length]).toEqual([path, 304, 0]);
    }
    expect((await inject(path, { 'if-none-match': '"other"' })).statusCode).toBe(200);
  }
});

test('the files of a revision never change; addresses that a later one moves are asked again', async () => {
  for (const path of ['manifest.json', 'bundle.json', 'csv/standings.csv'])
    expect((await inject(`/v1/releases/2026/1/${path}`)).headers['cache-control']).toBe('public, max-age=31536000, immutable');
  for (const path of ['editions/2026', 'editions/2026/standings', 'editions/2026/standings/knot', 'variants/gannet-20', 'makers', 'checks'])
    expect((await inject(`/v1/${path}`)).headers['cache-control']).toBe('public, max-age=0, must-revalidate');
});

const ORIGIN = { origin: 'https://other.example' };

test('any page may read it, and is told of refusals (Fetch standard, CORS protocol)', async () => {
  const paths = [EDITION_FILE, '/v1/editions/2026', '/v1/makers', '/v1/releases', '/v1/editions', '/v1/problems', '/v1/openapi.json'];
  for (const path of [...paths, '/v1/editions/1999', '/v1/nowhere', '/v1/variants/none/history']) {
    const { headers } = await inject(path, ORIGIN);
    expect([path, headers['access-control-allow-origin'], headers['cross-origin-resource-policy']]).toEqual([path, '*', 'cross-origin']);
    for (const name of ['ETag', 'Link', 'RateLimit-Remaining', 'Retry-After', 'X-Request-Id'])
      expect([path, headers['access-control-expose-headers']]).toEqual([path, expect.stringContaining(name)]);
  }
});

test('a preflight lets a page ask for what changed and for a part, and for nothing that changes', async () => {
  const preflight = (method: string, headers: string) =>
    house.t.app.inject({
      method: 'OPTIONS',
      url: EDITION_FILE,
      headers: { ...ORIGIN, 'access-control-request-method': method, 'access-control-request-headers': headers },
    });
  const answer = await preflight('GET', 'if-none-match,range');
  expect(answer.statusCode).toBe(204);
  expect(answer.headers['access-control-allow-headers']).toMatch(/If-None-Match.*Range/);
  expect(answer.headers['access-control-allow-methods']).toBe('GET, HEAD');
  expect(answer.headers['access-control-allow-headers']).not.toMatch(/authorization/i);
});

test('what somebody signed in reads is for no other page', async () => {
  const { headers } = await inject('/v1/accounts', { ...ORIGIN, cookie: 'fairpull_session=none' });
  expect(headers['access-control-allow-origin']).toBeUndefined();
});

const rowsOf = async (query: string): Promise<{ slug: string; place: number }[]> => {
  const { body } = await house.t.call('get', `/v1/editions/2026/standings/stress${query}`).expect(200);
  return (body.rows as any[]).map(({ variant, place }) => ({ slug: variant.slug, place }));
};

test('filters narrow the rows and leave the places as published', async () => {
  const all = await rowsOf('');
  expect(all.map(({ place }) => place)).toEqual([1, 2, 3, 4, 5]);
  const quay = await rowsOf('?maker=marlow-quay');
  expect(quay).toEqual(all.filter(({ slug }) => slug.startsWith('gannet')));
  expect(quay).toHaveLength(2);
  expect(await rowsOf('?material=UHMWPE&construction=braided&carriers=8')).toEqual(all);
  expect(await rowsOf('?carriers=4')).toEqual([]);
  expect(await rowsOf('?construction=monofilament')).toEqual([]);
  expect(await rowsOf('?maker=seven-weirs&carriers=4')).toEqual([]);
  expect(await rowsOf('?peNumber=1.0')).toEqual([]);
  await house.t.call('get', '/v1/editions/2026/standings/stress?colour=moss').expect(422);
  const filtered = await inject('/v1/editions/2026/standings/stress?maker=marlow-quay');
  expect(filtered.headers['etag']).not.toBe(`"${shaOf('documents/standings/stress.json')}"`);
});

test('lists, history, specimens and methods come out of the release', async () => {
  const body = async (path: string) => (await house.t.call('get', `/v1/${path}`).expect(200)).body;
  expect((await body('makers')).items.map(({ slug }: any) => slug)).toEqual(['marlow-quay', 'seven-weirs']);
  expect((await body('lines')).items).toHaveLength(2);
  expect((await body('variants/petrel-40/history')).history).toHaveLength(1);
  const specimens = await body('variants/petrel-40/specimens');
  expect(specimens.submissions.map(({ method }: any) => method).sort()).toEqual(['abrasion', 'diameter', 'named-knot', 'straight-pull']);
  expect(await body('methods/abrasion/versions/1')).toMatchObject({ slug: 'abrasion', number: 1 });
  expect((await body('editions/2026/catalogue')).methods).toHaveLength(4);
  expect((await body('problems')).items.map(({ code }: any) => code)).toContain('request/not-found');
});

test('what is not there is a problem that says so', async () => {
  for (const path of [
    'releases/2026/2/manifest.json',
    'releases/2026/first/manifest.json',
    'releases/2026/1/none.json',
    'releases/2026/1/..%2F..%2F..%2Fpackage.json',
    'releases/2025/1/bundle.json',
    'editions/2025',
    'editions/2025/standings/stress',
    'editions/2026/standings/none',
    'editions/2026/variants/none',
    'variants/none',
    'variants/none/history',
    'methods/abrasion/versions/2',
    'nowhere',
  ]) {
    const { status, headers, body } = await house.t.call('get', `/v1/${path}`);
    expect([path, status, headers['content-type']]).toEqual([path, 404, expect.stringContaining('application/problem+json')]);
    expect(body).toMatchObject({ status: 404, code: 'request/not-found', type: expect.stringContaining('/problems/#request-not-found') });
    expect(headers['cache-control']).toBe('no-store');
  }
});

test('every public document of an edition is there, by every address that leads to it', async () => {
  const inEdition = [
    '',
    '/records',
    '/pairs',
    '/withdrawn',
    '/claims',
    '/round-robins',
    '/retest-results',
    '/rigs',
    '/catalogue',
    '/standings',
  ];
  const paths = [
    ...inEdition.map((path) => `/v1/editions/2026${path}`),
    '/v1/editions/2026/variants/gannet-20',
    '/v1/editions/2026/variants/gannet-20/provenance',
    '/v1/releases/2026/1/signature.json',
    '/v1/variants/gannet-20',
    '/v1/checks',
  ];
  for (const path of paths) await house.t.call('get', path).expect(200);
});

test('all results of all editions are one table, as CSV and as Parquet (read by another program), the same rows in both', async () => {
  const csv = await inject('/v1/results.csv');
  const rows = parseCsv(csv.payload, { columns: true }) as Record<string, string>[];
  expect(rows).toHaveLength(15);
  expect(rows[0]).toMatchObject({ edition: '2026', revision: '1', category: 'stress', place: '1', unit: 'MPa', diameterUnit: 'mm' });
  expect(rows.filter(({ diameter }) => !(Number(diameter) > 0))).toEqual([]);
  const { paths } = JSON.parse((await inject('/v1/openapi.json')).payload);
  const described = paths['/v1/results.csv'].get.responses['200'].content['text/csv'];
  expect(described.example.split('\r\n')[0]).toBe(Object.keys(rows[0]!).join());
  for (const name of Object.keys(rows[0]!)) expect(described.schema.description).toMatch(new RegExp(` ${name} \\(`));
  const { rawPayload, headers } = await inject('/v1/results.parquet');
  const bytes = rawPayload.buffer.slice(rawPayload.byteOffset, rawPayload.byteOffset + rawPayload.length) as ArrayBuffer;
  const read = await parquetReadObjects({ file: bytes });
  expect(read.map((row) => Object.fromEntries(Object.entries(row).map(([name, cell]) => [name, String(cell ?? '')])))).toEqual(
    rows.map((row) => ({ ...row, ...numbersOf(row) })),
  );
  expect((await inject('/v1/results.parquet', { 'if-none-match': String(headers['etag']) })).statusCode).toBe(304);
});

test('an address that will go says so, until when, and what to use (RFC 9745, RFC 8594)', async () => {
  const { headers, rawPayload } = await inject('/v1/editions/2026/standings');
  expect(headers).toMatchObject({ deprecation: '@1796083200', sunset: 'Fri, 01 Dec 2028 00:00:00 GMT' });
  expect(headers['link']).toBe('</v1/editions/2026>; rel="successor-version"');
  const instead = await inject('/v1/editions/2026');
  expect(rawPayload.equals(instead.rawPayload)).toBe(true);
  expect(instead.headers['deprecation']).toBeUndefined();
});

documentsFitTheirSchemas(() => house);

/** Decimals as a number prints them: "6600.0" and 6600 are one. */
const numbersOf = (row: Record<string, string>) =>
  Object.fromEntries(
    ['value', 'low95', 'high95', 'diameter', 'diameterLow95', 'diameterHigh95'].map((name) => [
      name,
      row[name] === '' ? '' : String(Number(row[name])),
    ]),
  );

test('the archive holds every file that the manifest lists, but itself; the same bytes each time', async () => {
  const { rawPayload } = await inject('/v1/releases/2026/1/release.zip', { 'accept-encoding': 'br, gzip' });
  const { sha256: listed } = files.find(({ path }) => path === 'release.zip') as { sha256: string };
  expect(createHash('sha256').update(rawPayload).digest('hex')).toBe(listed);
  const inside = unzipSync(rawPayload);
  expect(Object.keys(inside).sort()).toEqual(
    files
      .map(({ path }) => path)
      .filter((path) => path !== 'release.zip')
      .sort(),
  );
  for (const [path, bytes] of Object.entries(inside))
    expect([path, createHash('sha256').update(bytes).digest('hex')]).toEqual([path, shaOf(path)]);
});

// RFC 9110, 14.1.2 and 14.2: the examples of byte ranges, on a file of ours.
test('a part of a file can be asked for, and goes on where it was cut off', async () => {
  const whole = (await inject('/v1/releases/2026/1/release.zip')).rawPayload;
  const etag = `"${shaOf('release.zip')}"`;
  const size = whole.length;
  const part = async (range: string, more: Record<string, string> = {}) =>
    inject('/v1/releases/2026/1/release.zip', { range, 'accept-encoding': 'gzip', ...more });
  const expected: [string, number, number][] = [
    ['bytes=0-499', 0, 499],
    ['bytes=500-999', 500, 999],
    ['bytes=-500', size - 500, size - 1],
    [`bytes=${size - 1}-`, size - 1, size - 1],
    [`bytes=0-${size * 2}`, 0, size - 1],
  ];
  for (const [range, from, to] of expected) {
    const { statusCode, headers, rawPayload } = await part(range);
    expect([range, statusCode, headers['content-range'], headers['etag']]).toEqual([range, 206, `bytes ${from}-${to}/${size}`, etag]);
    expect(rawPayload.equals(whole.subarray(from, to + 1))).toBe(true);
  }
  expect((await part(`bytes=${size}-`)).statusCode).toBe(416);
  expect((await part('bytes=0-9', { 'if-range': etag })).statusCode).toBe(206);
  for (const [range, more] of [
    ['bytes=0-9', { 'if-range': '"another"' }],
    ['bytes=0-1,5-6', {}],
    ['lines=1-2', {}],
  ] as const)
    expect((await part(range, more)).statusCode).toBe(200);
});
