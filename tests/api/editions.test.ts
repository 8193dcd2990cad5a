import { CHECK_SET_VERSION, CHECKS } from '../../api/checks/check-list.js';
import { sha256 } from '../../api/platform/identifiers/identifiers.js';
import { createHouse, handInEdition } from '../support/house.js';
import type { House } from '../support/house.js';
import { runSql } from '../support/run-sql.js';
import { acceptAll, editionRequest, MAKERS, moveEdition, SCHEME, VARIANTS } from '../support/season.js';
import type { Caller } from '../support/test-application.js';

let house: House;
let editor: Caller;
beforeAll(async () => {
  house = await createHouse();
  editor = house.editor;
}, 60_000);
afterAll(() => house.t.close());

const sql = (statement: string, values: unknown[] = []) => runSql(house.t.databaseUrl, statement, values);
const plan = (slug: string, change: object = {}) => editor.call('post', '/v1/editions').send(editionRequest(slug, change));
const enter = (slug: string, variants: string[]) => editor.call('post', `/v1/editions/${slug}/entries`).send({ variants });
const step = (slug: string, name: 'opening' | 'closure', version: number) =>
  editor.call('post', `/v1/editions/${slug}/${name}`).set('If-Match', `"${version}"`);
const exclude = (slug: string, variant: string, by = editor) =>
  by.call('post', `/v1/editions/${slug}/exclusions`).send({ variant, reasonCode: 'notObtainable', words: 'Not sold.', effect: 'closedUp' });
const versionOf = async (slug: string): Promise<number> =>
  (await editor.call('get', `/v1/bench/editions/${slug}`).expect(200)).body.version;

/** Answers the question on a submission and hands it in again as it was. */
async function handInAgain(reference: string): Promise<void> {
  const { tester } = house;
  const { body: view } = await tester.call('get', `/v1/submissions/${reference}`).expect(200);
  await tester.call('post', `/v1/queries/${view.queries[0].id}/answer`).send({ answer: 'Looked.' }).expect(201);
  const specimens = (view.specimens as any[]).map(({ number, condition, readings }) => ({
    number,
    condition,
    readings: readings.map(({ role, entered }: any) => ({ role, value: entered.text, unit: entered.unit })),
  }));
  const { edition, spool, benchDay, zone } = view;
  const ambient = { temperature: { value: '21.5', unit: '°C' }, humidityPercent: '55' };
  await tester
    .call('post', `/v1/submissions/${reference}/revisions`)
    .set('If-Match', `"${view.version}"`)
    .send({ edition, spool, benchDay, zone, method: view.method.slug, methodVersion: 1, instruments: ['R1'], ambient, specimens })
    .expect(201);
}

describe('planning', () => {
  test('names what is not on record', async () => {
    for (const [change, named] of [
      [{ scheme: { slug: 'no-scheme', number: 1 } }, 'scheme no-scheme number 1'],
      [{ scheme: { slug: SCHEME.slug, number: 2 } }, 'scheme three-places number 2'],
      [{ previous: 'long-ago' }, 'edition long-ago'],
      [{ methods: [{ slug: 'abrasion', number: 9 }] }, 'version 9 of method abrasion'],
    ] as const) {
      const { body } = await plan('nowhere', change).expect(422);
      expect(body).toMatchObject({ code: 'editions/unknown-reference' });
      expect(body.detail).toContain(named);
    }
    await editor.call('get', '/v1/bench/editions/nowhere').expect(404);
  });

  test('an edition does not close before it opens, and is planned once', async () => {
    const { body } = await plan('backwards', { opensOn: '2026-03-02', closesOn: '2026-03-01' }).expect(422);
    expect(body.errors).toMatchObject([{ pointer: '/closesOn' }]);
    expect((await plan('planned-once').expect(201)).body).toMatchObject({ state: 'planned', entries: 0, blindKeyDigest: null, version: 1 });
    await plan('planned-once').expect(409);
  });
});

