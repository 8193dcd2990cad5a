import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { OpenOrder } from '../../api/contract/order-state.js';
import { giveSignOfLife, leftLying } from '../../api/platform/jobs/sign-of-life.js';

const NOW = new Date('2026-03-15T12:00:00Z');
const order = (queue: string, state: OpenOrder['state'], dueAt: string | null): OpenOrder => ({
  queue,
  state,
  order: {},
  orderedAt: '2026-03-15T10:00:00.000Z',
  attempts: 1,
  words: null,
  nextAttemptAt: dueAt,
});

test.each([
  ['nothing', [], []],
  ['one that is due since a moment', [order('a', 'waiting', '2026-03-15T11:50:00.000Z')], []],
  ['one that is due since long', [order('a', 'waiting', '2026-03-15T11:49:59.999Z')], ['a']],
  ['one that is tried again too late', [order('a', 'retrying', '2026-03-15T11:00:00.000Z')], ['a']],
  ['one that waits for its time', [order('a', 'waiting', '2026-03-16T09:00:00.000Z')], []],
  ['one behind another that is at work', [order('a', 'waiting', '2026-03-15T11:00:00.000Z'), order('a', 'running', null)], []],
  ['one beside another queue at work', [order('a', 'waiting', '2026-03-15T11:00:00.000Z'), order('b', 'running', null)], ['a']],
  ['one that was given up, which is alarmed by itself', [order('a', 'failed', null)], []],
])('left lying of %s', (_, open, lying) => {
  expect(leftLying(open, NOW)).toEqual(lying);
});

test('a worker gives a sign while its queue answers and nothing lies there, and only then', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'fairpull-sign-'));
  const file = join(folder, 'works');
  const lying = [order('a', 'waiting', '2026-03-15T11:00:00.000Z')];
  await expect(giveSignOfLife({ open: () => Promise.reject(new Error('no database')) }, NOW, file)).rejects.toThrow('no database');
  await expect(giveSignOfLife({ open: () => Promise.resolve(lying) }, NOW, file)).rejects.toThrow('not taken up: a');
  await expect(readFile(file)).rejects.toThrow(/ENOENT/);
  await giveSignOfLife({ open: () => Promise.resolve([]) }, NOW, file);
  expect(await readFile(file, 'utf8')).toBe(NOW.toISOString());
  await rm(folder, { recursive: true });
});
