import { Logger } from '@nestjs/common';
import type { EventEmitter } from 'node:events';
import { mkdir, readdir, utimes } from 'node:fs/promises';
import { join } from 'node:path';
import { FileStore } from '../../api/platform/file-store/file-store.js';
import { GatherRelease } from '../../api/releases/publication/gather-release.js';
import { PublishRelease } from '../../api/releases/publication/publish-release.js';
import { Jobs } from '../../api/platform/jobs/jobs.js';
import { PUBLISH_RELEASE } from '../../api/releases/publication/release-orders.js';
import { traceparent } from '../../api/platform/trace/trace-context.js';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import type { Manifest } from '../../api/contract/documents/release-documents.js';
import type { ReleaseInputs } from '../../api/reckoning/release-inputs.js';
import { SweepReleaseFolders } from '../../api/releases/publication/sweep-release-folders.js';
import { createHouse, workEdition } from '../support/house.js';
import type { House } from '../support/house.js';
import { runSql } from '../support/run-sql.js';
import { editionRequest, erratumFor, moveEdition } from '../support/season.js';

let house: House;
let publishing: PublishRelease;
beforeAll(async () => {
  house = await createHouse();
  await workEdition(house, '2026');
  await moveEdition(house.editor, '2026', 'closure');
  publishing = house.t.app.select(ReleasesModule).get(PublishRelease);
  // Every look at the clock finds another time, as on several machines.
  const { clock } = house.t;
  let looks = 0;
  clock.now = () => new Date(clock.time.getTime() + 1000 * looks++);
});
afterAll(() => house.t.close());
afterEach(() => jest.restoreAllMocks());

const foldersOf = async (revision: number) => {
  const names = await readdir(join(house.t.dataFolder, 'files/releases/2026', String(revision))).catch(() => []);
  return names.filter((name) => !name.endsWith('.pressed'));
};
const stateOf = async (revision: number, edition = '2026') =>
  (await house.editor.call('get', `/v1/editions/${edition}/releases/${revision}`).expect(200)).body;
/** The example of W3C Trace Context, 3.2.2, and what is a part of the same trace. */
const TRACEPARENT = '00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01';
const TRACED = /^00-4bf92f3577b34da6a3ce929d0e0e4736-(?!00f067aa0ba902b7)[\da-f]{16}-01$/;
const order = async (change: object = {}, edition = '2026') =>
  house.editor
    .call('post', `/v1/editions/${edition}/releases`)
    .send({ erratum: null, ...change })
    .expect(202);
const orderNext = async (change: object = {}) =>
  (await order({ erratum: await erratumFor(house.editor, '2026', 'catalogueError', 'A name.'), ...change })).body.revision as number;
async function until<T>(what: string, look: () => Promise<T | undefined | false>): Promise<T> {
  for (const end = Date.now() + 20_000; Date.now() < end; await new Promise((resume) => setTimeout(resume, 50))) {
    const found = await look();
    if (found) return found;
  }
  throw new Error(`Waited in vain until ${what}.`);
}

test('of many workers at one order one builds; there is one folder, of one digest', async () => {
  await order();
  const gathered = jest.spyOn(house.t.app.select(ReleasesModule).get(GatherRelease), 'run');
  await Promise.all(Array.from({ length: 5 }, () => publishing.run({ edition: '2026', revision: 1 })));
  expect(gathered).toHaveBeenCalledTimes(1);
  expect(await foldersOf(1)).toEqual([(await stateOf(1)).digest]);
});

