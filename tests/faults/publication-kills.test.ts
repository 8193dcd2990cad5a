/** `npm run bench -- publication-kills` does it a hundred times. */
import { CLEAN_UP, cleanUpHourly } from '../../api/clean-up.js';
import { Jobs } from '../../api/platform/jobs/jobs.js';
import { ReleaseWork } from '../../api/releases/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { createHouse, workEdition } from '../support/house.js';
import type { House } from '../support/house.js';
import { killPublication } from '../support/kill-publication.js';
import { runSql } from '../support/run-sql.js';
import { until } from '../support/programs.js';
import { moveEdition } from '../support/season.js';

let house: House;
let address: string;
let current = 1;

beforeAll(async () => {
  house = await createHouse();
  await workEdition(house, '2026');
  await moveEdition(house.editor, '2026', 'closure');
  const work = house.t.app.select(ReleasesModule).get(ReleaseWork);
  await house.editor.call('post', '/v1/editions/2026/releases').send({ erratum: null }).expect(202);
  await work.publishDue();
  await house.t.app.listen(0, '127.0.0.1');
  address = await house.t.app.getUrl();
}, 120_000);
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
  await until('all is gone', async () => (await all()).every((count) => count === 0));
}, 30_000);
