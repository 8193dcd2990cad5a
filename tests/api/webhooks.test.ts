import { createHmac } from 'node:crypto';
import { Webhook } from 'standardwebhooks';
import { Components } from '../../api/openapi/components.js';
import { describeEvents } from '../../api/openapi/describe-events.js';
import { waitAfter } from '../../api/webhooks/webhook-orders.js';
import { TellWebhook } from '../../api/webhooks/tell-webhook.js';
import { WebhookWork } from '../../api/webhooks/webhook-work.js';
import { WebhooksModule } from '../../api/webhooks/webhooks.module.js';
import { insertEdition } from '../support/insert-edition.js';
import { runSql } from '../support/run-sql.js';
import { schemaChecker } from '../support/schema-checker.js';
import { createTestApplication } from '../support/test-application.js';
import type { Caller, TestApplication } from '../support/test-application.js';
import { WebhookReceiver } from '../support/webhook-receiver.js';

const ALL = ['edition.opened', 'edition.closed', 'release.published', 'erratum.published'];
const DAY_MS = 86_400_000;

let t: TestApplication;
let admin: Caller;
let telling: TellWebhook;
let made = 0;
const receiver = new WebhookReceiver();
beforeAll(async () => {
  t = await createTestApplication({ WEBHOOKS_TO_NEAR_ADDRESSES: 'true', WEBHOOK_TIMEOUT_SECONDS: '1' });
  admin = await t.caller(['admin']);
  telling = t.app.select(WebhooksModule).get(TellWebhook);
  await receiver.start();
});
beforeEach(() => {
  receiver.received.length = 0;
  receiver.manners = [];
});
afterAll(async () => {
  await receiver.kill();
  await t.close();
});

const addWebhook = async (kinds = ALL): Promise<{ id: string; secret: string }> =>
  (await admin.call('post', '/v1/webhooks').send({ address: receiver.address, kinds, note: 'A copy of the results' }).expect(201)).body;
const read = async (id: string): Promise<any> => (await admin.call('get', `/v1/webhooks/${id}`).expect(200)).body;
const end = (id: string) => admin.call('delete', `/v1/webhooks/${id}`).expect(204);
const deliveries = async (id: string): Promise<any[]> => (await admin.call('get', `/v1/webhooks/${id}/deliveries`).expect(200)).body.items;

/** Editions that open and close, past the application: two changes each. */
async function turnEditions(count: number): Promise<void> {
  for (let n = 0; n < count; n++) {
    made += 1;
    await insertEdition(t.databaseUrl, `w-${made}`, 'planned');
    await runSql(t.databaseUrl, `UPDATE edition SET state = 'open' WHERE slug = $1`, [`w-${made}`]);
    await runSql(t.databaseUrl, `UPDATE edition SET state = 'closed' WHERE slug = $1`, [`w-${made}`]);
  }
}

/** By the words of the conventions (standardwebhooks.com): base64 of HMAC-SHA256 over id.timestamp.body, keyed by the bytes after whsec_. */
const signatureOf = (secret: string, id: string, timestamp: string, body: string): string =>
  `v1,${createHmac('sha256', Buffer.from(secret.slice('whsec_'.length), 'base64'))
    .update(`${id}.${timestamp}.${body}`)
    .digest('base64')}`;

test('the signature is that of the example of the Standard Webhooks conventions (from memory)', () => {
  const [secret, id, body] = ['whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw', 'msg_p5jXN8AQM9LWM0D4loKWxJek', '{"test": 2432232314}'];
  const expected = 'v1,g0hM9SsE+OTPJTGt/tmIKtSyZlE3uFJELVlNIOLJ1OE=';
  expect(new Webhook(secret).sign(id, new Date(1614265330_000), body)).toBe(expected);
  expect(signatureOf(secret, id, '1614265330', body)).toBe(expected);
});