test('what broke off in the middle is begun anew; of what lay there nothing gets into the release', async () => {
  const revision = await orderNext();
  const files = house.t.app.get(FileStore, { strict: false });
  const write = files.write.bind(files);
  let left = 9;
  jest.spyOn(files, 'write').mockImplementation((path, bytes) => (left-- > 0 ? write(path, bytes) : Promise.reject(new Error('cut off'))));
  await expect(publishing.run({ edition: '2026', revision })).rejects.toThrow('cut off');
  const [begun = ''] = await foldersOf(revision);
  expect(begun).toMatch(/^half-/);
  jest.restoreAllMocks();
  const folder = `releases/2026/${revision}`;
  await write(`${folder}/${begun}/documents/of-another-attempt.json`, '{}');
  await publishing.run({ edition: '2026', revision });
  const { digest } = await stateOf(revision);
  expect(await foldersOf(revision)).toEqual([digest]);
  const entries = await readdir(files.absolute(`${folder}/${digest}`), { recursive: true, withFileTypes: true });
  const manifest = JSON.parse((await files.read(`${folder}/${digest}/manifest.json`))!.toString()) as Manifest;
  expect(
    entries
      .filter((entry) => entry.isFile())
      .map(({ name }) => name)
      .sort(),
  ).toEqual(['manifest.json', 'signature.json', ...manifest.files.map(({ path }) => path.split('/').at(-1)!)].sort());
});

test('a release that is taken up again much later bears the later time', async () => {
  const revision = await orderNext();
  const { clock } = house.t;
  await runSql(house.t.databaseUrl, `UPDATE release SET published_at = $1 WHERE state = 'building'`, [
    new Date(clock.time.getTime() - 3_600_000).toISOString(),
  ]);
  await publishing.run({ edition: '2026', revision });
  const { items } = (await house.t.call('get', '/v1/releases').expect(200)).body;
  expect(Date.parse(items[0].publishedAt)).toBeGreaterThanOrEqual(clock.time.getTime());
});

describe('a release that waits is built before its time', () => {
  const written: string[] = [];
  const writtenBy = async (work: () => Promise<unknown>): Promise<string[]> => {
    written.length = 0;
    await work();
    return written.map((path) => path.split('/').at(-1)!);
  };
  beforeEach(() => {
    const files = house.t.app.get(FileStore, { strict: false });
    const write = files.write.bind(files);
    jest.spyOn(files, 'write').mockImplementation((path, bytes) => (written.push(path), write(path, bytes)));
  });
  const hoursAhead = (hours: number) => new Date(house.t.clock.time.getTime() + 3_600_000 * hours);
  const current = async () => (await house.t.call('get', '/v1/releases').expect(200)).body.items[0];

  test('and nobody sees it; when the time has come its signature alone is missing, and it bears that time', async () => {
    const publishAt = hoursAhead(1);
    const revision = await orderNext({ publishAt: publishAt.toISOString() });
    const order = { edition: '2026', revision };
    expect((await writtenBy(() => publishing.prepare(order))).length).toBeGreaterThan(40);
    expect(await foldersOf(revision)).toHaveLength(1);
    expect((await current()).revision).toBe(revision - 1);
    await house.t.call('get', `/v1/releases/2026/${revision}/bundle.json`).expect(404);
    await expect(publishing.run(order)).rejects.toThrow('has not come');
    expect(await writtenBy(() => publishing.prepare(order))).toEqual([]);
    house.t.clock.time = publishAt;
    expect(await writtenBy(() => publishing.run(order))).toEqual(['signature.json']);
    expect(await current()).toMatchObject({ revision, publishedAt: publishAt.toISOString() });
    const folders = house.t.app.get(FileStore, { strict: false });
    await house.t.app.select(ReleasesModule).get(SweepReleaseFolders).run();
    expect(await folders.folders('built')).toEqual([]);
  });

  test('what changed meanwhile is built anew', async () => {
    const publishAt = hoursAhead(1);
    const revision = await orderNext({ publishAt: publishAt.toISOString() });
    const order = { edition: '2026', revision };
    await publishing.prepare(order);
    const { body } = await house.editor.call('get', '/v1/instruments/R1').expect(200);
    await house.editor
      .call('put', '/v1/instruments/R1/calibrations/C-R1')
      .set('If-Match', `"${body.version}"`)
      .send({ ...body.calibrations[0], expandedUncertaintyPercent: '0.6', reason: 'Read again.' })
      .expect(200);
    house.t.clock.time = publishAt;
    expect((await writtenBy(() => publishing.run(order))).length).toBeGreaterThan(40);
    expect((await current()).revision).toBe(revision);
  });

  test('and tells which certificate was put right, with each result that rested on it, in the edition, its variants and the erratum', async () => {
    const { revision, superseded, erratum } = (await house.t.call('get', '/v1/editions/2026').expect(200)).body;
    const { inputs } = (await house.t.call('get', `/v1/releases/2026/${revision}/bundle.json`).expect(200)).body as {
      inputs: ReleaseInputs;
    };
    const rested = inputs.evidence.submissions
      .filter(({ instruments }) => instruments.some(({ code }) => code === 'R1'))
      .map(({ reference }) => reference)
      .sort();
    const on = superseded[0].on as string;
    const was = expect.stringContaining('expanded uncertainty percent 0.5');
    expect(superseded).toEqual([{ kind: 'calibration', what: 'C-R1 of R1', was, reason: 'Read again.', on, submissions: rested }]);
    const variant = (await house.t.call('get', '/v1/editions/2026/variants/gannet-20').expect(200)).body;
    const own = (variant.submissions as { reference: string }[]).map(({ reference }) => reference).filter((one) => rested.includes(one));
    expect(variant.superseded).toMatchObject([{ what: 'C-R1 of R1', submissions: own }]);
    const where = `calibration C-R1 of R1, ${on}, superseded`;
    expect(erratum.changes).toContainEqual({ where, before: null, after: expect.stringContaining('Read again.') });
    expect(erratum.consequences).toContain('1 row of the record changed');
  });
});

