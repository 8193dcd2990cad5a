import { readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { FileStore } from '../../api/platform/file-store/file-store.js';
import { RebuildFiles } from '../../api/releases/publication/rebuild-files.js';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { ReleasesReadModel } from '../../api/releases/releases.read-model.js';
import { releasesAt } from '../../api/releases/verify/release-source.js';
import { verifyRelease } from '../../api/releases/verify/verify-release.js';
import { HeldAtOnce } from '../support/held-at-once.js';
import { createHouse, workEdition } from '../support/house.js';
import type { House } from '../support/house.js';
import { erratumFor, moveEdition, publish } from '../support/season.js';

let house: House;
const top = () => join(house.t.dataFolder, 'files/releases/2026');
const folderOf = async (revision: number) => join(top(), String(revision), (await readdir(join(top(), String(revision))))[0] ?? '');
const rebuild = () => house.t.app.select(ReleasesModule).get(RebuildFiles).run();

beforeAll(async () => {
  house = await createHouse();
  await workEdition(house, '2026');
  await moveEdition(house.editor, '2026', 'closure');
  await house.t.app.select(ReleasesModule).get(ReleaseWork).start(false);
  await publish(house.editor, '2026');
  await publish(house.editor, '2026', await erratumFor(house.editor, '2026', 'catalogueError', 'A name.'));
});
afterAll(() => house.t.close());

test('where nothing is lost nothing is done', async () => {
  expect(await rebuild()).toEqual([]);
});

test('all files of a house are made again from its record, byte for byte as they were signed', async () => {
  const before = new Map<string, Buffer>();
  for (const revision of [1, 2])
    for (const { parentPath, name } of (await readdir(await folderOf(revision), { recursive: true, withFileTypes: true })).filter((entry) =>
      entry.isFile(),
    ))
      before.set(join(parentPath, name), await readFile(join(parentPath, name)));
  await rename(join(house.t.dataFolder, 'files'), join(house.t.dataFolder, 'files.lost'));
  const done = await rebuild();
  expect(done.map(({ release, lost }) => [release, lost])).toEqual([
    ['2026/1', []],
    ['2026/2', []],
  ]);
  expect(before.size).toBeGreaterThan(30);
  for (const [path, bytes] of before) expect([path, (await readFile(path)).equals(bytes)]).toEqual([path, true]);
  for (const source of await releasesAt(top())) expect((await verifyRelease(source)).differences).toEqual([]);
});

test('a changed file is made again too; what nothing makes as it was signed stays lost, and is named', async () => {
  const [first, second] = [await folderOf(1), await folderOf(2)];
  await writeFile(join(first, 'documents/edition.json'), '{}');
  await rm(join(second, 'bundle.json'));
  // Withdrawn since: the record does not say any more what the bundle of revision 2 said.
  await withdrawOne();
  expect(await rebuild()).toEqual([
    { release: '2026/1', rebuilt: ['documents/edition.json'], lost: [] },
    { release: '2026/2', rebuilt: [], lost: ['bundle.json'] },
  ]);
  await expect(readFile(join(second, 'bundle.json'))).rejects.toThrow(/ENOENT/);
});

test('who corrects a release holds a few of its files at once, of the one before and of the new one', async () => {
  const [files, releases] = [house.t.app.get(FileStore, { strict: false }), house.t.app.select(ReleasesModule).get(ReleasesReadModel)];
  const [write, document] = [files.write.bind(files), releases.document.bind(releases)];
  const [written, read] = [new HeldAtOnce(10), new HeldAtOnce(10)];
  files.write = (path, content) => write(path, typeof content === 'string' ? content : written.pass(content));
  releases.document = async <Kind>(...which: Parameters<typeof document>) => {
    const found = await document<Kind & object>(...which);
    return found && read.pass(found);
  };
  await publish(house.editor, '2026', await erratumFor(house.editor, '2026', 'catalogueError', 'Another name.'));
  Object.assign(files, { write });
  Object.assign(releases, { document });
  for (const { most } of [written, read]) expect([most > 0, most <= 10, most]).toEqual([true, true, most]);
});

async function withdrawOne(): Promise<void> {
  const second = await house.t.caller(['editor'], 'O. Knot');
  const { items } = (await house.reviewer.call('get', '/v1/submissions?edition=2026&limit=1').expect(200)).body;
  const proposal = { kind: 'withdrawal', submission: items[0].reference, reason: 'The spool was another.' };
  const { id } = (await house.editor.call('post', '/v1/proposals').send(proposal).expect(201)).body;
  await second
    .call('post', `/v1/submissions/${items[0].reference}/withdrawal`)
    .set('If-Match', `"${items[0].version}"`)
    .send({ proposal: id })
    .expect(201);
}
