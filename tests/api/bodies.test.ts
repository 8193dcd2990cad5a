import { Logger } from '@nestjs/common';
import { connect } from 'node:net';
import type { AddressInfo, Socket } from 'node:net';
import { deflateSync } from 'node:zlib';
import request from 'supertest';
import { readConfig } from '../../api/config.js';
import { createApp } from '../../api/create-app.js';
import { SpooledFile } from '../../api/submissions/intake/spooled-file.js';
import { runSql } from '../support/run-sql.js';
import { createTestApplication } from '../support/test-application.js';
import type { Caller, TestApplication } from '../support/test-application.js';

let t: TestApplication;
let tester: Caller;
let admin: Caller;
beforeAll(async () => {
  t = await createTestApplication();
  tester = await t.caller(['tester']);
  admin = await t.caller(['admin']);
  await t.app.listen(0, '127.0.0.1');
});
afterAll(() => t.close());

const json = (call: ReturnType<TestApplication['call']>, body: string) => call.set('Content-Type', 'application/json').send(body);

const codesOf = (answer: { body: { errors: { code: string }[] } }) => answer.body.errors.map(({ code }) => code);

/** Bytes as they are, to a server's socket; what comes back until it is closed. */
const raw = (bytes: string, { app } = t, then = (_: Socket): void => undefined): Promise<string> =>
  new Promise((done) => {
    const { port } = app.getHttpServer().address() as AddressInfo;
    const socket = connect(port, '127.0.0.1', () => {
      socket.write(bytes);
      then(socket);
    });
    let answer = '';
    socket.on('data', (chunk) => (answer += String(chunk)));
    socket.on('error', (error) => (answer += String(error)));
    socket.on('close', () => done(answer));
  });

test('a JSON body has at most 64 KB, but where readings are taken', async () => {
  const large = JSON.stringify({ email: 'a@bench.example', password: 'x'.repeat(64 * 1024) });
  const refused = await json(t.call('post', '/v1/sessions'), large).expect(413);
  expect(refused.headers['content-type']).toContain('application/problem+json');
  expect(refused.body).toMatchObject({ code: 'request/too-large', errors: [] });
  const draft = JSON.stringify({ content: { note: 'x'.repeat(100_000) } });
  await json(tester.call('post', '/v1/drafts'), draft).expect(422);
  await json(tester.call('post', '/v1/submissions'), draft).expect(422);
  await json(tester.call('post', '/v1/drafts'), JSON.stringify({ content: { note: 'x'.repeat(8 * 1024 * 1024) } })).expect(413);
});

test('of very many faults an answer lists a hundred and counts the rest', async () => {
  const body = Object.fromEntries(Array.from({ length: 900 }, (_, i) => [`k${i}`, i]));
  const answer = await t.call('post', '/v1/sessions').send(body).expect(422);
  expect(answer.body.errors).toHaveLength(100);
  expect(answer.body.furtherFaults).toBe(802);
  expect(answer.body.detail).toBe('902 faults found, the first 100 are listed; nothing was stored.');
});

test('too many fields, or too many levels, are told as such and not one by one', async () => {
  const wide = Object.fromEntries(Array.from({ length: 1001 }, (_, i) => [`k${i}`, i]));
  const told = await t.call('post', '/v1/sessions').send(wide).expect(422);
  expect(told.body.errors).toEqual([
    {
      pointer: '',
      code: 'too_much',
      detail: 'Found 1001 fields in one object; expected at most 1000. Send those that are described at /docs.',
    },
  ]);
  const deep = `{"content":${'['.repeat(20_000)}${']'.repeat(20_000)}}`;
  const nested = await json(tester.call('post', '/v1/drafts'), deep).expect(422);
  expect(nested.body.errors).toHaveLength(1);
  expect(nested.body.errors[0]).toMatchObject({ code: 'too_much' });
  const justDeepEnough = `{"content":{"a":${'['.repeat(29)}${']'.repeat(29)}}}`;
  const read = await json(tester.call('post', '/v1/drafts'), justDeepEnough).expect(422);
  expect(codesOf(read)).not.toContain('too_much');
});

