import { Logger } from '@nestjs/common';
import type { AddressInfo } from 'node:net';
import { readConfig } from '../../api/config.js';
import { createApp } from '../../api/create-app.js';
import { ClosingList } from '../../api/platform/start-up/closing-list.js';
import { startProgram } from '../../api/platform/start-up/program.js';
import { waitUntilReady } from '../../api/platform/start-up/wait-until-ready.js';
import { runSql } from '../support/run-sql.js';
import { createTestApplication } from '../support/test-application.js';
import type { TestApplication } from '../support/test-application.js';

let t: TestApplication;
beforeAll(async () => {
  t = await createTestApplication({ REQUESTS_PER_MINUTE: '10', LOG_LEVEL: 'silent' });
});
afterAll(() => t.close());

test('without its database the server lives, is not ready, and says when to ask again', async () => {
  const database = new URL(t.databaseUrl);
  const name = database.pathname.slice(1);
  database.pathname = '/postgres';
  // So that the pool has a connection that can break.
  await t.call('get', '/health/ready').expect(200);
  await runSql(database.href, `ALTER DATABASE "${name}" ALLOW_CONNECTIONS false`);
  const said: unknown[] = [];
  const log = jest.spyOn(Logger.prototype, 'error').mockImplementation((words: unknown) => void said.push(words));
  await runSql(database.href, 'SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = $1', [name]);
  try {
    const ready = await t.call('get', '/health/ready');
    expect([ready.status, ready.body.code, ready.headers['retry-after']]).toEqual([503, 'server/not-ready', '5']);
    await t.call('get', '/health/live').expect(200);
    const other = await t.call('post', '/v1/sessions').send({ email: 'a@b.example', password: 'a long enough password' });
    expect([other.status, other.headers['retry-after']]).toEqual([503, '5']);
    expect(said).toContainEqual(expect.stringMatching(/^A connection to the database broke: /));
  } finally {
    log.mockRestore();
    await runSql(database.href, `ALTER DATABASE "${name}" ALLOW_CONNECTIONS true`);
  }
  await t.call('get', '/health/ready').expect(200);
});

test('before it ends it is not ready, still answers from the database, and closes each connection behind its answer', async () => {
  const app = await createApp({
    config: readConfig({ DATABASE_URL: t.databaseUrl, DATA_FOLDER: t.dataFolder, LOG_LEVEL: 'silent', DRAIN_SECONDS: '2' }),
  });
  await app.listen(0, '127.0.0.1');
  const url = `http://127.0.0.1:${(app.getHttpServer().address() as AddressInfo).port}`;
  expect((await fetch(`${url}/health/ready`)).status).toBe(200);
  const closing = app.close();
  let ready = await fetch(`${url}/health/ready`);
  while (ready.status === 200) ready = await fetch(`${url}/health/ready`);
  expect([ready.status, ready.headers.get('connection')]).toEqual([503, 'close']);
  const asked = await fetch(`${url}/v1/sessions`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ email: 'nobody@bench.example', password: 'a long enough password' }),
  });
  expect(asked.status).toBe(401);
  await closing;
  await expect(fetch(`${url}/health/live`)).rejects.toThrow('fetch failed');
});

test('who watches the house is never sent away', async () => {
  const statuses = [];
  for (let i = 0; i < 24; i += 1) statuses.push((await t.call('get', i % 2 ? '/health/live' : '/health/ready')).status);
  expect(new Set(statuses)).toEqual(new Set([200]));
  const others = [];
  for (let i = 0; i < 14; i += 1) others.push((await t.call('get', '/v1/problems')).status);
  expect(others).toContain(429);
});

test("a server that ended is not taken for ready because another program's answers at its port", async () => {
  await t.app.listen(0, '127.0.0.1');
  const { port } = t.app.getHttpServer().address() as AddressInfo;
  const closing = new ClosingList();
  const settings = { DATABASE_URL: t.databaseUrl, DATA_FOLDER: t.dataFolder, PORT: String(port), LOG_LEVEL: 'silent' };
  const program = startProgram(closing, 'The server', 'api/main.ts', settings);
  expect(await waitUntilReady(program, `http://127.0.0.1:${port}`)).toBe(false);
  await closing.closeAll();
});
