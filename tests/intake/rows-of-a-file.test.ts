import { readWholeFile } from './read-whole-file.js';
import { bytesOf } from './bytes-of.js';

const HEADER =
  'submission,edition,spool,method,method version,bench day,instruments,temperature,temperature unit,humidity [%],seen label,specimen,condition,invalid reason,station,force,force unit';
const BASE = {
  submission: '',
  spool: 'K7M2QX4',
  version: '1',
  temperature: '20.5',
  temperatureUnit: '°C',
  seen: 'no',
  specimen: '1',
  condition: '',
  reason: '',
  station: '',
  force: '36.52',
  unit: 'lbf',
};
const row = (change: Partial<typeof BASE> = {}): string => {
  const c = { ...BASE, ...change };
  return [
    c.submission,
    '2026',
    c.spool,
    'straight-pull',
    c.version,
    '2026-01-17',
    'R1 T1',
    c.temperature,
    c.temperatureUnit,
    '63',
    c.seen,
    c.specimen,
    c.condition,
    c.reason,
    c.station,
    c.force,
    c.unit,
  ].join(',');
};
const read = (...rows: string[]) => readWholeFile(bytesOf([HEADER, ...rows].join('\n')));
const at = (pointer: string) => ({ pointer, code: '', detail: '' });
const only = (part: string) => [expect.objectContaining({ message: expect.stringContaining(part) })];

test('a unit in a column may differ from row to row, and faults of it name that column', async () => {
  const good = await read(row(), row({ specimen: '2', force: '162.4', unit: 'N' }));
  expect(good.faults).toEqual([]);
  expect(good.submissions[0]!.content.specimens.map(({ readings }) => readings[0]!.unit)).toEqual(['lbf', 'N']);
  expect(good.submissions[0]!.locate(at('/specimens/1/readings/0/unit'))).toMatchObject({ row: 3, column: 'force unit' });
  const bad = await read(row(), row({ specimen: '2', unit: 'lbs' }));
  expect(bad.faults).toMatchObject([{ row: 3, column: 'force unit', found: 'lbs', code: 'row_not_valid' }]);
});

test.each([
  ['yes', true],
  ['TRUE', true],
  ['1', true],
  ['no', false],
  ['', false],
])('the label was seen: "%s"', async (seen, expected) => {
  expect((await read(row({ seen }))).submissions[0]!.content.seenLabel).toBe(expected);
});

test('a seen label that is neither yes nor no is told, never taken for no', async () => {
  const { submissions, faults } = await read(row({ seen: 'sim' }));
  expect(submissions).toEqual([]);
  expect(faults).toMatchObject([{ row: 2, column: 'seen label', found: 'sim', expected: 'yes or no' }]);
});

test('rows of one specimen agree on its condition and on why it does not count', async () => {
  const first = row({ reason: '', station: '1' });
  expect((await read(first, row({ station: '2', force: '', reason: 'slipped' }))).faults).toMatchObject([
    { row: 3, column: 'invalid reason', found: 'slipped', code: 'row_differs' },
  ]);
  expect((await read(first, row({ station: '2', force: '', condition: 'treated' }))).faults).toMatchObject([
    { row: 3, column: 'condition', expected: 'untreated' },
  ]);
  expect((await read(first, row({ station: '2', force: '' }))).faults).toEqual([]);
});

test('a specimen without any reading is told', async () => {
  expect((await read(row(), row({ specimen: '2', force: '' }))).faults).toMatchObject([
    { row: 3, message: 'specimen: Expected at least one reading.' },
  ]);
});

test('the temperature may be given in °F; its unit is the same on every row', async () => {
  const { submissions } = await read(row({ temperature: '69', temperatureUnit: '°F' }));
  expect(submissions[0]!.content.ambient.temperature).toEqual({ value: '69', unit: '°F' });
  expect((await read(row(), row({ specimen: '2', temperatureUnit: '°F' }))).faults).toMatchObject([
    { row: 3, column: 'temperature unit', found: '°F', expected: '°C' },
  ]);
});

test('a mark tells two submissions of the same spool, method and day apart', async () => {
  const { submissions, faults } = await read(row({ submission: 'a' }), row({ submission: 'b' }));
  expect(faults).toEqual([]);
  expect(submissions).toHaveLength(2);
});

test('rows of one submission that stand apart are told with both places and what to do, once; nothing of the file may be used', async () => {
  const { faults, isSound } = await read(
    row(),
    row({ specimen: '2' }),
    row({ spool: 'OTHER' }),
    row({ specimen: '3' }),
    row({ spool: 'OTHER', specimen: '2', force: '-1' }),
    row({ specimen: '4' }),
  );
  expect(isSound).toBe(false);
  expect(faults.map(({ code, row: at }) => [code, at])).toEqual([
    ['rows_apart', 5],
    ['rows_apart', 6],
    ['row_not_valid', 6],
  ]);
  expect(faults[0]).toMatchObject({
    found: 'spool K7M2QX4, method straight-pull, bench day 2026-01-17',
    expected: 'together with rows 2 to 3',
    message: expect.stringMatching(
      /^Row 5 .* rows 2 to 3; .* Sort the file by submission, spool, method, bench day; .* column "submission"/,
    ),
  });
});

