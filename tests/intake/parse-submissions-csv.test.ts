import { readFile } from 'node:fs/promises';
import { CSV_COLUMNS } from '../../api/submissions/intake/csv-columns.js';
import { readWholeFile } from './read-whole-file.js';
import { bytesOf } from './bytes-of.js';

const sample = await readFile('site/public/samples/hand-in.csv', 'utf8');
const semicolon = await readFile('site/public/samples/hand-in-semicolon.csv', 'utf8');

const read = (text: string | Uint8Array) => readWholeFile(bytesOf(text));
const faultsOf = async (text: string | Uint8Array) => {
  const { submissions, faults } = await read(text);
  expect(submissions).toEqual([]);
  return faults;
};

test('the sample is read as it stands, numbers as typed with their unit', async () => {
  const { submissions, faults } = await read(sample);
  expect(faults).toEqual([]);
  expect(submissions).toHaveLength(1);
  const { content } = submissions[0]!;
  expect(content).toMatchObject({
    edition: '2026',
    spool: 'K7M2QX4',
    method: 'straight-pull',
    methodVersion: 1,
    instruments: ['R1'],
    ambient: { temperature: { value: '20.5', unit: '°C' } },
  });
  expect(content.specimens[0]!.readings[0]).toEqual({ role: 'breakingForce', station: null, value: '36.52', unit: 'lbf' });
  expect(content.specimens[1]!.readings[0]!.value).toBe('36.10');
  expect(content.specimens[2]).toMatchObject({ validity: 'invalid', invalidReason: 'brokeAtGrip' });
});

test('semicolons, decimal commas and several rows a specimen', async () => {
  const { submissions, faults } = await read(semicolon);
  expect(faults).toEqual([]);
  expect(submissions[0]!.content.specimens).toHaveLength(2);
  expect(submissions[0]!.content.specimens[0]!.readings).toContainEqual({ role: 'narrowDiameter', station: 2, value: '0.251', unit: 'mm' });
});

test('a decimal comma is not understood where the comma separates', async () => {
  const faults = await faultsOf(sample.replace('36.10', '"36,10"'));
  expect(faults[0]).toMatchObject({ row: 3, column: 'force [lbf]', found: '36,10' });
});

test.each([
  ['a byte-order mark', (text: string) => `\uFEFF${text}`],
  ['CRLF', (text: string) => text.replaceAll('\n', '\r\n')],
  ['blank lines at the end', (text: string) => `${text}\n\n`],
  ['header in capitals', (text: string) => text.replace('edition,spool', 'Edition,SPOOL')],
])('%s changes nothing', async (_, change) => {
  const plain = await read(sample);
  const changed = await read(change(sample));
  expect(changed.faults).toEqual([]);
  expect(changed.submissions[0]!.content).toEqual(plain.submissions[0]!.content);
});

test.each([
  ['an empty file', () => '', 0, 'The file is empty.'],
  ['a header only', (text: string) => text.split('\n')[0]!, 1, 'no rows'],
  ['a missing column', (text: string) => text.replace(',humidity,', ',note,'), 1, '"humidity" is missing'],
  ['an unknown column', (text: string) => text.replace('zone', 'colour'), 1, '"colour" is not a column'],
  ['a column twice', (text: string) => text.replace('zone', 'spool'), 1, 'twice'],
  ['a column without unit', (text: string) => text.replace(' [lbf]', ''), 1, 'no unit'],
  ['an unknown unit', (text: string) => text.replace('[lbf]', '[pounds]'), 1, 'not a known unit'],
  ['a unit of another dimension', (text: string) => text.replace('[lbf]', '[mm]'), 2, 'a breaking force is a force'],
  ['a negative force', (text: string) => text.replace('36.10', '-36.10'), 3, 'above zero'],
  ['NaN', (text: string) => text.replace('36.10', 'NaN'), 3, 'decimal number'],
  ['a specimen twice', (text: string) => text.replace(',63,2,', ',63,1,'), 3, 'twice'],
  ['a row that is too short', (text: string) => text.replace(',36.10,17.9', ',36.10'), 3, 'another number of cells'],
  ['a reason that is not known', (text: string) => text.replace('brokeAtGrip', 'wind'), 4, 'Found "wind", expected one of brokeAtGrip'],
  ['a word for a number', (text: string) => text.replace(',63,2,', ',63,two,'), 3, 'whole number'],
  ['one submission with two temperatures', (text: string) => text.replace('20.5,63,2', '21.5,63,2'), 3, 'Differs from row 2'],
  ['an open quotation mark', (text: string) => text.replace('36.10', '"36.10'), 7, 'not CSV'],
])('%s is told with its row, and nothing is read', async (_, change, row, words) => {
  const faults = await faultsOf(change(sample));
  const fault = faults.find(({ message }) => message.includes(words));
  expect(fault?.row).toBe(row);
});

test('all faults are told at once, in the order of the rows', async () => {
  const faults = await faultsOf(sample.replace('36.77', 'x').replace('36.10', '-1').replace(',63,4,', ',63,0,'));
  expect(faults.map(({ row, found }) => [row, found])).toEqual([
    [3, '-1'],
    [5, '0'],
    [6, 'x'],
  ]);
});

test('submissions in one file are kept apart, a good one beside a bad one', async () => {
  const [header, ...rows] = sample.trim().split('\n');
  const other = rows.map((row) => row.replace('K7M2QX4', 'OTHER').replace('36.10', 'x'));
  const { submissions, faults } = await read([header, ...rows, ...other].join('\n'));
  expect(submissions.map(({ content, rows: range }) => [content.spool, range])).toEqual([['K7M2QX4', [2, 7]]]);
  expect(faults[0]).toMatchObject({ row: 9, column: 'force [lbf]', found: 'x' });
});

test('every place in a submission leads back to its row and column', async () => {
  const { submissions } = await read(sample);
  expect(submissions[0]!.locate({ pointer: '/specimens/3/readings/0/value', code: '', detail: '' })).toMatchObject({
    row: 5,
    column: 'force [lbf]',
  });
  expect(submissions[0]!.locate({ pointer: '/benchDay', code: '', detail: '' })).toMatchObject({ row: 2, column: 'bench day' });
});

test('the sample uses columns of the table only', () => {
  const names = CSV_COLUMNS.map(({ name }) => name);
  for (const text of [sample, semicolon]) {
    for (const cell of text.split('\n')[0]!.split(/[,;]/)) expect(names).toContain(cell.replace(/ \[.*\]/, ''));
  }
});
