import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { createTestApplication } from '../support/test-application.js';
import type { Caller, TestApplication } from '../support/test-application.js';

let t: TestApplication;
let tester: Caller;
beforeAll(async () => {
  t = await createTestApplication();
  tester = await t.caller(['tester']);
});
afterAll(() => t.close());

test('nothing keeps an answer that is not for all', async () => {
  for (const path of ['/v1/accounts/me', '/v1/tokens', '/v1/spools'])
    expect((await tester.call('get', path).expect(200)).headers['cache-control']).toBe('no-store');
  const session = await t.call('post', '/v1/sessions').send({ email: tester.email, password: 'a long enough password' }).expect(201);
  expect(session.headers['cache-control']).toBe('no-store');
  expect((await t.call('get', '/v1/editions').expect(200)).headers['cache-control']).not.toBe('no-store');
});

test('the page of the description runs no scripts but its own', async () => {
  const page = await t.call('get', '/docs').expect(200);
  expect(page.headers['content-security-policy']).toMatch(/^default-src 'none'; script-src 'self';.*frame-ancestors 'none'$/);
  expect(page.text.match(/<script(?![^>]*\bsrc=)/g)).toBeNull();
});

test('what is made to be embedded may be framed and fetched by any page; no other page of the site may', async () => {
  const site = join(t.dataFolder, 'site/current');
  for (const folder of ['embed/newest/braided', 'de/embed/newest']) await mkdir(join(site, folder), { recursive: true });
  for (const path of ['index.html', '404.html', 'embed/newest/braided/index.html', 'embed/newest/one.svg', 'de/embed/newest/one.svg'])
    await writeFile(join(site, path), '<svg xmlns="http://www.w3.org/2000/svg"/>');
  for (const path of ['/embed/newest/braided/', '/embed/newest/one.svg', '/de/embed/newest/one.svg']) {
    const { headers } = await t.call('get', path).expect(200);
    expect(headers).toMatchObject({
      'content-security-policy': 'frame-ancestors *',
      'access-control-allow-origin': '*',
      'cross-origin-resource-policy': 'cross-origin',
    });
    expect(headers['x-frame-options']).toBeUndefined();
  }
  const { headers } = await t.call('get', '/').expect(200);
  expect(headers).toMatchObject({ 'content-security-policy': "frame-ancestors 'none'", 'cross-origin-resource-policy': 'same-origin' });
  expect(headers['access-control-allow-origin']).toBeUndefined();
  expect((await t.call('get', '/embed/..%2Findex.html')).headers['content-security-policy']).toBe("frame-ancestors 'none'");
});

test('what is asked of the API is answered by the API, also by a way that leads back up to the site', async () => {
  for (const path of ['/v1/..%2Findex.html', '/v1/editions/..%2F..%2Findex.html', '/x/..%2Fv1/nothing']) {
    const { headers } = await t.call('get', path).expect(404);
    expect([path, headers['content-type']]).toEqual([path, expect.stringContaining('application/problem+json')]);
  }
});

const signedIn = async (env: Record<string, string>) => {
  const app = await createTestApplication(env);
  const { email } = await app.caller(['tester']);
  const answer = await app.call('post', '/v1/sessions').send({ email, password: 'a long enough password' }).expect(201);
  await app.close();
  return { cookie: String(answer.headers['set-cookie']), promise: answer.headers['strict-transport-security'] };
};

test('TLS is promised behind TLS alone, and for this host alone', async () => {
  const plain = await signedIn({});
  expect(plain.promise).toBeUndefined();
  expect(plain.cookie).not.toMatch(/Secure/);
  const secure = await signedIn({ PUBLIC_URL: 'https://results.example.org' });
  expect(secure.promise).toMatch(/^max-age=\d+$/);
  expect(secure.cookie).toMatch(/Secure/);
});
