import { fitSeries } from '../../../api/measurement/bench-model/fit-series.js';
import type { ModelEvidence, ModelSeries } from '../../../api/measurement/ranking/model-evidence.js';
import { productTails } from '../../../api/measurement/ranking/product-tails.js';
import { rankByModel } from '../../../api/measurement/ranking/rank-by-model.js';
import type { ModelRankingInput } from '../../../api/measurement/ranking/model-ranking.js';
import { expectSeason } from '../../../api/measurement/ranking/planning/plan-season.js';
import { specimensAndSubmissions } from '../../../api/measurement/ranking/planning/specimens-and-submissions.js';
import { normalDeviate } from '../../../api/measurement/random/normal-deviate.js';
import { randomStream } from '../../../api/measurement/random/random-stream.js';
import { crossed, seriesOf } from '../bench-model/bench-model-fixtures.js';
import { errorCode } from '../support/error-code.js';
import { DIGEST } from './ranking-fixtures.js';

const noisy = (valueOf: (i: number) => number, rigOf: (rig: number) => number = () => 0, seed = 1) => {
  const random = randomStream([seed, 9, 9, 9]);
  return seriesOf(crossed(rigOf, valueOf).map((one) => ({ ...one, value: one.value * (1 + 0.01 * normalDeviate(random)) })));
};
const names = Array.from({ length: 12 }, (_, i) => `v${String(i).padStart(2, '0')}`);
const force = fitSeries(noisy((i) => 100 - 4 * i));
const diameter = fitSeries(
  noisy(
    () => 0.2,
    () => 0,
    2,
  ),
);
const values = { force: force.values, diameter: diameter.values };
const stressOf = (i: number): ModelEvidence => ({
  value: values.force[i]! / values.diameter[i]! ** 2,
  factors: [
    { series: 'force', variant: names[i]!, power: 1 },
    { series: 'diameter', variant: names[i]!, power: -2 },
  ],
  without: { 'tester:T0': values.force[i]! },
});
const forceOf = (i: number): ModelEvidence => ({
  value: values.force[i]!,
  factors: [{ series: 'force', variant: names[i]!, power: 1 }],
  without: {},
});
const series: ModelSeries = { force, diameter };
const inputOf = (own: Partial<ModelRankingInput> = {}): ModelRankingInput => ({
  digest: DIGEST,
  categories: [
    { code: 'force', direction: 'more', weight: '1', places: 3 },
    { code: 'stress', direction: 'more', weight: '1', places: 3 },
  ],
  combine: 'sumOfPlaces',
  countPlaces: 'afterExclusions',
  tieBreak: 'none',
  series,
  entries: names.map((id, i) => ({ id, isExcluded: false, results: { force: forceOf(i), stress: stressOf(i) } })),
  ...own,
});

test('a whole table: order, intervals, who could be first, chances, overall', () => {
  const ranking = rankByModel(inputOf());
  const table = ranking.categories['force']!;
  if (table.kind !== 'placed' || ranking.overall.kind !== 'placed') throw new Error('unplaced');
  expect(table.rows).toHaveLength(12);
  table.rows.forEach(({ id, low, high }) => {
    const truth = 1 + names.indexOf(id);
    expect(low).toBeLessThanOrEqual(truth);
    expect(high).toBeGreaterThanOrEqual(truth);
  });
  const first = table.rows.filter(({ couldBeFirst }) => couldBeFirst).map(({ id }) => id);
  expect(first).toContain('v00');
  expect(first.length).toBeLessThan(4);
  expect(table.rows.reduce((sum, { chanceOfFirst }) => sum + chanceOfFirst, 0)).toBeCloseTo(1, 2);
  expect(ranking.overall.rows[0]!.couldBeFirst).toBe(true);
  expect(ranking.sensitivity.leftOut.map(({ name }) => name)).toContain('tester:T0');
  expect(rankByModel(inputOf({ entries: [...inputOf().entries].reverse() }))).toEqual(ranking);
});

