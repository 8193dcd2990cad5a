import pg from 'pg';
import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { pointersOf } from '../support/catalogue-fixtures.js';

let b: Bench;
beforeAll(async () => {
  b = await setUpBench();
});
afterAll(() => b.t.close());

const handIn = (content: object) => b.tester.call('post', '/v1/submissions').send(content);

/** Rows of every table but those of sessions and tokens: what a refused request may not add to. */
async function countRows(): Promise<Record<string, unknown>> {
  const tables = await b.sql(`SELECT tablename FROM pg_tables WHERE schemaname = 'public'`);
  const counts = tables.map(({ tablename }) => `(SELECT count(*)::int FROM "${String(tablename)}") AS "${String(tablename)}"`);
  return (await b.sql(`SELECT ${counts.join(', ')}`))[0] ?? {};
}

test('a submission goes on record with readings as entered and in SI, figures, findings and certificates', async () => {
  const specimens = pulls(90, 8);
  // 20 lbf = 88.96443230521 N exactly (NIST SP 811, appendix B).
  specimens[0]!.readings[0] = { role: 'breakingForce', value: '20.00', unit: 'lbf' };
  const answer = await handIn(
    contentFor(b.spool, { specimens, ambient: { temperature: { value: '70.7', unit: '°F' }, humidityPercent: '55' } }),
  ).expect(201);
  expect(answer.headers['etag']).toBe('"1"');
  expect(answer.body).toMatchObject({
    reference: 'S-2026-0001',
    state: 'submitted',
    revision: 1,
    tester: 'T. Venn',
    spool: b.spool,
    temperature: { text: '70.7', unit: '°F' },
    instruments: [{ code: 'R1', kind: 'forceGauge', certificate: 'C-R1' }],
    figures: { validSpecimens: 8, breakingForceN: { n: 8 } },
  });
  expect(Number(answer.body.temperatureC)).toBeCloseTo(21.5, 10);
  expect(answer.body.specimens[0].readings[0]).toEqual({
    role: 'breakingForce',
    station: null,
    entered: { text: '20.00', unit: 'lbf' },
    value: '88.96443230521',
    unit: 'N',
  });
  const stored = await b.sql(`SELECT entered_text, entered_unit, value_si::text FROM reading WHERE entered_unit = 'lbf'`);
  expect(stored).toEqual([{ entered_text: '20.00', entered_unit: 'lbf', value_si: '88.96443230521' }]);
  expect(await b.sql(`SELECT action, object_id FROM audit_event WHERE object_type = 'submission'`)).toEqual([
    { action: 'submission.handedIn', object_id: 'S-2026-0001' },
  ]);
});

test('references count up in the edition, also when many hand in at once', async () => {
  const answers = await Promise.all(Array.from({ length: 8 }, (_, index) => handIn(contentFor(b.spool, { specimens: pulls(80 + index) }))));
  expect(answers.map(({ status }) => status)).toEqual(Array(8).fill(201));
  const numbers = answers.map(({ body }) => Number(body.reference.slice(-4))).sort((one, other) => one - other);
  expect(numbers).toEqual(Array.from({ length: 8 }, (_, index) => numbers[0]! + index));
});

test('only testers hand in', async () => {
  await b.t.call('post', '/v1/submissions').send(contentFor(b.spool)).expect(401);
  await b.reviewer.call('post', '/v1/submissions').send(contentFor(b.spool)).expect(403);
  await b.editor.call('post', '/v1/submissions/preview').send(contentFor(b.spool)).expect(403);
});

test('a preview gives figures and findings, and stores nothing but that there was one', async () => {
  const content = contentFor(b.spool, { benchDay: '2026-03-16' });
  const before = await countRows();
  const answer = await b.tester.call('post', '/v1/submissions/preview').send(content).expect(200);
  expect(await countRows()).toEqual({ ...before, spool_previews: 1, audit_event: Number(before.audit_event) + 1 });
  expect(answer.body).toMatchObject({ spool: b.spool, rows: null, isBlocked: true, figures: { validSpecimens: 10 } });
  expect(answer.body.findings.map(({ code }: { code: string }) => code)).toContain('date/in-the-future');
});