describe('opening', () => {
  test('needs entries', async () => {
    await plan('empty').expect(201);
    expect((await step('empty', 'opening', 1).expect(409)).body).toMatchObject({
      code: 'editions/nothing-to-open',
      errors: [{ pointer: '/standsInTheWay/0', code: 'no_entries' }],
    });
  });

  test('needs a pinned version of the method of each category', async () => {
    await plan('unpinned', { methods: [{ slug: 'straight-pull', number: 1 }] }).expect(201);
    await enter('unpinned', ['gannet-20']).expect(201);
    const { body } = await step('unpinned', 'opening', 2).expect(409);
    expect(body).toMatchObject({ code: 'editions/nothing-to-open' });
    expect(body.detail).toContain('named-knot, abrasion');
  });

  test('lists everything that stands in the way at once, on the board as in the refusal', async () => {
    await plan('far', { opensOn: '2025-01-01', closesOn: '2025-06-30', methods: [{ slug: 'straight-pull', number: 1 }] }).expect(201);
    const { body } = await step('far', 'opening', 1).expect(409);
    const { standsInTheWay } = (await editor.call('get', '/v1/editions/far/board').expect(200)).body;
    expect(standsInTheWay).toMatchObject([
      { code: 'no_entries', count: 1, references: [], remedy: expect.stringContaining('/entries') },
      { code: 'method_not_pinned', count: 2, references: ['named-knot', 'abrasion'] },
      { code: 'method_not_in_force', count: 1, references: ['straight-pull 1'] },
    ]);
    expect(body.errors.map(({ code, found }: any) => [code, Number(found)])).toEqual(
      standsInTheWay.map(({ code, count }: any) => [code, count]),
    );
  });

  test('needs the ETag that was read last', async () => {
    await plan('seen').expect(201);
    await enter('seen', ['gannet-20']).expect(201);
    expect((await editor.call('post', '/v1/editions/seen/opening').expect(428)).body.code).toBe('request/if-match-missing');
    expect((await step('seen', 'opening', 1).expect(412)).body.code).toBe('request/if-match-stale');
    const opened = await step('seen', 'opening', 2).expect(201);
    expect(opened.headers['etag']).toBe('"3"');
    expect((await step('seen', 'opening', 3).expect(409)).body.code).toBe('editions/wrong-state');
  });

  test('pins scheme, checks, methods and the key of blind codes, for good', async () => {
    const key = [...VARIANTS.slice(0, 1)].map(({ slug }) => `${house.codes.get(slug)} ${slug}\n`).join('');
    const { body } = await editor.call('get', '/v1/bench/editions/seen').expect(200);
    expect(body.blindKeyDigest).toBe(sha256(key));
    const [row] = await sql(`SELECT check_set_version FROM edition WHERE slug = 'seen'`);
    expect(row).toEqual({ check_set_version: CHECK_SET_VERSION });
    await editor
      .call('post', '/v1/schemes')
      .send({ ...SCHEME, number: 7 })
      .expect(201);
    for (const change of [
      `scheme_id = (SELECT id FROM scheme WHERE number = 7)`,
      `blind_key_digest = repeat('0', 64)`,
      `check_set_version = check_set_version + 1`,
    ])
      await expect(sql(`UPDATE edition SET ${change} WHERE slug = 'seen'`)).rejects.toMatchObject({
        code: 'FP001',
        message: expect.stringContaining('opening_pins_the_rules'),
      });
    for (const change of ['UPDATE edition_method SET edition_id = edition_id', 'DELETE FROM edition_method'])
      await expect(sql(change)).rejects.toMatchObject({ code: 'FP001' });
  });
});

const patch = (slug: string, version: number, change: object, by = editor) =>
  by.call('patch', `/v1/editions/${slug}`).set('If-Match', `"${version}"`).send(change);
