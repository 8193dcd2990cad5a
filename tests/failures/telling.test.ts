import { AccountsStore } from '../../api/accounts/accounts.store.js';
import { AccountsModule } from '../../api/accounts/accounts.module.js';
import { inTrace, traceparent } from '../../api/platform/trace/trace-context.js';
import { nightlyBackup } from '../../api/platform/backup/nightly-backup.js';
import { BACKUPS } from '../../api/platform/jobs/jobs.module.js';
import { Jobs } from '../../api/platform/jobs/jobs.js';
import { orderStateSchema } from '../../api/contract/order-state.js';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PublishedReleases } from '../../api/releases/published-releases.read-model.js';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { createHouse, workEdition } from '../support/house.js';
import { runSql } from '../support/run-sql.js';
import { moveEdition, publish } from '../support/season.js';
import { createTestApplication } from '../support/test-application.js';
import type { TestApplication } from '../support/test-application.js';

/** The example of W3C Trace Context, 3.2.2. */
const TRACE_ID = '4bf92f3577b34da6a3ce929d0e0e4736';
const TRACEPARENT = `00-${TRACE_ID}-00f067aa0ba902b7-01`;

let t: TestApplication;
beforeAll(async () => {
  t = await createTestApplication({ LOG_LEVEL: 'error' });
});
afterAll(() => t.close());

test('a failure is one line of JSON with the id that the client got and the trace that it told, and without the secret in the address', async () => {
  const lines: string[] = [];
  const take = (chunk: unknown): boolean => lines.push(String(chunk)) > 0;
  const spies = [process.stdout, process.stderr].map((stream) => jest.spyOn(stream, 'write').mockImplementation(take));
  const store = t.app.select(AccountsModule).get(AccountsStore);
  const methods = Object.getOwnPropertyNames(Object.getPrototypeOf(store)).filter((name) => name !== 'constructor');
  const broken = methods.map((name) =>
    jest.spyOn(store as unknown as Record<string, () => never>, name).mockImplementation(() => {
      throw new Error('out of order');
    }),
  );
  const answer = await t
    .call('post', '/v1/invitations/a-secret-in-the-address/acceptance')
    .set('traceparent', TRACEPARENT)
    .send({ email: 'a@bench.example', displayName: 'A. Fenn', password: 'a long enough password' });
  for (const spy of [...spies, ...broken]) spy.mockRestore();
  expect(answer.status).toBe(500);
  const told = lines
    .join('')
    .split('\n')
    .filter((line) => line.includes('out of order'));
  expect(told).toHaveLength(1);
  expect(JSON.parse(told[0]!)).toMatchObject({
    level: 'error',
    context: 'http',
    trace_id: TRACE_ID,
    span_id: expect.stringMatching(/^(?!00f067aa0ba902b7)[\da-f]{16}$/),
    trace_flags: '01',
  });
  expect(told[0]).toContain(answer.headers['x-request-id']);
  expect(lines.join('')).not.toContain('a-secret-in-the-address');
});

test('a trace goes on where it can be read, and begins anew where it cannot', () => {
  const told = (header: unknown) => inTrace(header, () => traceparent())!;
  for (const header of [TRACEPARENT, `cc-${TRACE_ID}-00f067aa0ba902b7-01-what-a-later-version-says`])
    expect(told(header)).toMatch(new RegExp(`^00-${TRACE_ID}-[\\da-f]{16}-01$`));
  // W3C Trace Context, 3.2.2: ff is no version, zeros are no ids, digits are lower-case, and version 00 says no more.
  const wrong = [
    undefined,
    [TRACEPARENT],
    `ff-${TRACE_ID}-00f067aa0ba902b7-01`,
    `00-${'0'.repeat(32)}-00f067aa0ba902b7-01`,
    `00-${TRACE_ID}-${'0'.repeat(16)}-01`,
    TRACEPARENT.toUpperCase(),
    `${TRACEPARENT}-more`,
    `${TRACEPARENT}0`,
  ];
  const begun = wrong.map(told);
  for (const one of begun) expect(one).toMatch(/^00-[\da-f]{32}-[\da-f]{16}-00$/);
  expect(begun.filter((one) => one.includes(TRACE_ID))).toEqual([]);
  expect(new Set(begun).size).toBe(wrong.length);
  expect(traceparent()).toBeUndefined();
});