test('a check that blocks refuses the hand-in, and nothing is stored', async () => {
  const before = await countRows();
  const answer = await handIn(contentFor(b.spool, { benchDay: '2026-03-16' })).expect(422);
  expect(answer.body).toMatchObject({ code: 'submissions/blocked', errors: [{ code: 'date/in-the-future', pointer: '/benchDay' }] });
  const expired = await handIn(contentFor(b.spool, { benchDay: '2025-12-31' })).expect(422);
  expect(expired.body.errors.map(({ code }: { code: string }) => code)).toEqual(
    expect.arrayContaining(['calibration/expired-on-bench-day', 'method/not-active-on-bench-day']),
  );
  expect(await countRows()).toEqual(before);
});

test('today is the day at the bench, not at the server', async () => {
  b.t.clock.time = new Date('2026-03-15T12:00:00Z');
  // 12:00 UTC on 15 March is 01:00 on 16 March in Auckland (UTC+13 until April; IANA time zone database).
  const answer = await b.tester
    .call('post', '/v1/submissions/preview')
    .send(contentFor(b.spool, { benchDay: '2026-03-16', zone: 'Pacific/Auckland' }))
    .expect(200);
  expect(answer.body.isBlocked).toBe(false);
});

test.each([
  ['an unknown edition', { edition: '1999' }, 'unknown_edition', '/edition'],
  ['an unknown spool', { spool: 'ZZZZZZZ' }, 'unknown_spool', '/spool'],
  ['an unknown method version', { methodVersion: 9 }, 'unknown_method_version', '/methodVersion'],
  ['an unknown instrument', { instruments: ['R1', 'R9'] }, 'unknown_instrument', '/instruments/1'],
  ['an instrument named twice', { instruments: ['R1', 'R1'] }, 'duplicate', '/instruments/1'],
])('%s is told with its place', async (_, change, code, pointer) => {
  const answer = await handIn(contentFor(b.spool, change)).expect(422);
  expect(answer.body.errors).toEqual([expect.objectContaining({ code, pointer })]);
});

test('a spool of no entry and a method version that the edition did not pin are told together', async () => {
  await b.editor.call('post', '/v1/catalogue/methods').send({ slug: 'abrasion', name: 'Abrasion' }).expect(201);
  await b.sql(`INSERT INTO method_version (id, method_id, number, effective_from, limits, series, parameters, wording, is_comparable_with_previous)
    SELECT gen_random_uuid(), (SELECT id FROM method WHERE slug = 'abrasion'), 1, effective_from, limits, series, parameters, wording, false
    FROM method_version LIMIT 1`);
  const answer = await handIn(contentFor(b.strangeSpool, { method: 'abrasion' })).expect(422);
  expect(answer.body.errors.map(({ code }: { code: string }) => code)).toEqual(['spool_not_for_this', 'method_version_not_pinned']);
});