const take = (path: string, version: number, by = editor) => by.call('delete', `/v1/editions/${path}`).set('If-Match', `"${version}"`);
const amend = (slug: string, version: number, change: object, by = editor) =>
  by.call('post', `/v1/editions/${slug}/amendments`).set('If-Match', `"${version}"`).send(change);

describe('a planned edition', () => {
  test('changes in everything but its slug', async () => {
    await plan('draft', { methods: [{ slug: 'abrasion', number: 1 }] }).expect(201);
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
    await plan('amended', { methods, closesOn: '2026-06-30' }).expect(201);
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

test('a scheme never changes, by nobody', async () => {
  await editor.call('post', '/v1/schemes').send(SCHEME).expect(409);
  for (const change of [
    `UPDATE scheme SET rules = '{}'`,
    `UPDATE scheme SET name = 'Another'`,
    'DELETE FROM scheme',
    'TRUNCATE scheme CASCADE',
  ])
    await expect(sql(change)).rejects.toMatchObject({ code: 'FP001' });
  const { body } = await house.reviewer.call('get', '/v1/schemes').expect(200);
  expect(body.items[0]).toEqual(SCHEME);
});

describe('entries', () => {
  test('come from the catalogue, once each', async () => {
    await plan('entered').expect(201);
    const { body } = await enter('entered', ['gannet-20', 'gannet-90']).expect(422);
    expect(body.detail).toBe('Not in the catalogue: gannet-90.');
    expect((await enter('entered', ['gannet-20', 'gannet-30']).expect(201)).body.entries).toBe(2);
    await enter('entered', ['gannet-20']).expect(409);
    await enter('no-edition', ['gannet-20']).expect(404);
  });

  test('are not added to a closed edition', async () => {
    await moveEdition(editor, 'entered', 'opening');
    const refused = await enter('entered', ['petrel-20']).expect(409);
    expect(refused.body).toMatchObject({ code: 'editions/wrong-state', detail: expect.stringContaining('/amendments') });
    await amend('entered', await versionOf('entered'), { variants: ['petrel-20'], reason: 'Bought late.' }).expect(201);
    await moveEdition(editor, 'entered', 'closure');
    expect((await enter('entered', ['petrel-30']).expect(409)).body.code).toBe('editions/wrong-state');
  });
});

describe('closing', () => {
  test('an edition that is not open does not close', async () => {
    await plan('still-planned').expect(201);
    expect((await step('still-planned', 'closure', 1).expect(409)).body.code).toBe('editions/wrong-state');
    await expect(sql(`UPDATE edition SET state = 'closed' WHERE slug = 'still-planned'`)).rejects.toMatchObject({ code: 'FP001' });
  });

  test('waits for every review', async () => {
    await plan('busy').expect(201);
    await enter('busy', ['gannet-20']).expect(201);
    await moveEdition(editor, 'busy', 'opening');
    await handInEdition(house, 'busy', { variants: VARIANTS.slice(0, 1), seed: 40 });
    const version = await versionOf('busy');
    const { body } = await step('busy', 'closure', version).expect(409);
    expect(body).toMatchObject({ code: 'editions/work-in-progress', detail: expect.stringContaining('4 submissions') });
    const { body: list } = await house.reviewer.call('get', '/v1/submissions?edition=busy').expect(200);
    const returned = list.items[0].reference as string;
    await house.reviewer
      .call('post', `/v1/submissions/${returned}/reviews`)
      .set('If-Match', '"1"')
      .send({ decision: 'returned', query: { specimens: [1], question: 'Please look again.' } })
      .expect(201);
    await acceptAll(house.reviewer, 'busy');
    expect((await step('busy', 'closure', version).expect(409)).body.errors).toMatchObject([
      { pointer: '/standsInTheWay/0', code: 'submissions_returned', found: '1', detail: expect.stringContaining(returned) },
    ]);
    expect((await editor.call('get', '/v1/editions/busy/board').expect(200)).body.standsInTheWay).toMatchObject([
      { code: 'submissions_returned', count: 1, references: [returned], remedy: expect.stringContaining('/closure') },
    ]);
    await handInAgain(returned);
    await acceptAll(house.reviewer, 'busy');
    await step('busy', 'closure', version - 1).expect(412);
    expect((await step('busy', 'closure', version).expect(201)).body.state).toBe('closed');
  });
});

test('what was pinned at the opening stands, and the seal is public without naming an edition', async () => {
  for (const change of ["check_set = '[]'", "blind_key = ''"])
    await expect(runSql(house.t.databaseUrl, `UPDATE edition SET ${change} WHERE slug = 'busy'`)).rejects.toMatchObject({ code: 'FP001' });
  const { text, body } = await house.t.call('get', '/v1/commitments').expect(200);
  const [row] = await runSql(house.t.databaseUrl, "SELECT blind_key, blind_key_digest, check_set FROM edition WHERE slug = 'busy'");
  expect(body.items.map((item: any) => item.blindKeyDigest)).toContain(row!['blind_key_digest']);
  expect(sha256(row!['blind_key'] as string)).toBe(row!['blind_key_digest']);
  expect(row!['check_set']).toHaveLength(CHECKS.length);
  expect(text).not.toContain('busy');
});

describe('leaving out', () => {
  test('says why, moves the version, and is taken back', async () => {
    const version = await versionOf('busy');
    expect((await exclude('busy', 'gannet-20').expect(201)).body.version).toBe(version + 1);
    await exclude('busy', 'gannet-20').expect(409);
    const board = await editor.call('get', '/v1/editions/busy/board').expect(200);
    expect(board.body.entries).toEqual([
      {
        variant: 'gannet-20',
        missing: [],
        needs: [],
        evidence: expect.any(Array),
        exclusion: { reasonCode: 'notObtainable', words: 'Not sold.', effect: 'closedUp' },
      },
    ]);
    const look = async () => (await editor.call('post', '/v1/editions/busy/previews').expect(201)).body;
    expect(await look()).toMatchObject({ overall: [], excluded: ['gannet-20'], since: null });
    await editor.call('delete', '/v1/editions/busy/exclusions/gannet-20').expect(204);
    await editor.call('delete', '/v1/editions/busy/exclusions/gannet-20').expect(404);
    expect(await look()).toMatchObject({
      overall: [{ variant: 'gannet-20', place: 1, score: '3' }],
      excluded: [],
      since: {
        changes: expect.arrayContaining([
          { about: 'places', where: 'overall, gannet-20, place', before: null, after: '1' },
          { about: 'places', where: 'overall, gannet-20, score', before: null, after: '3' },
        ]),
      },
    });
    expect((await look()).since.changes).toEqual([]);
  });

  test('is for entries of the edition', async () => {
    await exclude('busy', 'petrel-40').expect(404);
    await exclude('no-edition', 'gannet-20').expect(404);
  });

  test('is not for somebody with a tie to the maker, nor is the way back', async () => {
    const tied = await house.t.caller(['editor']);
    await tied.call('post', '/v1/interests').send({ maker: MAKERS[0].slug, words: 'Sponsored boat.' }).expect(201);
    expect((await exclude('entered', 'gannet-20', tied).expect(409)).body.code).toBe('editions/interest');
    await exclude('entered', 'petrel-20', tied).expect(201);
    await exclude('entered', 'gannet-20').expect(201);
    expect((await tied.call('delete', '/v1/editions/entered/exclusions/gannet-20').expect(409)).body.code).toBe('editions/interest');
  });
});

test('every step of an edition is in the trail, with who did it', async () => {
  const rows = await sql(`SELECT action FROM audit_event WHERE object_id IN ('busy', 'busy/gannet-20') AND actor_id = $1 ORDER BY at, id`, [
    editor.accountId,
  ]);
  expect(rows.map(({ action }) => action)).toEqual([
    'edition.planned',
    'edition.entriesAdded',
    'edition.opened',
    'edition.closed',
    'entry.excluded',
    'entry.readmitted',
  ]);
});
