import { createHouse } from '../support/house.js';
import type { House } from '../support/house.js';
import { runSql } from '../support/run-sql.js';
import { editionRequest, FORCE_SCHEME, moveEdition, SCHEME } from '../support/season.js';
import type { Caller } from '../support/test-application.js';

let house: House;
let editor: Caller;
beforeAll(async () => {
  house = await createHouse();
  editor = house.editor;
});
afterAll(() => house.t.close());

const sql = (statement: string) => runSql(house.t.databaseUrl, statement);
const plan = (slug: string, change: object = {}) => editor.call('post', '/v1/editions').send(editionRequest(slug, change));
const enter = (slug: string, variants: string[]) => editor.call('post', `/v1/editions/${slug}/entries`).send({ variants });
const exclude = (slug: string, variant: string) =>
  editor
    .call('post', `/v1/editions/${slug}/exclusions`)
    .send({ variant, reasonCode: 'notObtainable', words: 'Not sold.', effect: 'closedUp' });
const versionOf = async (slug: string): Promise<number> =>
  (await editor.call('get', `/v1/bench/editions/${slug}`).expect(200)).body.version;
const patch = (slug: string, version: number, change: object, by = editor) =>
  by.call('patch', `/v1/editions/${slug}`).set('If-Match', `"${version}"`).send(change);
const take = (path: string, version: number, by = editor) => by.call('delete', `/v1/editions/${path}`).set('If-Match', `"${version}"`);
const amend = (slug: string, version: number, change: object, by = editor) =>
  by.call('post', `/v1/editions/${slug}/amendments`).set('If-Match', `"${version}"`).send(change);

describe('a planned edition', () => {
  test('changes in everything but its slug', async () => {
    await plan('draft').expect(201);
    await plan('draft-before').expect(201);
    await editor
      .call('post', '/v1/schemes')
      .send({ ...SCHEME, number: 2 })
      .expect(201);
    const methods = [
      { slug: 'diameter', number: 1 },
      { slug: 'straight-pull', number: 1 },
    ];
    const scheme = { slug: SCHEME.slug, number: 2 };
    const change = { name: 'Second thoughts', scheme, opensOn: '2026-02-01', closesOn: '2026-03-01', previous: 'draft-before', methods };
    expect((await patch('draft', 1, change).expect(200)).body).toMatchObject({ ...change, slug: 'draft', version: 2 });
    await patch('draft', 1, { name: 'Third' }).expect(412);
    expect((await patch('draft', 2, { previous: null }).expect(200)).body).toMatchObject({ previous: null, methods });
    for (const who of [house.tester, house.reviewer]) await patch('draft', 3, { name: 'x' }, who).expect(403);
  });

  test('is refused what does not fit, and nothing changes', async () => {
    const { body: before } = await editor.call('get', '/v1/bench/editions/draft').expect(200);
    const refused = async (change: object) => (await patch('draft', 3, change).expect(422)).body;
    expect((await refused({ slug: 'other', name: 'Other' })).errors).toMatchObject([{ pointer: '/slug' }]);
    expect((await refused({})).code).toBe('request/not-valid');
    expect((await refused({ closesOn: '2026-01-31' })).errors).toMatchObject([{ pointer: '/closesOn', code: 'ends_before_it_starts' }]);
    expect((await refused({ opensOn: '2026-03-02' })).errors).toMatchObject([{ pointer: '/opensOn' }]);
    for (const change of [{ scheme: { slug: 'none', number: 1 } }, { previous: 'none' }, { methods: [{ slug: 'abrasion', number: 9 }] }])
      expect((await refused(change)).code).toBe('editions/unknown-reference');
    await patch('draft-before', 1, { previous: 'draft' }).expect(200);
    expect(await refused({ previous: 'draft-before' })).toMatchObject({
      code: 'editions/follows-itself',
      detail: 'draft would follow draft-before, which follows draft.',
    });
    expect((await editor.call('get', '/v1/bench/editions/draft').expect(200)).body).toEqual(before);
  });

  test('lets an entry go, and goes itself, unless another is told against it', async () => {
    await enter('draft', ['gannet-20', 'gannet-30']).expect(201);
    await exclude('draft', 'gannet-20').expect(201);
    const version = await versionOf('draft');
    await take('draft/entries/gannet-20', version - 1).expect(412);
    await take('draft/entries/gannet-20', version, house.reviewer).expect(403);
    await take('draft/entries/gannet-20', version).expect(204);
    await take('draft/entries/gannet-20', version + 1).expect(404);
    expect((await take('draft', version + 1).expect(409)).body).toMatchObject({
      code: 'editions/precedes-another',
      detail: 'draft-before follows draft.',
    });
    await take('draft-before', 1).expect(412);
    await take('draft-before', 2, house.tester).expect(403);
    await take('draft-before', 2).expect(204);
    await take('draft', version + 1).expect(204);
    for (const slug of ['draft', 'draft-before']) await editor.call('get', `/v1/bench/editions/${slug}`).expect(404);
    const rows = await sql(`SELECT action FROM audit_event WHERE object_id = 'draft' ORDER BY id`);
    expect(rows.map(({ action }) => action)).toEqual(
      expect.arrayContaining(['edition.changed', 'edition.entryRemoved', 'edition.deleted']),
    );
  });
});

