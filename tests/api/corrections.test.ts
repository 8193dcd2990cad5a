/** A mistyped row is corrected while nothing rests on it, and superseded with a reason once something does. */
import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { CLAIM, LINE, MAKER, OTHER_VARIANT, pointersOf, SPOOL, VARIANT } from '../support/catalogue-fixtures.js';
import { insertEdition } from '../support/insert-edition.js';
import type { Caller } from '../support/test-application.js';

let b: Bench;
let reference: string;
beforeAll(async () => {
  b = await setUpBench();
});
afterAll(() => b.t.close());

const REASON = 'Read again on the box.';
type Row = Record<string, any> & { version: number };
const read = async (path: string): Promise<Row> => (await b.editor.call('get', path).expect(200)).body as Row;

interface Correctable {
  readonly kind: string;
  /** Where the row is read, and where it is changed. */
  readonly at: () => string;
  readonly change: () => string;
  readonly verb: 'patch' | 'put';
  readonly sent: object;
  readonly again: object;
  readonly was: object;
  /** Straight into the record, past the program. */
  readonly sql: () => string;
}

const claimWords = { basis: CLAIM.basis, printed: { text: '21', unit: 'lbf' }, seenOn: CLAIM.seenOn, source: CLAIM.source };
const certificate = {
  certificate: 'C-R1',
  validFrom: '2026-01-01',
  validUntil: '2026-12-31',
  correctionPercent: '0.1',
  expandedUncertaintyPercent: '0.6',
  coverageFactor: '2',
};
const CORRECTABLE: readonly Correctable[] = [
  {
    kind: 'maker',
    at: () => `/v1/catalogue/makers/${MAKER.slug}`,
    change: () => `/v1/catalogue/makers/${MAKER.slug}`,
    verb: 'patch',
    sent: { name: 'North Bay Cordages' },
    again: { name: 'North Bay Cords' },
    was: { name: 'North Bay Cordages' },
    sql: () => `UPDATE maker SET name = 'x' WHERE slug = '${MAKER.slug}'`,
  },
  {
    kind: 'line',
    at: () => `/v1/catalogue/lines/${LINE.slug}`,
    change: () => `/v1/catalogue/lines/${LINE.slug}`,
    verb: 'patch',
    sent: { densityGPerCm3: '0.98' },
    again: { densityGPerCm3: '0.96' },
    was: { densityGPerCm3: '0.98', name: LINE.name },
    sql: () => `UPDATE line SET density_g_per_cm3 = 1 WHERE slug = '${LINE.slug}'`,
  },
  {
    kind: 'variant',
    at: () => `/v1/catalogue/variants/${VARIANT.slug}`,
    change: () => `/v1/catalogue/variants/${VARIANT.slug}`,
    verb: 'patch',
    sent: { colour: 'dark moss' },
    again: { colour: 'pale moss' },
    was: { colour: 'dark moss', size: VARIANT.size },
    sql: () => `UPDATE variant SET colour = 'x' WHERE slug = '${VARIANT.slug}'`,
  },
  {
    kind: 'claim',
    at: () => `/v1/catalogue/variants/${VARIANT.slug}`,
    change: () => `/v1/catalogue/variants/${VARIANT.slug}/claims/breakingForce`,
    verb: 'put',
    sent: claimWords,
    again: { ...claimWords, printed: { text: '22', unit: 'lbf' } },
    was: { quantity: 'breakingForce', printed: { text: '21', unit: 'lbf' } },
    sql: () => `UPDATE claim SET source = 'x' WHERE variant_id = (SELECT id FROM variant WHERE slug = '${VARIANT.slug}')`,
  },
  {
    kind: 'spool',
    at: () => `/v1/catalogue/spools/${b.spool}`,
    change: () => `/v1/catalogue/spools/${b.spool}`,
    verb: 'patch',
    sent: { lot: 'L-78', obtainedOn: '2026-02-01' },
    again: { lot: null },
    was: { lot: 'L-78', obtainedOn: '2026-02-01', variant: VARIANT.slug, lengthM: SPOOL.lengthM },
    sql: () => `UPDATE spool SET place = 'x' WHERE blind_code = '${b.spool}'`,
  },
  {
    kind: 'calibration',
    at: () => '/v1/instruments/R1',
    change: () => '/v1/instruments/R1/calibrations/C-R1',
    verb: 'put',
    sent: certificate,
    again: { ...certificate, expandedUncertaintyPercent: '0.7' },
    was: certificate,
    sql: () => `UPDATE calibration SET coverage_factor = 3 WHERE certificate = 'C-R1'`,
  },
];

