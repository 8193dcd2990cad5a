import { once } from 'node:events';
import { createServer } from 'node:net';
import type { AddressInfo, Socket } from 'node:net';
import pg from 'pg';
import { readConfig } from '../../api/config.js';
import { Database } from '../../api/platform/database/database.js';
import { isDuplicate, isUnreachable } from '../../api/platform/database/database-failure.js';
import { insertRows, tableRows } from '../../api/platform/database/insert-rows.js';
import { uuid7 } from '../../api/platform/identifiers/uuid7.js';
import { createTestDatabase } from '../support/test-database.js';
import type { TestDatabase } from '../support/test-database.js';

let [ground, database]: [TestDatabase | null, Database | null] = [null, null];
beforeAll(async () => {
  ground = await createTestDatabase();
  database = new Database(readConfig({ DATABASE_URL: ground.programUrl }));
});
afterAll(async () => {
  await database?.close();
  await ground?.drop();
});

const event = (objectId: string, after: object | null = null) => ({
  id: uuid7(),
  action: 'line.pulled',
  objectType: 'line',
  objectId,
  at: new Date('2026-11-27T08:00:00.123Z'),
  before: null,
  after,
});
const told = () => database!.client.auditEvent.findMany({ where: { objectType: 'line' }, orderBy: { id: 'asc' } });

test('what was put into words is stored as it was', async () => {
  const texts = ['a\tb', 'two\nlines\r', String.raw`back\slash \N \.`, '', '\\.', 'ü 漢 "quoted"'];
  const rows = texts.map((text) => event(text, { text, number: 1.5, none: null }));
  await database!.transaction(async (tx) => {
    await Promise.all([insertRows(tx, tableRows('audit_event', rows)), insertRows(tx, tableRows('audit_event', []))]);
    // In the same transaction, after it: Prisma sees them.
    expect(await tx.auditEvent.count({ where: { objectType: 'line' } })).toBe(texts.length);
  });
  expect(await told()).toMatchObject(rows);
});

test('rows that the record refuses end the transaction with their reason, and the connection works on', async () => {
  const before = (await told()).length;
  const twice = { ...event('again'), id: uuid7() };
  const many = Array.from({ length: 20_000 }, (_, i) => event(`${i} ${'x'.repeat(200)}`));
  for (let time = 0; time < 12; time++) {
    const put = database!.transaction(async (tx) => insertRows(tx, tableRows('audit_event', [twice, twice, ...(time === 0 ? many : [])])));
    const error: unknown = await put.catch((failure: unknown) => failure);
    expect(isDuplicate(error)).toBe(true);
  }
  expect(await told()).toHaveLength(before);
});

test('rows are stored within a transaction of the database alone', async () => {
  await expect(insertRows(database!.client, tableRows('audit_event', [event('outside')]))).rejects.toThrow('within a transaction');
});

test('a connection that does not become free in time is no fault of the program', async () => {
  const pool = new pg.Pool({ connectionString: ground!.programUrl, max: 1, connectionTimeoutMillis: 1000 });
  const held = await pool.connect();
  const error: unknown = await pool.connect().catch((failure: unknown) => failure);
  held.release();
  await pool.end();
  expect(isUnreachable(error)).toBe(true);
});

test('a database that stays silent, falls silent or breaks off is no fault of the program', async () => {
  const silent = createServer().listen(0, '127.0.0.1');
  await once(silent, 'listening');
  const nowhere = { host: '127.0.0.1', port: (silent.address() as AddressInfo).port, connectionTimeoutMillis: 200 };
  const pool = new pg.Pool(nowhere);
  const slow = new pg.Client({ connectionString: ground!.programUrl, query_timeout: 200 });
  const broken = new pg.Client({ connectionString: ground!.programUrl });
  broken.on('error', () => undefined);
  await Promise.all([slow.connect(), broken.connect()]);
  const brokenOff = broken.query('SELECT pg_sleep(1)');
  (broken as unknown as { connection: { stream: Socket } }).connection.stream.destroy();
  const failures = await Promise.allSettled([
    pool.connect(),
    new pg.Client(nowhere).connect(),
    slow.query('SELECT pg_sleep(1)'),
    brokenOff,
  ]);
  await Promise.all([pool.end(), slow.end()]);
  silent.close();
  const told = failures.map((one) =>
    one.status === 'rejected' ? [(one.reason as Error).message, isUnreachable(one.reason)] : ['answered', false],
  );
  expect(told).toEqual([
    ['Connection terminated due to connection timeout', true],
    ['timeout expired', true],
    ['Query read timeout', true],
    ['Connection terminated unexpectedly', true],
  ]);
});
