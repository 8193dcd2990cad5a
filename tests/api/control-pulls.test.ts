import { contentFor, METHOD_VERSION, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import type { Caller } from '../support/test-application.js';

let b: Bench;
let force = 50;
beforeAll(async () => {
  b = await setUpBench();
  await b.editor.call('post', '/v1/control-lines').send(LINE).expect(201);
  await b.editor.call('post', '/v1/catalogue/methods').send({ slug: 'wet-pull', name: 'Wet pull' }).expect(201);
  await b.editor.call('post', '/v1/catalogue/methods/wet-pull/versions').send(METHOD_VERSION).expect(201);
});
afterAll(() => b.t.close());

const LINE = { code: 'C1', name: 'Reference braid', lot: 'K-7', words: 'One spool, kept dark.' };
const pull = (benchDay: string, forces: readonly number[], change: object = {}) => ({
  controlLine: 'C1',
  instrument: 'R1',
  method: 'straight-pull',
  benchDay,
  readings: forces.map((value) => ({ text: value.toFixed(2), unit: 'N' })),
  ...change,
});
const handIn = (body: object, by: Caller = b.tester) => by.call('post', '/v1/control-pulls').send(body);
const day = (number: number) => `2026-02-${String(number).padStart(2, '0')}`;

/** A submission of R1 on a day; accepted where asked. Gives its reference and the codes of its findings. */
async function submitted(benchDay: string, isAccepted = false) {
  force += 2;
  const content = contentFor(b.spool, { specimens: pulls(force), benchDay });
  const { reference } = (await b.tester.call('post', '/v1/submissions').send(content).expect(201)).body as { reference: string };
  const seen = await view(reference);
  if (isAccepted) {
    const resolutions = seen.findings.filter(({ severity }) => severity === 'held').map(({ id }) => ({ finding: id, words: 'Stands.' }));
    await b.reviewer
      .call('post', `/v1/submissions/${reference}/reviews`)
      .set('If-Match', `"${seen.version}"`)
      .send({ decision: 'accepted', resolutions })
      .expect(201);
  }
  return { reference, codes: seen.findings.map(({ code }) => code) };
}

interface Seen {
  readonly version: number;
  readonly findings: readonly { id: string; code: string; severity: string; resolution: string | null }[];
}
const view = async (reference: string): Promise<Seen> =>
  (await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200)).body as Seen;
const rig = async () =>
  (await b.tester.call('get', '/v1/rigs').expect(200)).body.items as { instrument: string; state: string; words: string }[];

