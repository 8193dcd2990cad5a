import type { CategoryDocument } from '../../api/contract/documents/release-documents.js';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { CELL_GROUPS } from '../../api/contract/cell-groups.js';
import { insertEdition } from '../support/insert-edition.js';
import { runSql } from '../support/run-sql.js';
import { createHouse, workEdition } from '../support/house.js';
import type { House } from '../support/house.js';
import { proposeWithdrawal } from '../support/propose.js';
import { moveEdition, publish } from '../support/season.js';

let house: House;
beforeAll(async () => {
  house = await createHouse();
  await workEdition(house, '2026');
  const { version } = (await house.editor.call('get', '/v1/bench/editions/2026').expect(200)).body as { version: number };
  await house.editor
    .call('post', '/v1/editions/2026/amendments')
    .set('If-Match', `"${version}"`)
    .send({ closesOn: '2027-01-31', reason: 'A rig was down.' })
    .expect(201);
  await moveEdition(house.editor, '2026', 'closure');
  await house.t.app.select(ReleasesModule).get(ReleaseWork).start(false);
});
afterAll(() => house.t.close());

interface Look {
  published: { revision: number; changes: { about: string; where: string; before: string | null; after: string | null }[] } | null;
  since: { changes: object[] } | null;
  categories: Record<string, object[]>;
  edition: string;
}
const look = async (): Promise<Look> => (await house.editor.call('post', '/v1/editions/2026/previews').expect(201)).body as Look;

test('before anything is published there is nothing to tell it against', async () => {
  expect(await look()).toMatchObject({ edition: '2026', published: null, since: null });
  await house.reviewer.call('post', '/v1/editions/2026/previews').expect(403);
  await house.editor.call('post', '/v1/editions/none/previews').expect(404);
});

test('what leaving an entry out would change is told beforehand, and is what changes then', async () => {
  const exclusion = { variant: 'petrel-40', reasonCode: 'notObtainable', words: 'It cannot be bought.', effect: 'closedUp' };
  const suppose = (variant: string) => house.editor.call('post', '/v1/editions/2026/exclusions/preview').send({ ...exclusion, variant });
  const { body } = await suppose('petrel-40').expect(200);
  const places = (body.changes as { where: string; after: string | null }[]).filter(({ where }) => where.endsWith(', place'));
  expect(places).toContainEqual(expect.objectContaining({ where: 'overall, petrel-40, place', after: null }));
  expect(places.length).toBeGreaterThan(1);
  await suppose('none').expect(404);
  // Nothing of it is stored.
  expect((await look()).since!.changes).toEqual([]);
  await house.editor.call('post', '/v1/editions/2026/exclusions').send(exclusion).expect(201);
  expect((await look()).since!.changes).toEqual(body.changes);
  await house.editor.call('delete', '/v1/editions/2026/exclusions/petrel-40').expect(204);
  expect((await look()).since!.changes).toHaveLength(body.changes.length);
});

test('what is published says when it was closed, and what it took besides', async () => {
  await publish(house.editor, '2026');
  expect((await house.t.call('get', '/v1/editions/2026').expect(200)).body).toMatchObject({
    edition: { openedOn: '2026-01-01', closedOn: '2026-03-15' },
    amendments: [{ on: '2026-03-15', reason: 'A rig was down.', closesOn: { before: '2026-12-31', after: '2027-01-31' } }],
  });
});

