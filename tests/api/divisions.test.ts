/** An edition with several divisions, from the plan to its second revision, through the API. */
import type {
  CategoryDocument,
  EditionDocument,
  EditionOfDivisions,
  VariantDocument,
} from '../../api/contract/documents/release-documents.js';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { createHouse, handInEdition } from '../support/house.js';
import type { House } from '../support/house.js';
import { runSql } from '../support/run-sql.js';
import { acceptAll, editionRequest, FORCE_SCHEME, moveEdition, publish, SCHEME, VARIANTS } from '../support/season.js';

const scheme = { slug: SCHEME.slug, number: 1 };
const BRAIDED = { slug: 'braided', name: 'Braided', takes: { materials: [], constructions: ['braided'] }, scheme };
const NYLON = {
  slug: 'nylon',
  name: 'Nylon',
  takes: { materials: ['Nylon'], constructions: [] },
  scheme: { slug: FORCE_SCHEME.slug, number: 1 },
};
const REASON = 'Sold as braid, and made of one strand.';
const NYLON_LINE = 'seven-weirs-eight';

let house: House;
beforeAll(async () => {
  house = await createHouse();
  await house.editor.call('post', '/v1/schemes').send(FORCE_SCHEME).expect(201);
  await correctLine({ material: 'nylon', construction: 'monofilament', carriers: null });
});
afterAll(() => house.t.close());

const sql = (statement: string) => runSql(house.t.databaseUrl, statement);
const plan = (change: object) =>
  house.editor.call('post', '/v1/editions').send(editionRequest('2026', { scheme: undefined, divisions: [BRAIDED, NYLON], ...change }));
const edition = async () => (await house.editor.call('get', '/v1/bench/editions/2026').expect(200)).body;
const board = async () => (await house.editor.call('get', '/v1/editions/2026/board').expect(200)).body;
const overrule = (variant: string, division: string) =>
  house.editor.call('post', '/v1/editions/2026/overrulings').send({ variant, division, reason: REASON });
const read = async <T>(path: string): Promise<T> => (await house.t.call('get', `/v1/editions/2026${path}`).expect(200)).body as T;

async function correctLine(change: object): Promise<void> {
  const { body } = await house.editor.call('get', `/v1/catalogue/lines/${NYLON_LINE}`).expect(200);
  await house.editor
    .call('patch', `/v1/catalogue/lines/${NYLON_LINE}`)
    .set('If-Match', `"${body.version}"`)
    .send({ ...change, reason: 'Read from the label again.' })
    .expect(200);
}
async function divide(divisions: object[]): Promise<void> {
  const { version } = await edition();
  await house.editor.call('patch', '/v1/editions/2026').set('If-Match', `"${version}"`).send({ divisions }).expect(200);
}

describe('planning', () => {
  test.each([
    ['a scheme beside divisions', { scheme }, '/divisions'],
    ['nothing to rank by', { divisions: undefined }, '/scheme'],
    ['one division alone', { divisions: [BRAIDED] }, '/divisions'],
    ['two of the same name', { divisions: [BRAIDED, { ...NYLON, slug: 'braided' }] }, '/divisions'],
    ['a name that an address has', { divisions: [BRAIDED, { ...NYLON, slug: 'board' }] }, '/divisions/1/slug'],
  ])('%s is refused', async (_, change, pointer) => {
    expect((await plan(change).expect(422)).body.errors).toMatchObject([{ pointer }]);
  });

  test('each division names its own scheme, which must be on record and countable', async () => {
    const unknown = { ...NYLON, scheme: { slug: 'none', number: 1 } };
    expect((await plan({ divisions: [BRAIDED, unknown] }).expect(422)).body.detail).toContain('scheme none number 1');
    const methods = [{ slug: 'straight-pull', number: 1 }];
    expect((await plan({ methods }).expect(422)).body).toMatchObject({ code: 'editions/cannot-count' });
    const { body } = await plan({}).expect(201);
    expect(body).toMatchObject({ divisions: [BRAIDED, NYLON] });
    expect(body).not.toHaveProperty('scheme');
  });
});

