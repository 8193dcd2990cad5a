import { createHash } from 'node:crypto';
import { once } from 'node:events';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { folderSource } from '../../site/src/release/folder-source.js';
import { verifiedFile } from '../../site/src/release/verified-file.js';
import { serveFolders, type FolderServer } from '../support/serve-folder.js';

const PUBLISHED = 'as published';
const DIGEST = createHash('sha256').update(PUBLISHED).digest('hex');
let folder: string;
let api: FolderServer;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'files-'));
  await writeFile(join(folder, 'file.txt'), PUBLISHED);
  api = await serveFolders(folder);
  process.env['API_URL'] = api.url;
});

afterEach(async () => {
  delete process.env['API_URL'];
  await api.close();
  await rm(folder, { recursive: true });
});

const fetched = async () => Buffer.from(await verifiedFile('/file.txt', DIGEST)).toString();

test('a file is passed on only when it is the one that was published', async () => {
  expect(await fetched()).toBe(PUBLISHED);
  await writeFile(join(folder, 'file.txt'), 'altered');
  await expect(fetched()).rejects.toThrow(`/file.txt is not what was published`);
  await rm(join(folder, 'file.txt'));
  await expect(fetched()).rejects.toThrow('/file.txt is named by its release but the API has no such file');
});

test('an answer that is neither the file nor that there is none ends the build', async () => {
  const broken = createServer((_, response) => response.writeHead(503).end()).listen(0, '127.0.0.1');
  await once(broken, 'listening');
  process.env['API_URL'] = `http://127.0.0.1:${(broken.address() as AddressInfo).port}`;
  await expect(fetched()).rejects.toThrow('/file.txt answered 503; expected 200');
  broken.closeAllConnections();
  broken.close();
});

test('a folder that is laid out like the API does as well, without a server', async () => {
  await api.close();
  await mkdir(join(folder, 'v1/releases/2026'), { recursive: true });
  await writeFile(join(folder, 'v1/releases.json'), '{"items":[]}');
  process.env['RELEASES_FOLDER'] = folder;
  expect(await fetched()).toBe(PUBLISHED);
  const source = folderSource(folder);
  expect(Buffer.from((await source.read('/v1/releases'))!).toString()).toBe('{"items":[]}');
  expect(await source.read('/v1/releases/2026/1/manifest.json')).toBeNull();
  await writeFile(join(folder, 'file.txt'), 'altered');
  await expect(fetched()).rejects.toThrow('/file.txt is not what was published');
  delete process.env['RELEASES_FOLDER'];
  api = await serveFolders(folder);
});

test('without the address of the API, or without an answer, the error says what to set', async () => {
  delete process.env['API_URL'];
  await expect(fetched()).rejects.toThrow('neither RELEASES_FOLDER nor API_URL is set');
  process.env['API_URL'] = 'http://127.0.0.1:1';
  await expect(fetched()).rejects.toThrow('The API does not answer at http://127.0.0.1:1/file.txt');
});
