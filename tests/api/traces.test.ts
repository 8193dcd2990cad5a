import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import type { Caller } from '../support/test-application.js';

let b: Bench;
let force = 60;
beforeAll(async () => {
  b = await setUpBench();
});
afterAll(() => b.t.close());

/** A fresh submission; its readings are in newtons. */
async function submitted(): Promise<{ reference: string; readings: number[] }> {
  force += 2;
  const content = contentFor(b.spool, { specimens: pulls(force) });
  const { reference } = (await b.tester.call('post', '/v1/submissions').send(content).expect(201)).body as { reference: string };
  const { specimens } = (await b.tester.call('get', `/v1/submissions/${reference}`).expect(200)).body as {
    specimens: { readings: { role: string; value: string }[] }[];
  };
  return { reference, readings: specimens.map(({ readings }) => Number(readings.find(({ role }) => role === 'breakingForce')!.value)) };
}

const rise = (peakN: number): string =>
  ['Extension (mm),Force (N)', ...Array.from({ length: 101 }, (_, i) => `${i / 10},${((peakN * i) / 100).toFixed(4)}`), ''].join('\n');
const add = (reference: string, file: string, query = '?specimen=1', version = 1, by: Caller = b.tester) =>
  by.call('post', `/v1/submissions/${reference}/traces${query}`).set('If-Match', `"${version}"`).set('Content-Type', 'text/csv').send(file);
const findings = async (by: Caller, reference: string) =>
  (await by.call('get', `/v1/submissions/${reference}`).expect(200)).body.findings as { code: string; message: string }[];

test('a trace is kept byte for byte, computed and drawn', async () => {
  const { reference, readings } = await submitted();
  const file = rise(readings[0]!);
  const answer = await add(reference, file).expect(201);
  const digest = createHash('sha256').update(file).digest('hex');
  expect(answer.body.items).toMatchObject([
    { specimen: 1, digest, over: 'extension', samples: 101, figures: { peakForceN: readings[0]!.toFixed(2), atPeak: '10.000', slips: [] } },
  ]);
  expect(await readFile(join(b.t.dataFolder, 'files/traces', `${digest}.csv`), 'utf8')).toBe(file);
  expect((await findings(b.reviewer, reference)).map(({ code }) => code)).not.toContain('trace/peak-differs');
  const plot = await b.reviewer.call('get', `/v1/submissions/${reference}/traces/1/plot.svg`).expect(200);
  expect(plot.headers['content-type']).toMatch(/^image\/svg\+xml/);
  expect(plot.body.toString()).toContain(`${reference}, specimen 1`);
  await b.reviewer.call('get', `/v1/submissions/${reference}/traces/2/plot.svg`).expect(404);
  await b.otherTester.call('get', `/v1/submissions/${reference}/traces`).expect(404);
  await b.otherTester.call('get', `/v1/submissions/${reference}/traces/1/plot.svg`).expect(404);
});

test('a form with a file of many specimens', async () => {
  const { reference, readings } = await submitted();
  const rows = [1, 2].flatMap((specimen) =>
    [0, 50, 100].map((part) => `${specimen},${part / 10},${((readings[specimen - 1]! * part) / 100).toFixed(4)}`),
  );
  const answer = await b.tester
    .call('post', `/v1/submissions/${reference}/traces`)
    .set('If-Match', '"1"')
    .attach('file', Buffer.from(['Specimen,Extension (mm),Force (N)', ...rows].join('\n')), 'pulls.csv')
    .expect(201);
  expect((answer.body.items as { specimen: number }[]).map(({ specimen }) => specimen)).toEqual([1, 2]);
});

test('a trace that disagrees with its reading is held for the reviewer; the tester reads where to look and no number', async () => {
  const { reference, readings } = await submitted();
  await add(reference, rise(readings[2]! * 1.02), '?specimen=3').expect(201);
  const full = (await findings(b.reviewer, reference)).find(({ code }) => code === 'trace/peak-differs')!;
  expect(full.message).toContain(readings[2]!.toString());
  const own = (await findings(b.tester, reference)).find(({ code }) => code === 'trace/peak-differs')!;
  expect(own.message).toMatch(/specimen 3/);
  expect(own.message).not.toMatch(/\d\s*N/);
});

test('faults of the file come with row and column, and nothing is stored', async () => {
  const { reference } = await submitted();
  const faulty = await add(reference, 'Extension (mm),Force (N)\n0,0\n1,x\n2,y\n3,4\n4,5\n5,6\n6,7\n').expect(422);
  expect((faulty.body.errors as { pointer: string }[]).map(({ pointer }) => pointer)).toEqual(['/rows/3/Force', '/rows/4/Force']);
  const back = await add(reference, 'Extension (mm),Force (N)\n0,0\n2,5\n1,9\n').expect(422);
  expect(back.body.errors).toMatchObject([{ code: 'traces/extension-runs-back' }]);
  expect((await add(reference, rise(60), '').expect(422)).body.errors).toMatchObject([{ code: 'specimen_not_named' }]);
  expect((await add(reference, rise(60), '?specimen=99').expect(422)).body.errors).toMatchObject([{ code: 'unknown_specimen' }]);
  await b.tester.call('post', `/v1/submissions/${reference}/traces`).set('If-Match', '"1"').send({}).expect(415);
  expect((await b.tester.call('get', `/v1/submissions/${reference}/traces`).expect(200)).body.items).toEqual([]);
});

test('a trace comes once, from its own tester, before the review, in the record too', async () => {
  const { reference, readings } = await submitted();
  await add(reference, rise(readings[0]!), '?specimen=1', 1, b.otherTester).expect(404);
  await add(reference, rise(readings[0]!), '?specimen=1', 7).expect(412);
  await add(reference, rise(readings[0]!)).expect(201);
  expect((await add(reference, rise(readings[0]!), '?specimen=1', 2).expect(422)).body.errors).toMatchObject([{ code: 'duplicate' }]);
  const seen = (await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200)).body as {
    version: number;
    findings: { id: string; severity: string }[];
  };
  const resolutions = seen.findings.filter(({ severity }) => severity === 'held').map(({ id }) => ({ finding: id, words: 'Stands.' }));
  await b.reviewer
    .call('post', `/v1/submissions/${reference}/reviews`)
    .set('If-Match', `"${seen.version}"`)
    .send({ decision: 'accepted', resolutions })
    .expect(201);
  expect((await add(reference, rise(readings[1]!), '?specimen=2', seen.version + 1).expect(409)).body.code).toBe('submissions/wrong-state');
  const late = `INSERT INTO "trace" SELECT p.id, t.digest, t.over, t.sample_count, t.figures, t.points, t.added_at FROM "trace" t, "specimen" p
    JOIN "submission_revision" r ON r.id = p.revision_id JOIN "submission" s ON s.id = r.submission_id WHERE s.reference = '${reference}' AND p.number = 2 LIMIT 1`;
  await expect(b.sql(late)).rejects.toThrow(/trace_comes_before_the_review/);
  await expect(b.sql(`DELETE FROM "trace"`)).rejects.toThrow(/append_only/);
  await expect(b.sql(`UPDATE "trace" SET "sample_count" = 3`)).rejects.toThrow(/append_only/);
  await expect(b.sql(`TRUNCATE "trace"`)).rejects.toThrow(/append_only/);
});
