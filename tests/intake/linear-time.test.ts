import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { submissionContent } from '../../api/contract/submission-content.js';
import { contentFaults } from '../../api/platform/http/problems/content-faults.js';
import { toFaults } from '../../api/platform/http/validation.js';
import { readTable } from '../../site/desk/src/table/read-table.js';
import { workbook } from '../support/workbook.js';
import { readTraceFile } from '../../api/submissions/traces/read-trace-file.js';
import { bytesOf } from './bytes-of.js';
import { readWholeFile } from './read-whole-file.js';

const [SMALL, TIMES] = [32 * 1024, 16];
/** A reader whose time grows as the square would be at 16 times the growth of the length. */
const MOST = 5 * TIMES;

const HEADER =
  'edition,spool,method,method version,bench day,instruments,temperature [°C],humidity,specimen,station,wide diameter [mm],force [lbf]\n';
const ROW = '2026,K7M2QX4,diameter,1,2026-01-17,R1,20.5,63,';
const repeat = (part: string) => (length: number) => part.repeat(Math.ceil(length / part.length)).slice(0, length);
const rows = (write: (i: number) => string) => (length: number) => {
  const count = Math.ceil(length / write(1).length);
  return HEADER + Array.from({ length: count }, (_, i) => write(i + 1)).join('\n');
};

/** The same text for the same length, of the characters that readers look for (mulberry32). */
function noise(length: number): string {
  const letters = ',;\t\n\r"[]().-+019eE N\u00b0x';
  let state = 7;
  return Array.from({ length }, () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return letters[((t ^ (t >>> 14)) >>> 0) % letters.length];
  }).join('');
}

const SHAPES: [name: string, write: (length: number) => string][] = [
  ['cells without a line break', repeat('x,')],
  ['one word', repeat('x')],
  ['digits', repeat('9')],
  ['digits that end as a word', (length) => `0,0\n1,${'9'.repeat(length)}x`],
  ['blanks', repeat(' ')],
  ['blanks between two words', (length) => `a${' '.repeat(Math.min(length, 90_000))}b,c\n${'\n'.repeat(length)}`],
  ['line breaks', repeat('\n')],
  ['carriage returns', repeat('\r')],
  ['quotation marks', repeat('"')],
  ['an open quotation mark', (length) => `"${'a\n'.repeat(length / 2)}`],
  ['brackets', repeat('[')],
  ['commas', repeat(',')],
  ['tabs', repeat('\t')],
  ['rows of one letter', repeat('a\n')],
  ['rows of another width than the first', (length) => `a,b,c\n${'a\n'.repeat(length / 2)}`],
  ['rows of another number of separators', (length) => `Extension (mm),Force (N)\n1,2\n${',,,\n'.repeat(length / 4)}`],
  ['two columns of numbers below a title', (length) => `Record\nExtension (mm),Force (N)\n${'1,2\n'.repeat(length / 4)}`],
  ['two columns of numbers', (length) => `Extension (mm),Force (N)\n${'1,2\n'.repeat(length / 4)}`],
  ['a header and a row without end', (length) => HEADER + 'x,'.repeat(length / 2)],
  ['stations of one specimen', rows((i) => `${ROW}1,${i},0.25,`)],
  ['the same station again and again', rows(() => `${ROW}1,1,0.25,`)],
  ['specimens', rows((i) => `${ROW}${i},1,0.25,`)],
  ['submissions in turn', rows((i) => `${ROW.replace('K7M2QX4', i % 2 === 0 ? 'A' : 'B')}${i},1,0.25,`)],
  ['submissions', rows((i) => `${ROW.replace('K7M2QX4', `S${i}`)}1,1,0.25,`)],
  ['noise', noise],
];

/** Time of the processor [ms]: what a machine does beside it is not in it. */
async function timeOf(read: () => unknown): Promise<number> {
  const began = process.cpuUsage();
  await read();
  return process.cpuUsage(began).user / 1000;
}

