import { eachOf, fillCatalogue, LINE, MAKER, OTHER_VARIANT, pointersOf, VARIANT } from '../support/catalogue-fixtures.js';
import { runSql } from '../support/run-sql.js';
import { createTestApplication } from '../support/test-application.js';
import type { Caller, TestApplication } from '../support/test-application.js';

let t: TestApplication;
let editor: Caller;
let tester: Caller;
let reviewer: Caller;
beforeAll(async () => {
  t = await createTestApplication();
  editor = await t.caller(['editor']);
  tester = await t.caller(['tester']);
  reviewer = await t.caller(['reviewer']);
  await fillCatalogue(editor);
});
afterAll(() => t.close());

const KINDS = [
  { path: '/v1/catalogue/makers', of: MAKER, change: { name: 'North Bay Lines' } },
  { path: '/v1/catalogue/lines', of: LINE, change: { name: 'Tern Eight II' } },
  { path: '/v1/catalogue/variants', of: VARIANT, change: { colour: 'dark moss' } },
];

describe.each(KINDS)('$path', ({ path, of, change }) => {
  const one = `${path}/${of.slug}`;

  test('only editors write', async () => {
    await t.call('post', path).send(of).expect(401);
    for (const other of [tester, reviewer]) {
      expect((await other.call('post', path).send(of).expect(403)).body.code).toBe('access/forbidden');
      await other.call('patch', one).set('If-Match', '"1"').send(change).expect(403);
    }
  });

  test('a slug is given once', async () => {
    const answer = await editor.call('post', path).send(of).expect(409);
    expect(answer.body).toMatchObject({ code: 'record/already-exists', errors: [{ pointer: '/slug' }] });
  });

  test('a slug is lower-case and an unknown field is refused, both told at once', async () => {
    const answer = await editor
      .call('post', path)
      .send({ ...of, slug: 'North_Bay', sponsor: 'x' })
      .expect(422);
    expect(pointersOf(answer)).toEqual(['/slug', '/sponsor']);
  });

  test('a change needs the version that was seen', async () => {
    const { headers, body } = await editor.call('get', one).expect(200);
    const before = body as { version: number };
    expect((await editor.call('patch', one).send(change).expect(428)).body.code).toBe('request/if-match-missing');
    const after = await editor
      .call('patch', one)
      .set('If-Match', headers['etag'] ?? '')
      .send(change)
      .expect(200);
    expect(after.body).toEqual({ ...before, ...change, version: before.version + 1 });
    expect(after.headers['etag']).toBe(`"${before.version + 1}"`);
    expect(
      (
        await editor
          .call('patch', one)
          .set('If-Match', headers['etag'] ?? '')
          .send(change)
          .expect(412)
      ).body.code,
    ).toBe('request/if-match-stale');
  });

  test('a slug never changes and an empty change is none', async () => {
    const { headers } = await editor.call('get', one).expect(200);
    const renamed = await editor
      .call('patch', one)
      .set('If-Match', headers['etag'] ?? '')
      .send({ ...change, slug: 'other' })
      .expect(422);
    expect(renamed.body.errors).toEqual([expect.objectContaining({ pointer: '/slug', code: 'unknown_field' })]);
    await editor
      .call('patch', one)
      .set('If-Match', headers['etag'] ?? '')
      .send({})
      .expect(422);
  });

  test('what is not on record is not found', async () => {
    await editor.call('get', `${path}/nowhere`).expect(404);
    await editor.call('patch', `${path}/nowhere`).set('If-Match', '"1"').send(change).expect(404);
  });

  test('additions and changes stand in the audit trail', async () => {
    const events = await runSql(t.databaseUrl, 'SELECT actor_id, action, before, after FROM audit_event WHERE object_id = $1 ORDER BY id', [
      of.slug,
    ]);
    const kind = path.slice('/v1/catalogue/'.length, -1);
    expect(events.map((event) => event['action'])).toEqual(expect.arrayContaining([`${kind}.added`, `${kind}.changed`]));
    expect(events.every((event) => event['actor_id'] === editor.accountId)).toBe(true);
    expect(events.find((event) => event['action'] === `${kind}.changed`)).toMatchObject({
      before: { version: 1 },
      after: { version: 2, ...change },
    });
  });
});

test('makers are read by anybody signed in, lines and variants not by testers', async () => {
  await t.call('get', '/v1/catalogue/makers').expect(401);
  await tester.call('get', '/v1/catalogue/makers').expect(200);
  await tester.call('get', `/v1/catalogue/makers/${MAKER.slug}`).expect(200);
  for (const path of [`lines`, `lines/${LINE.slug}`, 'variants', `variants/${VARIANT.slug}`]) {
    await tester.call('get', `/v1/catalogue/${path}`).expect(403);
    await reviewer.call('get', `/v1/catalogue/${path}`).expect(200);
  }
});

test('lists go on where the page before ended, by slug', async () => {
  for (const slug of ['a-maker', 'b-maker', 'c-maker'])
    await editor.call('post', '/v1/catalogue/makers').send({ slug, name: slug }).expect(201);
  const slugs: string[] = [];
  let cursor = '';
  do {
    const page = await tester.call('get', `/v1/catalogue/makers?limit=2${cursor}`).expect(200);
    expect(page.body.items.length).toBeLessThanOrEqual(2);
    slugs.push(...eachOf(page, 'slug').map(String));
    const { nextCursor } = page.body as { nextCursor: string | null };
    cursor = nextCursor === null ? '' : `&cursor=${nextCursor}`;
  } while (cursor !== '');
  expect(slugs).toEqual(['a-maker', 'b-maker', 'c-maker', MAKER.slug]);
  await tester.call('get', '/v1/catalogue/makers?limit=0').expect(422);
  await tester.call('get', '/v1/catalogue/makers?page=2').expect(422);
});