test('a submission meets the rig in three states; a bad pull casts doubt back, accepted ones too, and a good one clears', async () => {
  expect((await submitted(day(1))).codes).toContain('rig/no-evidence');
  for (let i = 1; i <= 10; i++) {
    const answer = await handIn(pull(day(i), [84 + (i % 2), 84.2 + (i % 2)])).expect(201);
    expect(answer.body).toMatchObject({ state: 'noEvidence', centreN: null, doubted: 0 });
  }
  expect(await rig()).toMatchObject([{ instrument: 'R1', state: 'learning' }]);
  const { findings } = await view((await submitted(day(4))).reference);
  expect(findings.filter(({ code }) => code.startsWith('rig/'))).toMatchObject([{ code: 'rig/learning', severity: 'note' }]);
  expect((await handIn(pull(day(11), [84.4, 84.8])).expect(201)).body).toMatchObject({
    state: 'inControl',
    meanN: '84.600',
    centreN: '84.600',
  });
  const early = await submitted(day(9), true);
  const good = await submitted(day(11), true);
  const waiting = await submitted(day(12));
  expect(good.codes.filter((code) => code.startsWith('rig/'))).toEqual([]);
  expect(waiting.codes).toContain('rig/no-evidence');

  const bad = await handIn(pull(day(13), [79.1, 79.4])).expect(201);
  expect(bad.body).toMatchObject({ state: 'outOfControl', signals: ['oneBeyond3Sigma'], doubted: 2 });
  // Pulls of 85.1 and 84.1 by turns: σ = 1/1.128 = 0.886 N; 3.267 mean ranges of 1 N; the moving average stays within σ (e-Handbook 6.3.2.2 and 6.3.2.4).
  expect(bad.body).toMatchObject({
    sigmaN: '0.886',
    movingRangeHighN: '3.267',
    ewmaLowN: '83.714',
    ewmaHighN: '85.486',
    warnings: ['movingRange', 'movingAverage'],
  });
  expect(await rig()).toMatchObject([{ state: 'outOfControl', words: expect.stringMatching(/a good one clears the rig/) }]);
  expect((await submitted(day(13))).codes).toContain('rig/out-of-control');
  expect((await submitted(day(12))).codes).toContain('rig/out-of-control');
  const codesOf = async (reference: string) => (await view(reference)).findings.map(({ code }) => code);
  expect(await codesOf(early.reference)).not.toContain('rig/out-of-control');
  expect(await codesOf(waiting.reference)).toContain('rig/out-of-control');

  const doubted = await b.reviewer.call('get', '/v1/submissions?inDoubt=true').expect(200);
  expect((doubted.body.items as { reference: string }[]).map(({ reference }) => reference)).toEqual([good.reference]);
  expect((await b.editor.call('get', '/v1/editions/2026/board').expect(200)).body).toMatchObject({ inDoubt: 1 });

  expect((await handIn(pull(day(13), [84.5, 84.9])).expect(201)).body).toMatchObject({ state: 'inControl', doubted: 0 });
  expect(await rig()).toMatchObject([{ state: 'inControl' }]);
  expect((await submitted(day(13))).codes.filter((code) => code.startsWith('rig/'))).toEqual([]);
  await answer(good.reference);
});

/** Answers what came into doubt, by a second person, once. */
async function answer(reference: string): Promise<void> {
  const seen = await view(reference);
  const { id } = seen.findings.find(({ code }) => code === 'rig/out-of-control')!;
  const resolve = (by: Caller, version: number) =>
    by
      .call('post', `/v1/submissions/${reference}/findings/${id}/resolution`)
      .set('If-Match', `"${version}"`)
      .send({ words: 'The other rig agrees.' });
  const tied = await b.t.caller(['tester', 'reviewer']);
  await resolve(tied, seen.version - 1).expect(412);
  expect((await resolve(b.reviewer, seen.version).expect(201)).body.findings).toEqual(
    expect.arrayContaining([expect.objectContaining({ id, resolution: 'The other rig agrees.' })]),
  );
  expect((await resolve(b.reviewer, seen.version + 1).expect(409)).body.code).toBe('reviews/finding-answered');
  await b.reviewer
    .call('post', `/v1/submissions/${reference}/findings/00000000-0000-7000-8000-000000000000/resolution`)
    .set('If-Match', `"${seen.version + 1}"`)
    .send({ words: 'Nothing.' })
    .expect(404);
}

test('an edition does not close over an accepted submission in doubt, in the record either', async () => {
  const { reference } = await submitted(day(13), true);
  expect((await handIn(pull(day(14), [70, 70.2])).expect(201)).body.doubted).toBeGreaterThan(0);
  await b.sql(
    `INSERT INTO review (id, revision_id, reviewer_id, decision, reason, at) SELECT gen_random_uuid(), r.id, $1, 'refused', 'x', now()
     FROM submission s JOIN submission_revision r ON r.submission_id = s.id AND r.number = s.revision WHERE s.state = 'submitted'`,
    [b.reviewer.accountId],
  );
  await b.sql(`UPDATE "submission" SET "state" = 'refused' WHERE "state" = 'submitted'`);
  const { version } = (await b.editor.call('get', '/v1/bench/editions/2026').expect(200)).body as { version: number };
  const close = () => b.editor.call('post', '/v1/editions/2026/closure').set('If-Match', `"${version}"`);
  const refused = await close().expect(409);
  expect(refused.body).toMatchObject({
    code: 'editions/work-in-progress',
    errors: [{ code: 'submissions_in_doubt', found: '1' }],
  });
  await expect(b.sql(`UPDATE "edition" SET "state" = 'closed' WHERE "slug" = '2026'`)).rejects.toThrow(/edition_closes_without_doubt/);
  await answer(reference);
  await close().expect(201);
});

