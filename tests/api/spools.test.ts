import { randomInt, randomUUID } from 'node:crypto';
import { drawBlindCode, isBlindCode } from '../../api/contract/blind-code.js';
import { CatalogueModule } from '../../api/catalogue/catalogue.module.js';
import { CatalogueReadModel } from '../../api/catalogue/catalogue.read-model.js';
import { CLAIM, eachOf, fillCatalogue, LINE, MAKER, OTHER_VARIANT, SPOOL, VARIANT } from '../support/catalogue-fixtures.js';
import { proposeReidentification } from '../support/propose.js';
import { runSql } from '../support/run-sql.js';
import { createTestApplication } from '../support/test-application.js';
import type { Caller, TestApplication } from '../support/test-application.js';

let t: TestApplication;
let editor: Caller;
let tester: Caller;
let testerAndEditor: Caller;
let proposer: Caller;
const REASON = 'The marks on the flange are those of the thicker size.';

beforeAll(async () => {
  t = await createTestApplication();
  editor = await t.caller(['editor'], 'Ines Marsh');
  tester = await t.caller(['tester']);
  proposer = await t.caller(['reviewer']);
  testerAndEditor = await t.caller(['tester', 'editor']);
  await fillCatalogue(editor);
  await editor.call('post', `/v1/catalogue/variants/${VARIANT.slug}/claims`).send(CLAIM).expect(201);
});
afterAll(() => t.close());

const addSpool = async (change: object = {}) => {
  const { body } = await editor
    .call('post', '/v1/catalogue/spools')
    .send({ ...SPOOL, ...change })
    .expect(201);
  return body as typeof SPOOL & { blindCode: string };
};
const proposed = (code: string, variant: string = OTHER_VARIANT.slug) => proposeReidentification(proposer, code, variant, REASON);
const reidentifications = (code: string) => `/v1/catalogue/spools/${code}/reidentifications`;

/** A submission on a spool, straight into the record: how it came there is told elsewhere. */
async function submission(blindCode: string, testerId: string, state: 'draft' | 'submitted'): Promise<void> {
  const ids = { scheme: randomUUID(), edition: randomUUID(), method: randomUUID(), version: randomUUID() };
  const slug = ids.edition.slice(0, 8);
  await runSql(t.databaseUrl, `INSERT INTO scheme (id, slug, number, name, words, rules) VALUES ($1, $2, 1, 's', 's', '{}')`, [
    ids.scheme,
    slug,
  ]);
  await runSql(
    t.databaseUrl,
    `WITH planned AS (INSERT INTO edition (id, slug, name, state, opens_on, closes_on) VALUES ($1, $2, 'e', 'planned', '2026-01-01', '2026-12-31'))
     INSERT INTO division (id, edition_id, position, materials, constructions, scheme_id) VALUES (gen_random_uuid(), $1, 0, '{}', '{}', $3)`,
    [ids.edition, slug, ids.scheme],
  );
  await runSql(t.databaseUrl, `UPDATE edition SET state = 'open' WHERE id = $1`, [ids.edition]);
  await runSql(t.databaseUrl, `INSERT INTO method (id, slug, name) VALUES ($1, $2, 'm')`, [ids.method, slug]);
  await runSql(
    t.databaseUrl,
    `INSERT INTO method_version (id, method_id, number, effective_from, limits, series, parameters, wording, is_comparable_with_previous) VALUES ($1, $2, 1, '2026-01-01', '{}', '[{}]', '{}', '{}', false)`,
    [ids.version, ids.method],
  );
  await runSql(
    t.databaseUrl,
    `INSERT INTO submission (id, reference, edition_id, tester_id, spool_id, method_version_id, bench_day, state, revision, created_at)
     SELECT gen_random_uuid(), $1, $2, $3, id, $4, '2026-03-01', $5, $6, now() FROM spool WHERE blind_code = $7`,
    [`S-${slug}`, ids.edition, testerId, ids.version, state, state === 'draft' ? 0 : 1, blindCode],
  );
}

