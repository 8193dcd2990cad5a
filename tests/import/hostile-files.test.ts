import { Readable } from 'node:stream';
import { MOST_LISTED } from '../../api/submissions/import/fault-list.js';
import { MOST_SUBMISSIONS } from '../../api/submissions/import/gather-submissions.js';
import { parseSubmissionsCsv } from '../../api/submissions/import/parse-submissions-csv.js';
import { LARGEST_FILE_BYTES } from '../../api/submissions/import/read-text.js';
import { bytesOf } from './bytes-of.js';

const HEADER = 'edition,spool,method,method version,bench day,instruments,temperature [°C],humidity,specimen,force [lbf],note';
const row = (specimen: number, { spool = 'K7M2QX4', force = '36.52', note = '' } = {}) =>
  `2026,${spool},straight-pull,1,2026-01-17,R1,20.5,63,${specimen},${force},${note}`;
const rows = (count: number, change: (i: number) => Parameters<typeof row>[1] = () => ({})) =>
  Array.from({ length: count }, (_, i) => row(i + 1, change(i)));
const file = (lines: readonly string[]) => [HEADER, ...lines].join('\n');
const encode = (text: string) => new TextEncoder().encode(text);

/** A file of exactly so many bytes, made as it is read: rows with long notes. */
function fileOf(bytes: number): Readable {
  const pieces = function* () {
    let left = bytes;
    const begin = encode(`${HEADER}\n`);
    yield begin;
    left -= begin.length;
    for (let number = 1; left > 0; number += 1) {
      const short = encode(`${row(number)}\n`).length;
      const noteLength = left >= 180_000 ? 90_000 : left > 90_000 + 2 * short ? 45_000 : left - short;
      const line = encode(`${row(number, { note: 'x'.repeat(noteLength) })}\n`);
      yield line;
      left -= line.length;
    }
  };
  return Readable.from(pieces());
}

test('50 MB is the largest file; one byte more is refused', async () => {
  expect((await parseSubmissionsCsv(fileOf(LARGEST_FILE_BYTES + 1))).faults.map(({ code }) => code)).toContain('file_too_large');
  expect((await parseSubmissionsCsv(fileOf(LARGEST_FILE_BYTES))).faults.map(({ code }) => code)).not.toContain('file_too_large');
  expect(LARGEST_FILE_BYTES).toBe(50 * 1024 * 1024);
}, 30_000);

test('ten thousand specimens in one file are ordinary', async () => {
  const began = performance.now();
  const { submissions, faults } = await parseSubmissionsCsv(
    bytesOf(file(rows(10_000, (i) => ({ spool: `S${Math.floor(i / 10)}` }))), 65_536),
  );
  expect(faults).toEqual([]);
  expect(submissions).toHaveLength(1000);
  // Generous for a busy machine; reading them takes well under a second on a free one.
  expect(performance.now() - began).toBeLessThan(10_000);
}, 30_000);

test('time grows with the rows of one submission, not with their square', async () => {
  const began = performance.now();
  const { faults } = await parseSubmissionsCsv(bytesOf(file(rows(200_000)), 65_536));
  expect(faults).toMatchObject([{ message: 'Expected at most 20000 specimens.' }]);
  expect(performance.now() - began).toBeLessThan(20_000);
}, 40_000);

test('of many faults the first thousand are listed and the rest counted', async () => {
  const { faults, furtherFaults, submissions } = await parseSubmissionsCsv(bytesOf(file(rows(1500, () => ({ force: 'x' }))), 65_536));
  expect(submissions).toEqual([]);
  expect(faults).toHaveLength(MOST_LISTED);
  expect(faults.at(-1)!.row).toBe(1001);
  expect(furtherFaults).toBe(500);
});

test('a file holds at most five thousand submissions', async () => {
  const many = (count: number) =>
    parseSubmissionsCsv(bytesOf(file(Array.from({ length: count }, (_, i) => row(1, { spool: `S${i}` }))), 65_536));
  expect((await many(MOST_SUBMISSIONS)).faults).toEqual([]);
  expect(await many(MOST_SUBMISSIONS + 1)).toMatchObject({
    submissions: [],
    faults: [{ code: 'too_many_submissions', row: MOST_SUBMISSIONS + 2 }],
  });
}, 30_000);

test.each([1, 2, 7, 64, 65_536])('a byte that is not UTF-8 is told with its line, read in pieces of %i bytes', async (size) => {
  const text = encode(file([row(1, { note: 'é€𝄞' }), row(2, { note: '?' }), row(3)]));
  text[text.lastIndexOf('?'.charCodeAt(0))] = 0xff;
  const { submissions, faults } = await parseSubmissionsCsv(bytesOf(text, size));
  expect(submissions).toEqual([]);
  expect(faults).toMatchObject([{ code: 'file_not_utf8', row: 3 }]);
});

test('a file that ends within a character is told', async () => {
  const text = encode(file([row(1, { note: '€' })]));
  expect((await parseSubmissionsCsv(bytesOf(text.subarray(0, -1)))).faults).toMatchObject([{ code: 'file_not_utf8', row: 2 }]);
});

test.each([1, 3, 64])('characters of several bytes survive pieces of %i bytes', async (size) => {
  const { submissions } = await parseSubmissionsCsv(bytesOf(file([row(1, { note: 'vento à barlavento, não: 𝄞'.replace(',', '') })]), size));
  expect(submissions[0]!.content.note).toBe('vento à barlavento não: 𝄞');
});

test('a quotation mark that is never closed is told and ends the reading, however long the rest', async () => {
  const { submissions, faults } = await parseSubmissionsCsv(bytesOf(file([row(1), row(2, { note: '"open' }), ...rows(50_000)]), 65_536));
  expect(submissions).toEqual([]);
  expect(faults).toMatchObject([{ code: 'file_not_csv' }]);
});

test('a cell of any length is shown shortened', async () => {
  const { faults } = await parseSubmissionsCsv(bytesOf(file([row(1, { force: '9'.repeat(5000) })])));
  expect(faults[0]!.found.length).toBeLessThan(100);
});

test('an error of the stream itself is not taken for a fault of the file', async () => {
  const broken = Readable.from(
    (function* () {
      yield encode(`${HEADER}\n`);
      throw new Error('connection lost');
    })(),
  );
  await expect(parseSubmissionsCsv(broken)).rejects.toThrow('connection lost');
});