describe('each entry is in one division before the edition opens', () => {
  beforeAll(() =>
    house.editor
      .call('post', '/v1/editions/2026/entries')
      .send({ variants: VARIANTS.map(({ slug }) => slug) })
      .expect(201),
  );
  const inTheWay = async () => (await board()).standsInTheWay.map(({ code, references }: any) => [code, references]);
  const [gannets, petrels] = ['gannet', 'petrel'].map((line) => VARIANTS.map(({ slug }) => slug).filter((slug) => slug.startsWith(line)));

  test.each([
    ['no_division', { materials: ['PVDF'], constructions: [] }, petrels],
    ['several_divisions', { materials: [], constructions: [] }, gannets],
  ])('%s stands in the way, and the record keeps to it', async (code, takes, entries) => {
    await divide([BRAIDED, { ...NYLON, takes }]);
    expect(await inTheWay()).toEqual([[code, entries]]);
    await expect(sql(`UPDATE edition SET state = 'open' WHERE slug = '2026'`)).rejects.toThrow('entry_is_in_one_division');
    await divide([BRAIDED, NYLON]);
    expect(await inTheWay()).toEqual([]);
  });

  test('an editor overrules the rule with a reason, which stays when the plan changes', async () => {
    await overrule('gannet-30', 'pvdf').expect(422);
    await overrule('gannet-30', 'nylon').expect(201);
    await divide([NYLON, BRAIDED]);
    await divide([BRAIDED, NYLON]);
    const found = (await board()).entries.map(({ variant, division, overruled }: any) => [variant, division, overruled]);
    expect(found).toEqual([
      ['gannet-20', 'braided', undefined],
      ['gannet-30', 'nylon', REASON],
      ...petrels!.map((variant) => [variant, 'nylon', undefined]),
    ]);
    expect((await board()).entries.at(-1).evidence.map(({ category }: any) => category)).toEqual(['force']);
  });

  test.each([
    [
      'edition_has_divisions',
      `UPDATE division SET slug = NULL, name = NULL, materials = '{}', constructions = '{}' WHERE slug = 'braided'`,
    ],
    ['division_is_named_or_alone', `UPDATE division SET name = NULL WHERE slug = 'nylon'`],
    ['overruling_has_a_reason', `UPDATE overruling SET reason = ' '`],
    [
      'edition_has_divisions',
      `INSERT INTO edition (id, slug, name, state, opens_on, closes_on) VALUES (gen_random_uuid(), 'x', 'x', 'planned', now(), now())`,
    ],
  ])('%s is a rule of the record', async (rule, statement) => {
    await expect(sql(statement)).rejects.toThrow(rule);
  });

  test('and what an edition opened with stays', async () => {
    await moveEdition(house.editor, '2026', 'opening');
    for (const change of [`SET scheme_id = scheme_id`, `SET materials = '{}'`])
      await expect(sql(`UPDATE division ${change}`)).rejects.toThrow('opening_pins_the_rules');
    await expect(sql('DELETE FROM division')).rejects.toThrow();
  });
});

test('a line that is corrected meanwhile keeps the edition from closing, until it is where it belongs', async () => {
  await handInEdition(house, '2026', {});
  await acceptAll(house.reviewer, '2026');
  await correctLine({ material: 'PVDF' });
  const { version } = await edition();
  const refused = await house.editor.call('post', '/v1/editions/2026/closure').set('If-Match', `"${version}"`).expect(409);
  expect(refused.body.errors).toMatchObject([{ code: 'no_division' }]);
  await correctLine({ material: 'nylon' });
  await moveEdition(house.editor, '2026', 'closure');
});

