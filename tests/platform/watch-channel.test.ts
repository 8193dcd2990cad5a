import { Watch } from '../../api/platform/database/watch-channel.js';
import { runSql } from '../support/run-sql.js';
import { createTestDatabase } from '../support/test-database.js';
import type { TestDatabase } from '../support/test-database.js';

const NEVER_MS = 24 * 3_600_000;

let database: TestDatabase;
let watch: Watch | undefined;
beforeAll(async () => {
  database = await createTestDatabase();
});
afterEach(() => watch?.stop());
afterAll(() => database.drop());

/** Starts a watch, and gives what resolves with its next look: what does not come at all ends as a test that took too long. */
async function watching(everyMs: number): Promise<() => Promise<void>> {
  let looked = (): void => undefined;
  const look = async () => looked();
  watch = new Watch({ databaseUrl: database.url, channel: 'releases', everyMs, look });
  await watch.start();
  return () =>
    new Promise((done) => {
      looked = done;
    });
}

test('a look follows when somebody tells, long before its time', async () => {
  const nextLook = (await watching(NEVER_MS))();
  await runSql(database.url, "SELECT pg_notify('releases', '')");
  await nextLook;
});

test('and when its time has come, also when nobody tells', async () => {
  const nextLook = await watching(20);
  await nextLook();
  await nextLook();
});

test('a release that changes its state tells, whoever changes it', async () => {
  const nextLook = (await watching(NEVER_MS))();
  await runSql(database.url, `UPDATE release SET state = 'published' WHERE false`);
  await nextLook;
});