describe('an open edition', () => {
  const reason = 'It was forgotten in the plan.';

  test('takes entries, a forgotten method and a later closing day, each with a reason that stays', async () => {
    const methods = ['straight-pull', 'named-knot', 'abrasion'].map((slug) => ({ slug, number: 1 }));
    await editor.call('post', '/v1/schemes').send(FORCE_SCHEME).expect(201);
    await plan('amended', { methods, scheme: { slug: FORCE_SCHEME.slug, number: 1 }, closesOn: '2026-06-30' }).expect(201);
    await enter('amended', ['gannet-20']).expect(201);
    expect((await amend('amended', 2, { reason, variants: ['gannet-30'] }).expect(409)).body.code).toBe('editions/wrong-state');
    await moveEdition(editor, 'amended', 'opening');
    await amend('amended', 2, { reason, variants: ['gannet-30'] }).expect(412);
    for (const who of [house.tester, house.reviewer]) await amend('amended', 3, { reason, variants: ['gannet-30'] }, who).expect(403);
    await amend('amended', 3, { reason, variants: ['gannet-30'] }).expect(201);
    await amend('amended', 4, { reason, methods: [{ slug: 'diameter', number: 1 }] }).expect(201);
    const { body } = await amend('amended', 5, { reason, closesOn: '2026-07-31' }).expect(201);
    expect(body).toMatchObject({ entries: 2, closesOn: '2026-07-31', methods: [{ slug: 'abrasion' }, { slug: 'diameter' }, {}, {}] });
    const made = { on: '2026-03-15', reason, variants: [], methods: [], closesOn: null };
    expect(body.amendments).toEqual([
      { ...made, variants: ['gannet-30'] },
      { ...made, methods: [{ slug: 'diameter', number: 1 }] },
      { ...made, closesOn: { before: '2026-06-30', after: '2026-07-31' } },
    ]);
  });

  test('takes nothing without a reason, twice, sooner, or otherwise than it was pinned', async () => {
    const refused = async (change: object, status = 422) => (await amend('amended', 6, { reason, ...change }).expect(status)).body;
    expect((await refused({ reason: ' ', variants: ['petrel-20'] })).errors).toMatchObject([{ pointer: '/reason' }]);
    expect((await refused({})).code).toBe('request/not-valid');
    expect((await refused({ closesOn: '2026-07-31' })).errors).toMatchObject([{ pointer: '/closesOn', code: 'not_later' }]);
    expect((await refused({ methods: [{ slug: 'diameter', number: 1 }] })).errors).toMatchObject([{ code: 'pinned_already' }]);
    expect((await refused({ variants: ['gannet-90'] })).code).toBe('editions/unknown-reference');
    await refused({ variants: ['gannet-20'] }, 409);
    const changed = await patch('amended', 6, { name: 'Other' }).expect(409);
    expect(changed.body).toMatchObject({ code: 'editions/wrong-state', detail: expect.stringContaining('/amendments') });
    expect((await take('amended/entries/gannet-20', 6).expect(409)).body.detail).toContain('/exclusions');
    await take('amended', 6).expect(409);
  });

  test('keeps its parts and its days in the record as well', async () => {
    const at = `WHERE slug = 'amended'`;
    for (const [statement, rule] of [
      [`DELETE FROM edition ${at}`, 'only_a_planned_edition_is_deleted'],
      [`DELETE FROM entry WHERE edition_id = (SELECT id FROM edition ${at})`, 'part_of_an_opened_edition_stays'],
      [`DELETE FROM edition_method WHERE edition_id = (SELECT id FROM edition ${at})`, 'part_of_an_opened_edition_stays'],
      [`UPDATE edition SET opens_on = '2025-01-01' ${at}`, 'days_of_an_edition_stand'],
      [`UPDATE edition SET name = 'Other' ${at}`, 'days_of_an_edition_stand'],
      [`UPDATE edition SET closes_on = '2026-06-30' ${at}`, 'days_of_an_edition_stand'],
      [`UPDATE edition SET closed_on = '2026-06-30' ${at}`, 'only_a_closed_edition_has_closed'],
      [`UPDATE edition_amendment SET reason = 'x'`, 'record_is_append_only'],
      [`DELETE FROM edition_amendment`, 'record_is_append_only'],
    ] as const)
      await expect(sql(statement)).rejects.toThrow(rule);
    await moveEdition(editor, 'amended', 'closure');
    const { body } = await editor.call('get', '/v1/bench/editions/amended').expect(200);
    expect(body).toMatchObject({ closesOn: '2026-07-31', closedOn: '2026-03-15' });
    await amend('amended', body.version, { reason, variants: ['petrel-20'] }).expect(409);
    for (const [statement, rule] of [
      [
        `INSERT INTO entry (id, edition_id, variant_id) SELECT gen_random_uuid(), e.id, v.id FROM edition e, variant v WHERE e.slug = 'amended' AND v.slug = 'petrel-20'`,
        'closed_edition_takes_nothing_more',
      ],
      [
        `INSERT INTO edition_amendment (id, edition_id, reason, changes, by_id, at) SELECT gen_random_uuid(), id, 'x', '{}', gen_random_uuid(), now() FROM edition ${at}`,
        'closed_edition_takes_nothing_more',
      ],
      [`UPDATE edition SET closes_on = '2026-12-31' ${at}`, 'days_of_an_edition_stand'],
      [`UPDATE edition SET closed_on = '2026-03-16' ${at}`, 'days_of_an_edition_stand'],
    ] as const)
      await expect(sql(statement)).rejects.toThrow(rule);
  });
});