test('a spool gets a blind code of its own, with its check character', async () => {
  const one = await addSpool();
  const other = await addSpool();
  expect(one).toEqual({ ...SPOOL, blindCode: one.blindCode, reidentifications: [], retired: null, version: 1 });
  expect(isBlindCode(one.blindCode)).toBe(true);
  expect(other.blindCode).not.toBe(one.blindCode);
  const typed = `${one.blindCode.slice(0, 3)}-${one.blindCode.slice(3).toLowerCase()}`;
  expect((await editor.call('get', `/v1/catalogue/spools/${typed}`).expect(200)).body).toEqual(one);
});

test('only editors hold the key', async () => {
  const { blindCode } = await addSpool();
  const reviewer = await t.caller(['reviewer', 'admin']);
  const proposal = await proposed(blindCode);
  for (const other of [tester, reviewer]) {
    await other.call('post', '/v1/catalogue/spools').send(SPOOL).expect(403);
    await other.call('get', '/v1/catalogue/spools').expect(403);
    await other.call('get', `/v1/catalogue/spools/${blindCode}`).expect(403);
    await other.call('post', reidentifications(blindCode)).set('If-Match', '"1"').send({ proposal }).expect(403);
  }
  await t.call('get', '/v1/spools').expect(401);
  await editor.call('get', '/v1/spools').expect(403);
});

test('testers see code and length of their own work alone, in the order of the codes, and no name of the catalogue', async () => {
  const begun = [await addSpool({ lengthM: null }), await addSpool(), await addSpool()].map(({ blindCode }) => blindCode);
  for (const code of begun) await submission(code, tester.accountId, 'draft');
  await submission((await addSpool()).blindCode, testerAndEditor.accountId, 'submitted');
  const answer = await tester.call('get', '/v1/spools').expect(200);
  expect(eachOf(answer, 'blindCode').toSorted()).toEqual(begun.toSorted());
  for (const spool of (answer.body as { items: object[] }).items) expect(Object.keys(spool).sort()).toEqual(['blindCode', 'lengthM']);
  const codes = eachOf(answer, 'blindCode').map(String);
  expect(codes).toEqual([...codes].sort());
  const everything = JSON.stringify([answer.body, answer.headers]).toLowerCase();
  const names = [MAKER, LINE, VARIANT, OTHER_VARIANT].flatMap((row) => Object.values(row)).filter((value) => typeof value === 'string');
  for (const name of [...names, CLAIM.source, CLAIM.printed.text, SPOOL.place, SPOOL.lot]) {
    expect(everything).not.toContain(name.toLowerCase());
  }
  const first = await tester.call('get', '/v1/spools?limit=1').expect(200);
  expect(first.body.nextCursor).toBe(codes[0]);
  expect((await tester.call('get', `/v1/spools?limit=1&cursor=${codes[0] ?? ''}`).expect(200)).body.items[0].blindCode).toBe(codes[1]);
});

test('the list of editors pages by code', async () => {
  const first = await editor.call('get', '/v1/catalogue/spools?limit=1').expect(200);
  const second = await editor.call('get', `/v1/catalogue/spools?limit=1&cursor=${String(first.body.nextCursor)}`).expect(200);
  expect(String(second.body.items[0].blindCode) > String(first.body.items[0].blindCode)).toBe(true);
});

test.each([
  [{ variant: 'nowhere' }, '/variant'],
  [{ source: 'found' }, '/source'],
  [{ obtainedOn: '2026-03-18' }, '/obtainedOn'],
  [{ obtainedOn: '2026-02-30' }, '/obtainedOn'],
  [{ lengthM: '0' }, '/lengthM'],
  [{ blindCode: 'AAAAAAA' }, '/blindCode'],
])('a spool with %j is refused', async (change, pointer) => {
  const answer = await editor
    .call('post', '/v1/catalogue/spools')
    .send({ ...SPOOL, ...change })
    .expect(422);
  expect(answer.body.errors).toEqual([expect.objectContaining({ pointer })]);
});

test('a mistyped code is told from one that was never given out', async () => {
  const { blindCode } = await addSpool();
  const wrong = (blindCode.startsWith('2') ? '3' : '2') + blindCode.slice(1);
  expect((await editor.call('get', `/v1/catalogue/spools/${wrong}`).expect(404)).body.detail).toContain('check character');
  const never = drawBlindCode((limit) => randomInt(limit));
  expect((await editor.call('get', `/v1/catalogue/spools/${never}`).expect(404)).body.detail).toContain('is on record');
});