test('after a withdrawal it tells what would change of what readers have, as an erratum expects it', async () => {
  const unchanged = await look();
  expect(unchanged).toMatchObject({ published: { revision: 1, changes: [] }, since: { changes: [] } });
  const { rows } = (await house.t.call('get', '/v1/releases/2026/1/documents/standings/knot.json').expect(200)).body as CategoryDocument;
  // Unchanged, it shows what readers have: values with their intervals, and groups.
  expect(rows.some(({ figure }) => figure.low !== null)).toBe(true);
  expect(unchanged.categories['knot']).toMatchObject(
    rows.map(({ variant, place, group, figure: { value, low, high } }) => ({
      variant: variant.slug,
      place,
      group,
      figure: { value, low, high },
    })),
  );
  const { body } = await house.editor.call('get', '/v1/submissions?edition=2026&limit=200').expect(200);
  const spool = house.codes.get('petrel-40');
  const knot = (body.items as any[]).find((item) => item.spool === spool && item.method.slug === 'named-knot');
  await house.editor
    .call('post', `/v1/submissions/${knot.reference}/withdrawal`)
    .set('If-Match', `"${knot.version}"`)
    .send({ proposal: await proposeWithdrawal(house.reviewer, knot.reference) })
    .expect(201);
  const { published, since } = await look();
  const changes = published!.changes;
  const { value, unit, specimens } = rows.find((row) => row.variant.slug === 'petrel-40')!.figure;
  for (const [about, what, before] of [
    ['values', 'value', `${value} ${unit}`],
    ['evidence', 'specimens', String(specimens)],
  ])
    expect(changes).toContainEqual({ about, where: `knot, petrel-40, ${what}`, before, after: null });
  const order = CELL_GROUPS.filter((group) => changes.some(({ about }) => about === group));
  expect([...new Set(changes.map(({ about }) => about))]).toEqual(order);
  expect(since!.changes).toEqual(changes);
  expect((await look()).since!.changes).toEqual([]);
  const expects = changes.flatMap(({ where, before }) => (before === null ? [] : [{ where, before }]));
  expect(await publish(house.editor, '2026', { reasonCode: 'withdrawal', words: 'A rig was found bent.', expects })).toBe(2);
  expect((await look()).published).toMatchObject({ revision: 2, changes: [] });
});

test('a correction may expect some thousand cells, and long ones; beyond that it is told which to leave out', async () => {
  const expecting = (count: number, before = '1') => ({
    ...{ reasonCode: 'withdrawal', words: 'A rig was found bent.' },
    expects: Array.from({ length: count }, (_, i) => ({ where: `overall, nobody-${i}, place`, before })),
  });
  const order = (erratum: object) => house.editor.call('post', '/v1/editions/2026/releases').send({ erratum });
  const { body } = await order(expecting(5000)).expect(409);
  expect([body.code, body.errors.length]).toEqual(['releases/expected-otherwise', 100]);
  await order(expecting(1, 'What the house says of itself. '.repeat(1000))).expect(409);
  const { errors } = (await order(expecting(5001)).expect(422)).body;
  expect(errors).toEqual([
    expect.objectContaining({
      pointer: '/erratum/expects',
      detail: expect.stringMatching(/^Found 5001 cells, expected at most 5000: leave out .* The erratum tells every cell that changes/),
    }),
  ]);
});

test('an edition that was put on record past the rules is refused with what does not fit, and no release of it is ordered', async () => {
  await insertEdition(house.t.databaseUrl, 'past', 'closed');
  const ask = (path: string, body: object) => house.editor.call('post', `/v1/editions/past/${path}`).send(body);
  for (const answer of [await ask('previews', {}).expect(422), await ask('releases', { erratum: null }).expect(422)])
    expect(answer.body).toMatchObject({
      code: 'editions/cannot-count',
      detail: expect.stringContaining('Nothing can be computed of edition past'),
      errors: [{ code: 'scheme_unreadable', detail: expect.stringContaining('plain 1') }],
    });
  // Its scheme can be read, but it measures nothing of what that ranks.
  await runSql(
    house.t.databaseUrl,
    `BEGIN; SET LOCAL session_replication_role = replica;
     UPDATE division SET scheme_id = (SELECT id FROM scheme WHERE slug = 'three-places') WHERE edition_id = (SELECT id FROM edition WHERE slug = 'past');
     COMMIT`,
  );
  const { body } = await ask('previews', {}).expect(422);
  expect(body.errors).toEqual([expect.objectContaining({ code: 'cannot_count', detail: expect.stringContaining('straight-pull') })]);
});