test.each([
  ['a lone surrogate', '\\ud83d', /half of a character \(the lone surrogate U\+D83D\) at place 3/],
  ['a NUL', '\\u0000', /a NUL character \(U\+0000\) at place 3/],
])('%s is told with its place, in every text and name of a field', async (_what, escaped, words) => {
  const note = await json(admin.call('post', '/v1/invitations'), `{"roles":["tester"],"note":"ab${escaped}"}`).expect(422);
  expect(note.body.errors).toEqual([{ pointer: '/note', code: 'not_text', detail: expect.stringMatching(words) }]);
  await json(tester.call('post', '/v1/drafts'), `{"content":{"ab${escaped}":1}}`).expect(422);
  await json(tester.call('post', '/v1/drafts'), `{"content":{"specimens":[{"note":"ab${escaped}"}]}}`).expect(422);
  const whole = await json(tester.call('post', '/v1/drafts'), '{"content":{"note":"whole: \\ud83d\\ude00"}}').expect(422);
  expect(codesOf(whole)).not.toContain('not_text');
});

test('an address with NUL is refused like a body', async () => {
  const answer = await tester.call('delete', '/v1/drafts/%00').set('If-Match', '"1"').expect(422);
  expect(answer.body.errors[0]).toMatchObject({ pointer: '/reference', code: 'not_text' });
  await admin.call('get', '/v1/audit?objectType=%00').expect(422);
});

test.each(['deflate', 'gzip', 'br', 'zstd', 'x-nothing'])('a body packed as %s is refused at once', async (encoding) => {
  const packed = deflateSync('{"email":"a@bench.example","password":"x"}');
  const answer = await t
    .call('post', '/v1/sessions')
    .set({ 'Content-Type': 'application/json', 'Content-Encoding': encoding })
    .serialize((bytes: unknown) => bytes as string)
    .send(packed as unknown as object)
    .expect(415);
  expect(answer.headers['accept-encoding']).toBe('identity');
  expect(answer.body.code).toBe('request/media-type');
});

test.each(['text/csv', 'multipart/form-data; boundary=x', 'text/plain', 'application/x-www-form-urlencoded'])(
  'an address that takes no files takes no %s',
  async (type) => {
    const answer = await t.call('post', '/v1/sessions').set('Content-Type', type).send('a,b').expect(415);
    expect(answer.body).toMatchObject({ code: 'request/media-type', detail: expect.stringContaining('expected application/json') });
  },
);

test.each([
  'no boundary at all',
  '--x\r\nrubbish',
  '--x\r\nContent-Disposition: form-data; name="file"; filename="a.csv"\r\n\r\nspool,force\r\nX',
])('a form that is none is a fault of the sender, told at once and under a key too: %j', async (body) => {
  for (const path of ['/v1/submissions', '/v1/submissions/preview']) {
    const send = () => tester.call('post', path).set('Content-Type', 'multipart/form-data; boundary=x');
    for (const call of [send(), send().set('Idempotency-Key', 'no-form')]) {
      const answer = await call.timeout(5000).send(body);
      expect(answer.status).toBeGreaterThanOrEqual(400);
      expect(answer.status).toBeLessThan(500);
      expect(answer.headers['content-type']).toContain('application/problem+json');
    }
  }
});

test.each([
  ['get', '/v1/submissions/%', 400, 'request/malformed'],
  ['get', '/v1/submissions/%c3%28', 400, 'request/malformed'],
  ['post', `/v1/invitations/${'x'.repeat(200)}/acceptance`, 414, 'request/address-too-long'],
] as const)('%s %s is answered as a problem', async (method, path, status, code) => {
  const answer = await t.call(method, path).expect(status);
  expect(answer.headers['content-type']).toContain('application/problem+json');
  expect(answer.body).toMatchObject({ status, code, type: expect.stringContaining('/problems/#request-') });
});

test('what is no HTTP, or has no end of headers, is answered as a problem too', async () => {
  expect(await raw('NONSENSE\r\n\r\n')).toMatch(/^HTTP\/1\.1 400 Bad Request[\s\S]*application\/problem\+json[\s\S]*request\/malformed/);
  expect(await raw(`GET / HTTP/1.1\r\nHost: x\r\nX: ${'x'.repeat(20_000)}\r\n\r\n`)).toMatch(
    /^HTTP\/1\.1 431 [\s\S]*request\/headers-too-large/,
  );
});

