/** Methods are data: any slug counts by the series that its version states, and what could never count is refused when it is made. */
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { csvFile, diameterRows, inventPulls, inventPullsOf, inventPieces, pullRows } from '../support/hand-in-csv.js';
import { createHouse } from '../support/house.js';
import type { House } from '../support/house.js';
import { METHOD_SERIES } from '../support/method-series.js';
import {
  acceptAll,
  editionRequest,
  erratumFor,
  METHOD_VERSION,
  moveEdition,
  openEdition,
  publish,
  SCHEME,
  VARIANTS,
} from '../support/season.js';

let house: House;
const knotted = METHOD_SERIES['named-knot'][1]!;
const [stress, knot] = SCHEME.rules.categories as [any, any];
const DIAMETER = { timeToBreakS: null, minimumSpecimens: 1 };

beforeAll(async () => {
  house = await createHouse();
  await method('house-break', METHOD_SERIES['straight-pull']);
  await method('tied-to-leader', METHOD_SERIES['named-knot']);
  await method('tied-alone', [knotted]);
  await method('later-knot', METHOD_SERIES['straight-pull']);
  await version('later-knot', { number: 2, effectiveFrom: '2026-03-01', series: METHOD_SERIES['named-knot'] });
  await method('outline-alone', METHOD_SERIES.diameter, {
    parameters: { areaFrom: null },
    limits: { ...METHOD_VERSION.limits, ...DIAMETER },
  });
  await method('outline-solid', METHOD_SERIES.diameter, { parameters: { areaFrom: 'solid' } });
});
afterAll(() => house.t.close());

const version = (slug: string, change: object) =>
  house.editor
    .call('post', `/v1/catalogue/methods/${slug}/versions`)
    .send({ ...METHOD_VERSION, ...change })
    .expect(201);
async function method(slug: string, series: readonly object[], change: object = {}): Promise<void> {
  await house.editor.call('post', '/v1/catalogue/methods').send({ slug, name: slug }).expect(201);
  await version(slug, { series, ...change });
}
const schemeWith = (slug: string, categories: readonly object[]) =>
  house.editor.call('post', '/v1/schemes').send({ ...SCHEME, slug, rules: { ...SCHEME.rules, categories } });
const plan = (slug: string, scheme: string, methods: readonly [slug: string, number: number][]) =>
  house.editor.call('post', '/v1/editions').send({
    ...editionRequest(slug),
    scheme: { slug: scheme, number: 1 },
    methods: methods.map(([name, number]) => ({ slug: name, number })),
  });

describe('a scheme is refused when a category could never count', () => {
  test.each([
    [
      'an unknown method',
      { ...knot, method: 'no-such' },
      '/rules/categories/0/method',
      'no_version',
      /knot needs the method no-such; .*add one/,
    ],
    [
      'an unknown series',
      { ...knot, series: 'looped' },
      '/rules/categories/0/series',
      'unknown_series',
      /"looped".*untreated \(breakingForce\), knotted/,
    ],
    [
      'a series of another kind',
      { ...knot, quantity: 'breakingForce', unit: 'N', method: 'diameter', series: 'outline' },
      '/rules/categories/0/series',
      'other_kind',
      /kind breakingForce from diameter/,
    ],
    [
      'a retention of untreated pulls',
      { ...knot, series: 'untreated' },
      '/rules/categories/0/series',
      'not_treated',
      /Name the treated series/,
    ],
    [
      'a retention with nothing to divide by',
      { ...knot, method: 'tied-alone' },
      '/rules/categories/0/series',
      'nothing_to_divide_by',
      /no such series\. Add a version/,
    ],
    [
      'a stress over an unknown diameter',
      { ...stress, section: { method: 'no-such', series: 'outline' } },
      '/rules/categories/0/section/method',
      'no_version',
      /stress needs the method no-such/,
    ],
    [
      'a stress over pulls',
      { ...stress, section: { method: 'abrasion', series: 'abraded' } },
      '/rules/categories/0/section/series',
      'other_kind',
      /diameterAlongStations/,
    ],
    [
      'a stress over diameters that make no section',
      { ...stress, section: { method: 'outline-alone', series: 'outline' } },
      '/rules/categories/0/section/method',
      'no_section',
      /Set areaFrom/,
    ],
    [
      'a stress over a solid section without mass and length',
      { ...stress, section: { method: 'outline-solid', series: 'outline' } },
      '/rules/categories/0/section/method',
      'no_section',
      /Set areaFrom/,
    ],
    [
      'a stress that names no diameter',
      { ...stress, section: null },
      '/rules/categories/0/section',
      'custom',
      /names the method and series of the diameters/,
    ],
    [
      'a retention that names a diameter',
      { ...knot, section: stress.section },
      '/rules/categories/0/section',
      'custom',
      /no other quantity does/,
    ],
    ['a unit that is not that of the quantity', { ...knot, unit: 'N' }, '/rules/categories/0/unit', 'custom', /expected %/],
  ])('%s', async (_, category, pointer, code, detail) => {
    const { body } = await schemeWith('refused', [category]).expect(422);
    expect(body.errors).toEqual([{ pointer, code, detail: expect.stringMatching(detail) }]);
    const { items } = (await house.editor.call('get', '/v1/schemes').expect(200)).body;
    expect(items.map(({ slug }: { slug: string }) => slug)).not.toContain('refused');
  });

  test('two categories of one code', async () => {
    const { body } = await schemeWith('refused', [knot, { ...knot, method: 'tied-to-leader' }]).expect(422);
    expect(body.errors).toMatchObject([{ pointer: '/rules/categories/1/code' }]);
  });
});

