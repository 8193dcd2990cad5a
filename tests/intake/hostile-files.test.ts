import { readdir } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { Readable } from 'node:stream';
import { LARGEST_FILE_BYTES } from '../../api/contract/body-sizes.js';
import { wholeFile } from '../../api/submissions/intake/file-size.js';
import { FaultList } from '../../api/submissions/intake/fault-list.js';
import { MOST_LISTED, MOST_SUBMISSIONS } from '../../api/submissions/intake/file-limits.js';
import { SubmissionGatherer } from '../../api/submissions/intake/gather-submissions.js';
import { readWholeFile } from './read-whole-file.js';
import { readHeader } from '../../api/submissions/intake/read-header.js';
import { SpooledFile } from '../../api/submissions/intake/spooled-file.js';
import { bytesOf } from './bytes-of.js';

const HEADER = 'edition,spool,method,method version,bench day,instruments,temperature [°C],humidity,specimen,force [lbf],note';
const row = (specimen: number, { spool = 'K7M2QX4', force = '36.52', note = '' } = {}) =>
  `2026,${spool},straight-pull,1,2026-01-17,R1,20.5,63,${specimen},${force},${note}`;
const rows = (count: number, change: (i: number) => Parameters<typeof row>[1] = () => ({})) =>
  Array.from({ length: count }, (_, i) => row(i + 1, change(i)));
const file = (lines: readonly string[]) => [HEADER, ...lines].join('\n');
const encode = (text: string) => new TextEncoder().encode(text);

const MEBIBYTE = new Uint8Array(1024 * 1024).fill('x'.charCodeAt(0));
/** Bytes of a file of 50 MB and so many more. */
const fiftyMegabytesAnd = (more: number) =>
  Readable.from([...Array<Uint8Array>(50).fill(MEBIBYTE), new Uint8Array(more).fill(0x0a)].filter(({ length }) => length > 0));

test('50 MB is the largest file; one byte more is refused', async () => {
  const lengthOf = async (bytes: Readable) => {
    let length = 0;
    for await (const piece of wholeFile(bytes)) length += piece.length;
    return length;
  };
  expect(LARGEST_FILE_BYTES).toBe(50 * 1024 * 1024);
  expect(await lengthOf(fiftyMegabytesAnd(0))).toBe(LARGEST_FILE_BYTES);
  await expect(lengthOf(fiftyMegabytesAnd(1))).rejects.toMatchObject({ kind: { status: 413 } });
});

test('ten thousand specimens in one file are ordinary', async () => {
  const { submissions, faults } = await readWholeFile(bytesOf(file(rows(10_000, (i) => ({ spool: `S${Math.floor(i / 10)}` }))), 65_536));
  expect(faults).toEqual([]);
  expect(submissions).toHaveLength(1000);
});

test('a submission holds at most twenty thousand specimens', async () => {
  expect((await readWholeFile(bytesOf(file(rows(20_000)), 65_536))).faults).toEqual([]);
  expect((await readWholeFile(bytesOf(file(rows(20_001)), 65_536))).faults).toMatchObject([
    { message: 'Expected at most 20000 specimens.' },
  ]);
});

test('of specimens beyond what a submission holds one is kept, for the fault, and no more', () => {
  const gatherer = new SubmissionGatherer(readHeader(1, HEADER.split(',')).header, false, new FaultList());
  rows(20_050).forEach((text, i) => gatherer.add(i + 2, text.split(',')));
  expect(gatherer.end()?.content.specimens).toHaveLength(20_001);
});

test('a submission is read as soon as the next one begins; then nothing of it is held', () => {
  const gatherer = new SubmissionGatherer(readHeader(1, HEADER.split(',')).header, false, new FaultList());
  const add = (at: number, specimen: number, spool: string) => gatherer.add(at, row(specimen, { spool }).split(','))?.content;
  expect([add(2, 1, 'A'), add(3, 2, 'A')]).toEqual([undefined, undefined]);
  expect(add(4, 1, 'B')).toMatchObject({ spool: 'A', specimens: [{ number: 1 }, { number: 2 }] });
  expect(gatherer.end()?.content).toMatchObject({ spool: 'B', specimens: [{ number: 1 }] });
});

test('what lies on disk leaves nothing behind', async () => {
  const before = await readdir(tmpdir());
  const file = await SpooledFile.of(bytesOf('one,two', 3));
  expect((await readdir(tmpdir())).filter((name) => !before.includes(name) && name.startsWith('fairpull-'))).toEqual([]);
  let text = '';
  for await (const piece of file.read()) text += Buffer.from(piece).toString();
  expect(text).toBe('one,two');
  await file.close();
});

