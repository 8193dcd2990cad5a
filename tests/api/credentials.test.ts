import { AccountsModule } from '../../api/accounts/accounts.module.js';
import { AccountsReadModel } from '../../api/accounts/accounts.read-model.js';
import { ForgetExpired } from '../../api/accounts/forget-expired.js';
import { runSql } from '../support/run-sql.js';
import { createTestApplication } from '../support/test-application.js';
import type { Caller, TestApplication } from '../support/test-application.js';

let t: TestApplication;
let admin: Caller;
beforeAll(async () => {
  t = await createTestApplication();
  admin = await t.caller(['admin']);
});
afterAll(() => t.close());

const OLD = 'a long enough password';
const NEW = 'another long enough one';
const signIn = (email: string, password: string) => t.call('post', '/v1/sessions').send({ email, password });
const codeOf = (answer: { body: { code: string } }) => answer.body.code;
const tokenOf = (caller: Caller, scopes: string[] = ['tester']) => caller.browse('post', '/v1/tokens').send({ name: 'x', scopes });

test('the own password changes with the old one; other sessions end, this one stays', async () => {
  const tester = await t.caller(['tester']);
  const other = await signIn(tester.email, OLD).expect(201);
  const change = (currentPassword: string, newPassword = NEW) =>
    tester.browse('post', '/v1/accounts/me/password-changes').send({ currentPassword, newPassword });
  expect(codeOf(await change('not the old one').expect(422))).toBe('accounts/wrong-password');
  await change(OLD, 'too short').expect(422);
  await change(OLD).expect(204);
  await tester.browse('get', '/v1/accounts/me').expect(200);
  await t
    .call('get', '/v1/accounts/me')
    .set('Cookie', other.get('Set-Cookie') ?? [])
    .expect(401);
  await signIn(tester.email, OLD).expect(401);
  await signIn(tester.email, NEW).expect(201);
  const byToken = await tester
    .call('post', '/v1/accounts/me/password-changes')
    .send({ currentPassword: NEW, newPassword: OLD })
    .expect(403);
  expect(codeOf(byToken)).toBe('access/session-needed');
});

test('guesses at the old password are counted before they are looked at', async () => {
  const tester = await t.caller(['tester']);
  const lookedUp = jest.spyOn(AccountsReadModel.prototype, 'byId');
  const guesses = await Promise.all(
    Array.from({ length: 20 }, (_, i) =>
      tester.browse('post', '/v1/accounts/me/password-changes').send({ currentPassword: `guess ${i}`, newPassword: NEW }),
    ),
  );
  expect(guesses.filter(({ status }) => status === 422)).toHaveLength(5);
  expect(guesses.filter(({ status }) => status === 429)).toHaveLength(15);
  expect(lookedUp).toHaveBeenCalledTimes(5);
  lookedUp.mockRestore();
});

test('an admin makes an address to set a password; it serves once, the last alone, and for a day', async () => {
  const tester = await t.caller(['tester']);
  const path = `/v1/accounts/${tester.accountId}/password-resets`;
  await tester.browse('post', path).expect(403);
  expect(codeOf(await admin.call('post', path).expect(403))).toBe('access/session-needed');
  const first = await admin.browse('post', path).expect(201);
  const second = await admin.browse('post', path).expect(201);
  const set = (secret: string) => t.call('post', `/v1/password-resets/${secret}/password`).send({ password: NEW });
  expect(codeOf(await set(first.body.secret).expect(410))).toBe('accounts/reset-not-valid');
  const atOnce = await Promise.all([set(second.body.secret), set(second.body.secret)]);
  expect(atOnce.map(({ status }) => status).sort()).toEqual([204, 410]);
  await set(second.body.secret).expect(410);
  await signIn(tester.email, NEW).expect(201);
  await tester.call('get', '/v1/accounts/me').expect(401);
  await tester.browse('get', '/v1/accounts/me').expect(401);
  const third = await admin.browse('post', path).expect(201);
  const before = t.clock.time;
  t.clock.time = new Date(before.getTime() + 86_400_001);
  await set(third.body.secret).expect(410);
  t.clock.time = before;
  const kept = await runSql(t.databaseUrl, 'SELECT token_hash FROM password_reset');
  expect(JSON.stringify(kept)).not.toContain(third.body.secret);
});

test('sessions are listed without their secrets, ended one by one, and everywhere', async () => {
  const tester = await t.caller(['tester']);
  const second = await signIn(tester.email, OLD).expect(201);
  const listed = await tester.browse('get', '/v1/sessions').expect(200);
  expect(listed.body.items.map(({ isCurrent }: { isCurrent: boolean }) => isCurrent).sort()).toEqual([false, true]);
  const other = listed.body.items.find(({ isCurrent }: { isCurrent: boolean }) => !isCurrent);
  const stranger = await t.caller(['tester']);
  await stranger.browse('delete', `/v1/sessions/${other.id}`).expect(404);
  await tester.browse('delete', `/v1/sessions/${other.id}`).expect(204);
  await t
    .call('get', '/v1/accounts/me')
    .set('Cookie', second.get('Set-Cookie') ?? [])
    .expect(401);
  await tester.browse('delete', '/v1/sessions').expect(204);
  await tester.browse('get', '/v1/accounts/me').expect(401);
  await stranger.browse('get', '/v1/accounts/me').expect(200);
  await stranger.call('delete', `/v1/accounts/${stranger.accountId}/sessions`).expect(403);
  await admin.call('delete', `/v1/accounts/${stranger.accountId}/sessions`).expect(204);
  await stranger.browse('get', '/v1/accounts/me').expect(401);
});