describe('an edition is refused when what it pins does not yield what its scheme ranks', () => {
  test('a method without a pinned version, and the diameters of a stress', async () => {
    const { body } = await plan('unpinned', SCHEME.slug, [['straight-pull', 1]]).expect(422);
    expect(body.code).toBe('editions/cannot-count');
    expect(
      body.errors.map(({ pointer, detail }: any) => [pointer, /needs the method (\S+); pin a version of it/.exec(detail)?.[1]]),
    ).toEqual([
      ['/methods', 'diameter'],
      ['/methods', 'named-knot'],
      ['/methods', 'abrasion'],
    ]);
    await house.editor.call('get', '/v1/bench/editions/unpinned').expect(404);
  });

  test('a version from before its method yielded the series', async () => {
    await schemeWith('later', [{ ...knot, method: 'later-knot' }]).expect(201);
    const { body } = await plan('too-early', 'later', [['later-knot', 1]]).expect(422);
    expect(body.errors).toEqual([
      { pointer: '/methods', code: 'unknown_series', detail: expect.stringMatching(/"knotted".*yields untreated/) },
    ]);
    await plan('in-time', 'later', [['later-knot', 2]]).expect(201);
  });
});

test('two knots, and a pull of any name, count each in its own category', async () => {
  const [one, two, three] = VARIANTS.map(({ slug }) => slug);
  await schemeWith('two-knots', [
    { ...stress, method: 'house-break' },
    knot,
    { ...knot, code: 'leader', name: 'Knot to a leader', method: 'tied-to-leader' },
  ]).expect(201);
  const pins = ['house-break', 'diameter', 'named-knot', 'tied-to-leader'].map((slug) => ({ slug, number: 1 }));
  await openEdition(house.editor, 'knots', [one!, two!, three!], { scheme: { slug: 'two-knots', number: 1 }, methods: pins });
  const rows = VARIANTS.slice(0, 3).flatMap((variant, i) => {
    const at = { edition: 'knots', spool: house.codes.get(variant.slug)!, instrument: 'R1' };
    // The leader keeps what the ring loses: the order turns round.
    const leader = inventPulls((variant.forceN * (120 - variant.knotPercent)) / 100, 'treated', i, 7);
    return [
      ...pullRows(at, 'house-break', inventPullsOf(variant, 'straight-pull', i)),
      // One piece of each: nothing tells how diameters scatter, so that stresses are values without places.
      ...diameterRows({ ...at, instrument: 'M1' }, inventPieces(variant, i).slice(0, 1)),
      ...pullRows(at, 'named-knot', inventPullsOf(variant, 'named-knot', i + 1)),
      ...pullRows(at, 'tied-to-leader', [...inventPulls(variant.forceN, 'untreated', i + 2), ...leader]),
    ];
  });
  await house.tester.call('post', '/v1/submissions').set('Content-Type', 'text/csv').send(csvFile(rows)).expect(201);
  await acceptAll(house.reviewer, 'knots');
  const { body: board } = await house.editor.call('get', '/v1/editions/knots/board').expect(200);
  expect(board.entries.map(({ missing, needs }: any) => [...missing, ...needs])).toEqual(
    [one, two, three].map(() => [expect.stringContaining('how diameters scatter in stress')]),
  );
  const { body } = await house.editor.call('post', '/v1/editions/knots/previews').expect(201);
  const placed = (code: string) => body.categories[code].map(({ variant, place }: any) => `${place} ${variant}`);
  // Retentions of 61, 53 and 48 % on the ring, and 120 % less that on the leader.
  expect(placed('knot')).toEqual([`1 ${three}`, `2 ${two}`, `3 ${one}`]);
  expect(placed('leader')).toEqual([`1 ${one}`, `2 ${two}`, `3 ${three}`]);
  expect(placed('stress')).toEqual([`null ${one}`, `null ${two}`, `null ${three}`]);
  expect(body.incomplete).toEqual([]);
  // The sum of the two places that there are.
  expect(body.overall.map(({ place, score }: any) => [place, score])).toEqual(Array(3).fill([1, '4']));
});

