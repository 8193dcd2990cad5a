import { setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';

let b: Bench;
beforeAll(async () => {
  b = await setUpBench();
});
afterAll(() => b.t.close());

const HEADER = [
  'submission',
  'edition',
  'spool',
  'method',
  'method version',
  'bench day',
  'zone',
  'instruments',
  'temperature [°C]',
  'humidity',
  'specimen',
  'force [lbf]',
  'time to break [s]',
];

interface RowChange {
  readonly mark?: string;
  readonly day?: string;
  readonly force?: string;
  readonly specimen?: string;
}

/** Readings of another mark are others. */
const partOf = (mark: string) => Array.from(mark).reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) % 997, 7) / 10_000;

const rowOf = (index: number, { mark = 'a', day = '2026-03-10', force, specimen }: RowChange = {}): string[] => [
  mark, '2026', b.spool, 'straight-pull', '1', day, 'Europe/Lisbon', 'R1', '21.5', '55', specimen ?? String(index + 1),
  force ?? (20 + ((index * 37) % 97) / 100 + partOf(mark)).toFixed(4), (17 + (index % 8) * 0.4).toFixed(1),
]; // prettier-ignore

const rowsOf = (count: number, change: RowChange = {}) => Array.from({ length: count }, (_, index) => rowOf(index, change));
const csv = (rows: string[][], separator = ',', end = '\n') => [HEADER, ...rows].map((cells) => cells.join(separator)).join(end) + end;
const send = (body: string | Buffer, address = '/v1/submissions') =>
  b.tester.call('post', address).set('Content-Type', 'text/csv').send(body);
const countSubmissions = async () => (await b.sql(`SELECT count(*)::int AS n FROM submission`))[0]?.['n'];
const columnOf = (name: string) => HEADER.indexOf(name);

test('a file of several submissions goes on record, text/csv and as a form alike', async () => {
  const file = csv([...rowsOf(8, { mark: 'a' }), ...rowsOf(8, { mark: 'b' })]);
  const answer = await send(file).expect(201);
  expect(answer.body).toEqual({
    submissions: [
      expect.objectContaining({ reference: 'S-2026-0001', state: 'submitted', spool: b.spool }),
      expect.objectContaining({ reference: 'S-2026-0002' }),
    ],
    refused: [],
    refusedFaults: 0,
  });
  const form = await b.tester
    .call('post', '/v1/submissions')
    .attach('file', Buffer.from(csv(rowsOf(8, { mark: 'c' }))), 'pulls.csv')
    .expect(201);
  expect(form.body.submissions).toHaveLength(1);
  const read = await b.tester.call('get', '/v1/submissions/S-2026-0001').expect(200);
  expect(read.body.specimens).toHaveLength(8);
  expect(read.body.specimens[0].readings[0].entered).toEqual({ text: rowOf(0)[columnOf('force [lbf]')], unit: 'lbf' });
});

test.each([
  ['a byte-order mark', (rows: string[][]) => `\uFEFF${csv(rows)}`],
  ['CRLF', (rows: string[][]) => csv(rows, ',', '\r\n')],
  [
    'semicolons and decimal commas',
    (rows: string[][]) =>
      csv(
        rows.map((cells) => cells.map((cell) => (/^\d+\.\d+$/.test(cell) ? cell.replace('.', ',') : cell))),
        ';',
      ),
  ],
])('%s is understood', async (name, write) => {
  const answer = await send(write(rowsOf(6, { mark: `m${name.length}` }))).expect(201);
  const read = await b.tester.call('get', `/v1/submissions/${answer.body.submissions[0].reference as string}`).expect(200);
  expect(read.body.figures.breakingForceN.mean).toBeGreaterThan(80);
});

