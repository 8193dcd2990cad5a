import { CatalogueModule } from '../../api/catalogue/catalogue.module.js';
import { SuccessionsReadModel } from '../../api/catalogue/successions.read-model.js';
import { SPOOL } from '../support/catalogue-fixtures.js';
import { createHouse, handInEdition } from '../support/house.js';
import type { House } from '../support/house.js';
import { proposeReidentification } from '../support/propose.js';
import { runSql } from '../support/run-sql.js';
import { openEdition, VARIANTS } from '../support/season.js';

let house: House;
beforeAll(async () => {
  house = await createHouse();
});
afterAll(() => house.t.close());

const succeed = (kind: string, slug: string, successor: string) =>
  house.editor.call('post', '/v1/catalogue/successions').send({ kind, slug, successor, reason: 'It is sold under another name now.' });
const changes = async (): Promise<any[]> => (await house.t.call('get', '/v1/changes?limit=1000').expect(200)).body.items;

const HOUR_MS = 3_600_000;
/** A revision without files, past the application. @param offMs from the time of the house */
async function publishAt(revision: number, offMs: number): Promise<void> {
  await runSql(
    house.t.databaseUrl,
    `INSERT INTO release (id, edition_id, revision, state, requested_by_id, requested_at, erratum)
     SELECT gen_random_uuid(), id, $2, 'building', $1, now(), $3 FROM edition`,
    [house.editor.accountId, revision, revision === 1 ? null : ERRATUM],
  );
  const at = new Date(house.t.clock.time.getTime() + offMs).toISOString();
  await runSql(
    house.t.databaseUrl,
    `UPDATE release SET state = 'superseded' WHERE revision < ${revision};
     UPDATE release SET state = 'published', published_at = '${at}', digest = 'd${revision}', manifest = '{"files":[]}', signature = '{"publicKey":""}'
     WHERE revision = ${revision}`,
  );
}
// Whatever a correction is said to be for, what it does is told.
const ERRATUM = JSON.stringify({ reasonCode: 'catalogueError', words: 'A name.', expected: [], changes: [], consequences: 'none' });

test('what has a successor leads there for ever, in the API and on the site (308, RFC 9110)', async () => {
  await succeed('variant', 'gannet-20', 'gannet-30').expect(201);
  await succeed('maker', 'marlow-quay', 'seven-weirs').expect(201);
  const leads: [string, string][] = [
    ['/v1/variants/gannet-20', '/v1/variants/gannet-30'],
    ['/v1/variants/gannet-20/history?x=1', '/v1/variants/gannet-30/history?x=1'],
    ['/variants/gannet-20/', '/variants/gannet-30/'],
    ['/makers/marlow-quay/', '/makers/seven-weirs/'],
    ['/de/makers/marlow-quay/', '/de/makers/seven-weirs/'],
  ];
  for (const [from, to] of leads) {
    const answer = await house.t.call('get', from);
    expect([from, answer.status, answer.headers['location']]).toEqual([from, 308, to]);
  }
  await house.t.call('get', '/v1/variants/gannet-30').expect(404);
  await house.t.call('post', '/v1/variants/gannet-20').expect(404);
});

test('who follows from one to the next comes to the last, and never round', async () => {
  await succeed('variant', 'gannet-30', 'petrel-20').expect(201);
  const { headers } = await house.t.call('get', '/v1/variants/gannet-20').expect(308);
  expect(headers['location']).toBe('/v1/variants/petrel-20');
  const round = await succeed('variant', 'petrel-20', 'gannet-20').expect(409);
  expect(round.body.detail).toMatch(/leads back/);
  await succeed('variant', 'gannet-20', 'petrel-30').expect(409);
  await succeed('variant', 'petrel-30', 'nobody').expect(422);
  await succeed('variant', 'nobody', 'petrel-30').expect(404);
  await succeed('variant', 'petrel-30', 'petrel-30').expect((answer) => answer.status >= 400 && answer.status < 500);
});

test('the record itself takes no circle, of however many', async () => {
  const insert = (slug: string, successor: string) =>
    runSql(
      house.t.databaseUrl,
      `INSERT INTO succession (id, kind, slug, successor, reason, by_id, at) VALUES (gen_random_uuid(), 'variant', $1, $2, 'x', $3, now())`,
      [slug, successor, house.editor.accountId],
    );
  for (const slug of ['gannet-20', 'gannet-30']) await expect(insert('petrel-20', slug)).rejects.toThrow('succession_comes_to_an_end');
});

test('slugs never change: no route takes another one', async () => {
  const { body: maker } = await house.editor.call('get', '/v1/catalogue/makers/seven-weirs').expect(200);
  const send = (change: object) =>
    house.editor.call('patch', '/v1/catalogue/makers/seven-weirs').set('If-Match', `"${maker.version}"`).send(change);
  await send({ slug: 'seven-locks' }).expect(422);
});