test('faults are told all at once, with their places', async () => {
  const faults = await handIn(
    pull('2026-12-24', [], {
      instrument: 'M1',
      controlLine: 'C9',
      method: 'no-such',
      readings: [
        { text: '84,1', unit: 'N' },
        { text: '84', unit: 'mm' },
      ],
    }),
  ).expect(422);
  expect((faults.body.errors as { pointer: string }[]).map(({ pointer }) => pointer).sort()).toEqual([
    '/benchDay',
    '/controlLine',
    '/instrument',
    '/method',
    '/readings/0',
    '/readings/1',
  ]);
  await handIn(pull(day(14), [])).expect(422);
});

test('a method that breaks nothing has no control pulls, in the record either', async () => {
  const refused = await handIn(pull(day(14), [84], { method: 'diameter' })).expect(422);
  expect(refused.body.errors).toMatchObject([{ pointer: '/method', code: 'breaks_nothing', detail: expect.stringMatching(/"diameter"/) }]);
  const columns = 'control_line_id, instrument_id, tester_id, bench_day, handed_in_at';
  const copy = `INSERT INTO "control_pull" (id, method_id, ${columns}) SELECT gen_random_uuid(), (SELECT id FROM method WHERE slug = 'diameter'), ${columns} FROM "control_pull" LIMIT 1`;
  await expect(b.sql(copy)).rejects.toThrow(/method_breaks_lines/);
});

test('a pull that comes in after one of a later day is kept and marked, and judges nothing, in the record too', async () => {
  const before = await rig();
  const { body: late } = await handIn(pull(day(3), [184])).expect(201);
  expect(late).toMatchObject({
    benchDay: day(3),
    state: null,
    signals: [],
    doubted: 0,
    strike: { reason: expect.stringMatching(/later day/) },
  });
  expect(await rig()).toEqual(before);
  const struck = await b.reviewer.call('post', `/v1/control-pulls/${late.id}/strike`).send({ reason: 'Of another day.' });
  expect(struck.body).toMatchObject({ code: 'control-pulls/struck' });
  const columns = 'control_line_id, instrument_id, method_id, tester_id, bench_day, handed_in_at';
  const copy = `INSERT INTO "control_pull" (id, ${columns}) SELECT gen_random_uuid(), ${columns.replace('bench_day', "'2026-02-03'")} FROM "control_pull" LIMIT 1`;
  // Whoever writes past the program does not choose what is late.
  await expect(
    b.sql(`DO $$ DECLARE late boolean; BEGIN ${copy} RETURNING is_late INTO late; RAISE EXCEPTION 'late: %', late; END $$`),
  ).rejects.toThrow(/late: t/);
  const onGauge = `INSERT INTO "control_pull" (id, ${columns}) SELECT gen_random_uuid(), ${columns.replace('instrument_id', "(SELECT id FROM instrument WHERE code = 'M1')")} FROM "control_pull" LIMIT 1`;
  await expect(b.sql(onGauge)).rejects.toThrow(/only a force gauge or a load frame/);
});

