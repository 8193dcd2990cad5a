/** A disk that fills up or is read-only, a database that takes no changes, a clock that jumps: told, and nothing acknowledged is lost. */
import { Logger } from '@nestjs/common';
import { execFileSync } from 'node:child_process';
import { mkdir, readdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { createHouse, workEdition } from '../support/house.js';
import type { House } from '../support/house.js';
import { runSql } from '../support/run-sql.js';
import { erratumFor, moveEdition } from '../support/season.js';

let house: House;
let said: string[] = [];
beforeAll(async () => {
  house = await createHouse();
  await workEdition(house, '2026');
  await moveEdition(house.editor, '2026', 'closure');
  await orderNext(null);
  await work().publishDue();
});
beforeEach(() => {
  said = [];
  jest.spyOn(Logger.prototype, 'error').mockImplementation((message: unknown) => void said.push(String(message)));
});
afterEach(() => jest.restoreAllMocks());
afterAll(() => house.t.close());

const work = () => house.t.app.select(ReleasesModule).get(ReleaseWork);
const states = async () =>
  (await house.t.call('get', '/v1/releases').expect(200)).body.items.map(({ revision, status }: any) => `${revision} ${status}`).sort();
const stateOf = async (revision: number) => (await house.editor.call('get', `/v1/editions/2026/releases/${revision}`).expect(200)).body;

async function orderNext(words: string | null): Promise<number> {
  const erratum = words && (await erratumFor(house.editor, '2026', 'catalogueError', words));
  return (await house.editor.call('post', '/v1/editions/2026/releases').send({ erratum }).expect(202)).body.revision;
}

/** What health tells of a house that answers. */
const troubles = async (): Promise<string[]> => (await house.t.call('get', '/health/ready').expect(200)).body.trouble;

/** A disk of its own at a folder; null where this machine gives none, as in a container without the right to mount. */
function mount(folder: string, options: string): (() => void) | null {
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', options, 'tmpfs', folder], { stdio: 'ignore' });
    return () => execFileSync('umount', [folder]);
  } catch {
    return null;
  }
}

/** Where no disk can be mounted: a file stands where the folder belongs, so that nothing can be written there either. */
async function refuse(folder: string, revision: number): Promise<void> {
  await rm(folder, { recursive: true });
  await writeFile(folder, '');
  await work().publishDue();
  expect(said.join('\n')).toMatch(/could not be written/);
  expect((await stateOf(revision)).state).toBe('building');
  await rm(folder);
  await work().publishDue();
  expect((await stateOf(revision)).state).toBe('published');
}

test.each([
  ['full', 'size=64k', /could not be written: ENOSPC.*The disk is full. Make room; nothing that is published is lost/],
  ['read-only', 'ro', /could not be written: .*read-only. Mount it so that it can be written; nothing that is published is lost/],
])(
  'a disk that is %s: the release before stands, the fault is named, and the order is carried out once there is room',
  async (_, options, words) => {
    const before = await states();
    const revision = await orderNext('A name.');
    const folder = join(house.t.dataFolder, 'files/releases/2026', String(revision));
    await mkdir(folder, { recursive: true });
    const unmount = mount(folder, options);
    if (!unmount) return refuse(folder, revision);
    try {
      await work().publishDue();
      expect(said.join('\n')).toMatch(words);
      expect(await states()).toEqual(before);
      expect((await stateOf(revision)).state).toBe('building');
      await house.t.call('get', `/v1/releases/2026/${revision - 1}/documents/edition.json`).expect(200);
    } finally {
      unmount();
    }
    await work().publishDue();
    expect((await stateOf(revision)).state).toBe('published');
    expect((await readdir(folder)).filter((name) => name.endsWith('.part'))).toEqual([]);
  },
);

test.each([
  ['the data folder', '.', 1],
  ['files in the data folder', 'files', 2],
])('health tells of a disk without room, and metrics of each disk: %s', async (words, folder, disks) => {
  const figures = async () => (await house.t.call('get', '/metrics').expect(200)).text.match(/^fairpull_disk_size_bytes\{.*/gm);
  expect(await figures()).toEqual([expect.stringContaining('{folder="."}')]);
  const unmount = mount(join(house.t.dataFolder, folder), 'size=64k');
  if (!unmount) return;
  try {
    expect(await troubles()).toEqual([expect.stringMatching(new RegExp(`^The disk of ${words} is full`))]);
    const told = await figures();
    expect(told).toHaveLength(disks);
    expect(told).toContain(`fairpull_disk_size_bytes{folder="${folder}"} ${64 * 1024}`);
  } finally {
    unmount();
  }
  expect(await troubles()).toEqual([]);
});

test('a database that takes no changes: said with when to ask again, reads go on, and the same key does the work later', async () => {
  const { editor, t } = house;
  const add = () => editor.call('post', '/v1/catalogue/makers').set('Idempotency-Key', 'once').send({ slug: 'ternwick', name: 'Ternwick' });
  const address = new URL(t.databaseUrl);
  const name = address.pathname.slice(1);
  address.pathname = '/postgres';
  const set = async (words: string) => {
    await runSql(address.href, `ALTER DATABASE "${name}" ${words}`);
    await runSql(address.href, 'SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = $1', [name]);
    await t.call('get', '/health/ready');
  };
  await set('SET default_transaction_read_only = on');
  try {
    let refused = await add();
    // A connection that was ended is found out by who uses it next.
    while (refused.headers['retry-after'] === '5') refused = await add();
    expect([refused.status, refused.body.code, refused.headers['retry-after']]).toEqual([503, 'server/not-ready', '30']);
    expect(refused.body.detail).toMatch(/takes no changes.*Nothing was stored/);
    expect(said.join('\n')).toMatch(/read-only transaction/);
    await t.call('get', '/v1/releases').expect(200);
    expect(await troubles()).toEqual([expect.stringMatching(/^The database takes no changes/)]);
  } finally {
    await set('RESET default_transaction_read_only');
  }
  expect(await troubles()).toEqual([]);
  const done = await add().expect(201);
  const again = await add().expect(201);
  expect([again.headers['idempotency-replayed'], again.body]).toEqual(['true', done.body]);
});

test('a clock that jumps back: no revision is older than the one before it', async () => {
  const { clock } = house.t;
  const at = clock.time;
  try {
    const revision = await orderNext('Another name.');
    clock.time = new Date(at.getTime() - 90 * 86_400_000);
    await work().publishDue();
    const { items } = (await house.t.call('get', '/v1/releases').expect(200)).body;
    const times = items.sort((a: any, b: any) => a.revision - b.revision).map(({ publishedAt }: any) => Date.parse(publishedAt));
    expect(times).toHaveLength(revision);
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(new Set(times).size).toBe(times.length);
  } finally {
    clock.time = at;
  }
});
