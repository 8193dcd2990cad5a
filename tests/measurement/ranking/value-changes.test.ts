import { fitSeries } from '../../../api/measurement/bench-model/fit-series.js';
import type { FittedSeries } from '../../../api/measurement/bench-model/fit-series.js';
import { normalDeviate } from '../../../api/measurement/random/normal-deviate.js';
import { randomStream } from '../../../api/measurement/random/random-stream.js';
import { besideTable } from '../../../api/measurement/ranking/beside-table.js';
import type { ModelEvidence } from '../../../api/measurement/ranking/model-evidence.js';
import { productTails } from '../../../api/measurement/ranking/product-tails.js';
import { valueChanges } from '../../../api/measurement/ranking/movement/value-changes.js';
import type { ValueInTable } from '../../../api/measurement/ranking/movement/value-changes.js';
import { crossed, seriesOf } from '../bench-model/bench-model-fixtures.js';

function season(valueOf: (i: number) => number, rigOf: (rig: number) => number, seed: number): FittedSeries {
  const random = randomStream([seed, 9, 9, 9]);
  const fit = fitSeries(
    seriesOf(crossed(rigOf, valueOf).map((one) => ({ ...one, value: one.value * (1 + 0.01 * normalDeviate(random)) }))),
  );
  if (fit.kind !== 'fitted') throw new Error('values only');
  return fit;
}
const evidenceOf = (fit: FittedSeries): ModelEvidence[] =>
  fit.design.variants.map((variant, v) => ({ value: fit.values[v]!, factors: [{ series: 'force', variant, power: 1 }], without: {} }));
function inTable(fit: FittedSeries): Map<string, ValueInTable> {
  const tails = besideTable(evidenceOf(fit), { force: fit });
  return new Map(fit.design.variants.map((variant, v) => [variant, { value: fit.values[v]!, ...tails[v]! }]));
}
const none = () => 0;

test('a change of one value is named; what moves the whole table is not', () => {
  const before = inTable(season(() => 100, none, 3));
  const shift = () => 0.02;
  const shifted = valueChanges(inTable(season(() => 100, shift, 4)), before);
  expect(shifted.filter(({ isChange }) => isChange)).toEqual([]);
  expect(shifted[0]!.relativeChange).toBeGreaterThan(0.003);
  const one = valueChanges(inTable(season((i) => (i === 4 ? 110 : 100), shift, 4)), before);
  expect(one.filter(({ isChange }) => isChange).map(({ id }) => id)).toEqual(['v04']);
});

test('beside the table a value has the variance that its differences say, and none of what all share', () => {
  const fit = season(
    (i) => 100 - i,
    (rig) => (rig === 0 ? 0.02 : 0),
    5,
  );
  const evidence = evidenceOf(fit);
  const m = evidence.length;
  const tails = productTails(evidence, { force: fit });
  const squared = (i: number, j: number): number => (i === j ? 0 : tails.standardUncertainty[i * m + j]! ** 2);
  const all = evidence.reduce((sum, _, i) => sum + evidence.reduce((own, __, j) => own + squared(i, j), 0), 0);
  besideTable(evidence, { force: fit }).forEach((one, i) => {
    const fromDifferences = evidence.reduce((sum, _, j) => sum + squared(i, j), 0) / m - all / (2 * m * m);
    expect(one.standardUncertainty ** 2 / fromDifferences).toBeGreaterThan(0.95);
    expect(one.standardUncertainty ** 2 / fromDifferences).toBeLessThan(1.05);
    expect(one.standardUncertainty).toBeLessThan(tails.standardUncertainty[i * m + i]!);
  });
});

test('in a table of two nothing is named: it has no middle that one of them does not make', () => {
  const of = (a: number, b: number, c?: number): Map<string, ValueInTable> =>
    new Map(
      [a, b, ...(c === undefined ? [] : [c])].map((value, i) => [`v${i}`, { value, standardUncertainty: 0.001, degreesOfFreedom: 30 }]),
    );
  expect(valueChanges(of(100, 150), of(100, 100)).map(({ isChange }) => isChange)).toEqual([false, false]);
  expect(valueChanges(of(100, 150, 100), of(100, 100, 100)).map(({ isChange }) => isChange)).toEqual([false, true, false]);
});

test('many small chances are not named one by one: a table of unchanged values names almost none', () => {
  const random = randomStream([7, 7, 7, 7]);
  const noisy = (): Map<string, ValueInTable> =>
    new Map(
      Array.from({ length: 200 }, (_, i) => [
        `v${i}`,
        { value: 100 * Math.exp(0.01 * normalDeviate(random)), standardUncertainty: 0.01, degreesOfFreedom: Infinity },
      ]),
    );
  const changes = valueChanges(noisy(), noisy());
  const alone = changes.filter(({ beyondTable, standardUncertainty }) => Math.abs(beyondTable) > 1.96 * standardUncertainty).length;
  expect(alone).toBeGreaterThan(3);
  expect(changes.filter(({ isChange }) => isChange)).toEqual([]);
});
