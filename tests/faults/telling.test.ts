import { jest } from '@jest/globals';
import { AccountsStore } from '../../api/accounts/accounts.store.js';
import { AccountsModule } from '../../api/accounts/accounts.module.js';
import { createTestApplication } from '../support/test-application.js';
import type { TestApplication } from '../support/test-application.js';

let t: TestApplication;
beforeAll(async () => {
  t = await createTestApplication({ LOG_LEVEL: 'error' });
}, 60_000);
afterAll(() => t.close());

test('a failure is one line of JSON with the id that the client got, and without the secret in the address', async () => {
  const lines: string[] = [];
  const take = (chunk: unknown): boolean => lines.push(String(chunk)) > 0;
  const spies = [process.stdout, process.stderr].map((stream) => jest.spyOn(stream, 'write').mockImplementation(take));
  const store = t.app.select(AccountsModule).get(AccountsStore);
  const methods = Object.getOwnPropertyNames(Object.getPrototypeOf(store)).filter((name) => name !== 'constructor');
  const broken = methods.map((name) =>
    jest.spyOn(store as unknown as Record<string, () => never>, name).mockImplementation(() => {
      throw new Error('out of order');
    }),
  );
  const answer = await t
    .call('post', '/v1/invitations/a-secret-in-the-address/acceptance')
    .send({ email: 'a@bench.example', displayName: 'A. Fenn', password: 'a long enough password' });
  for (const spy of [...spies, ...broken]) spy.mockRestore();
  expect(answer.status).toBe(500);
  const told = lines
    .join('')
    .split('\n')
    .filter((line) => line.includes('out of order'));
  expect(told).toHaveLength(1);
  expect(JSON.parse(told[0]!)).toMatchObject({ level: 'error', context: 'http' });
  expect(told[0]).toContain(answer.headers['x-request-id']);
  expect(lines.join('')).not.toContain('a-secret-in-the-address');
});

test('monitoring reads figures by route, of the queue and of the database', async () => {
  await t.call('get', '/v1/problems').expect(200);
  const { text } = await t.call('get', '/metrics').expect(200);
  expect(text).toMatch(/fairpull_http_seconds_count\{method="GET",route="\/v1\/problems",status="200"\} 1/);
  expect(text).toContain('fairpull_database_up 1');
  expect(text).toContain('# TYPE fairpull_orders_open gauge');
});