test('a line belongs to a maker on record, a variant to a line on record', async () => {
  const line = await editor
    .call('post', '/v1/catalogue/lines')
    .send({ ...LINE, slug: 'stray', maker: 'nobody' })
    .expect(422);
  expect(line.body.errors).toEqual([expect.objectContaining({ pointer: '/maker', code: 'unknown_reference' })]);
  const variant = await editor
    .call('post', '/v1/catalogue/variants')
    .send({ ...VARIANT, slug: 'stray', line: 'nothing' })
    .expect(422);
  expect(variant.body.errors).toEqual([expect.objectContaining({ pointer: '/line', code: 'unknown_reference' })]);
});

test('only what is braided has carriers, at first and after a change', async () => {
  const added = await editor
    .call('post', '/v1/catalogue/lines')
    .send({ ...LINE, slug: 'mono', construction: 'monofilament' })
    .expect(422);
  expect(added.body.errors).toEqual([expect.objectContaining({ pointer: '/carriers', code: 'not_braided' })]);
  const { headers } = await editor.call('get', `/v1/catalogue/lines/${LINE.slug}`);
  const etag = headers['etag'] ?? '';
  const changed = await editor
    .call('patch', `/v1/catalogue/lines/${LINE.slug}`)
    .set('If-Match', etag)
    .send({ construction: 'fused' })
    .expect(422);
  expect(changed.body.errors).toEqual([expect.objectContaining({ pointer: '/carriers' })]);
  const both = await editor
    .call('patch', `/v1/catalogue/lines/${LINE.slug}`)
    .set('If-Match', etag)
    .send({ construction: 'fused', carriers: null })
    .expect(200);
  expect(both.body).toMatchObject({ construction: 'fused', carriers: null });
});

test.each(['0', '0.000', '-0.97', '0.97001', 'light'])('a density of %s is refused', async (densityGPerCm3) => {
  const answer = await editor
    .call('post', '/v1/catalogue/lines')
    .send({ ...LINE, slug: 'dense', densityGPerCm3 })
    .expect(422);
  expect(answer.body.errors).toEqual([expect.objectContaining({ pointer: '/densityGPerCm3' })]);
});

test('a line is on record once in one size and colour', async () => {
  const again = await editor
    .call('post', '/v1/catalogue/variants')
    .send({ ...OTHER_VARIANT, slug: 'twin' })
    .expect(409);
  expect(again.body.detail).toContain(OTHER_VARIANT.slug);
  const { headers, body } = await editor.call('get', `/v1/catalogue/variants/${VARIANT.slug}`);
  const moved = await editor
    .call('patch', `/v1/catalogue/variants/${VARIANT.slug}`)
    .set('If-Match', headers['etag'] ?? '')
    .send({ size: OTHER_VARIANT.size, colour: OTHER_VARIANT.colour })
    .expect(409);
  expect(moved.body.detail).toContain(OTHER_VARIANT.slug);
  expect((await editor.call('get', `/v1/catalogue/variants/${VARIANT.slug}`)).body).toEqual(body);
});

test('a name that looks like one on record is refused, whatever its script, and one in two scripts anyhow', async () => {
  const mixed = { slug: 'mixed', name: MAKER.name.replaceAll('o', '\u043e') };
  expect(pointersOf(await editor.call('post', '/v1/catalogue/makers').send(mixed).expect(422))).toEqual(['/name']);
  await editor.call('post', '/v1/catalogue/makers').send({ slug: 'soap', name: 'Scope' }).expect(201);
  const line = { ...LINE, maker: 'soap' };
  await editor
    .call('post', '/v1/catalogue/lines')
    .send({ ...line, slug: 'soap', name: 'Soap' })
    .expect(201);
  // Cyrillic letters throughout (the first is the example of Unicode Technical Standard 39).
  for (const [path, sent, known] of [
    ['makers', { slug: 'other', name: '\u0455\u0441\u043e\u0440\u0435' }, 'Scope'],
    ['lines', { ...line, slug: 'other', name: '\u0405\u043e\u0430\u0440' }, 'Soap'],
  ] as const) {
    const answer = await editor.call('post', `/v1/catalogue/${path}`).send(sent).expect(409);
    expect(answer.body.errors).toEqual([
      { pointer: '/name', code: 'duplicate', detail: expect.stringContaining(`looks like "${known}", which is on record`) },
    ]);
  }
  // The record refuses it past the program, and of several that come at once all but one.
  await expect(
    runSql(
      t.databaseUrl,
      `INSERT INTO maker (id, slug, name, name_as_seen) SELECT gen_random_uuid(), 'past', 'SC0PE', name_as_seen FROM maker WHERE slug = 'soap'`,
    ),
  ).rejects.toThrow('names_look_different');
  await expect(runSql(t.databaseUrl, `UPDATE line SET name = 'S0AP' WHERE slug = 'soap'`)).resolves.toBeDefined();
  await expect(
    runSql(
      t.databaseUrl,
      `INSERT INTO line SELECT gen_random_uuid(), 'past', maker_id, 'Soap', material, construction, carriers, density_g_per_cm3, NULL, NULL, 1, name_as_seen FROM line WHERE slug = 'soap'`,
    ),
  ).rejects.toThrow('names_look_different');
  const atOnce = ['Cascade', 'C\u0251scade', 'Casc\u0251de'].map((name, i) =>
    editor.call('post', '/v1/catalogue/makers').send({ slug: `cascade-${i}`, name }),
  );
  const answers = await Promise.all(atOnce);
  expect(answers.map(({ status }) => status).filter((status) => status === 201)).toHaveLength(1);
});