const send = ({ verb, change }: Correctable, version: number, body: object, by: Caller = b.editor) =>
  by.call(verb, change()).set('If-Match', `"${version}"`).send(body);

describe('while nothing rests on it', () => {
  test.each(CORRECTABLE)('a $kind is corrected, by editors, on the version that was seen', async (one) => {
    const { version } = await read(one.at());
    for (const by of [b.tester, b.reviewer]) await send(one, version, one.sent, by).expect(403);
    await send(one, version + 1, one.sent).expect(412);
    const { body } = await send(one, version, one.sent).expect(200);
    expect(body).toMatchObject({ version: version + 1 });
    expect(body.former).toBeUndefined();
    expect((await b.sql(`SELECT count(*)::int AS n FROM superseded_row`))[0]).toEqual({ n: 0 });
  });

  test('what a spool is changes too, unless it was sealed', async () => {
    const [other] = (await b.sql(`SELECT blind_code FROM spool WHERE blind_code <> $1 LIMIT 1`, [b.spool])) as [{ blind_code: string }];
    const at = `/v1/catalogue/spools/${other.blind_code}`;
    const { version, variant } = await read(at);
    const to = variant === OTHER_VARIANT.slug ? 'tern-40-moss' : OTHER_VARIANT.slug;
    const change = (slug: string, seen: number) => b.editor.call('patch', at).set('If-Match', `"${seen}"`).send({ variant: slug });
    expect((await change('nowhere', version).expect(422)).body.errors).toMatchObject([{ pointer: '/variant', code: 'unknown_reference' }]);
    expect((await change(to, version).expect(200)).body).toMatchObject({ variant: to, reidentifications: [] });
    expect((await change(variant, version + 1).expect(200)).body).toMatchObject({ variant });
    await insertEdition(b.t.databaseUrl, 'sealed', 'open', { blindKey: `${other.blind_code} ${variant}\n` });
    expect((await change(to, version + 2).expect(422)).body.errors).toMatchObject([
      { pointer: '/variant', code: 'needs_reidentification', detail: expect.stringContaining('/v1/proposals') },
    ]);
    await expect(
      b.sql(`UPDATE spool SET variant_id = (SELECT id FROM variant WHERE slug = $1) WHERE blind_code = $2`, [to, other.blind_code]),
    ).rejects.toThrow('spool_is_reidentified_on_record');
  });

  test('a certificate takes another number, which is free', async () => {
    const { version } = await read('/v1/instruments/M1');
    const put = (number: string, seen: number, change: object) =>
      b.editor
        .call('put', `/v1/instruments/M1/calibrations/${number}`)
        .set('If-Match', `"${seen}"`)
        .send({ ...certificate, ...change });
    const { body } = await put('C-M1', version, { certificate: 'C-M2' }).expect(200);
    expect(body.calibrations).toMatchObject([{ certificate: 'C-M2', correctionPercent: '0.1' }]);
    await put('C-M1', version + 1, { certificate: 'C-M2' }).expect(404);
    await b.editor
      .call('post', '/v1/instruments/M1/calibrations')
      .send({ ...certificate, certificate: 'C-M3' })
      .expect(201);
    expect((await put('C-M2', version + 2, { certificate: 'C-M3' }).expect(409)).body.errors).toMatchObject([{ pointer: '/certificate' }]);
    expect(pointersOf(await put('C-M2', version + 2, { validUntil: '2025-01-01' }).expect(422))).toEqual(['/validUntil']);
  });
});