test('every fault has row, column, what was found and what was expected; nothing is stored', async () => {
  const before = await countSubmissions();
  const rows = [...rowsOf(8, { mark: 'fine' }), ...rowsOf(8, { mark: 'bad' })];
  rows[9] = rowOf(1, { mark: 'bad', force: '-20.1' });
  rows[11] = rowOf(3, { mark: 'bad', force: 'NaN' });
  const answer = await send(csv(rows)).expect(422);
  expect(answer.body.errors).toEqual([
    expect.objectContaining({
      row: 11,
      column: 'force [lbf]',
      pointer: '/rows/11/force [lbf]',
      found: '-20.1',
      expected: expect.any(String),
      code: 'row_not_valid',
    }),
    expect.objectContaining({ row: 13, column: 'force [lbf]', pointer: '/rows/13/force [lbf]', found: 'NaN' }),
  ]);
  expect(await countSubmissions()).toBe(before);
});

test('what the record knows is told by row and column too', async () => {
  const before = await countSubmissions();
  const rows = [...rowsOf(6, { mark: 'g' }), ...rowsOf(6, { mark: 'h' }).map((cells) => cells.with(columnOf('instruments'), 'R9'))];
  const unknown = await send(csv(rows)).expect(422);
  expect(unknown.body.errors).toEqual([expect.objectContaining({ code: 'unknown_instrument', row: 8, column: 'instruments' })]);
  const future = await send(csv([...rowsOf(6, { mark: 'i' }), ...rowsOf(6, { mark: 'j', day: '2026-03-16' })])).expect(422);
  expect(future.body).toMatchObject({ code: 'submissions/blocked', errors: [{ code: 'date/in-the-future', row: 8, column: 'bench day' }] });
  expect(await countSubmissions()).toBe(before);
});

test('partial stores the good ones and says which not', async () => {
  const before = Number(await countSubmissions());
  const rows = [
    ...rowsOf(6, { mark: 'k' }),
    ...rowsOf(6, { mark: 'l', day: '2026-03-16' }),
    ...rowsOf(6, { mark: 'm', force: '1,5' }),
    ...rowsOf(6, { mark: 'n' }),
  ];
  const quoted = rows.map((cells) => cells.map((cell) => (cell.includes(',') ? `"${cell}"` : cell)));
  const answer = await send(csv(quoted), '/v1/submissions?partial=true').expect(201);
  expect(answer.body.submissions).toHaveLength(2);
  expect(new Set(answer.body.refused.map(({ row }: { row: number }) => row))).toEqual(new Set([8, 14, 15, 16, 17, 18, 19]));
  expect(await countSubmissions()).toBe(before + 2);
  await send(csv(rowsOf(6, { mark: 'o', day: '2026-03-16' })), '/v1/submissions?partial=true').expect(422);
  expect(await countSubmissions()).toBe(before + 2);
});

test('partial tells how many faults there are, listed or not', async () => {
  const rows = [...rowsOf(1100, { mark: 'many', force: 'x' }), ...rowsOf(6, { mark: 'good' })];
  const answer = await send(csv(rows), '/v1/submissions?partial=true').expect(201);
  expect(answer.body).toMatchObject({ submissions: [expect.anything()], refusedFaults: 1100 });
  expect(answer.body.refused).toHaveLength(1000);
});

test('a submission whose rows stand apart is refused with its row and what to do, also of a file that may be stored in part', async () => {
  const before = await countSubmissions();
  const [one, other, third] = [rowsOf(6, { mark: 't' }), rowsOf(6, { mark: 'u' }), rowsOf(6, { mark: 'v' })];
  const mixed = [...third, ...one.flatMap((cells, index) => [cells, other[index]!])];
  const answer = await send(csv(mixed), '/v1/submissions?partial=true').expect(422);
  expect(answer.body.errors).toEqual([
    expect.objectContaining({ code: 'rows_apart', row: 10, detail: expect.stringContaining('Sort the file by') }),
    expect.objectContaining({ code: 'rows_apart', row: 11 }),
  ]);
  expect(await countSubmissions()).toBe(before);
});

test('a preview of a file gives figures by submission, and stores nothing', async () => {
  const before = await countSubmissions();
  const answer = await send(csv([...rowsOf(6, { mark: 'p' }), ...rowsOf(6, { mark: 'q' })]), '/v1/submissions/preview').expect(200);
  expect(answer.body.submissions).toMatchObject([
    { rows: { first: 2, last: 7 }, figures: { validSpecimens: 6 } },
    { rows: { first: 8, last: 13 } },
  ]);
  expect(await countSubmissions()).toBe(before);
});

