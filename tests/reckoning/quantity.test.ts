import { keyOf, plainQuantity, quantitiesIn, quantitiesOf } from '../../api/reckoning/results/quantity.js';
import { editionSeries } from '../../api/reckoning/results/series.js';
import type { ResultSubmission } from '../../api/reckoning/results/series.js';
import { needOf } from '../../api/readings/series-needs.js';
import type { MethodSeries } from '../../api/contract/method-series.js';
import { computeEdition, standingsOf } from '../../api/reckoning/standings/compute-edition.js';
import { METHOD_SERIES, KEYS } from '../support/method-series.js';
import { inventInputs } from '../support/invent-inputs.js';
import { withTwoKnots } from '../support/with-two-knots.js';

const pinned = (slug: keyof typeof METHOD_SERIES, as: string = slug) => ({ slug: as, number: 1, series: METHOD_SERIES[slug] });
const ALL = (Object.keys(METHOD_SERIES) as (keyof typeof METHOD_SERIES)[]).map((slug) => pinned(slug));
const knotted = METHOD_SERIES['named-knot'][1]!;

describe('what a kind of series needs', () => {
  test.each([
    ['untreated pulls', METHOD_SERIES['straight-pull'][0]!, { condition: 'untreated', roles: ['breakingForce'], stations: 1 }],
    ['knotted pulls', knotted, { condition: 'treated', roles: ['breakingForce'], stations: 1 }],
    [
      'diameters at three stations',
      { code: 'outline', kind: 'diameterAlongStations', stations: 3 } as const,
      { condition: 'untreated', roles: ['wideDiameter', 'narrowDiameter'], stations: 3 },
    ],
    ['pieces weighed', METHOD_SERIES['linear-density'][0]!, { condition: 'untreated', roles: ['mass', 'length'], stations: 1 }],
  ])('%s', (_, series, need) => expect(needOf(series)).toEqual(need));
});

describe('the quantities of an edition', () => {
  test('follow from its methods: untreated pulls beside treated ones are their measure, and no result', () => {
    expect(quantitiesOf([], ALL).map(({ key, name }) => [key, name])).toEqual([
      ['breakingForce/straight-pull/untreated', 'Breaking force'],
      ['diameter/diameter/outline', 'Diameter'],
      ['outOfRoundness/diameter/outline', 'Out-of-roundness'],
      ['linearDensity/linear-density/mass', 'Linear density'],
      ['retention/named-knot/knotted', 'Knot retention, Palomar'],
      ['retention/abrasion/abraded', 'Abrasion retention, wet bar'],
    ]);
  });

  test('treated pulls with nothing to compare them with are a force of their own', () => {
    const quantities = quantitiesOf([], [{ slug: 'tied', number: 1, series: [knotted] }]);
    expect(quantities.map(({ key, name }) => [key, name])).toEqual([['breakingForce/tied/knotted', 'Breaking force, Palomar']]);
    // It is not what the line holds as it comes from the spool.
    expect(plainQuantity(quantities, 'breakingForce')).toBeUndefined();
  });

  test('what a category names comes with what it is made of, before others of its kind', () => {
    const { edition } = inventInputs(5).evidence;
    const [stress] = edition.scheme.rules.categories;
    const own = { ...stress!, method: 'pull-b', section: { method: 'gauge-b', series: 'outline' } };
    const methods = [...ALL, pinned('straight-pull', 'pull-b'), pinned('diameter', 'gauge-b')];
    const quantities = quantitiesOf([own], methods);
    expect(quantities.map(({ key }) => key).slice(0, 4)).toEqual([
      'breakingForce/pull-b/untreated',
      'breakingForce/straight-pull/untreated',
      'diameter/gauge-b/outline',
      'diameter/diameter/outline',
    ]);
    expect(quantities.map(({ key }) => key)).toContain('apparentStress/pull-b/untreated/gauge-b/outline');
    expect(plainQuantity(quantities, 'breakingForce')?.method).toBe('pull-b');
  });

  test('a method that is not pinned yields nothing', () => {
    expect(quantitiesOf(inventInputs(5).evidence.edition.scheme.rules.categories, [])).toEqual([]);
  });

  test('what no treatment has touched, or nothing untreated stands beside, retains nothing', () => {
    const [, knot] = inventInputs(5).evidence.edition.scheme.rules.categories;
    const keys = (series: string, list: readonly MethodSeries[]) =>
      quantitiesOf([{ ...knot!, series }], [{ slug: 'named-knot', number: 1, series: list }]).map(({ quantity }) => quantity);
    expect(keys('untreated', METHOD_SERIES['straight-pull'])).toEqual(['breakingForce']);
    expect(keys('knotted', [knotted])).toEqual(['breakingForce']);
    expect(keys('knotted', METHOD_SERIES['named-knot'])).toEqual(['retention']);
  });

  test('a submission by itself shows both of its series', () => {
    expect(quantitiesIn(pinned('named-knot')).map(({ key }) => key)).toEqual(['breakingForce/named-knot/untreated', KEYS.knot]);
  });
});

test('readings of another method are no part of a series, whatever they are', () => {
  const figures = { breakingForceN: { n: 5, mean: 100, sd: 1, cvPercent: 1 } };
  const submission = (method: string) =>
    ({
      reference: method,
      variant: 'v',
      method,
      tester: 't',
      rig: 'R1',
      figures,
      calibration: null,
      resolution: null,
    }) as unknown as ResultSubmission;
  const part = { method: 'house-pull', series: METHOD_SERIES['straight-pull'][0]!, figure: 'mean' } as const;
  expect([...editionSeries(part, ['house-pull', 'straight-pull'].map(submission)).means.keys()]).toEqual(['house-pull']);
});

describe('two knots in one edition', () => {
  const { evidence } = withTwoKnots(inventInputs(5, { variants: 5, testers: 3, rigs: 2, specimens: 5 }));
  const computed = computeEdition(evidence);
  const { results, fits, spreads } = computed;
  const standings = standingsOf(computed);

  test('are ranked each by its own readings', () => {
    const order = (code: string) => standings.categories[code]!.map(({ id }) => id);
    expect(order('fg')).toHaveLength(5);
    expect(order('fg').toSorted()).toEqual(order('knot').toSorted());
    expect(order('fg')).not.toEqual(order('knot'));
    for (const found of results.values()) {
      expect(found.get(KEYS.knot)!.references.join()).toMatch(/^S-\d+$/);
      expect(found.get('retention/fg-knot/knotted')!.references.join()).toMatch(/^F-\d+$/);
    }
  });

  test('are fitted each by itself, with a spread of its own', () => {
    expect(fits['retention/fg-knot/knotted']).not.toEqual(fits[KEYS.knot]);
    expect([...spreads.keys()]).toEqual(expect.arrayContaining([KEYS.knot, 'retention/fg-knot/knotted']));
  });
});

test('keys tell two stresses over other diameters apart', () => {
  const stress = { quantity: 'apparentStress', method: 'pull', series: 'untreated' } as const;
  const over = (method: string) => keyOf({ ...stress, section: { method, series: 'outline' } });
  expect(over('a')).toBe('apparentStress/pull/untreated/a/outline');
  expect(over('b')).not.toBe(over('a'));
});