test('a receiver that fails, hangs, answers late, breaks off and is killed is told of everything at least once, in order, signed', async () => {
  const { id, secret } = await addWebhook();
  await turnEditions(3);
  receiver.manners = ['takes', 'fails', 'hangs', 'takes', 'answersLate', 'breaksOff', 'sendsElsewhere'];
  for (let turn = 0; turn < 6; turn++) await telling.run({ id });
  await receiver.kill();
  await turnEditions(1);
  await telling.run({ id });
  expect(await read(id)).toMatchObject({ failures: 1, pausedAt: null });
  await receiver.start();
  // Two workers at once tell each change once.
  await Promise.all([telling.run({ id }), telling.run({ id })]);
  const taken = receiver.received.filter(({ manner }) => manner === 'takes').map(({ body }) => JSON.parse(body).data);
  const numbers = taken.map(({ number }) => number);
  expect(numbers).toEqual(numbers.map((_, i) => numbers[0] + i));
  expect(taken.map(({ kind }) => kind)).toEqual(Array.from({ length: 4 }, () => ['edition.opened', 'edition.closed']).flat());
  for (const { headers, body } of receiver.received) {
    const [messageId, timestamp] = [String(headers['webhook-id']), String(headers['webhook-timestamp'])];
    expect(messageId).toBe(`change_${JSON.parse(body).data.number}`);
    expect(headers['webhook-signature']).toBe(signatureOf(secret, messageId, timestamp, body));
    expect(() => new Webhook(secret).verify(body, headers as Record<string, string>)).not.toThrow();
  }
  // As the description says, which is all that a receiver has.
  const components = new Components();
  const described: any = {};
  describeEvents(described, components);
  const { parameters, requestBody } = described.webhooks.change.post;
  const isValid = schemaChecker({ components });
  for (const { headers, body } of receiver.received) {
    expect(isValid(requestBody.content['application/json'].schema, JSON.parse(body))).toBe(true);
    for (const { name } of parameters) expect([name, typeof headers[name]]).toEqual([name, 'string']);
  }
  const told = (await deliveries(id)).toReversed();
  expect(told.filter(({ isDelivered }) => !isDelivered).map(({ words, status }) => [status, words])).toEqual([
    [500, 'It answered with 500.'],
    [null, 'No answer within 1 s.'],
    [null, 'No answer within 1 s.'],
    [null, 'socket hang up'],
    [307, 'It answered with 307.'],
    [null, expect.stringContaining('ECONNREFUSED')],
  ]);
  expect(await read(id)).toMatchObject({ failures: 0, failingSince: null, toldUpTo: numbers.at(-1) });
  await end(id);
});

test('it goes the way of the queue: each change is ordered, what fails waits longer each time, but not for who resumes or replays', async () => {
  const work = t.app.select(WebhooksModule).get(WebhookWork);
  const { id } = await addWebhook(['edition.closed']);
  await work.start();
  await turnEditions(2);
  while (receiver.received.length < 2) await new Promise((soon) => setTimeout(soon, 20));
  expect(receiver.received.map(({ body }) => JSON.parse(body).type)).toEqual(['edition.closed', 'edition.closed']);
  receiver.manners = ['fails', 'fails'];
  // So that what comes below comes within six hours.
  await runSql(t.databaseUrl, 'UPDATE webhook SET failures = 8, failing_since = now() WHERE id = $1', [id]);
  await turnEditions(1);
  while ((await read(id)).failures === 8) await new Promise((soon) => setTimeout(soon, 20));
  const waits = async () => (await admin.call('get', '/v1/operations/orders').expect(200)).body.items;
  while ((await waits()).every(({ queue, state }: any) => queue !== 'webhook-delivery' || state !== 'waiting'))
    await new Promise((soon) => setTimeout(soon, 20));
  expect([1, 2, 3, 9].map(waitAfter)).toEqual([5, 20, 80, 21_600]);
  await admin
    .call('post', `/v1/webhooks/${id}/replays`)
    .send({ after: (await read(id)).toldUpTo })
    .expect(202);
  while ((await read(id)).failures === 9) await new Promise((soon) => setTimeout(soon, 20));
  await admin.call('delete', `/v1/webhooks/${id}/pause`).expect(204);
  while (receiver.received.length < 5) await new Promise((soon) => setTimeout(soon, 20));
  await work.onApplicationShutdown();
  await end(id);
});

