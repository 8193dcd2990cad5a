import { Readable } from 'node:stream';
import { requireAnnounced, wholeFile } from '../../api/submissions/intake/file-size.js';

const MB_50 = 50 * 1024 * 1024;
const tooLarge = expect.objectContaining({ kind: expect.objectContaining({ status: 413 }) });

async function sizeOf(chunks: AsyncIterable<Uint8Array>): Promise<number> {
  let size = 0;
  for await (const chunk of chunks) size += chunk.byteLength;
  return size;
}

const streamOf = (bytes: number) => Readable.from([Buffer.alloc(MB_50 - 1), Buffer.alloc(bytes - MB_50 + 1)]);

test('50 MB pass, one byte more is refused', async () => {
  expect(await sizeOf(wholeFile(streamOf(MB_50)))).toBe(MB_50);
  await expect(sizeOf(wholeFile(streamOf(MB_50 + 1)))).rejects.toEqual(tooLarge);
});

test('a file that was cut at the limit is refused, though what is left of it fits', async () => {
  await expect(sizeOf(wholeFile(Object.assign(streamOf(MB_50), { truncated: true })))).rejects.toEqual(tooLarge);
  expect(await sizeOf(wholeFile(Object.assign(streamOf(MB_50), { truncated: false })))).toBe(MB_50);
});

test('what announces itself as too large is refused unread; a form may be longer than its file', () => {
  const announcing = (bytes: number, isForm: boolean) => () => {
    requireAnnounced(String(bytes), isForm);
  };
  expect(announcing(MB_50, false)).not.toThrow();
  expect(announcing(MB_50 + 1, false)).toThrow('too-large');
  expect(announcing(MB_50 + 200, true)).not.toThrow();
  expect(announcing(MB_50 + 20_000, true)).toThrow('too-large');
});
