import { countStatements } from '../support/count-statements.js';
import { createTestApplication } from '../support/test-application.js';
import type { TestApplication } from '../support/test-application.js';

let t: TestApplication;
beforeAll(async () => {
  t = await createTestApplication();
});
afterAll(() => t.close());

const PASSWORD = 'a long enough password';

test('an invitation serves once, and only until it expires', async () => {
  const admin = await t.caller(['admin']);
  const invited = await admin
    .call('post', '/v1/invitations')
    .send({ roles: ['tester'], note: 'for the bench' })
    .expect(201);
  const accept = (email: string) =>
    t.call('post', `/v1/invitations/${invited.body.secret}/acceptance`).send({ email, displayName: 'Ada', password: PASSWORD });
  await accept('once@bench.example').expect(201);
  expect((await accept('twice@bench.example').expect(410)).body.code).toBe('accounts/invitation-not-valid');
  const late = await admin
    .call('post', '/v1/invitations')
    .send({ roles: ['tester'], note: 'late' })
    .expect(201);
  const before = t.clock.time;
  t.clock.time = new Date(before.getTime() + 15 * 86_400_000);
  await t
    .call('post', `/v1/invitations/${late.body.secret}/acceptance`)
    .send({ email: 'late@bench.example', displayName: 'Late', password: PASSWORD })
    .expect(410);
  t.clock.time = before;
});

test('nobody takes a name that looks like that of another, in whatever script or capitals', async () => {
  const admin = await t.caller(['admin']);
  const invited = await admin
    .call('post', '/v1/invitations')
    .send({ roles: ['tester'], note: 'for the bench' })
    .expect(201);
  const accept = (displayName: string) =>
    t.call('post', `/v1/invitations/${invited.body.secret}/acceptance`).send({
      email: `${encodeURIComponent(displayName).replaceAll('%', '')}@bench.example`,
      displayName,
      password: PASSWORD,
    });
  await t.caller(['tester'], 'P. Cocha');
  // The third is Cyrillic throughout; a capital of another script counts as well (confusables of Unicode Technical Standard 39).
  for (const same of ['P. Cocha', 'p. cocha', 'Р. Сосһа', 'Р. СОСНА']) {
    const { body } = await accept(same).expect(409);
    expect(body).toMatchObject({ code: 'accounts/name-taken', detail: expect.stringContaining(same) });
  }
  await accept('P. Cochan').expect(201);
});

test('a browser needs its CSRF token for a change, not for reading', async () => {
  const { email } = await t.caller(['tester']);
  const session = await t.call('post', '/v1/sessions').send({ email, password: PASSWORD }).expect(201);
  const cookie = session.get('Set-Cookie') ?? [];
  expect(cookie[0]).toMatch(/HttpOnly/);
  expect(cookie[0]).toMatch(/SameSite=Lax/);
  // A device whose clock is wrong would drop a cookie that names the moment of its end.
  expect(cookie[0]).toMatch(/Max-Age=\d{4,}/);
  expect(cookie[0]).not.toMatch(/Expires/);
  await t.call('get', '/v1/accounts/me').set('Cookie', cookie).expect(200);
  const token = { name: 'x', scopes: ['tester'] };
  expect((await t.call('post', '/v1/tokens').set('Cookie', cookie).send(token).expect(403)).body.code).toBe('access/csrf');
  await t.call('post', '/v1/tokens').set('Cookie', cookie).set('X-CSRF-Token', 'x'.repeat(43)).send(token).expect(403);
  await t.call('post', '/v1/tokens').set('Cookie', cookie).set('X-CSRF-Token', session.body.csrfToken).send(token).expect(201);
  await t.call('delete', '/v1/sessions/current').set('Cookie', cookie).set('X-CSRF-Token', session.body.csrfToken).expect(204);
  await t.call('get', '/v1/accounts/me').set('Cookie', cookie).expect(401);
});

test('unknown account and wrong password get the same answer, and failures back off', async () => {
  const { email } = await t.caller(['tester']);
  const wrong = (address: string) => t.call('post', '/v1/sessions').send({ email: address, password: 'not the password' });
  const known = await wrong(email).expect(401);
  const unknown = await wrong('nobody@bench.example').expect(401);
  expect(known.body).toEqual(unknown.body);
  for (let i = 0; i < 4; i++) await wrong(email).expect(401);
  const blocked = await t.call('post', '/v1/sessions').send({ email, password: PASSWORD }).expect(429);
  expect(Number(blocked.headers['retry-after'])).toBeGreaterThan(0);
  t.clock.time = new Date(t.clock.time.getTime() + 3_000);
  await t.call('post', '/v1/sessions').send({ email, password: PASSWORD }).expect(201);
});

test('a token does no more than its scopes, is shown once, and ends when revoked or expired', async () => {
  const both = await t.caller(['tester', 'admin']);
  const narrow = await both
    .browse('post', '/v1/tokens')
    .send({ name: 'bench', scopes: ['tester'], expiresInDays: 1 })
    .expect(201);
  const asNarrow = () => t.call('get', '/v1/accounts').set('Authorization', `Bearer ${narrow.body.token}`);
  await both.call('get', '/v1/accounts').expect(200);
  await asNarrow().expect(403);
  const listed = await both.call('get', '/v1/tokens').expect(200);
  expect(JSON.stringify(listed.body)).not.toContain(narrow.body.token);
  const tester = await t.caller(['tester']);
  expect(
    (
      await tester
        .browse('post', '/v1/tokens')
        .send({ name: 'more', scopes: ['admin'] })
        .expect(422)
    ).body.code,
  ).toBe('accounts/scope-beyond-roles');
  await tester.call('delete', `/v1/tokens/${narrow.body.id}`).expect(404);
  const before = t.clock.time;
  t.clock.time = new Date(before.getTime() + 2 * 86_400_000);
  await asNarrow().expect(401);
  t.clock.time = before;
  await both.call('delete', `/v1/tokens/${narrow.body.id}`).expect(204);
  await asNarrow().expect(401);
});