test('where nothing is known of effects there are no places, and a reason', () => {
  const single = seriesOf(
    crossed(
      () => 0,
      (i) => 100 - i,
    ).filter((_, s) => s % 2 === 0),
    { reproducibility: null },
  );
  const ranking = rankByModel(inputOf({ series: { force: fitSeries(single), diameter } }));
  expect(ranking.categories['stress']).toEqual({ kind: 'unplaced', reason: 'nothing-known-of-effects' });
  expect(ranking.overall.kind).toBe('unplaced');
});

test('the variance of a stress is that of the force and four times that of the diameter', () => {
  const of = (evidence: ModelEvidence[]): number => productTails(evidence, series).standardUncertainty[1]! ** 2;
  const onDiameter = (i: number): ModelEvidence => ({
    value: values.diameter[i]!,
    factors: [{ series: 'diameter', variant: names[i]!, power: 1 }],
    without: {},
  });
  const [stress, ofForce, ofDiameter] = [of([stressOf(0), stressOf(1)]), of([forceOf(0), forceOf(1)]), of([onDiameter(0), onDiameter(1)])];
  // Student's scale is below the variance by the kurtosis, a little differently in each.
  expect(stress / (ofForce + 4 * ofDiameter)).toBeCloseTo(1, 1);
});

test('bad evidence is refused', () => {
  const entryOf = (evidence: ModelEvidence) =>
    inputOf({
      entries: [
        { id: 'a', isExcluded: false, results: { force: evidence } },
        { id: 'b', isExcluded: false, results: { force: forceOf(1) } },
      ],
    });
  expect(errorCode(() => rankByModel(entryOf({ ...forceOf(0), value: 0 })))).toBe('ranking/bad-evidence');
  expect(errorCode(() => rankByModel(entryOf({ ...forceOf(0), factors: [{ series: 'force', variant: 'nobody', power: 1 }] })))).toBe(
    'ranking/unknown-source',
  );
  expect(errorCode(() => rankByModel(entryOf(stressOf(0))))).toBe('ranking/bad-evidence');
  expect(errorCode(() => rankByModel(inputOf({ draws: 100 })))).toBe('ranking/too-few-draws');
});

test('planning: the chance to tell a difference is that at the critical value of the whole table', () => {
  const basis = { values: Array<number>(12).fill(100), spreads: [{ rig: 0, tester: 0, submission: 0 }], cvPercent: 3, level: 0.95 };
  const { power } = expectSeason({ rigs: 2, testers: 3, submissions: 2, specimens: 8 }, basis, 4, randomStream([1, 1, 2, 2]));
  // Twelve equals: Tukey's 4.622/√2 = 3.27 (tables of any textbook, ν = ∞), against ln 1.04 over 3 %·√(2/16): Φ(3.70 − 3.27). By one pair's own 1.96 it would be 0.96.
  expect(Math.abs(power - 0.667)).toBeLessThan(0.06);
});

test('planning: more of anything narrows the table, and more submissions need fewer specimens', () => {
  const basis = {
    values: Array.from({ length: 12 }, (_, i) => 100 - 2 * i),
    spreads: [{ rig: 0.006, tester: 0.006, submission: 0.008 }],
    cvPercent: 3,
    level: 0.95,
  };
  const plain = { rigs: 2, testers: 3, submissions: 2, specimens: 6 };
  const of = (own: object) => expectSeason({ ...plain, ...own }, basis, 5, randomStream([1, 1, 2, 2]));
  const base = of({});
  expect(of({ specimens: 24 }).width).toBeLessThan(base.width);
  expect(of({ submissions: 4 }).width).toBeLessThan(base.width);
  expect(of({ submissions: 4 }).power).toBeGreaterThan(base.power);
  const needed = specimensAndSubmissions(plain, { ...basis, values: basis.values.slice(0, 6) }, 6, [1, 1, 2, 2]);
  expect(needed[0]!.specimens ?? 65).toBeGreaterThan(needed[1]!.specimens!);
  expect(needed[3]!.specimens!).toBeLessThanOrEqual(needed[1]!.specimens!);
  expect(errorCode(() => of({ rigs: 0 }))).toBe('ranking/bad-season');
});