test('who fails for days is paused and says so; a resumed one is told from where it was left', async () => {
  const { id } = await addWebhook();
  await turnEditions(1);
  receiver.manners = ['fails', 'fails'];
  await telling.run({ id });
  t.clock.time = new Date(t.clock.time.getTime() + 4 * DAY_MS);
  await telling.run({ id });
  const paused = await read(id);
  expect(paused).toMatchObject({ failures: 2, pausedAt: t.clock.time.toISOString() });
  expect(paused.pausedBecause).toBe('Every attempt of 3 days failed. The last: It answered with 500.');
  await telling.run({ id });
  expect(receiver.received).toHaveLength(2);
  const waiting = async () => (await admin.call('get', '/v1/inbox').expect(200)).body.items.map(({ code }: any) => code);
  expect(await waiting()).toContain('webhooks_paused');
  await admin.call('delete', `/v1/webhooks/${id}/pause`).expect(204);
  expect(await waiting()).not.toContain('webhooks_paused');
  await telling.run({ id });
  expect(receiver.received.slice(2).map(({ body }) => JSON.parse(body).type)).toEqual(['edition.opened', 'edition.closed']);
  await end(id);
});

test('who says that it is gone is paused at once', async () => {
  const { id } = await addWebhook();
  await turnEditions(1);
  receiver.manners = ['isGone'];
  await telling.run({ id });
  expect((await read(id)).pausedBecause).toMatch(/410/);
  await end(id);
});

test('what was told is told again from where one likes, under the same ids; an admin pauses; an ended one is told nothing', async () => {
  const { id } = await addWebhook();
  await turnEditions(1);
  await telling.run({ id });
  const [first, second] = receiver.received.map(({ headers }) => String(headers['webhook-id']));
  await admin
    .call('post', `/v1/webhooks/${id}/replays`)
    .send({ after: Number(first?.slice('change_'.length)) })
    .expect(202);
  await telling.run({ id });
  expect(receiver.received.map(({ headers }) => headers['webhook-id'])).toEqual([first, second, second]);
  const { toldUpTo } = await read(id);
  const beyond = await admin
    .call('post', `/v1/webhooks/${id}/replays`)
    .send({ after: toldUpTo + 1 })
    .expect(422);
  expect(beyond.body).toMatchObject({ code: 'webhooks/not-told-yet', detail: expect.stringContaining(`at most ${toldUpTo},`) });
  expect(await read(id)).toMatchObject({ toldUpTo });
  // Also when one is asked while the next is being told.
  receiver.meanwhile = () =>
    admin
      .call('post', `/v1/webhooks/${id}/replays`)
      .send({ after: Number(first?.slice('change_'.length)) })
      .expect(202);
  await turnEditions(1);
  await telling.run({ id });
  const [told, ...again] = receiver.received.slice(3).map(({ headers }) => headers['webhook-id']);
  expect(again).toEqual([second, told, expect.stringMatching(/^change_/)]);
  receiver.received.length = 3;
  await admin.call('post', `/v1/webhooks/${id}/pause`).send({ reason: 'Moving house' }).expect(200);
  await turnEditions(1);
  await telling.run({ id });
  expect(receiver.received).toHaveLength(3);
  await end(id);
  await telling.run({ id });
  await admin.call('get', `/v1/webhooks/${id}`).expect(404);
  expect(receiver.received).toHaveLength(3);
});

test('admins alone keep webhooks, and read a secret once', async () => {
  const editor = await t.caller(['editor', 'reviewer', 'tester']);
  for (const [method, path] of [
    ['get', ''],
    ['post', ''],
  ] as const)
    await editor.call(method, `/v1/webhooks${path}`).expect(403);
  const { id, secret } = await addWebhook();
  expect(secret).toMatch(/^whsec_[A-Za-z0-9+/]{43}=$/);
  const listed = await admin.call('get', '/v1/webhooks').expect(200);
  expect(listed.body.items.map((one: any) => one.id)).toContain(id);
  expect(JSON.stringify([listed.body, await read(id)])).not.toContain(secret);
  const { body } = await admin.call('get', '/v1/audit').expect(200);
  expect(JSON.stringify(body)).not.toContain(secret);
  await end(id);
});

test('without the operator’s leave an address nearby is refused when it is given', async () => {
  const strict = await createTestApplication();
  try {
    const other = await strict.caller(['admin']);
    const refused = await other.call('post', '/v1/webhooks').send({ address: 'https://127.0.0.1/x', kinds: ALL, note: 'x' }).expect(422);
    expect(refused.body).toMatchObject({ code: 'webhooks/address-refused', detail: expect.stringContaining('127.0.0.1') });
  } finally {
    await strict.close();
  }
});
