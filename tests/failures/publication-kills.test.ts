/** `npm run bench -- publication-kills` does it a hundred times. */
import { CLEAN_UP, cleanUpHourly } from '../../api/clean-up.js';
import { Jobs } from '../../api/platform/jobs/jobs.js';
import { Webhook } from 'standardwebhooks';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { createHouse, workEdition } from '../support/house.js';
import type { House } from '../support/house.js';
import { runSql } from '../support/run-sql.js';
import { ended, killPublication, startWorker, until } from '../support/kill-publication.js';
import { erratumFor, moveEdition } from '../support/season.js';
import { WebhookReceiver } from '../support/webhook-receiver.js';
import { WebhookWork } from '../../api/webhooks/webhook-work.js';
import { WebhooksModule } from '../../api/webhooks/webhooks.module.js';

let house: House;
let address: string;
let current = 1;

beforeAll(async () => {
  house = await createHouse(undefined, { WEBHOOKS_TO_NEAR_ADDRESSES: 'true' });
  await workEdition(house, '2026');
  await moveEdition(house.editor, '2026', 'closure');
  const work = house.t.app.select(ReleasesModule).get(ReleaseWork);
  await house.editor.call('post', '/v1/editions/2026/releases').send({ erratum: null }).expect(202);
  await work.publishDue();
  await house.t.app.listen(0, '127.0.0.1');
  address = await house.t.app.getUrl();
});
afterAll(() => house.t.close());

// At the first file, at the last but the seal, and after the database has said so.
test.each([1, 22, Infinity])(
  'killed at %d files: readers see the old or the new, whole; the next worker finishes',
  async (moment) => {
    const { seen, differences, finished, differencesAfter } = await killPublication(house, address, '2026', moment);
    expect([current, current + 1]).toContain(seen);
    if (moment === Infinity) expect(seen).toBe(current + 1);
    expect([differences, differencesAfter]).toEqual([0, 0]);
    current += 1;
    expect(finished).toBe(current);
  },
  120_000,
);

test('a worker that is killed while it tells: every release and erratum is told at least once, in order, each signature verifiable', async () => {
  const receiver = new WebhookReceiver();
  await receiver.start();
  const admin = await house.t.caller(['admin']);
  const kinds = ['release.published', 'erratum.published'];
  const asked = { address: receiver.address, kinds, note: 'A copy of the results' };
  const { secret } = (await admin.call('post', '/v1/webhooks').send(asked).expect(201)).body as { secret: string };
  const publishing = house.t.app.select(ReleasesModule).get(ReleaseWork);
  for (const words of ['First.', 'Second.', 'Third.']) {
    const erratum = await erratumFor(house.editor, '2026', 'catalogueError', words);
    await house.editor.call('post', '/v1/editions/2026/releases').send({ erratum }).expect(202);
    await publishing.publishDue();
  }
  receiver.manners = ['takes', 'hangs'];
  const first = startWorker(house, address);
  await until(() => Promise.resolve(receiver.received.length === 2), 'the worker waits for the answer to its second event');
  first.kill('SIGKILL');
  await ended(first);
  // What a worker does first when it starts.
  const next = house.t.app.select(WebhooksModule).get(WebhookWork);
  await next.start();
  const taken = () => receiver.received.filter(({ manner }) => manner === 'takes').map(({ body }) => JSON.parse(body).data);
  await until(() => Promise.resolve(taken().length === 3), 'the next worker told what was left');
  await next.onApplicationShutdown();
  expect(taken().map(({ revision, erratum }) => [revision, erratum.words])).toEqual([
    [current + 1, 'First.'],
    [current + 2, 'Second.'],
    [current + 3, 'Third.'],
  ]);
  const ids = receiver.received.map(({ headers }) => headers['webhook-id']);
  expect(ids[1]).toBe(ids[2]);
  for (const { body, headers } of receiver.received)
    expect(() => new Webhook(secret).verify(body, headers as Record<string, string>)).not.toThrow();
  await receiver.kill();
});

test('a worker cleans up every hour: answers to old keys, sessions and counts of failed tries', async () => {
  const { t, editor } = house;
  const left = async (table: string) => Number((await runSql(t.databaseUrl, `SELECT count(*) FROM ${table}`))[0]!['count']);
  const tables = ['idempotent_answer', 'session', 'sign_in_failure'];
  const all = async () => Promise.all(tables.map(left));
  expect(await runSql(t.databaseUrl, `SELECT cron FROM pgboss.schedule WHERE name = 'clean-up'`)).toEqual([{ cron: '17 * * * *' }]);
  await editor.call('post', '/v1/catalogue/makers').set('Idempotency-Key', 'kept').send({ slug: 'kept', name: 'Kept' }).expect(201);
  await t.call('post', '/v1/sessions').send({ email: editor.email, password: 'not the one it is' }).expect(401);
  expect((await all()).filter((count) => count === 0)).toEqual([]);
  t.clock.time = new Date(t.clock.time.getTime() + 15 * 86_400_000);
  await cleanUpHourly(t.app);
  await t.app.get(Jobs).order(null, CLEAN_UP, {});
  await until(async () => (await all()).every((count) => count === 0), 'all is gone');
});
