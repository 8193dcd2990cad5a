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

/** The shorter of two times of the processor [ms]: what a machine does beside it is not in them. */
async function shorter(read: () => unknown): Promise<number> {
  const times: number[] = [];
  for (let turn = 0; turn < 2; turn++) {
    const began = process.cpuUsage();
    await read();
    times.push(process.cpuUsage(began).user / 1000);
  }
  return Math.min(...times);
}

describe.each<[string, (text: string) => unknown]>([
  ['a hand-in file', (text) => readWholeFile(bytesOf(text, 65_536))],
  ['a trace', readTraceFile],
])('%s', (_, read) => {
  test.each(SHAPES)(
    'of %s is read in a time that grows as its length',
    async (__, write) => {
      const [small, large] = [write(SMALL), write(SMALL * TIMES)];
      // What takes less than a few milliseconds is not measured well.
      const once = Math.max(4, await shorter(() => read(small)));
      expect((await shorter(() => read(large))) / once).toBeLessThan(MOST);
    },
    60_000,
  );
});