/** How many times as long the large one takes; measured a second time where the first says too much. */
async function growth(readSmall: () => unknown, readLarge: () => unknown): Promise<number> {
  // What takes less than a few milliseconds is not measured well.
  const once = Math.max(4, Math.min(await timeOf(readSmall), await timeOf(readSmall)));
  const found = (await timeOf(readLarge)) / once;
  return found < MOST ? found : (await timeOf(readLarge)) / once;
}

describe.each<[string, (text: string) => unknown]>([
  ['a hand-in file', (text) => readWholeFile(bytesOf(text, 65_536))],
  ['a trace', readTraceFile],
])('%s', (_, read) => {
  test.each(SHAPES)(
    'of %s is read in a time that grows as its length',
    async (__, write) => {
      const [small, large] = [write(SMALL), write(SMALL * TIMES)];
      expect(
        await growth(
          () => read(small),
          () => read(large),
        ),
      ).toBeLessThan(MOST);
    },
    60_000,
  );
});

const reading = { role: 'breakingForce', value: '161.4', unit: 'N' };
const handIn = (change: object) => ({
  ...{ edition: '2026', spool: 'K7M2QX4', method: 'straight-pull', methodVersion: 1, benchDay: '2026-01-17', instruments: ['R1'] },
  ambient: { temperature: { value: '20.5', unit: '°C' }, humidityPercent: '63' },
  specimens: [{ number: 1, readings: [reading] }],
  ...change,
});
const list = (length: number, write: (i: number) => unknown) => Array.from({ length: length / 64 }, (_, i) => write(i + 1));
const BODIES: [name: string, write: (length: number) => unknown][] = [
  ['specimens', (length) => handIn({ specimens: list(length, (number) => ({ number, readings: [reading] })) })],
  ['the same specimen again and again', (length) => handIn({ specimens: list(length, () => ({ number: 1, readings: [reading] })) })],
  ['readings of one specimen', (length) => handIn({ specimens: [{ number: 1, readings: list(length, () => reading) }] })],
  [
    'stations of one specimen',
    (length) =>
      handIn({
        specimens: [{ number: 1, readings: list(length, (station) => ({ ...reading, role: 'wideDiameter', unit: 'mm', station })) }],
      }),
  ],
  ['a long note', (length) => handIn({ note: 'x'.repeat(length) })],
  ['a long number', (length) => handIn({ specimens: [{ number: 1, readings: [{ ...reading, value: `${'9'.repeat(length)}x` }] }] })],
  ['a long unit', (length) => handIn({ specimens: [{ number: 1, readings: [{ ...reading, unit: 'k'.repeat(length) }] }] })],
  ['a long day', (length) => handIn({ benchDay: '2'.repeat(length), zone: 'A/'.repeat(length / 2) })],
  ['blanks for words', (length) => handIn({ fewerBecause: ' '.repeat(length) })],
  ['instruments', (length) => handIn({ instruments: list(length, (i) => `R${i}`) })],
  ['fields that are none', (length) => Object.fromEntries(list(length, (i) => [`k${i}`, i]) as [string, number][])],
  ['lists for everything', (length) => list(length, () => [[]])],
];

test.each(BODIES)('a JSON body of %s is read in a time that grows as its length', async (_, write) => {
  const read = (text: string) => () => {
    const body = JSON.parse(text) as unknown;
    contentFaults(body);
    return toFaults(submissionContent.safeParse(body).error?.issues ?? []);
  };
  const [small, large] = [read(JSON.stringify(write(SMALL))), read(JSON.stringify(write(SMALL * TIMES)))];
  expect(await growth(small, large)).toBeLessThan(MOST);
});

const fileOf = (bytes: Uint8Array) => new File([Uint8Array.from(bytes)], 'pulls.xlsx');
const SHEETS: [name: string, write: (rows: number) => (string | number)[][]][] = [
  ['rows', (count) => Array.from({ length: count }, (_, i) => [i, 36.1, 'lbf'])],
  ['one long cell', (count) => [['x'.repeat(60 * count)]]],
  ['rows of one letter', (count) => Array.from({ length: count }, () => ['x'])],
];