test('a client has 15 s for the head of a request, and 120 for all of it', () => {
  const server = t.app.getHttpServer();
  expect(server.headersTimeout).toBe(15_000);
  expect(server.requestTimeout).toBe(120_000);
  // Proxies keep one for a minute: none sends into one that we are closing.
  expect(server.keepAliveTimeout).toBe(72_000);
});

test('a client that sends on and on, the head of a request or its body, is told that it is too slow, its connection is closed, and nobody is alarmed', async () => {
  const hurried = await createTestApplication({ HEAD_WITHIN_SECONDS: '0.1' });
  const said: unknown[] = [];
  const log = jest.spyOn(Logger.prototype, 'error').mockImplementation((words: unknown) => void said.push(words));
  await hurried.app.listen(0, '127.0.0.1');
  const slowly = (socket: Socket): void => {
    const timer = setInterval(() => socket.write('x'), 20);
    socket.on('close', () => clearInterval(timer));
  };
  const head = 'POST /v1/sessions HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: 1000\r\n';
  for (const answer of await Promise.all([raw(`${head}X-Slow: `, hurried, slowly), raw(`${head}\r\n"`, hurried, slowly)]))
    expect(answer).toMatch(/^HTTP\/1\.1 408 [\s\S]*application\/problem\+json[\s\S]*request\/too-slow/);
  const { text } = await hurried.call('get', '/metrics').expect(200);
  expect([said, text.match(/status_code="5/)]).toEqual([[], null]);
  log.mockRestore();
  await hurried.close();
}, 30_000);

test('a disk without room for a file that is still on its way is a failure of the house, and logged', async () => {
  const said: unknown[] = [];
  jest.spyOn(Logger.prototype, 'error').mockImplementation((words: unknown) => void said.push(words));
  jest.spyOn(SpooledFile.prototype, 'add').mockRejectedValue(Object.assign(new Error('no space left on device'), { code: 'ENOSPC' }));
  const head = `POST /v1/submissions HTTP/1.1\r\nHost: x\r\nAuthorization: Bearer ${tester.token}\r\nContent-Type: text/csv\r\n`;
  const hangUp = (socket: Socket): void => void socket.on('data', () => socket.destroy());
  await raw(`${head}Content-Length: 100000\r\n\r\nsubmission,edition\n`, t, hangUp);
  jest.restoreAllMocks();
  expect(said.join()).toMatch(/POST \/v1\/submissions .*no space left on device/);
}, 20_000);

test('health is never limited', async () => {
  const few = await createTestApplication({ REQUESTS_PER_MINUTE: '2' });
  for (let i = 0; i < 5; i++) await few.call('get', '/health/live').expect(200);
  for (let i = 0; i < 2; i++) await few.call('get', '/v1/accounts/me').expect(401);
  const limited = await few.call('get', '/v1/accounts/me').expect(429);
  expect(limited.headers['content-type']).toContain('application/problem+json');
  await few.call('get', '/health/ready').expect(200);
  await few.close();
});

test('two servers count together what one network asks', async () => {
  const one = await createTestApplication({ REQUESTS_PER_MINUTE: '6' });
  const config = readConfig({ DATABASE_URL: one.databaseUrl, DATA_FOLDER: one.dataFolder, LOG_LEVEL: 'silent', REQUESTS_PER_MINUTE: '6' });
  const other = await createApp({ config });
  const counted = async () => (await runSql(one.databaseUrl, 'SELECT coalesce(sum(requests), 0)::int AS n FROM request_count'))[0]?.['n'];
  const isTold = async (requests: number) => {
    for (const end = Date.now() + 10_000; (await counted()) !== requests && Date.now() < end;)
      await new Promise((resume) => setTimeout(resume, 20));
    expect(await counted()).toBe(requests);
  };
  try {
    for (let i = 0; i < 4; i++) await one.call('get', '/v1/accounts/me').expect(401);
    await isTold(4);
    await request(other.getHttpServer()).get('/v1/accounts/me').expect(401);
    await isTold(5);
    await request(other.getHttpServer()).get('/v1/accounts/me').expect(401);
    const limited = await request(other.getHttpServer()).get('/v1/accounts/me').expect(429);
    expect(Number(limited.headers['retry-after'])).toBeGreaterThan(0);
  } finally {
    await other.close();
    await one.close();
  }
});