test('a preview looks at five submissions of one spool by one method; beyond, it is refused with the row', async () => {
  const marks = ['1', '2', '3', '4', '5', '6', '7'];
  const file = (count: number) => csv(marks.slice(0, count).flatMap((mark) => rowsOf(6, { mark: `pv${mark}` })));
  await send(file(5), '/v1/submissions/preview').expect(200);
  const answer = await send(file(7), '/v1/submissions/preview').expect(422);
  expect(answer.body.errors).toEqual([expect.objectContaining({ code: 'spool_too_often', row: 32, column: 'spool' })]);
});

// Of two thousand specimens and one each is looked at alone.
test.each([6, 2001])('the same readings twice in one file are found in the second, %i specimens', async (specimens) => {
  const rows = rowsOf(specimens, { mark: `r${specimens}` });
  const answer = await send(csv([...rows, ...rows.map((cells) => cells.with(0, `s${specimens}`).with(columnOf('humidity'), '56'))])).expect(
    201,
  );
  const codes = async (index: number) => {
    const { reference } = answer.body.submissions[index] as { reference: string };
    const { body } = await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200);
    return (body.findings as { code: string }[]).map(({ code }) => code);
  };
  expect(await codes(0)).not.toContain('readings/same-as-earlier');
  expect(await codes(1)).toContain('readings/same-as-earlier');
});

test('the answer to a file shows the findings of each submission, in words for its tester', async () => {
  const answer = await send(csv(rowsOf(6, { mark: 'found', day: '2026-01-05' }))).expect(201);
  const { reference, findings } = answer.body.submissions[0] as { reference: string; findings: { code: string; detail: null }[] };
  expect(findings.map(({ code }) => code)).toEqual(expect.arrayContaining(['date/long-past', 'rig/no-evidence']));
  const read = await b.tester.call('get', `/v1/submissions/${reference}`).expect(200);
  expect(findings).toEqual(read.body.findings);
});

test('the same file a second time is refused with the name of the first, at its rows; what is new in it goes on record when asked', async () => {
  const rows = rowsOf(6, { mark: 'again' });
  const first = await send(csv(rows)).expect(201);
  const { reference } = first.body.submissions[0] as { reference: string };
  const before = Number(await countSubmissions());
  const twice = await send(csv(rows)).expect(422);
  expect(twice.body.errors).toEqual([
    expect.objectContaining({ code: 'handed_in_before', row: 2, detail: expect.stringContaining(reference) }),
  ]);
  const more = await send(csv([...rowsOf(6, { mark: 'fresh' }), ...rows]), '/v1/submissions?partial=true').expect(201);
  expect(more.body).toMatchObject({ submissions: [{}], refused: [{ code: 'handed_in_before', row: 8 }] });
  expect(await countSubmissions()).toBe(before + 1);
  // Another person's readings are no repetition: that they are equal is for the reviewer to see.
  await b.otherTester.call('post', '/v1/submissions').set('Content-Type', 'text/csv').send(csv(rows)).expect(201);
});

test('the same twice in one file is told with the rows of the first', async () => {
  const rows = rowsOf(6, { mark: 'once' });
  const answer = await send(csv([...rows, ...rows.map((cells) => cells.with(0, 'twin'))])).expect(422);
  expect(answer.body.errors).toEqual([
    expect.objectContaining({ code: 'twice_in_file', row: 8, detail: expect.stringContaining('rows 2 to 7') }),
  ]);
});

test('of thirty requests with the same file at once one is stored, and the others are told its name', async () => {
  const file = csv(rowsOf(6, { mark: 'race' }));
  const before = Number(await countSubmissions());
  const answers = await Promise.all(Array.from({ length: 30 }, () => send(file)));
  const stored = answers.filter(({ status }) => status === 201);
  expect(stored).toHaveLength(1);
  const { reference } = stored[0]!.body.submissions[0] as { reference: string };
  for (const { status, text } of answers.filter((answer) => answer !== stored[0])) {
    expect([409, 422]).toContain(status);
    expect(text).toContain(reference);
  }
  expect(await countSubmissions()).toBe(before + 1);
});

