import { chmod, chown, cp, mkdir, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { giveBack } from '../../api/platform/embedded-postgres/give-back.js';
import { findServerBinaries } from '../../api/platform/embedded-postgres/server-binaries.js';
import { prepareServerHome } from '../../api/platform/embedded-postgres/server-home.js';
import { startEmbeddedPostgres } from '../../api/platform/embedded-postgres/start-embedded-postgres.js';
import { runSql } from '../support/run-sql.js';
import { makeDataFolder, removeDataFolder } from './data-folder.js';

let folder: string;
let closed: string;

beforeEach(async () => {
  folder = await makeDataFolder();
  closed = join(folder, 'closed');
  await mkdir(closed);
  await chmod(closed, 0o700);
});

afterEach(() => removeDataFolder(folder));

/** Only root lends the server another account; an ordinary user owns the folder anyway. */
const asRoot = process.getuid?.() === 0 ? test : test.skip;

asRoot('a data folder that the account cannot enter gets its server elsewhere, and the person is told where', async () => {
  const said: string[] = [];
  const home = await prepareServerHome(join(closed, 'data'), (sentence) => said.push(sentence), join(folder, 'elsewhere'));
  expect(home.folder.startsWith(join(folder, 'elsewhere'))).toBe(true);
  expect(said.join()).toContain(`could not enter ${join(closed, 'data')}; the database is kept in ${join(folder, 'elsewhere')}`);
  expect((await stat(join(home.binFolder, 'postgres'))).isFile()).toBe(true);
});

asRoot('a database that was begun elsewhere stays there when the way to the data folder is opened', async () => {
  const home = await prepareServerHome(join(closed, 'data'), () => undefined, join(folder, 'elsewhere'));
  await mkdir(home.clusterFolder);
  await chmod(closed, 0o711);
  const later = await prepareServerHome(join(closed, 'data'), () => undefined, join(folder, 'elsewhere'));
  expect(later.folder).toBe(home.folder);
});

asRoot('when the other place is closed too, the message says what can be done', async () => {
  await expect(prepareServerHome(join(closed, 'data'), () => undefined, join(closed, 'elsewhere'))).rejects.toThrow(
    /can enter neither .* Move the checkout .* or start as an ordinary user, or set DATABASE_URL/,
  );
});

asRoot('a data folder that the account can enter keeps its server', async () => {
  const home = await prepareServerHome(join(folder, 'data'), () => undefined, join(folder, 'elsewhere'));
  expect(home.folder).toBe(join(folder, 'data', 'postgres'));
});

asRoot(
  'a data folder that root copied, also from under a running server, starts with all that was in it',
  async () => {
    const original = join(folder, 'data');
    const first = await startEmbeddedPostgres(original);
    await runSql(first.url, 'CREATE TABLE kept AS SELECT 7 AS answer');
    await runSql(first.url, 'CHECKPOINT');
    const copy = join(folder, 'copied');
    await cp(original, copy, { recursive: true });
    await chmod(copy, 0o755);
    await rm(join(copy, 'postgres/lock'), { force: true });
    await chmod(join(copy, 'postgres/cluster'), 0o755);
    const second = await startEmbeddedPostgres(copy);
    try {
      expect(new URL(second.url).port).not.toBe(new URL(first.url).port);
      expect(await runSql(second.url, 'SELECT answer FROM kept')).toEqual([{ answer: 7 }]);
    } finally {
      await second.stop();
      await first.stop();
    }
  },
  60_000,
);

asRoot('somebody who may not give a copied folder away is told what to do', async () => {
  const cluster = join(folder, 'postgres/cluster');
  await mkdir(cluster, { recursive: true });
  await chown(cluster, 12_345, 12_345);
  await expect(giveBack(join(folder, 'postgres'), cluster, undefined)).rejects.toThrow(
    /belongs to another account \(number 12345\).* sudo chown -R 0 /,
  );
});

test('a platform without PostgreSQL of ours is told to bring its own', () => {
  expect(() => findServerBinaries('freebsd', 'x64')).toThrow(/No PostgreSQL for freebsd on x64.*Set DATABASE_URL/);
});
