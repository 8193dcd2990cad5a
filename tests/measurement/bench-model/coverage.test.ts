/** A small trial of what tests/benchmarks/bench-model.bench.ts measures: equal entries must hardly ever be told apart, whatever the cause. */
import type { BenchSeries } from '../../../api/measurement/bench-model/bench-series.js';
import { drawSeries } from '../../../api/measurement/bench-model/draw-series.js';
import { fitAt, fitSeries } from '../../../api/measurement/bench-model/fit-series.js';
import type { FittedSeries } from '../../../api/measurement/bench-model/fit-series.js';
import { randomStream } from '../../../api/measurement/random/random-stream.js';
import { comparePairs } from '../../../api/measurement/ranking/pairs/compare-pairs.js';
import { productTails } from '../../../api/measurement/ranking/product-tails.js';
import { PLAIN, measureSeason, truthOf } from '../../benchmarks/invented-season.js';
import type { Season } from '../../benchmarks/invented-season.js';

const TRIALS = 25;

/** In how many of the trials nothing is told apart. */
function held(own: Partial<Season>, fitOf: (series: BenchSeries) => FittedSeries): number {
  let count = 0;
  for (let t = 1; t <= TRIALS; t++) {
    const random = randomStream([t, 7, 7, 7]);
    const season = { ...PLAIN, entries: 15, ...own };
    const fit = fitOf(measureSeason(season, truthOf(season, random), random));
    const evidence = fit.design.variants.map((variant, v) => ({
      value: fit.values[v]!,
      factors: [{ series: 'f', variant, power: 1 }],
      without: {},
    }));
    const tails = productTails(evidence, { f: fit });
    const { isAhead } = comparePairs(
      {
        goodness: fit.values.map(Math.log),
        errors: drawSeries(fit, 400, random),
        differenceUncertainty: tails.standardUncertainty,
        degreesOfFreedom: tails.degreesOfFreedom,
      },
      0.95,
    );
    if (isAhead.every((one) => one === 0)) count += 1;
  }
  return count;
}

const whole = (series: BenchSeries): FittedSeries => {
  const fit = fitSeries(series);
  if (fit.kind !== 'fitted') throw new Error('values only');
  return fit;
};
/** The same fit with one cause taken for nothing. */
const without = (cause: 'rig' | 'tester' | 'submission') => (series: BenchSeries) => {
  const fit = whole(series);
  const spreads = fit.atoms.flatMap(({ spreads: one, count }) => new Array<typeof one>(count).fill({ ...one, [cause]: 0 }));
  return fitAt(fit.design, spreads, fit.isApart);
};

test.each([
  ['submission', { submissionSd: 0.03 }],
  ['rig', { rigSd: 0.03 }],
  ['tester', { testerSd: 0.03 }],
] as const)(
  'with a large spread of %s equal entries are not told apart; without that part of the model they are',
  (cause, own) => {
    expect(held(own, whole)).toBeGreaterThanOrEqual(TRIALS - 6);
    expect(held(own, without(cause))).toBeLessThanOrEqual(TRIALS / 2);
  },
  120_000,
);