test.each<[string, (content: ReturnType<typeof contentFor>) => object, string]>([
  [
    'a unit of another dimension',
    (c) => withReading(c, { role: 'breakingForce', value: '90', unit: 'mm' }),
    '/specimens/0/readings/0/unit',
  ],
  ['an unknown unit', (c) => withReading(c, { role: 'breakingForce', value: '90', unit: 'lb' }), '/specimens/0/readings/0/unit'],
  ['a decimal comma', (c) => withReading(c, { role: 'breakingForce', value: '90,5', unit: 'N' }), '/specimens/0/readings/0/value'],
  ['a negative force', (c) => withReading(c, { role: 'breakingForce', value: '-90', unit: 'N' }), '/specimens/0/readings/0/value'],
  ['a force of zero', (c) => withReading(c, { role: 'breakingForce', value: '0.00', unit: 'N' }), '/specimens/0/readings/0/value'],
  ['not a number', (c) => withReading(c, { role: 'breakingForce', value: 'NaN', unit: 'N' }), '/specimens/0/readings/0/value'],
  ['an infinite number', (c) => withReading(c, { role: 'breakingForce', value: 'Infinity', unit: 'N' }), '/specimens/0/readings/0/value'],
  ['a number that is no text', (c) => withReading(c, { role: 'breakingForce', value: 90, unit: 'N' }), '/specimens/0/readings/0/value'],
  ['an unknown field', (c) => ({ ...c, colour: 'moss' }), '/colour'],
  ['two specimens of one number', (c) => ({ ...c, specimens: [...c.specimens, c.specimens[0]] }), '/specimens/10/number'],
  ['a date that is none', (c) => ({ ...c, benchDay: '2026-02-30' }), '/benchDay'],
  ['an unknown time zone', (c) => ({ ...c, zone: 'Mars/Olympus' }), '/zone'],
  ['no specimen', (c) => ({ ...c, specimens: [] }), '/specimens'],
])('%s is refused with its place, and nothing is stored', async (_, change, pointer) => {
  const before = await countRows();
  const answer = await handIn(change(contentFor(b.spool))).expect(422);
  expect(pointersOf(answer)).toContain(pointer);
  expect(answer.body.errors[0].detail).not.toBe('');
  expect(await countRows()).toEqual(before);
});

test('all faults are told at once', async () => {
  const answer = await handIn({ ...contentFor(b.spool), methodVersion: 0, benchDay: 'soon', colour: 'moss' }).expect(422);
  expect(pointersOf(answer)).toEqual(['/benchDay', '/colour', '/methodVersion']);
});

test('another content type is refused, and JSON that is none', async () => {
  await b.tester.call('post', '/v1/submissions').set('Content-Type', 'application/json').send('{"edition":').expect(400);
  await b.tester.call('post', '/v1/submissions').set('Content-Type', 'text/plain').send('force 12').expect(415);
});

test('a wide reading below the narrow one is a fault of the reading', async () => {
  const readings = [
    { role: 'wideDiameter', station: 1, value: '0.20', unit: 'mm' },
    { role: 'narrowDiameter', station: 1, value: '0.25', unit: 'mm' },
  ];
  const answer = await handIn(
    contentFor(b.spool, { method: 'diameter', instruments: ['M1'], specimens: [{ number: 1, readings }] }),
  ).expect(422);
  expect(pointersOf(answer)).toEqual(['/specimens/0/readings/1/value']);
});

test('an edition that closes in the very moment takes nothing', async () => {
  const other = new pg.Client({ connectionString: b.t.databaseUrl });
  await other.connect();
  await other.query('BEGIN');
  await other.query(`UPDATE edition SET state = 'closed' WHERE id = $1`, [b.editionId]);
  const before = await countRows();
  // It is examined while the edition still looks open, then waits for the row's lock.
  const answer = handIn(contentFor(b.spool, { specimens: pulls(33) })).then((response) => response);
  await waitUntil(
    async () => (await b.sql(`SELECT 1 FROM pg_stat_activity WHERE datname = current_database() AND wait_event_type = 'Lock'`)).length > 0,
  );
  await other.query('COMMIT');
  await other.end();
  expect(await answer).toMatchObject({ status: 409, body: { code: 'submissions/edition-closed' } });
  // The closing is told to those who follow what changes, and that is all.
  expect(await countRows()).toEqual({ ...before, change: Number(before.change) + 1 });
});

test('an edition that is closed takes nothing', async () => {
  const answer = await handIn(contentFor(b.spool)).expect(422);
  expect(answer.body.errors).toEqual([expect.objectContaining({ code: 'edition_not_open', pointer: '/edition' })]);
});

function withReading(content: ReturnType<typeof contentFor>, reading: object): object {
  const [first, ...others] = content.specimens;
  return { ...content, specimens: [{ ...first, readings: [reading] }, ...others] };
}

async function waitUntil(isSo: () => Promise<boolean>): Promise<void> {
  const giveUpAt = Date.now() + 20_000;
  while (!(await isSo())) {
    if (Date.now() > giveUpAt) throw new Error('Waited 20 s in vain.');
    await new Promise((resume) => setTimeout(resume, 20));
  }
}
