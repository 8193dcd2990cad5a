import { Jobs } from '../../api/platform/jobs/jobs.js';
import { runSql } from '../support/run-sql.js';
import { createTestApplication } from '../support/test-application.js';

test('what comes by the times of a cron line, and carries nothing, is told among the orders and carried out', async () => {
  const t = await createTestApplication();
  try {
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
  } finally {
    await t.close();
  }
});
