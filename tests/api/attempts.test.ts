import { AccountsReadModel } from '../../api/accounts/accounts.read-model.js';
import { networkOf } from '../../api/platform/http/limits/network.js';
import { createTestApplication } from '../support/test-application.js';
import type { TestApplication } from '../support/test-application.js';

let t: TestApplication;
beforeAll(async () => {
  t = await createTestApplication({ TRUSTED_PROXIES: '127.0.0.1' });
  await t.app.listen(0, '127.0.0.1');
});
afterAll(() => t.close());
afterEach(() => jest.restoreAllMocks());

const PASSWORD = 'a long enough password';
const signIn = (email: string, password: string, from: string) =>
  t.call('post', '/v1/sessions').set('X-Forwarded-For', from).send({ email, password });
const tally = async (answers: readonly PromiseLike<{ status: number }>[]) => {
  const statuses = (await Promise.all(answers)).map(({ status }) => status);
  return Object.fromEntries([...new Set(statuses)].sort().map((status) => [status, statuses.filter((one) => one === status).length]));
};

test('of 60 wrong guesses at once five are tried; for the others nobody is looked up and nothing is hashed', async () => {
  const { email } = await t.caller(['tester']);
  const lookedUp = jest.spyOn(AccountsReadModel.prototype, 'byEmail');
  const guesses = Array.from({ length: 60 }, (_, i) => signIn(email, `guess ${i}`, `198.51.100.${i}`));
  expect(await tally(guesses)).toEqual({ 401: 5, 429: 55 });
  expect(lookedUp).toHaveBeenCalledTimes(5);
});

test('one address that tries 60 accounts is slowed down after twenty', async () => {
  const guesses = Array.from({ length: 60 }, (_, i) => signIn(`nobody-${i}@bench.example`, PASSWORD, '198.51.100.200'));
  expect(await tally(guesses)).toEqual({ 401: 20, 429: 40 });
});

test('who is signed in from a place can sign in there again, whatever is tried from elsewhere', async () => {
  const { email } = await t.caller(['tester']);
  await signIn(email, PASSWORD, '203.0.113.5').expect(201);
  for (let i = 0; i < 5; i++) await signIn(email, 'wrong', `198.51.100.${100 + i}`).expect(401);
  await signIn(email, PASSWORD, '198.51.100.150').expect(429);
  await signIn(email, PASSWORD, '203.0.113.5').expect(201);
});

test('successes of a whole house behind one address are not held against it', async () => {
  const { email } = await t.caller(['tester']);
  for (let i = 0; i < 25; i++) await signIn(email, PASSWORD, '203.0.113.77').expect(201);
});

test('the wait doubles, and a quiet day forgets', async () => {
  const { email } = await t.caller(['tester']);
  const before = t.clock.time;
  const later = (seconds: number) => (t.clock.time = new Date(t.clock.time.getTime() + 1000 * seconds));
  const waits: number[] = [];
  for (let i = 0; i < 4; i++) await signIn(email, 'wrong', '198.51.100.30').expect(401);
  for (let i = 0; i < 3; i++) {
    await signIn(email, 'wrong', '198.51.100.30').expect(401);
    const refused = await signIn(email, 'wrong', '198.51.100.30').expect(429);
    waits.push(Number(refused.headers['retry-after']));
    later(waits.at(-1)!);
  }
  expect(waits).toEqual([2, 4, 8]);
  later(86_401);
  for (let i = 0; i < 4; i++) await signIn(email, 'wrong', '198.51.100.30').expect(401);
  await signIn(email, PASSWORD, '198.51.100.30').expect(201);
  t.clock.time = before;
});

test.each([
  ['invitations', 'acceptance', 'isInvitation', '198.51.100.220'],
  ['password-resets', 'password', 'isReset', '198.51.100.221'],
] as const)(
  'secrets of %s are guessed no faster, and looked at only after they are counted',
  async (secrets, act, look, from) => {
    const lookedUp = jest.spyOn(AccountsReadModel.prototype, look);
    const acceptance = { email: 'guess@bench.example', displayName: 'Guess', password: PASSWORD };
    const guesses = Array.from({ length: 30 }, (_, i) =>
      t
        .call('post', `/v1/${secrets}/guess-${i}/${act}`)
        .set('X-Forwarded-For', from)
        .send(secrets === 'invitations' ? acceptance : { password: PASSWORD }),
    );
    expect(await tally(guesses)).toEqual({ 410: 20, 429: 10 });
    expect(lookedUp).toHaveBeenCalledTimes(20);
  },
  60_000,
);

test('an address that has an account is told so, and the invitation stays good; of two who take it at once one has it', async () => {
  const admin = await t.caller(['admin']);
  const { email } = await t.caller(['tester']);
  const invited = await admin
    .call('post', '/v1/invitations')
    .send({ roles: ['tester'], note: 'again' })
    .expect(201);
  const accept = (address: string, displayName = 'Again') =>
    t.call('post', `/v1/invitations/${invited.body.secret}/acceptance`).send({ email: address, displayName, password: PASSWORD });
  expect((await accept(email).expect(409)).body.code).toBe('accounts/address-taken');
  const atOnce = await Promise.all(['again@bench.example', 'besides@bench.example'].map((address, i) => accept(address, `Again ${i}`)));
  expect(atOnce.map(({ status }) => status).sort()).toEqual([201, 410]);
});

test.each([
  ['203.0.113.5', '203.0.113.5'],
  ['::ffff:203.0.113.5', '203.0.113.5'],
  // RFC 3849 documentation prefix; RFC 5952 section 4.1 on leading zeros.
  ['2001:db8:1:2:3:4:5:6', '2001:db8:1:2::/64'],
  ['2001:0DB8:0001:0002::1', '2001:db8:1:2::/64'],
  ['2001:db8::1', '2001:db8:0:0::/64'],
  ['::1', '0:0:0:0::/64'],
  ['fe80::1%eth0', 'fe80:0:0:0::/64'],
])('%s counts as %s', (address, network) => {
  expect(networkOf(address)).toBe(network);
});
