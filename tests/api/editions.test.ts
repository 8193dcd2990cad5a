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
});
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

  test('lists everything that stands in the way at once, on the board as in the refusal', async () => {
    await plan('far', { opensOn: '2025-01-01', closesOn: '2025-06-30' }).expect(201);
    const methods = [{ slug: 'straight-pull', number: 1 }];
    await editor.call('patch', '/v1/editions/far').set('If-Match', '"1"').send({ methods }).expect(200);
    const { body } = await step('far', 'opening', 2).expect(409);
    const { standsInTheWay } = (await editor.call('get', '/v1/editions/far/board').expect(200)).body;
    expect(standsInTheWay).toMatchObject([
      { code: 'no_entries', count: 1, references: [], remedy: expect.stringContaining('/entries') },
      {
        code: 'cannot_count',
        references: expect.arrayContaining([expect.stringContaining('named-knot'), expect.stringContaining('abrasion')]),
      },
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
    const [row] = await sql(`SELECT check_set_version, blind_key FROM edition WHERE slug = 'seen'`);
    expect(row).toMatchObject({ check_set_version: CHECK_SET_VERSION, blind_key: expect.stringMatching(/^salt \S{43}\n/) });
    expect((row!['blind_key'] as string).replace(/^.*\n/, '')).toBe(key);
    expect(body.blindKeyDigest).toBe(sha256(row!['blind_key'] as string));
    await editor
      .call('post', '/v1/schemes')
      .send({ ...SCHEME, number: 7 })
      .expect(201);
    for (const change of [
      `UPDATE division SET scheme_id = (SELECT id FROM scheme WHERE number = 7) WHERE edition_id = (SELECT id FROM edition WHERE slug = 'seen')`,
      `UPDATE edition SET blind_key_digest = repeat('0', 64) WHERE slug = 'seen'`,
      `UPDATE edition SET check_set_version = check_set_version + 1 WHERE slug = 'seen'`,
      `DELETE FROM division WHERE edition_id = (SELECT id FROM edition WHERE slug = 'seen')`,
    ])
      await expect(sql(change)).rejects.toMatchObject({
        code: 'FP001',
        message: expect.stringContaining('opening_pins_the_rules'),
      });
    for (const change of ['UPDATE edition_method SET edition_id = edition_id', 'DELETE FROM edition_method'])
      await expect(sql(change)).rejects.toMatchObject({ code: 'FP001' });
  });
});

const amend = (slug: string, version: number, change: object, by = editor) =>
  by.call('post', `/v1/editions/${slug}/amendments`).set('If-Match', `"${version}"`).send(change);

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
  // Without a salt whoever knows the few lines of a house finds by trying which spool is which.
  expect(row!['blind_key']).toMatch(/^salt [\w-]{43}\n/);
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

  test('many who leave out and take back at once all have an answer, and hold up nobody', async () => {
    await plan('raced').expect(201);
    await enter('raced', ['gannet-20']).expect(201);
    const takeBack = async () =>
      editor.call('delete', '/v1/editions/raced/exclusions/gannet-20').set('If-Match', `"${await versionOf('raced')}"`);
    const all = [...Array.from({ length: 20 }, () => exclude('raced', 'gannet-20')), ...Array.from({ length: 20 }, takeBack)];
    const statuses = new Set((await Promise.all([...all, editor.call('get', '/health/ready')])).map(({ status }) => status));
    expect([...statuses].filter((status) => ![200, 201, 204, 404, 409, 412].includes(status))).toEqual([]);
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
