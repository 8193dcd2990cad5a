import { mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildDesk, currentDesk } from '../../api/build-desk.js';

test('the desk is built where it is missing or stale, and left alone where it is not', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'desk-'));
  const path = process.env['PATH'] ?? '';
  const page = join(currentDesk(folder), 'bench', 'index.html');
  await buildDesk(folder, path);
  const first = await stat(page);
  await buildDesk(folder, path);
  expect((await stat(page)).ino).toBe(first.ino);
  await writeFile(join(currentDesk(folder), 'built-from.txt'), 'other sources');
  await buildDesk(folder, path);
  expect((await stat(page)).ino).not.toBe(first.ino);
  expect(await readFile(page, 'utf8')).toContain("default-src 'none'");
  expect((await readdir(join(folder, 'site', 'desk'))).sort()).toEqual([expect.stringMatching(/^built-[^.]+$/), 'current']);
  await rm(folder, { recursive: true });
});