describe('planning', () => {
  const asked = (query: string, by = house.editor) => by.call('get', `/v1/editions/knots/plan?${query}`);

  test('says what more of each would buy, and what tells a difference; the same question has the same answer', async () => {
    const { body } = await asked('category=leader&difference=10').expect(200);
    expect(body).toMatchObject({
      edition: 'knots',
      category: 'leader',
      entries: 3,
      differencePercent: '10',
      season: { rigs: 1, testers: 1, submissions: 1 },
    });
    expect(body.alternatives.map(({ more, season }: any) => [more, season])).toEqual([
      ['rig', { ...body.season, rigs: 2 }],
      ['tester', { ...body.season, testers: 2 }],
      ['submission', { ...body.season, submissions: 2 }],
      ['specimens', { ...body.season, specimens: 2 * body.season.specimens }],
    ]);
    for (const { narrowerPercent, standardErrorPercent, expected } of body.alternatives) {
      expect(Number(narrowerPercent)).toBeCloseTo(100 * (1 - Number(expected.width) / Number(body.expected.width)), -1);
      expect(Number(standardErrorPercent)).toBeGreaterThanOrEqual(0);
    }
    expect(body.needed.map(({ submissions }: any) => submissions)).toEqual([1, 2, 3, 4]);
    for (const { specimens, powerPercent } of body.needed) expect(Number(powerPercent) >= 80).toBe(specimens !== null);
    expect((await asked('category=leader&difference=10').expect(200)).body).toEqual(body);
  });

  test('names what cannot be planned', async () => {
    const { body } = await asked('category=colour').expect(422);
    expect(body).toMatchObject({ code: 'editions/no-such-category', detail: expect.stringContaining('stress, knot, leader') });
    await asked('category=stress&difference=0').expect(422);
    expect((await asked('category=stress').expect(409)).body.code).toBe('editions/nothing-to-plan-from');
    await asked('category=stress', house.tester).expect(403);
  });
});

test('an edition that has places in some of its categories is published, and corrected; so is one that has values alone', async () => {
  await house.t.app.select(ReleasesModule).get(ReleaseWork).start(false);
  await moveEdition(house.editor, 'knots', 'closure');
  expect(await publish(house.editor, 'knots')).toBe(1);
  const erratum = await erratumFor(house.editor, 'knots', 'catalogueError', 'A name was misread.');
  expect(await publish(house.editor, 'knots', erratum)).toBe(2);
  const read = async (path: string) => (await house.t.call('get', `/v1/editions/${path}`).expect(200)).body;
  const { overall, incomplete, scheme } = await read('knots');
  expect([overall.length, incomplete, scheme.categories.map(({ unplaced }: any) => unplaced)]).toEqual([
    3,
    [],
    ['nothingKnownOfScatter', undefined, undefined],
  ]);
  const { rows } = await read('knots/standings/stress');
  for (const { place, figure } of rows) expect([place, Number(figure.value) > 0, figure.low]).toEqual([null, true, null]);

  await schemeWith('stress-alone', [stress]).expect(201);
  const change = {
    scheme: { slug: 'stress-alone', number: 1 },
    methods: ['straight-pull', 'diameter'].map((method) => ({ slug: method, number: 1 })),
  };
  await openEdition(
    house.editor,
    'alone',
    VARIANTS.slice(0, 2).map(({ slug }) => slug),
    change,
  );
  const pulled = VARIANTS.slice(0, 2).flatMap((variant, i) => {
    const at = { edition: 'alone', spool: house.codes.get(variant.slug)!, instrument: 'R1' };
    return [
      ...pullRows(at, 'straight-pull', inventPullsOf(variant, 'straight-pull', i)),
      ...diameterRows({ ...at, instrument: 'M1' }, inventPieces(variant, i).slice(0, 1)),
    ];
  });
  await house.tester.call('post', '/v1/submissions').set('Content-Type', 'text/csv').send(csvFile(pulled)).expect(201);
  await acceptAll(house.reviewer, 'alone');
  await moveEdition(house.editor, 'alone', 'closure');
  expect(await publish(house.editor, 'alone')).toBe(1);
  expect((await read('alone')).overall).toEqual([]);
  expect((await read('alone/standings/stress')).rows).toHaveLength(2);
});
