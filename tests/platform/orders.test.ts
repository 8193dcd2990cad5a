import { Database } from '../../api/platform/database/database.js';
import { Jobs } from '../../api/platform/jobs/jobs.js';
import { lookSeldom } from '../support/look-seldom.js';
import { runSql } from '../support/run-sql.js';
import { createTestApplication } from '../support/test-application.js';
import type { TestApplication } from '../support/test-application.js';

let t: TestApplication;
beforeAll(async () => {
  t = await createTestApplication();
});
afterAll(() => t.close());

test('what comes by the times of a cron line, and carries nothing, is told among the orders and carried out', async () => {
  const jobs = t.app.get(Jobs);
  await jobs.prepare({ name: 'by-the-clock', policy: 'short' });
  // As the queue's own clock sends it.
  await runSql(t.databaseUrl, `INSERT INTO pgboss.job (name, policy) VALUES ('by-the-clock', 'short')`);
  expect(await jobs.open()).toMatchObject([{ queue: 'by-the-clock', order: {}, state: 'waiting' }]);
  await new Promise<void>((done) => {
    void jobs.every('by-the-clock', '0 0 1 1 *', () => {
      done();
      return Promise.resolve();
    });
  });
  await jobs.noLonger('by-the-clock');
});

test('who carries out orders is told of one when its transaction is done, also of a queue that is older than that, and need not look', async () => {
  const asBefore = lookSeldom('told');
  const jobs = t.app.get(Jobs);
  const queue = { name: 'told', policy: 'short' } as const;
  await runSql(t.databaseUrl, `SELECT pgboss.create_queue('told', '{"policy":"short"}'::jsonb)`);
  let taken: (order: object) => void = () => undefined;
  const next = () => new Promise<object>((done) => (taken = done));
  // The first look, at what was ordered before, is over.
  await jobs.order(null, queue, { edition: 'before' });
  const first = next();
  await jobs.carryOut(queue, (order) => {
    taken(order);
    return Promise.resolve();
  });
  asBefore();
  expect(await first).toEqual({ edition: 'before' });
  await new Promise((resume) => setTimeout(resume, 1000));
  const second = next();
  await t.app.get(Database).transaction((tx) => jobs.order(tx, queue, { edition: 'now' }));
  expect(await second).toEqual({ edition: 'now' });
}, 20_000);