test('who follows changes is told of successors, and of new names of what was published', async () => {
  const { body } = await house.editor.call('get', '/v1/catalogue/successions').expect(200);
  expect(body.items).toHaveLength(3);
  expect((await changes()).map(({ kind, thing }) => [kind, thing])).toEqual([
    ['thing.succeeded', { kind: 'variant', slug: 'gannet-20', successor: 'gannet-30' }],
    ['thing.succeeded', { kind: 'maker', slug: 'marlow-quay', successor: 'seven-weirs' }],
    ['thing.succeeded', { kind: 'variant', slug: 'gannet-30', successor: 'petrel-20' }],
  ]);
  const rename = (name: string) => runSql(house.t.databaseUrl, `UPDATE maker SET name = $1 WHERE slug = 'seven-weirs'`, [name]);
  await rename('Not Yet Out');
  expect(await changes()).toHaveLength(3);
  await openEdition(
    house.editor,
    '2026',
    VARIANTS.map(({ slug }) => slug),
  );
  await publishAt(1, -HOUR_MS);
  await rename('Eight Weirs');
  const named = (await changes()).filter(({ kind }) => kind === 'variant.renamed').map(({ thing }) => thing);
  expect(named.map(({ slug }) => slug)).toEqual(['petrel-20', 'petrel-30', 'petrel-40']);
  expect(named[0].name).toMatch(/^Eight Weirs /);
});

test('a variant that no spool is any more answers with the one that its results went to, once that is published; with a spool again for itself', async () => {
  const code = house.codes.get('petrel-40') ?? '';
  await handInEdition(house, '2026', { variants: VARIANTS.filter(({ slug }) => slug === 'petrel-40') });
  const proposal = await proposeReidentification(house.reviewer, code, 'petrel-30', 'Its linear density is that of the smaller one.');
  await house.editor.call('post', `/v1/catalogue/spools/${code}/reidentifications`).set('If-Match', '"1"').send({ proposal }).expect(201);
  expect((await house.t.call('get', '/variants/petrel-40/')).status).not.toBe(308);
  await publishAt(2, HOUR_MS);
  expect((await changes()).slice(-2)).toMatchObject([
    { kind: 'erratum.published', revision: 2 },
    { kind: 'variant.reidentified', thing: { kind: 'variant', slug: 'petrel-40', successor: 'petrel-30' } },
  ]);
  const successions = house.t.app.select(CatalogueModule).get(SuccessionsReadModel);
  await successions.catchUp();
  for (const address of ['/v1/variants/petrel-40', '/variants/petrel-40/'])
    expect((await house.t.call('get', address).expect(308)).headers['location']).toBe(address.replace('40', '30'));
  // Its own page in the edition stays.
  expect((await house.t.call('get', '/v1/editions/2026/variants/petrel-40')).status).not.toBe(308);
  const { body: spool } = await house.editor
    .call('post', '/v1/catalogue/spools')
    .send({ ...SPOOL, variant: 'petrel-40' })
    .expect(201);
  await successions.catchUp();
  expect((await house.t.call('get', '/v1/variants/petrel-40')).status).not.toBe(308);
  const change = house.editor.call('patch', `/v1/catalogue/spools/${spool.blindCode}`).set('If-Match', '"1"');
  await change.send({ variant: 'petrel-30' }).expect(200);
  await successions.catchUp();
  await house.t.call('get', '/v1/variants/petrel-40').expect(308);
  // Each would lead to the other: then what an editor says stands. From further away one leads through both kinds, once, to the last.
  await succeed('variant', 'petrel-30', 'petrel-40').expect(201);
  await succeed('variant', 'petrel-20', 'petrel-30').expect(201);
  for (const slug of ['gannet-20', 'gannet-30', 'petrel-20', 'petrel-30'])
    expect((await house.t.call('get', `/v1/variants/${slug}`).expect(308)).headers['location']).toBe('/v1/variants/petrel-40');
  expect((await house.t.call('get', '/v1/variants/petrel-40')).status).not.toBe(308);
});

test('variants whose one spool was told wrong twice lead nowhere, and who comes to them stays there', async () => {
  const slugs = ['round-1', 'round-2', 'round-3', 'round-4'];
  for (const slug of slugs)
    await house.editor
      .call('post', '/v1/catalogue/variants')
      .send({ slug, line: 'seven-weirs-eight', size: slug, colour: 'moss' })
      .expect(201);
  for (const [slug, successor] of [
    ['round-1', 'round-2'],
    ['round-2', 'round-1'],
    ['round-3', 'round-1'],
    ['round-4', 'round-3'],
  ])
    await runSql(house.t.databaseUrl, `SELECT tell_change_of_thing('variant.reidentified', $1)`, [{ kind: 'variant', slug, successor }]);
  const led = await runSql(house.t.databaseUrl, 'SELECT slug, successor FROM leads_to WHERE slug = ANY($1) ORDER BY slug', [slugs]);
  expect(led).toEqual([
    { slug: 'round-3', successor: 'round-1' },
    { slug: 'round-4', successor: 'round-1' },
  ]);
});