describe('re-identification', () => {
  test('moves the spool, keeps what it was taken for, and is audited', async () => {
    const { blindCode } = await addSpool();
    const moved = await editor
      .call('post', reidentifications(blindCode))
      .set('If-Match', '"1"')
      .send({ proposal: await proposed(blindCode) })
      .expect(201);
    const expected = {
      fromVariant: VARIANT.slug,
      toVariant: OTHER_VARIANT.slug,
      reason: REASON,
      by: 'Ines Marsh',
      at: '2026-03-15T12:00:00.000Z',
    };
    expect(moved.body).toMatchObject({ variant: OTHER_VARIANT.slug, version: 2, reidentifications: [expected] });
    expect(moved.headers['etag']).toBe('"2"');
    const [event] = await runSql(
      t.databaseUrl,
      'SELECT action, before, after, actor_id FROM audit_event WHERE object_id = $1 ORDER BY id DESC LIMIT 1',
      [blindCode],
    );
    expect(event).toEqual({
      action: 'spool.reidentified',
      before: { variant: VARIANT.slug },
      after: { variant: OTHER_VARIANT.slug, proposal: expect.any(String), reason: REASON },
      actor_id: editor.accountId,
    });
    const catalogue = t.app.select(CatalogueModule).get(CatalogueReadModel);
    const spool = await catalogue.spoolByCode(blindCode.toLowerCase());
    expect(spool).toMatchObject({ blindCode, variant: { slug: OTHER_VARIANT.slug, material: 'UHMWPE', densityGPerCm3: 0.97, claims: [] } });
    const [told] = await catalogue.spoolsOf([spool?.variant.id ?? '']);
    expect(told).toMatchObject({ code: blindCode, variant: OTHER_VARIANT.slug, reidentifications: [{ reason: REASON }] });
  });

  test('needs the version that was seen and a reason', async () => {
    const { blindCode } = await addSpool();
    const input = { proposal: await proposed(blindCode) };
    await editor.call('post', reidentifications(blindCode)).send(input).expect(428);
    await editor.call('post', reidentifications(blindCode)).set('If-Match', '"2"').send(input).expect(412);
    const blank = await proposer
      .call('post', '/v1/proposals')
      .send({ kind: 'reidentification', spool: blindCode, variant: OTHER_VARIANT.slug, reason: '  ' })
      .expect(422);
    expect(blank.body.errors).toEqual([expect.objectContaining({ pointer: '/reason' })]);
    const own = await proposeReidentification(editor, blindCode, OTHER_VARIANT.slug, REASON);
    const alone = await editor.call('post', reidentifications(blindCode)).set('If-Match', '"1"').send({ proposal: own }).expect(403);
    expect(alone.body.code).toBe('proposals/own-proposal');
    expect((await editor.call('get', `/v1/catalogue/spools/${blindCode}`)).body).toMatchObject({ variant: VARIANT.slug, version: 1 });
  });

  test('goes to another variant that is on record', async () => {
    const { blindCode } = await addSpool();
    const another = await t.caller(['reviewer']);
    const [first, second] = [await proposed(blindCode), await proposeReidentification(another, blindCode, OTHER_VARIANT.slug, REASON)];
    await editor.call('post', reidentifications(blindCode)).set('If-Match', '"1"').send({ proposal: first }).expect(201);
    const { body } = await editor.call('post', reidentifications(blindCode)).set('If-Match', '"2"').send({ proposal: second }).expect(422);
    expect(body.errors).toEqual([expect.objectContaining({ pointer: '/variant', code: 'unchanged' })]);
  });

  test('of two at once, one is on record', async () => {
    const { blindCode } = await addSpool();
    const input = { proposal: await proposed(blindCode) };
    const both = await Promise.all([1, 2].map(() => editor.call('post', reidentifications(blindCode)).set('If-Match', '"1"').send(input)));
    expect(both.map((answer) => answer.status).sort()).toEqual([201, 412]);
  });

  test('is not for somebody who handed in a submission on the spool; a draft is none', async () => {
    const { blindCode } = await addSpool();
    const input = { proposal: await proposed(blindCode) };
    await submission(blindCode, testerAndEditor.accountId, 'submitted');
    const own = await testerAndEditor.call('post', reidentifications(blindCode)).set('If-Match', '"1"').send(input).expect(403);
    expect(own.body.code).toBe('proposals/own-spool');
    await editor.call('post', reidentifications(blindCode)).set('If-Match', '"1"').send(input).expect(201);
    const drafted = await addSpool();
    await submission(drafted.blindCode, testerAndEditor.accountId, 'draft');
    const proposal = await proposed(drafted.blindCode);
    await testerAndEditor.call('post', reidentifications(drafted.blindCode)).set('If-Match', '"1"').send({ proposal }).expect(201);
  });

  test('the database keeps the same rules', async () => {
    const { blindCode } = await addSpool();
    await submission(blindCode, testerAndEditor.accountId, 'submitted');
    const proposal = await proposed(blindCode);
    const insert = (byId: string, reason: string, proposalId: string | null = proposal) =>
      runSql(
        t.databaseUrl,
        `INSERT INTO spool_reidentification (id, spool_id, from_variant_id, to_variant_id, reason, by_id, proposal_id, at)
         SELECT gen_random_uuid(), s.id, s.variant_id, v.id, $2, $3, $5, now() FROM spool s, variant v WHERE s.blind_code = $1 AND v.slug = $4`,
        [blindCode, reason, byId, OTHER_VARIANT.slug, proposalId],
      );
    const own = await proposeReidentification(editor, blindCode, OTHER_VARIANT.slug, REASON);
    for (const alone of [own, null]) await expect(insert(editor.accountId, REASON, alone)).rejects.toThrow('two_persons_do_it');
    const move = `UPDATE spool SET variant_id = (SELECT id FROM variant WHERE slug = '${OTHER_VARIANT.slug}') WHERE blind_code = $1`;
    await expect(runSql(t.databaseUrl, move, [blindCode])).rejects.toMatchObject({
      code: 'FP001',
      message: expect.stringContaining('spool_is_reidentified_on_record'),
    });
    await expect(runSql(t.databaseUrl, `UPDATE spool SET blind_code = 'X' WHERE blind_code = $1`, [blindCode])).rejects.toMatchObject({
      code: 'FP001',
    });
    await expect(insert(testerAndEditor.accountId, REASON)).rejects.toMatchObject({
      code: 'FP001',
      message: expect.stringContaining('reidentifier_is_not_tester'),
    });
    await expect(insert(editor.accountId, ' ')).rejects.toMatchObject({ code: '23514', constraint: 'reidentification_has_a_reason' });
    await insert(editor.accountId, REASON);
    await runSql(t.databaseUrl, move, [blindCode]);
    for (const change of [
      `UPDATE spool_reidentification SET reason = 'x'`,
      'DELETE FROM spool_reidentification',
      'TRUNCATE spool_reidentification',
    ]) {
      await expect(runSql(t.databaseUrl, change)).rejects.toMatchObject({ code: 'FP001' });
    }
  });
});

describe('labels to print', () => {
  const labels = (codes: readonly string[]) => editor.call('get', `/v1/catalogue/labels?${codes.map((code) => `code=${code}`).join('&')}`);

  test('bear the blind code and the length, and nothing of maker or line', async () => {
    const codes = [(await addSpool()).blindCode, (await addSpool()).blindCode] as const;
    const { text, headers } = await labels(codes).expect(200);
    expect(headers['content-type']).toMatch(/^text\/html/);
    expect(text.match(/<li>/g)).toHaveLength(2);
    for (const code of codes) expect(text).toContain(`<b>${code}</b>`);
    for (const secret of [VARIANT.slug, LINE.slug, LINE.name, MAKER.slug, MAKER.name]) expect(text).not.toContain(secret);
    expect((await labels([codes[0].toLowerCase()]).expect(200)).text).toContain(codes[0]);
  });

  test('are for known spools', async () => {
    await labels(['AAAAAAA']).expect(404);
    await editor.call('get', '/v1/catalogue/labels').expect(422);
  });
});