test('monitoring reads figures by route, of the queue and of the database', async () => {
  await t.call('get', '/v1/problems').expect(200);
  const { text } = await t.call('get', '/metrics').expect(200);
  expect(text).toMatch(
    /http_server_request_duration_seconds_count\{http_request_method="GET",http_route="\/v1\/problems",http_response_status_code="200"\} 1/,
  );
  expect(text).toContain('fairpull_database_up 1');
  expect(text).toContain('# TYPE fairpull_orders_open gauge');
});

test('every figure that the starter dashboard and the alerts ask for is told, under the names and with the words that they ask by', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'fairpull-told-'));
  const house = await createHouse();
  const { app, dataFolder, databaseUrl } = house.t;
  await workEdition(house, '2026');
  await moveEdition(house.editor, '2026', 'closure');
  await app.select(ReleasesModule).get(ReleaseWork).start(false);
  const metrics = async () => (await house.t.call('get', '/metrics').expect(200)).text;
  expect(await metrics()).not.toMatch(/^fairpull_last_(publication|backup)_timestamp_seconds /m);
  await publish(house.editor, '2026');
  await app.select(ReleasesModule).get(PublishedReleases).catchUp();
  await mkdir(join(dataFolder, 'site/current'), { recursive: true });
  await writeFile(join(dataFolder, 'site/current/built-from.txt'), '');
  const jobs = app.get(Jobs, { strict: false });
  await jobs.carryOut(BACKUPS, () => nightlyBackup({ databaseUrl, dataFolder }, folder, 1));
  await jobs.order(null, BACKUPS, {});
  while ((await jobs.lastOf(BACKUPS))[0]?.state !== 'done') await new Promise((resume) => setTimeout(resume, 50));
  await jobs.order(null, { name: 'of-no-worker', policy: 'short' }, {});
  // It was ordered for now an hour ago: until now there was nothing to do.
  await runSql(databaseUrl, `UPDATE pgboss.job SET created_on = created_on - interval '1 hour' WHERE name = 'of-no-worker'`);
  await house.t.call('get', '/v1/editions/2026').expect(200);
  const text = await metrics();
  const told = new Set([...text.matchAll(/^([a-z_]+?)(?:\{.*\})? [\d.e+-]+$/gm)].map(([, metric]) => metric));
  const labels = new Set([...text.matchAll(/[{,]([a-z_]+)="/g)].map(([, label]) => label));
  const asked = [readFileSync('.config/monitoring/alerts.yml', 'utf8'), readFileSync('.config/monitoring/dashboard.json', 'utf8')].join();
  const metricsAsked = [...asked.matchAll(/(?:fairpull|process|http_server)_[a-z_]+/g)].map(([metric]) => metric);
  expect(new Set(metricsAsked).size).toBeGreaterThan(12);
  expect(metricsAsked.filter((metric) => !told.has(metric))).toEqual([]);
  const by = [...asked.matchAll(/ by \(([a-z_, ]+)\)/g)].flatMap(([, names]) => names!.split(', '));
  const matched = [...asked.matchAll(/\{([a-z_]+)=~?\\?"([^"\\]+)/g)];
  expect([...by, ...matched.map(([, label]) => label)].filter((label) => !labels.has(label))).toEqual([]);
  const states = matched.filter(([, label]) => label === 'state').map(([, , state]) => state);
  expect(states.length).toBeGreaterThan(0);
  expect(orderStateSchema.shape.state.options).toEqual(expect.arrayContaining(states));
  expect(text).toMatch(/fairpull_releases 1\n/);
  expect(text).toMatch(/fairpull_orders_open\{queue="of-no-worker",state="waiting"\} 1\n/);
  expect(text).toMatch(/fairpull_published_reads_total [1-9]\d*\n/);
  const figure = (name: string) => Number(new RegExp(`^${name} (\\S+)$`, 'm').exec(text)?.[1]);
  expect(figure('fairpull_orders_oldest_seconds{queue="of-no-worker"}')).toBeLessThan(600);
  expect(figure('fairpull_disk_free_bytes{folder="\\."}')).toBeGreaterThan(1e6);
  expect(Date.now() / 1000 - figure('fairpull_last_backup_timestamp_seconds')).toBeLessThan(3600);
  await house.t.close();
  await rm(folder, { recursive: true });
});
