import { fitSeries } from '../../../api/measurement/bench-model/fit-series.js';
import type { FittedSeries } from '../../../api/measurement/bench-model/fit-series.js';
import { drawSeries } from '../../../api/measurement/bench-model/draw-series.js';
import { effectsOf } from '../../../api/measurement/bench-model/effects-of.js';
import { pairMoments } from '../../../api/measurement/bench-model/pair-moments.js';
import { partOfFit } from '../../../api/measurement/bench-model/part-of-fit.js';
import { valueBudgets } from '../../../api/measurement/bench-model/value-budget.js';
import { normalDeviate } from '../../../api/measurement/random/normal-deviate.js';
import { randomStream } from '../../../api/measurement/random/random-stream.js';
import { crossed, seriesOf } from './bench-model-fixtures.js';

const random = randomStream([7, 1, 2, 3]);
const whole = fitSeries(
  seriesOf(crossed(() => 0).map((one) => ({ ...one, value: one.value * (1 + 0.02 * normalDeviate(random)) }))),
) as FittedSeries;
const positions = whole.design.variants.flatMap((_, v) => (v % 3 === 1 ? [v] : []));
const names = positions.map((v) => whole.design.variants[v]!);
const part = partOfFit(whole, (variant) => names.includes(variant));

test('a part of a fit says of its variants and their differences what the whole says', () => {
  expect(part.design.variants).toEqual(names);
  expect(
    pairMoments(
      part,
      names.map((_, i) => i),
    ),
  ).toEqual(pairMoments(whole, positions));
  expect(valueBudgets(part)).toEqual(valueBudgets(whole).filter(({ variant }) => names.includes(variant)));
  expect(effectsOf(part)).toEqual(effectsOf(whole));
});

test('only its own variants are drawn', () => {
  expect(drawSeries(part, 10, random)).toHaveLength(10 * names.length);
});