test('the preview and the plan of a season are those of each division', async () => {
  const { body } = await house.editor.call('post', '/v1/editions/2026/previews').expect(201);
  expect(body.divisions.map(({ division, categories }: any) => [division, Object.keys(categories)])).toEqual([
    ['braided', ['stress', 'knot', 'abrasion']],
    ['nylon', ['force']],
  ]);
  const planned = (query: string) => house.editor.call('get', `/v1/editions/2026/plan?category=force${query}`);
  for (const query of ['', '&division=pvdf', '&division=braided'])
    expect((await planned(query).expect(422)).body).toMatchObject({
      code: 'editions/no-such-category',
      detail: '2026 has no category force there, only braided: stress, knot, abrasion; nylon: force.',
    });
  expect((await planned('&division=nylon').expect(200)).body).toMatchObject({ entries: 4 });
});

describe('published', () => {
  beforeAll(async () => {
    await house.t.app.select(ReleasesModule).get(ReleaseWork).start(false);
    expect(await publish(house.editor, '2026')).toBe(1);
  });

  test('each division has its own tables at its own address', async () => {
    const { divisions } = await read<EditionOfDivisions>('');
    expect(divisions.map(({ slug, variants }) => [slug, variants.length])).toEqual([
      ['braided', 1],
      ['nylon', 4],
    ]);
    const nylon = await read<EditionDocument>('/divisions/nylon');
    expect(nylon.overall.map(({ place }) => place).toSorted()).toEqual([1, 2, 3, 4]);
    expect(nylon.overruled).toEqual([{ variant: 'gannet-30', reason: REASON }]);
    expect(await read('/divisions/nylon/standings')).toEqual(nylon);
    expect((await read<CategoryDocument>('/divisions/braided/standings/stress')).rows.map(({ place }) => place)).toEqual([1]);
    const filtered = await read<CategoryDocument>('/divisions/nylon/standings/force?material=nylon');
    expect(filtered.rows.map(({ variant }) => variant.slug.slice(0, 6))).toEqual(['petrel', 'petrel', 'petrel']);
    expect((await read<VariantDocument>('/variants/gannet-30')).overruled).toBe(REASON);
    await read('/divisions/nylon/records');
    await read('/divisions/nylon/pairs');
    for (const path of ['/records', '/pairs', '/standings/force', '/nylon/standings/stress', '/pvdf'])
      await house.t.call('get', `/v1/editions/2026${path}`).expect(404);
  });

  test('an entry is put back where the rule says by the next revision, with its erratum', async () => {
    await house.editor.call('delete', '/v1/editions/2026/overrulings/gannet-30').expect(204);
    await house.editor.call('delete', '/v1/editions/2026/overrulings/gannet-30').expect(404);
    const look = (await house.editor.call('post', '/v1/editions/2026/previews').expect(201)).body;
    for (const { changes } of [look.published, look.since]) {
      const told = changes.map(({ division, where }: any) => [where, division]);
      for (const division of ['braided', 'nylon']) expect(told).toContainEqual(['overall, gannet-30, place', division]);
    }
    const { variant, place } = (await read<EditionDocument>('/divisions/nylon')).overall[0]!;
    const expects = [{ where: `overall, ${variant.slug}, place`, before: String(place) }];
    await publish(house.editor, '2026', { reasonCode: 'catalogueError', words: 'It is a braid after all.', expects });
    const { divisions, erratum } = await read<EditionOfDivisions>('');
    expect(divisions.map(({ variants }) => variants.length)).toEqual([2, 3]);
    const isScore = ({ where }: { readonly where: string }) => where === 'overall, gannet-30, score';
    expect(erratum!.changes.filter(isScore)).toMatchObject([
      { division: 'braided', before: null },
      { division: 'nylon', after: null },
    ]);
    const braided = await read<EditionDocument>('/divisions/braided');
    expect(braided.overruled).toEqual([]);
    expect(braided.erratum!.changes.filter(isScore)).toEqual([expect.not.objectContaining({ division: 'braided' })]);
    const { items } = (await house.t.call('get', '/v1/changes').expect(200)).body;
    expect(items.at(-1).erratum).toEqual(erratum);
  });
});