test('a row of another width leaves open whose it is: nothing of the file may be used', async () => {
  expect(await read(row(), 'too,short', row({ spool: 'OTHER' }))).toMatchObject({
    isSound: false,
    faults: [{ row: 3, code: 'row_width' }],
  });
});

test('a fault in a row of a submission that is valid without it keeps the whole submission out', async () => {
  const { submissions, faults } = await read(row(), row({ specimen: 'x' }));
  expect(submissions).toEqual([]);
  expect(faults).toMatchObject([{ row: 3, column: 'specimen', found: 'x' }]);
});

test('a row with the wrong number of cells could be of any submission, so that none is read', async () => {
  const { submissions, faults } = await read(row(), `${row({ specimen: '2' })},`, row({ spool: 'OTHER' }));
  expect(submissions).toEqual([]);
  expect(faults).toMatchObject([{ row: 3, code: 'row_width', found: '18 cells', expected: '17 cells' }]);
});

test('rows of separators only, as spreadsheets leave them, are passed over and still counted as lines', async () => {
  const { submissions, faults } = await read(row(), ','.repeat(16), '', row({ specimen: '2', force: 'x' }));
  expect(submissions).toEqual([]);
  expect(faults).toMatchObject([{ row: 5, found: 'x' }]);
});

test.each([
  ['LF', '\n'],
  ['CRLF', '\r\n'],
  ['CR', '\r'],
])('lines are counted the same with %s', async (_, end) => {
  const { faults } = await readWholeFile(bytesOf(['', HEADER, row(), row({ specimen: '2', force: 'x' })].join(end)));
  expect(faults).toMatchObject([{ row: 4, column: 'force', found: 'x' }]);
});

test('line ends may be mixed, as they are where files were joined', async () => {
  const { submissions, faults } = await readWholeFile(bytesOf(`${HEADER}\r\n${row()}\n${row({ specimen: '2' })}\r\n`));
  expect(faults).toEqual([]);
  expect(submissions[0]!.content.specimens.map(({ number }) => number)).toEqual([1, 2]);
});

test('blank lines before a header with semicolons do not hide its separator', async () => {
  const text = ['', '', HEADER.replaceAll(',', ';'), row({ force: '36·52' }).replaceAll(',', ';').replace('36·52', '36,52')].join('\n');
  const { submissions, faults } = await readWholeFile(bytesOf(text));
  expect(faults).toEqual([]);
  expect(submissions[0]!.content.specimens[0]!.readings[0]!.value).toBe('36.52');
});

test('a thousands separator is not guessed at', async () => {
  const text = [HEADER, row({ force: 'F' })].join('\n').replaceAll(',', ';').replace('F\n', '').replace(';F;', ';1.036,52;');
  expect((await readWholeFile(bytesOf(text))).faults).toMatchObject([{ found: '1.036,52' }]);
});

test.each([
  ['a unit in two places', HEADER.replace('force,', 'force [lbf],'), 'stands beside'],
  ['a unit column of nothing', HEADER.replace('force,', 'note,'), 'no column "force"'],
  ['a unit column twice', HEADER.replace('station', 'force unit'), 'there twice'],
  ['a unit on a column that has none', HEADER.replace('spool', 'spool [m]'), 'has no unit'],
  [
    'a unit that is the name of something else in the program',
    HEADER.replace('force,force unit', 'force [constructor],note'),
    'not a known unit',
  ],
])('the header is told: %s', async (_, header, words) => {
  const { submissions, faults } = await readWholeFile(bytesOf([header, row()].join('\n')));
  expect(submissions).toEqual([]);
  expect(faults).toEqual(only(words));
});

test('every fault of the header is told at once', async () => {
  const header = HEADER.replace('edition', 'edicao').replace('force unit', 'colour');
  const { faults } = await readWholeFile(bytesOf([header, row()].join('\n')));
  expect(faults.map(({ code }) => code).toSorted()).toEqual(['column_missing', 'column_unknown', 'column_unknown', 'unit_missing']);
});

test('a fault of the header does not hide the faults of the rows: those in columns that were understood are told too', async () => {
  const header = HEADER.replace('edition', 'edicao');
  const { submissions, faults } = await readWholeFile(bytesOf([header, row({ version: 'first' }), row({ specimen: 'two' })].join('\n')));
  expect(submissions).toEqual([]);
  expect(faults.map(({ row: line, column }) => `${line} ${column}`)).toEqual(
    expect.arrayContaining(['1 edicao', '1 edition', '2 method version', '3 specimen']),
  );
  // Nothing is said of a column that is not there, row by row.
  expect(faults.filter(({ row: line, column }) => line > 1 && column === 'edition')).toEqual([]);
});