test('the use of a token is noted once a minute, and costs a statement only then', async () => {
  const caller = await t.caller(['tester']);
  const { body } = await caller
    .browse('post', '/v1/tokens')
    .send({ name: 'gauge', scopes: ['tester'] })
    .expect(201);
  const used = () => countStatements(() => t.call('get', '/v1/spools').set('Authorization', `Bearer ${body.token}`).expect(200));
  const noted = async () => {
    const { items } = (await caller.call('get', '/v1/tokens').expect(200)).body as { items: { id: string; lastUsedAt: string | null }[] };
    return items.find(({ id }) => id === body.id)?.lastUsedAt;
  };
  const began = t.clock.time;
  expect(await noted()).toBeNull();
  const first = await used();
  t.clock.time = new Date(began.getTime() + 59_000);
  expect(await used()).toBe(first - 1);
  expect(await noted()).toBe(began.toISOString());
  t.clock.time = new Date(began.getTime() + 60_000);
  expect(await used()).toBe(first);
  expect(await noted()).toBe(t.clock.time.toISOString());
  t.clock.time = began;
});

test('an account changes only with the ETag last seen; the last admin stays', async () => {
  const admin = await t.caller(['admin']);
  const tester = await t.caller(['tester']);
  const path = `/v1/accounts/${tester.accountId}`;
  await admin.call('patch', path).send({ isDisabled: true }).expect(428);
  await admin.call('patch', path).set('If-Match', '"9"').send({ isDisabled: true }).expect(412);
  const changed = await admin.call('patch', path).set('If-Match', '"1"').send({ isDisabled: true }).expect(200);
  expect(changed.headers.etag).toBe('"2"');
  await tester.call('get', '/v1/accounts/me').expect(401);
  const all = await admin.call('get', '/v1/accounts').expect(200);
  for (const other of all.body.items) {
    if (other.id === admin.accountId || !other.roles.includes('admin')) continue;
    await admin
      .call('patch', `/v1/accounts/${other.id}`)
      .set('If-Match', `"${other.version}"`)
      .send({ roles: ['tester'] })
      .expect(200);
  }
  const last = await admin
    .call('patch', `/v1/accounts/${admin.accountId}`)
    .set('If-Match', '"1"')
    .send({ roles: ['tester'] })
    .expect(409);
  expect(last.body.code).toBe('accounts/last-admin');
});

test('unknown fields and malformed bodies are refused with all faults at once', async () => {
  const bad = await t.call('post', '/v1/sessions').send({ email: 'no address', pass: 'x' }).expect(422);
  expect(bad.headers['content-type']).toContain('application/problem+json');
  expect(bad.body.errors.map((fault: { pointer: string }) => fault.pointer).sort()).toEqual(['/email', '/pass', '/password']);
  const malformed = await t.call('post', '/v1/sessions').set('Content-Type', 'application/json').send('{"email":').expect(400);
  expect(malformed.body.code).toBe('request/malformed');
  await t.call('post', '/v1/sessions').set('Content-Type', 'application/xml').send('<a/>').expect(415);
});

test('who did what is on the audit trail, for admins', async () => {
  const admin = await t.caller(['admin']);
  const tester = await t.caller(['tester']);
  await tester.call('get', '/v1/audit').expect(403);
  await t.call('get', '/v1/audit').expect(401);
  await admin
    .call('post', '/v1/invitations')
    .send({ roles: ['editor'], note: 'seen' })
    .expect(201);
  const page = await admin.call('get', '/v1/audit?limit=1').expect(200);
  expect(page.body.items[0]).toMatchObject({ action: 'invitation.made', actorId: admin.accountId, after: { note: 'seen' } });
  const next = await admin.call('get', `/v1/audit?limit=1&cursor=${page.body.nextCursor}`).expect(200);
  expect(next.body.items[0].id).not.toBe(page.body.items[0].id);
  const acts = async (query: string) =>
    (await admin.call('get', `/v1/audit?${query}`).expect(200)).body.items as { actorId: string; at: string }[];
  const own = await acts(`actorId=${admin.accountId}`);
  expect(new Set(own.map(({ actorId }) => actorId))).toEqual(new Set([admin.accountId]));
  const day = own[0]!.at.slice(0, 10);
  const dayBefore = new Date(Date.parse(day) - 86_400_000).toISOString().slice(0, 10);
  expect(await acts(`actorId=${admin.accountId}&from=${day}&to=${day}`)).toHaveLength(own.length);
  expect(await acts(`actorId=${admin.accountId}&to=${dayBefore}`)).toEqual([]);
});

test('the program says that it lives and can work, and describes itself', async () => {
  await t.call('get', '/health/live').expect(200);
  await t.call('get', '/health/ready').expect(200);
  const described = await t.call('get', '/v1/openapi.json').expect(200);
  expect(described.body.openapi).toBe('3.1.0');
  expect(described.body.components.schemas.SignInRequest.required).toEqual(['email', 'password']);
  expect((await t.call('get', '/v1/nowhere').expect(404)).body.code).toBe('request/not-found');
});

test('no two people are called alike', async () => {
  await t.caller(['tester'], 'One Name');
  await expect(t.caller(['tester'], 'One Name')).rejects.toThrow(/409/);
});