test('what was taken back may come again', async () => {
  const file = csv(rowsOf(6, { mark: 'back' }));
  const { reference } = (await send(file).expect(201)).body.submissions[0] as { reference: string };
  await b.tester.call('post', `/v1/submissions/${reference}/taking-back`).set('If-Match', '"1"').expect(201);
  const again = await send(file).expect(201);
  expect((again.body.submissions[0] as { findings: { code: string }[] }).findings.map(({ code }) => code)).not.toContain(
    'readings/same-as-earlier',
  );
});

test.each<[string, () => string | Buffer]>([
  ['an empty file', () => ''],
  ['a header without rows', () => csv([])],
  ['a missing column', () => csv(rowsOf(6)).replace(/^submission,edition/, 'submission,colour')],
  ['a column twice', () => csv(rowsOf(6)).replace('time to break [s]', 'force [lbf]')],
  ['a column without a unit', () => csv(rowsOf(6)).replace('force [lbf]', 'force')],
  ['an unknown unit', () => csv(rowsOf(6)).replace('force [lbf]', 'force [lb]')],
  ['a unit of another dimension', () => csv(rowsOf(6)).replace('force [lbf]', 'force [mm]')],
  ['a row of another length', () => csv([...rowsOf(6), ['a', '2026']])],
  ['bytes that are no UTF-8', () => Buffer.concat([Buffer.from(csv(rowsOf(6))), Buffer.from([0xff, 0xfe])])],
  ['a workbook', () => Buffer.from('504b0304140006000800', 'hex')],
  ['a header without end', () => 'x,'.repeat(100_000)],
  ['quotes that do not close', () => `${csv(rowsOf(6))}"a,b`],
])('%s is a 422 with a fault, and nothing is stored', async (_, file) => {
  const before = await countSubmissions();
  const answer = await send(file()).expect(422);
  expect(answer.body.errors.length).toBeGreaterThan(0);
  expect(answer.body.errors[0]).toMatchObject({ row: expect.any(Number), detail: expect.any(String) });
  expect(await countSubmissions()).toBe(before);
});

test('a form without a file is told', async () => {
  const answer = await b.tester.call('post', '/v1/submissions').field('words', 'none').expect(422);
  expect(answer.body.errors[0].code).toBe('file_missing');
});

test('a file of 50 MB and one byte is refused unread, text/csv and as a form alike', async () => {
  const answer = await send(Buffer.alloc(50 * 1024 * 1024 + 1, 'x')).expect(413);
  expect(answer.body.code).toBe('request/too-large');
  const form = await b.tester.call('post', '/v1/submissions').attach('file', Buffer.alloc(50 * 1024 * 1024 + 20_000, 'x'), 'pulls.csv');
  expect(form.status).toBe(413);
});

test('a retry with the same key and file is answered from the first; another file is refused', async () => {
  const file = csv(rowsOf(6, { mark: 't' }));
  const first = await send(file).set('Idempotency-Key', 'one').expect(201);
  const again = await send(file).set('Idempotency-Key', 'one').expect(201);
  expect(again.body).toEqual(first.body);
  await send(csv(rowsOf(6, { mark: 'u' })))
    .set('Idempotency-Key', 'one')
    .expect(422);
});

test('a form too is taken once for a key: its file is what counts', async () => {
  const form = (mark: string, key: string) =>
    b.tester
      .call('post', '/v1/submissions')
      .set('Idempotency-Key', key)
      .attach('file', Buffer.from(csv(rowsOf(6, { mark }))), { filename: 'day.csv', contentType: 'text/csv' });
  const first = await form('form-a', 'two').expect(201);
  const again = await form('form-a', 'two').expect(201);
  expect(again.body).toEqual(first.body);
  expect(again.headers['idempotency-replayed']).toBe('true');
  expect((await form('form-b', 'two').expect(422)).body.code).toBe('request/key-reused');
});