describe('once a submission rests on it', () => {
  beforeAll(async () => {
    const { body } = await b.tester
      .call('post', '/v1/submissions')
      .send(contentFor(b.spool, { specimens: pulls(90) }))
      .expect(201);
    reference = body.reference as string;
  });

  test.each(CORRECTABLE)('a $kind is superseded with a reason; what it said stays beside it, with what rested on it', async (one) => {
    const { version } = await read(one.at());
    expect((await send(one, version, one.again).expect(422)).body.errors).toMatchObject([
      { pointer: '/reason', code: 'reason_needed', detail: expect.stringContaining(reference) },
    ]);
    expect((await read(one.at())).version).toBe(version);
    expect(pointersOf(await send(one, version, { ...one.again, reason: ' ' }).expect(422))).toEqual(['/reason']);
    const { body } = await send(one, version, { ...one.again, reason: REASON }).expect(200);
    const kept = { kind: one.kind, was: one.was, reason: REASON, rested: { submissions: [reference], editions: ['2026'] } };
    for (const told of [body, await read(one.at())] as { former: { kind: string }[] }[])
      expect(told.former.filter(({ kind }) => kind === one.kind)).toMatchObject([kept]);
  });

  test.each(CORRECTABLE)('a $kind does not change past the program without what it said', async (one) => {
    await expect(b.sql(one.sql())).rejects.toThrow('what_rests_is_superseded');
  });

  test('what was kept stays as it was', async () => {
    for (const change of [`UPDATE superseded_row SET reason = 'x'`, 'DELETE FROM superseded_row', 'TRUNCATE superseded_row'])
      await expect(b.sql(change)).rejects.toThrow('record_is_append_only');
  });

  test('a spool is another variant by a re-identification alone, a certificate keeps its number', async () => {
    const { version } = await read(`/v1/catalogue/spools/${b.spool}`);
    const moved = await b.editor
      .call('patch', `/v1/catalogue/spools/${b.spool}`)
      .set('If-Match', `"${version}"`)
      .send({ variant: OTHER_VARIANT.slug, reason: REASON })
      .expect(422);
    expect(moved.body.errors).toMatchObject([{ pointer: '/variant', code: 'needs_reidentification' }]);
    const { version: seen } = await read('/v1/instruments/R1');
    const renamed = await b.editor
      .call('put', '/v1/instruments/R1/calibrations/C-R1')
      .set('If-Match', `"${seen}"`)
      .send({ ...certificate, certificate: 'C-R9', reason: REASON })
      .expect(422);
    expect(renamed.body.errors).toMatchObject([{ pointer: '/certificate', code: 'named_by_submissions' }]);
    await expect(b.sql(`UPDATE calibration SET certificate = 'C-R9' WHERE certificate = 'C-R1'`)).rejects.toThrow(
      'certificate_keeps_its_number',
    );
  });
});

describe('retiring', () => {
  const KINDS = [
    { kind: 'variant', path: () => `/v1/catalogue/variants/${VARIANT.slug}` },
    { kind: 'line', path: () => `/v1/catalogue/lines/${LINE.slug}` },
    { kind: 'maker', path: () => `/v1/catalogue/makers/${MAKER.slug}` },
  ];
  const add = {
    maker: () => b.editor.call('post', '/v1/catalogue/lines').send({ ...LINE, slug: 'late-line' }),
    line: () => b.editor.call('post', '/v1/catalogue/variants').send({ ...VARIANT, slug: 'late', size: 'late' }),
    variant: () => b.editor.call('post', '/v1/catalogue/spools').send(SPOOL),
  };

  test.each(KINDS)('a $kind stays readable, takes nothing new, and comes back', async ({ kind, path }) => {
    const before = await read(path());
    const retire = (version: number, by = b.editor, reason = 'No longer made.') =>
      by.call('post', `${path()}/retirement`).set('If-Match', `"${version}"`).send({ reason });
    const comeBack = (version: number, by = b.editor) => by.call('delete', `${path()}/retirement`).set('If-Match', `"${version}"`);
    await retire(before.version + 1).expect(412);
    await retire(before.version, b.reviewer).expect(403);
    await retire(before.version, b.editor, ' ').expect(422);
    const { body } = await retire(before.version).expect(201);
    expect(body).toEqual({ ...before, retired: { on: '2026-03-15', reason: 'No longer made.' }, version: before.version + 1 });
    expect(await read(path())).toEqual(body);
    const below = { variant: ['variant'], line: ['line', 'variant'], maker: ['maker', 'line', 'variant'] }[kind] as (keyof typeof add)[];
    for (const one of below) expect((await add[one]().expect(422)).body.errors).toMatchObject([{ code: 'retired' }]);
    await comeBack(before.version).expect(412);
    await comeBack(before.version + 1, b.reviewer).expect(403);
    await comeBack(before.version + 1).expect(204);
    expect(await read(path())).toEqual({ ...before, version: before.version + 2 });
    await add.variant().expect(201);
  });

  test('a retired variant enters no edition', async () => {
    const at = `/v1/catalogue/variants/tern-40-moss`;
    const { version } = await read(at);
    await b.editor.call('post', `${at}/retirement`).set('If-Match', `"${version}"`).send({ reason: 'No longer made.' }).expect(201);
    const { body: edition } = await b.editor.call('get', '/v1/bench/editions/2026').expect(200);
    const refused = await b.editor
      .call('post', '/v1/editions/2026/amendments')
      .set('If-Match', `"${edition.version}"`)
      .send({ variants: ['tern-40-moss'], reason: 'Late.' })
      .expect(422);
    expect(refused.body).toMatchObject({ code: 'editions/retired-entry', detail: expect.stringContaining('tern-40-moss') });
  });

  test('says why, in the record too', async () => {
    await expect(b.sql(`UPDATE maker SET retired_on = now() WHERE slug = '${MAKER.slug}'`)).rejects.toThrow('retired_maker_says_why');
  });
});