test('a folder that no release names is taken away when it is old, and only then', async () => {
  const [named] = await foldersOf(1);
  const old = new Date(Date.now() - 25 * 3_600_000);
  const at = (name: string) => join(house.t.dataFolder, 'files/releases/2026/1', name);
  for (const name of ['left-long-ago', 'left-just-now']) await mkdir(at(name));
  for (const name of ['left-long-ago', named!]) await utimes(at(name), old, old);
  await house.t.app.select(ReleasesModule).get(SweepReleaseFolders).run();
  expect((await foldersOf(1)).sort()).toEqual([named, 'left-just-now'].sort());
});

describe('with a worker', () => {
  let said: string[];
  let traces: (string | undefined)[];
  beforeAll(async () => {
    await house.t.app.select(ReleasesModule).get(ReleaseWork).start(false);
  });
  beforeEach(() => {
    said = [];
    traces = [];
    jest.spyOn(Logger.prototype, 'error').mockImplementation((message: unknown) => {
      said.push(String(message));
      traces.push(traceparent());
    });
  });

  test('a release that waits is published when its time has come, by itself and not before', async () => {
    const { clock } = house.t;
    clock.now = () => new Date();
    const publishAt = new Date(Date.now() + 2500);
    const revision = await orderNext({ publishAt: publishAt.toISOString() });
    expect((await stateOf(revision)).order).toMatchObject({ state: 'waiting', attempts: 0, words: null });
    await until('it is published', async () => (await stateOf(revision)).state === 'published');
    expect(Date.now()).toBeGreaterThanOrEqual(publishAt.getTime());
    const { items } = (await house.t.call('get', '/v1/releases').expect(200)).body;
    expect(items[0]).toMatchObject({ revision, publishedAt: publishAt.toISOString() });
    await until('its order is done', async () => (await stateOf(revision)).order.state === 'done');
    expect(await foldersOf(revision)).toHaveLength(1);
  });

  test('of a release there is one order, while it waits and while it is carried out', async () => {
    const revision = await orderNext({ publishAt: new Date(Date.now() + 3_600_000).toISOString() });
    const isIt = `name = 'release-publication' AND data->>'revision' = '${revision}' AND state < 'completed'`;
    const open = () => runSql(house.t.databaseUrl, `SELECT singleton_key AS key FROM pgboss.job WHERE ${isIt}`);
    const [{ key }] = (await open()) as [{ key: string }];
    const again = () => house.t.app.get(Jobs).order(null, PUBLISH_RELEASE, { edition: '2026', revision }, { key, afterS: 3600 });
    await Promise.all([again(), again(), again()]);
    expect(await open()).toHaveLength(1);
    await runSql(house.t.databaseUrl, `UPDATE pgboss.job SET state = 'active' WHERE ${isIt}`);
    await again();
    expect(await open()).toHaveLength(1);
    await runSql(house.t.databaseUrl, `UPDATE pgboss.job SET state = 'created' WHERE ${isIt}`);
    await house.editor.call('delete', `/v1/editions/2026/releases/${revision}`).expect(204);
  });

  test('an order that fails says so in its answer, to operators and in the log, in the trace of the request that it came from', async () => {
    await house.editor.call('post', '/v1/editions').send(editionRequest('empty')).expect(201);
    await house.editor
      .call('post', '/v1/editions/empty/entries')
      .send({ variants: ['gannet-20'] })
      .expect(201);
    for (const step of ['opening', 'closure'] as const) await moveEdition(house.editor, 'empty', step);
    await house.editor.call('post', '/v1/editions/empty/releases').set('traceparent', TRACEPARENT).send({ erratum: null }).expect(202);
    const { order: failed } = await until('it has failed', async () => {
      const state = await stateOf(1, 'empty');
      return state.order.state === 'retrying' && state;
    });
    expect(failed).toMatchObject({
      attempts: 1,
      words: expect.stringContaining('releases/no-standings'),
      nextAttemptAt: expect.any(String),
    });
    const admin = await house.t.caller(['admin']);
    const { items } = (await admin.call('get', '/v1/operations/orders').expect(200)).body;
    expect(items).toContainEqual(
      expect.objectContaining({ queue: 'release-publication', order: { edition: 'empty', revision: 1 }, words: failed.words }),
    );
    expect(said.join('\n')).toMatch(
      /Order release-publication \{"edition":"empty","revision":1\} failed \(attempt 1 of 6; it is tried again\): .*no-standings/,
    );
    expect(traces).toContainEqual(expect.stringMatching(TRACED));
  });

  test('what goes wrong in the queue itself is told in the log', () => {
    const queue = Reflect.get(house.t.app.get(Jobs), 'boss') as EventEmitter;
    // Of a worker it tells a plain object, with the name of its queue.
    for (const error of [new Error('no connection'), { message: 'no answer', queue: 'release-publication' }]) queue.emit('error', error);
    expect(said).toEqual(['The queue of orders: no connection', 'The queue of orders: no answer']);
  });

  test('backups of every night and between are told, with what was made and when the next is', async () => {
    const admin = await house.t.caller(['admin']);
    expect((await admin.call('get', '/v1/operations/backups').expect(200)).body).toMatchObject({ times: null, nextAt: null });
    expect((await admin.call('post', '/v1/operations/backups').expect(409)).body.code).toBe('operations/no-backups');
    const works = [() => Promise.reject(new Error('The disk is full.')), () => Promise.resolve('It is made and read through.')];
    const jobs = house.t.app.get(Jobs);
    await jobs.every('backup', '30 2 * * *', () => works.shift()!());
    const { body } = await admin.call('post', '/v1/operations/backups').expect(202);
    expect(body.times).toBe('30 2 * * *');
    expect(new Date(body.nextAt as string).getTime()).toBeGreaterThan(Date.now());
    expect(body.nextAt).toMatch(/T02:30:00\.000Z$/);
    const told = async () => (await admin.call('get', '/v1/operations/backups').expect(200)).body.items[0];
    await until('the first attempt has failed', async () => (await told()).words === 'The disk is full.');
    const made = await until('it is made', async () => (await told()).state === 'done' && told());
    expect(made).toMatchObject({ attempts: 2, words: 'It is made and read through.', endedAt: expect.any(String) });
    await jobs.noLonger('backup');
  });

  test('what is called off is taken from the queue too, and who builds the site is told', async () => {
    await runSql(house.t.databaseUrl, `DELETE FROM pgboss.job WHERE name = 'site-build'`);
    await house.editor.call('delete', '/v1/editions/empty/releases/1').expect(204);
    const waiting = await runSql(
      house.t.databaseUrl,
      `SELECT 1 FROM pgboss.job WHERE name = 'release-publication' AND data->>'edition' = 'empty' AND state < 'active'`,
    );
    expect(waiting).toEqual([]);
    const builds = await runSql(house.t.databaseUrl, `SELECT data->>'edition' AS edition FROM pgboss.job WHERE name = 'site-build'`);
    expect(builds).toEqual([{ edition: 'empty' }]);
  });
});