test('a piece that lies on disk is found again, and one that was cut off is told', async () => {
  const file = await SpooledFile.of(bytesOf('one,two', 3));
  const [long, short] = [await file.add(Buffer.from('ü'.repeat(70_000))), await file.add(Buffer.from('end'))];
  expect(Buffer.from(await file.piece(short)).toString()).toBe('end');
  expect(Buffer.from(await file.piece(long)).toString()).toBe('ü'.repeat(70_000));
  await expect(file.piece({ at: short.at, length: 4 })).rejects.toThrow('cut off');
  await file.close();
});

test('of many faults the first thousand are listed and the rest counted', async () => {
  const { faults, furtherFaults, submissions } = await readWholeFile(bytesOf(file(rows(1500, () => ({ force: 'x' }))), 65_536));
  expect(submissions).toEqual([]);
  expect(faults).toHaveLength(MOST_LISTED);
  expect(faults.at(-1)!.row).toBe(1001);
  expect(furtherFaults).toBe(500);
});

test('a file holds at most five thousand submissions', async () => {
  const many = (count: number) => readWholeFile(bytesOf(file(Array.from({ length: count }, (_, i) => row(1, { spool: `S${i}` }))), 65_536));
  expect((await many(MOST_SUBMISSIONS)).faults).toEqual([]);
  expect(await many(MOST_SUBMISSIONS + 1)).toMatchObject({
    isSound: false,
    faults: [{ code: 'too_many_submissions', row: MOST_SUBMISSIONS + 2 }],
  });
});

test.each([1, 2, 7, 64, 65_536])('a byte that is not UTF-8 is told with its line, read in pieces of %i bytes', async (size) => {
  const text = encode(file([row(1, { note: 'é€𝄞' }), row(2, { note: '?' }), row(3)]));
  text[text.lastIndexOf('?'.charCodeAt(0))] = 0xff;
  const { isSound, faults } = await readWholeFile(bytesOf(text, size));
  expect(isSound).toBe(false);
  expect(faults).toMatchObject([{ code: 'file_not_utf8', row: 3 }]);
});

test('a piece that begins within a character leads to the right line too', async () => {
  const text = encode(file([row(1, { note: '€' }), row(2, { note: '?' })]));
  text[text.lastIndexOf('?'.charCodeAt(0))] = 0xff;
  const cut = text.indexOf(0xe2) + 2;
  const { faults } = await readWholeFile(Readable.from([text.subarray(0, cut), text.subarray(cut)]));
  expect(faults).toMatchObject([{ code: 'file_not_utf8', row: 3 }]);
});

test('a file that ends within a character is told', async () => {
  const text = encode(file([row(1, { note: '€' })]));
  expect((await readWholeFile(bytesOf(text.subarray(0, -1)))).faults).toMatchObject([{ code: 'file_not_utf8', row: 2 }]);
});

test.each([1, 3, 64])('characters of several bytes survive pieces of %i bytes', async (size) => {
  const { submissions } = await readWholeFile(bytesOf(file([row(1, { note: 'vento à barlavento, não: 𝄞'.replace(',', '') })]), size));
  expect(submissions[0]!.content.note).toBe('vento à barlavento não: 𝄞');
});

test('a quotation mark that is never closed is told and ends the reading, however long the rest', async () => {
  const { submissions, faults } = await readWholeFile(bytesOf(file([row(1), row(2, { note: '"open' }), ...rows(50_000)]), 65_536));
  expect(submissions).toEqual([]);
  expect(faults).toMatchObject([{ code: 'file_not_csv' }]);
  // 100 kB after the quotation mark, in rows of some 60 bytes
  expect(faults[0]!.row).toBeLessThan(3000);
});

test('after a thousand rows of another width the rest of the file is not read', async () => {
  const { faults, furtherFaults, isSound } = await readWholeFile(bytesOf(file(Array.from({ length: 5000 }, () => 'x')), 65_536));
  expect(isSound).toBe(false);
  expect(faults.length + furtherFaults).toBeLessThanOrEqual(MOST_LISTED + 1);
  expect(faults.every(({ code }) => code === 'row_width')).toBe(true);
});

test('a cell of any length is shown shortened', async () => {
  const { faults } = await readWholeFile(bytesOf(file([row(1, { force: '9'.repeat(5000) })])));
  expect(faults[0]!.found.length).toBeLessThan(100);
});

test('an error of the stream itself is not taken for a fault of the file', async () => {
  const broken = Readable.from(
    (function* () {
      yield encode(`${HEADER}\n`);
      throw new Error('connection lost');
    })(),
  );
  await expect(readWholeFile(broken)).rejects.toThrow('connection lost');
});
