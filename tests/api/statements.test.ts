import { list, named, tablesOf } from '../../api/platform/backup/tables.js';
import { GatherRelease } from '../../api/releases/publication/gather-release.js';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { createHouse, workEdition } from '../support/house.js';
import type { House } from '../support/house.js';
import { runSql, withClient } from '../support/run-sql.js';
import { erratumFor, moveEdition, publish } from '../support/season.js';
import { HOUSE_STATEMENT } from '../support/state-house.js';

let house: House;
beforeAll(async () => {
  house = await createHouse();
  await workEdition(house, '2026');
  await moveEdition(house.editor, '2026', 'closure');
  await house.t.app.select(ReleasesModule).get(ReleaseWork).start(false);
});
afterAll(() => house.t.close());

const say = (body: object) => house.editor.call('post', '/v1/remarks').send(body);
const read = async (path: string) => (await house.t.call('get', path).expect(200)).body;
const sql = (text: string) => runSql(house.t.databaseUrl, text);

test('an edition is not published before the house has said who it is; the refusal names what is missing', async () => {
  await house.editor
    .call('post', '/v1/house-statement')
    .send({ ...HOUSE_STATEMENT, funding: null, people: [] })
    .expect(201);
  const refused = await house.editor.call('post', '/v1/editions/2026/releases').send({ erratum: null }).expect(409);
  expect(refused.body.code).toBe('releases/house-not-stated');
  expect(refused.body.errors.map(({ pointer }: any) => pointer)).toEqual(['/house-statement/people', '/house-statement/funding']);
  const { body } = await house.editor.call('post', '/v1/house-statement').send(HOUSE_STATEMENT).expect(201);
  expect(body).toMatchObject({ ...HOUSE_STATEMENT, number: 3, missing: [] });
  expect((await house.editor.call('get', '/v1/house-statement').expect(200)).body).toEqual(body);
});

test('caveats and replies go into the release; what is unknown is refused', async () => {
  const unknown = await say({ kind: 'caveat', about: { kind: 'line', slug: 'nowhere' }, words: 'x' }).expect(422);
  expect(unknown.body.errors[0].pointer).toBe('/about/slug');
  await say({ kind: 'reply', variant: 'gannet-20', edition: '2026', category: 'nowhere', signedBy: 'M.', words: 'x' }).expect(422);
  await say({ kind: 'caveat', about: { kind: 'variant', slug: 'gannet-20' }, words: 'Its coating could not be judged.' }).expect(201);
  await say({ kind: 'reply', variant: 'gannet-20', edition: '2026', category: 'stress', signedBy: 'A maker', words: 'We differ.' }).expect(
    201,
  );
  expect(await publish(house.editor, '2026')).toBe(1);
  expect((await read('/v1/editions/2026/remarks')).items).toEqual([
    expect.objectContaining({
      kind: 'caveat',
      words: 'Its coating could not be judged.',
      signedBy: 'E. Sallow',
      on: '2026-03-15',
      variants: ['gannet-20'],
    }),
    expect.objectContaining({ kind: 'reply', category: 'stress', signedBy: 'A maker', variants: ['gannet-20'] }),
  ]);
  expect(await read('/v1/editions/2026/house')).toMatchObject({ ...HOUSE_STATEMENT, statement: 3, licence: { name: 'CC-BY-4.0' } });
});

test('a remark is superseded or ended once, with a reason, and the erratum tells it', async () => {
  const { items } = (await house.editor.call('get', '/v1/remarks').expect(200)).body;
  const [reply, caveat] = items;
  house.t.clock.time = new Date('2026-03-16T12:00:00Z');
  const at = `/v1/remarks/${caveat.id}`;
  const next = await house.editor
    .call('post', `${at}/successor`)
    .send({ words: 'It could be judged.', reason: 'Looked again.' })
    .expect(201);
  expect(next.body).toMatchObject({ words: 'It could be judged.', supersedes: caveat.id, end: null });
  expect((await house.editor.call('post', `${at}/ending`).send({ reason: 'Again.' }).expect(409)).body.code).toBe('statements/ended');
  await house.editor.call('post', `/v1/remarks/${reply.id}/ending`).send({ reason: 'Taken back.' }).expect(201);
  expect(await publish(house.editor, '2026', await erratumFor(house.editor, '2026', 'catalogueError', 'Words.'))).toBe(2);
  const { erratum } = await read('/v1/editions/2026');
  expect(erratum.changes).toEqual([
    {
      where: 'caveat, gannet-20, words',
      before: 'Its coating could not be judged. (E. Sallow, 2026-03-15)',
      after: 'It could be judged. (E. Sallow, 2026-03-16)',
    },
    { where: 'reply, gannet-20, stress, words', before: 'We differ. (A maker, 2026-03-15)', after: null },
    expect.objectContaining({ where: 'documents/remarks.json, content' }),
  ]);
  expect(erratum.consequences).toContain('2 statements in words changed');
});

test('how rows lie in the database reaches no release, not even the order of what a remark is about', async () => {
  await say({ kind: 'caveat', about: { kind: 'construction', slug: 'braided' }, words: 'Braids flatten on the drum.' }).expect(201);
  const gather = house.t.app.select(ReleasesModule).get(GatherRelease);
  const gathered = () => gather.run('2026', 3, house.t.clock.time, null);
  const before = await gathered();
  expect(before.remarks?.map(({ variants }) => variants.length)).toContain(5);
  await withClient(house.t.databaseUrl, async (client) => {
    await client.query('BEGIN; SET LOCAL session_replication_role = replica');
    for (const { name, columns } of await tablesOf(client))
      await client.query(`
        CREATE TEMP TABLE turned ON COMMIT DROP AS SELECT ${list(columns)} FROM ${named(name)} ORDER BY ctid DESC;
        DELETE FROM ${named(name)};
        INSERT INTO ${named(name)} (${list(columns)}) SELECT ${list(columns)} FROM turned ORDER BY ctid;
        DROP TABLE turned`);
    await client.query('COMMIT; ANALYZE');
  });
  expect(await gathered()).toEqual(before);
});

test('the database lets nothing that was said change or go, and a successor speak of nothing else', async () => {
  await expect(sql(`UPDATE "remark" SET "words" = 'Otherwise.'`)).rejects.toMatchObject({ code: 'FP001' });
  await expect(sql('DELETE FROM "remark_end"')).rejects.toMatchObject({ code: 'FP001' });
  await expect(sql(`UPDATE "house_statement" SET "funding" = 'Others.'`)).rejects.toMatchObject({ code: 'FP001' });
  await expect(
    sql(`INSERT INTO "remark" ("id", "kind", "construction", "words", "signed_by", "by_id", "at", "supersedes_id")
         SELECT gen_random_uuid(), 'caveat', 'fused', 'x', 'y', "by_id", "at", "id" FROM "remark" WHERE "kind" = 'caveat' LIMIT 1`),
  ).rejects.toThrow('successor_speaks_of_the_same');
});