test('a pull leaves its chart by a second person alone, with a reason, once; nothing is changed or deleted', async () => {
  const both = await b.t.caller(['tester', 'reviewer']);
  const { id } = (await handIn(pull(day(15), [8.45], { method: 'wet-pull', note: 'Comma slipped.' }), both).expect(201)).body as {
    id: string;
  };
  const strike = (by: Caller, reason = 'A comma slipped.') => by.call('post', `/v1/control-pulls/${id}/strike`).send({ reason });
  expect((await strike(both).expect(403)).body.code).toBe('control-pulls/own-pull');
  await strike(b.reviewer, ' ').expect(422);
  await strike(b.reviewer).expect(201);
  expect((await strike(b.reviewer).expect(409)).body.code).toBe('control-pulls/struck');
  const charts = await b.reviewer.call('get', '/v1/control-charts?instrument=R1&method=wet-pull').expect(200);
  expect(charts.body.items[0].points).toMatchObject([{ state: null, strike: { reason: 'A comma slipped.' }, meanN: '8.450' }]);
  expect((await rig()).map(({ instrument }) => instrument)).toEqual(['R1']);

  await expect(
    b.sql(`INSERT INTO "control_pull_strike" SELECT id, tester_id, 'x', now() FROM "control_pull" WHERE id <> '${id}' LIMIT 1`),
  ).rejects.toThrow(/striker_is_not_tester/);
  for (const table of ['control_line', 'control_pull', 'control_reading', 'control_pull_strike']) {
    await expect(b.sql(`DELETE FROM "${table}"`)).rejects.toThrow(/append_only/);
    await expect(b.sql(`TRUNCATE "${table}" CASCADE`)).rejects.toThrow(/append_only/);
  }
  await expect(b.sql(`UPDATE "control_reading" SET "value_si" = 1`)).rejects.toThrow(/append_only/);
  await expect(
    b.sql(`INSERT INTO "control_reading" SELECT control_pull_id, 99, '0', 'N', 0 FROM "control_reading" LIMIT 1`),
  ).rejects.toThrow(/control_reading_is_positive/);
});

test('another lot is another control line with a chart of its own', async () => {
  expect((await b.editor.call('post', '/v1/control-lines').send(LINE).expect(409)).body.errors).toMatchObject([{ pointer: '/code' }]);
  await b.editor
    .call('post', '/v1/control-lines')
    .send({ ...LINE, code: 'C2', lot: 'K-8' })
    .expect(201);
  expect((await handIn(pull(day(16), [70], { controlLine: 'C2' })).expect(201)).body).toMatchObject({
    state: 'noEvidence',
    movingRangeN: null,
  });
  const charts = (await b.reviewer.call('get', '/v1/control-charts?method=straight-pull').expect(200)).body.items as {
    controlLine: { code: string };
    points: object[];
  }[];
  expect(charts.map(({ controlLine, points }) => [controlLine.code, points.length > 1])).toEqual([
    ['C1', true],
    ['C2', false],
  ]);
});

test('the same pull a second time is refused with the name of the first, at once too; with a word on it it is another', async () => {
  const twin = pull('2026-03-14', [91.11, 91.42], { note: 'Twin.' });
  const answers = await Promise.all(Array.from({ length: 6 }, () => handIn(twin)));
  const stored = answers.filter(({ status }) => status === 201);
  expect(stored).toHaveLength(1);
  for (const { body } of answers.filter((answer) => answer !== stored[0]))
    expect(body).toMatchObject({ code: 'control-pulls/handed-in-before', detail: expect.stringContaining(stored[0]!.body.id as string) });
  const inOtherUnits = { ...twin, readings: twin.readings.map(({ text }) => ({ text: (Number(text) / 1000).toFixed(5), unit: 'kN' })) };
  await handIn(inOtherUnits).expect(409);
  await handIn({ ...twin, note: 'Pulled again at noon.' }).expect(201);
});

test('one rule for codes: what registers as gauge-1 takes a pull', async () => {
  const gauge = { kind: 'forceGauge', name: 'Gauge', capacity: { text: '500', unit: 'N' }, resolution: { text: '0.01', unit: 'N' } };
  for (const code of ['gauge-1', 'G-12345678901234567890ab']) {
    await b.editor
      .call('post', '/v1/instruments')
      .send({ ...gauge, code })
      .expect(201);
    await handIn(pull(day(20), [84.2], { instrument: code })).expect(201);
  }
  for (const code of ['-gauge', 'gauge_1', 'G-12345678901234567890abc'])
    for (const [path, body] of [
      ['/v1/instruments', { ...gauge, code }],
      ['/v1/control-pulls', pull(day(20), [84.2], { instrument: code })],
      ['/v1/control-lines', { ...LINE, code }],
    ] as const) {
      const by = path === '/v1/control-pulls' ? b.tester : b.editor;
      expect((await by.call('post', path).send(body).expect(422)).body.errors).toHaveLength(1);
    }
});