test.each(SHEETS)('a workbook of %s is read in a time that grows as its length', async (_, write) => {
  const [small, large] = [fileOf(workbook(write(100))), fileOf(workbook(write(100 * TIMES)))];
  expect(
    await growth(
      () => readTable(small),
      () => readTable(large),
    ),
  ).toBeLessThan(MOST);
});

test('a workbook that is broken off anywhere, or damaged, is told in our words; nothing of it is taken for a table', async () => {
  const whole = workbook([['Force [N]'], ['36.1']]);
  expect((await readTable(fileOf(whole))).cells).toEqual([['Force [N]'], ['36.1']]);
  const words = /^pulls\.xlsx begins as a workbook .* expected a workbook or CSV\. Save it again/;
  for (let length = 4; length < whole.length; length += 7)
    await expect(readTable(fileOf(whole.subarray(0, length)))).rejects.toThrow(words);
  const noisy = Buffer.concat([whole.subarray(0, 4), Buffer.from(noise(2000))]);
  await expect(readTable(fileOf(noisy))).rejects.toThrow(words);
  const open = new File(['a,"b\n'.repeat(3)], 'open.csv');
  await expect(readTable(open)).rejects.toThrow(/^open\.csv has a quotation mark/);
  await expect(readTable(new File([new Uint8Array(50 * 1024 * 1024 + 1)], 'large.csv'))).rejects.toThrow(
    /has 51 MB; expected at most 50 MB/,
  );
});

describe('a workbook of a few kilobytes that would fill the memory of a browser is told within bounds', () => {
  const parts = unzipSync(workbook([['Force [N]'], ['36.1']]));
  const SHEET = 'xl/worksheets/sheet1.xml';
  const sheet = strFromU8(parts[SHEET]!);
  const packed = (others: Record<string, string>) =>
    zipSync({ ...parts, ...Object.fromEntries(Object.entries(others).map(([path, text]) => [path, strToU8(text)])) });
  const refused = (archive: Uint8Array, words: RegExp) => expect(readTable(fileOf(archive))).rejects.toThrow(words);

  test('blanks without end, also where the archive states that there are few', async () => {
    const archive = Buffer.from(packed({ [SHEET]: sheet.replace('</sheetData>', `${' '.repeat(65 * 1024 * 1024)}</sheetData>`) }));
    // The size in the central directory (APPNOTE 4.3.12, "uncompressed size"): the last entry is the sheet's.
    archive.writeUInt32LE(400_000, archive.lastIndexOf(Buffer.from('PK\u0001\u0002')) + 24);
    expect(archive.length).toBeLessThan(100_000);
    await refused(archive, /^pulls\.xlsx unpacks to more than 64 MB; expected less\. Copy the readings alone/);
  });

  test('a cell far out, and a place that is none', async () => {
    const far = '</row><row r="1048576"><c r="XFD1048576"><v>1</v></c></row>';
    await refused(packed({ [SHEET]: sheet.replace('</row>', far) }), /has cells down to row 1048576 and across to column 16384; expected/);
    await refused(packed({ [SHEET]: sheet.replace('"A1"', '"A1e9"') }), /has a cell at "A1e9"; expected places such as B7/);
  });

  test('one long text in every cell', async () => {
    const shared = `<sst><si><t>${'x'.repeat(1024 * 1024)}</t></si></sst>`;
    const rows = Array.from({ length: 60 }, (_, i) => `<row r="${i + 3}"><c r="A${i + 3}" t="s"><v>0</v></c></row>`);
    const archive = packed({ [SHEET]: sheet.replace('</sheetData>', `${rows.join('')}</sheetData>`), 'xl/sharedStrings.xml': shared });
    await refused(archive, /has 61 MB of text; expected at most 50 MB/);
  });
});