test('only a session makes a token', async () => {
  const tester = await t.caller(['tester']);
  const answer = await tester
    .call('post', '/v1/tokens')
    .send({ name: 'renewed', scopes: ['tester'] })
    .expect(403);
  expect(codeOf(answer)).toBe('access/session-needed');
  await tokenOf(tester).expect(201);
  await tester
    .browse('post', '/v1/tokens')
    .send({ name: 'long', scopes: ['tester'], expiresInDays: 367 })
    .expect(422);
});

test('an admin sees and revokes the tokens of others', async () => {
  const tester = await t.caller(['tester']);
  const { body: made } = await tokenOf(tester).expect(201);
  const path = `/v1/accounts/${tester.accountId}/tokens`;
  await tester.call('get', path).expect(403);
  const listed = await admin.call('get', path).expect(200);
  expect(listed.body.items.map(({ id }: { id: string }) => id)).toContain(made.id);
  expect(listed.text).not.toContain(made.token);
  await tester.call('delete', `${path}/${made.id}`).expect(403);
  await admin.call('delete', `/v1/accounts/${admin.accountId}/tokens/${made.id}`).expect(404);
  await admin.call('delete', `${path}/${made.id}`).expect(204);
  await t.call('get', '/v1/accounts/me').set('Authorization', `Bearer ${made.token}`).expect(401);
});

test('tokens of an account that was disabled stay dead when it is enabled again', async () => {
  const tester = await t.caller(['tester']);
  const change = (version: number, isDisabled: boolean) =>
    admin.call('patch', `/v1/accounts/${tester.accountId}`).set('If-Match', `"${version}"`).send({ isDisabled });
  await change(1, true).expect(200);
  expect(codeOf(await admin.browse('post', `/v1/accounts/${tester.accountId}/password-resets`).expect(409))).toBe('accounts/disabled');
  await change(2, false).expect(200);
  await tester.call('get', '/v1/accounts/me').expect(401);
  await tester.browse('get', '/v1/accounts/me').expect(401);
  await signIn(tester.email, OLD).expect(201);
});

test('invitations are listed without their secrets and taken back', async () => {
  const tester = await t.caller(['tester']);
  const { body: invited } = await admin
    .call('post', '/v1/invitations')
    .send({ roles: ['editor'], note: 'for the desk' })
    .expect(201);
  await tester.call('get', '/v1/invitations').expect(403);
  const listed = await admin.call('get', '/v1/invitations').expect(200);
  expect(listed.body.items).toEqual([expect.objectContaining({ id: invited.id, roles: ['editor'], note: 'for the desk' })]);
  expect(listed.text).not.toContain(invited.secret);
  await tester.call('delete', `/v1/invitations/${invited.id}`).expect(403);
  await admin.call('delete', `/v1/invitations/${invited.id}`).expect(204);
  await admin.call('delete', `/v1/invitations/${invited.id}`).expect(404);
  const acceptance = { email: 'desk@bench.example', displayName: 'Desk', password: OLD };
  await t.call('post', `/v1/invitations/${invited.secret}/acceptance`).send(acceptance).expect(410);
});

test.each(['/v1/tokens/not-a-uuid', '/v1/sessions/not-a-uuid', '/v1/invitations/not-a-uuid', '/v1/accounts/x/tokens/y'])(
  '%s names no id',
  async (path) => {
    expect(codeOf(await admin.call('delete', path).expect(422))).toBe('request/not-valid');
  },
);

test('the record itself keeps the last admin, also from two changes at once', async () => {
  const second = await t.caller(['admin']);
  const demote = (id: string) => runSql(t.databaseUrl, `UPDATE account SET roles = '{tester}' WHERE id = $1`, [id]);
  const outcomes = await Promise.allSettled([demote(admin.accountId), demote(second.accountId)]);
  expect(outcomes.map(({ status }) => status).sort()).toEqual(['fulfilled', 'rejected']);
  const left = await runSql(t.databaseUrl, `SELECT id::text FROM account WHERE 'admin' = ANY(roles) AND NOT is_disabled`);
  expect(left).toHaveLength(1);
  await expect(runSql(t.databaseUrl, 'UPDATE account SET is_disabled = true WHERE id = $1', [left[0]!['id']])).rejects.toMatchObject({
    code: 'FP001',
  });
});

test('what lets nobody in any more is cleaned away, and nothing else', async () => {
  const tester = await t.caller(['tester']);
  await signIn(tester.email, 'wrong').expect(401);
  const forget = () => t.app.select(AccountsModule).get(ForgetExpired).run();
  const countOf = async (table: string) => Number((await runSql(t.databaseUrl, `SELECT count(*) FROM ${table}`))[0]!['count']);
  const sessions = await countOf('session');
  await forget();
  expect(await countOf('session')).toBe(sessions);
  expect(await countOf('sign_in_failure')).toBeGreaterThan(0);
  const before = t.clock.time;
  t.clock.time = new Date(before.getTime() + 15 * 86_400_000);
  await forget();
  t.clock.time = before;
  expect(await countOf('session')).toBe(0);
  expect(await countOf('sign_in_failure')).toBe(0);
  expect(await countOf('password_reset')).toBe(0);
});

test('a house without mail says who helps with a forgotten password', async () => {
  const answer = await t.call('post', '/v1/password-resets').send({ email: admin.email }).expect(409);
  expect(codeOf(answer)).toBe('accounts/no-mail');
  expect(answer.body.explains ?? answer.body.detail).toBeTruthy();
});
