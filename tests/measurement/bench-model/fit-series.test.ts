import { drawSeries } from '../../../api/measurement/bench-model/draw-series.js';
import { effectsOf, spreadsOf } from '../../../api/measurement/bench-model/effects-of.js';
import { fitSeries } from '../../../api/measurement/bench-model/fit-series.js';
import type { FittedSeries } from '../../../api/measurement/bench-model/fit-series.js';
import type { BenchSeries, SeasonTold } from '../../../api/measurement/bench-model/bench-series.js';
import { seasonTells } from '../../../api/measurement/bench-model/spread-atoms.js';
import { priorMass } from '../../../api/measurement/bench-model/spread-prior.js';
import { pairMoments } from '../../../api/measurement/bench-model/pair-moments.js';
import { tailOf } from '../../../api/measurement/bench-model/tail.js';
import { valueBudgets } from '../../../api/measurement/bench-model/value-budget.js';
import { normalDeviate } from '../../../api/measurement/random/normal-deviate.js';
import { randomStream } from '../../../api/measurement/random/random-stream.js';
import { errorCode } from '../support/error-code.js';
import { crossed, seriesOf, submission } from './bench-model-fixtures.js';

function fitted(series: BenchSeries): FittedSeries {
  const fit = fitSeries(series);
  if (fit.kind !== 'fitted') throw new Error('values only');
  return fit;
}
const noisy = (scale: number, seed = 7) => {
  const random = randomStream([seed, 1, 2, 3]);
  return crossed(() => 0).map((one) => ({ ...one, value: one.value * (1 + scale * normalDeviate(random)) }));
};

test('a rig that pulls one per cent too high is seen and taken out of the values', () => {
  const offset = [0.01, -0.005, -0.005];
  const precise = crossed((rig) => offset[rig]!).map((one) => ({ ...one, relativeVariance: 1e-8 }));
  const fit = fitted(seriesOf(precise));
  const rigs = effectsOf(fit).filter(({ kind }) => kind === 'rig');
  expect(rigs.map(({ name }) => name)).toEqual(['R0', 'R1', 'R2']);
  // Rigs are only known against one another.
  const mean = rigs.reduce((sum, { effect }) => sum + effect, 0) / 3;
  rigs.forEach(({ effect }, r) => expect(effect - mean).toBeCloseTo(offset[r]!, 3));
  const values = [...fit.values];
  expect(Math.max(...values) / Math.min(...values) - 1).toBeLessThan(0.001);
  expect(spreadsOf(fit).find(({ cause }) => cause === 'rig')!.relativeSd).toBeGreaterThan(0.004);
});

test('what a spool adds is found as a spread of submissions, not of rigs or testers', () => {
  const [rig, tester, spool] = spreadsOf(fitted(seriesOf(noisy(0.03)))).map(({ relativeSd }) => relativeSd);
  expect(spool!).toBeGreaterThan(0.015);
  expect(spool!).toBeGreaterThan(Math.max(rig!, tester!));
});

test('the parts of a variance add to the variance', () => {
  const certificates = [{ name: 'c1', relativeStandardUncertainty: 0.004 }];
  const fit = fitted(seriesOf(noisy(0.02).map((one) => ({ ...one, certificates }))));
  const { variance } = pairMoments(
    fit,
    fit.design.variants.map((_, v) => v),
  );
  valueBudgets(fit).forEach(({ parts }, v) => {
    const sum = Object.values(parts).reduce((total, part) => total + part, 0);
    expect(sum / variance[v * 12 + v]!).toBeCloseTo(1, 9);
    // All share the certificate: nothing in the season tells what it is off by, and no difference feels it.
    expect(Math.sqrt(parts.certificate)).toBeCloseTo(0.004, 4);
  });
  const bare = fitted(seriesOf(noisy(0.02)));
  const without = pairMoments(bare, [0, 1]);
  expect(pairMoments(fit, [0, 1]).variance[1]! / without.variance[1]!).toBeCloseTo(1, 6);
  expect(without.variance[0]!).toBeLessThan(pairMoments(fit, [0, 1]).variance[0]!);
});

// Student's t of 10 degrees: variance 10/8 of its scale, excess kurtosis 6/(10 − 4).
test('an error gets the tail that its variance and its kurtosis have, and no more degrees than the parts that were estimated', () => {
  const { standardUncertainty, degreesOfFreedom } = tailOf(1, 1, 0);
  expect(degreesOfFreedom).toBeCloseTo(10, 9);
  expect(standardUncertainty ** 2).toBeCloseTo(0.8, 9);
  expect(tailOf(1, 1, 0.1).degreesOfFreedom).toBeCloseTo(5, 9);
});

test('draws have the moments that the pairs are judged by', () => {
  const fit = fitted(seriesOf(noisy(0.02)));
  const errors = drawSeries(fit, 4000, randomStream([5, 6, 7, 8]));
  const { variance } = pairMoments(
    fit,
    fit.design.variants.map((_, v) => v),
  );
  for (const [i, j] of [
    [0, 1],
    [2, 7],
    [4, 4],
  ] as const) {
    let squares = 0;
    for (let at = 0; at < errors.length; at += 12) squares += (errors[at + i]! - (i === j ? 0 : errors[at + j]!)) ** 2;
    expect(Math.abs(squares / 4000 / variance[i * 12 + j]! - 1)).toBeLessThan(0.12);
  }
});

test('what is told enters beside what the season shows, and gives way where that contradicts it', () => {
  const spreadWith = (relativeSd: number, degreesOfFreedom: number): number =>
    spreadsOf(fitted(seriesOf(noisy(0.03), { told: [{ cause: 'submission', relativeSd, degreesOfFreedom }] }))).find(
      ({ cause }) => cause === 'submission',
    )!.relativeSd;
  const alone = spreadsOf(fitted(seriesOf(noisy(0.03)))).find(({ cause }) => cause === 'submission')!.relativeSd;
  const near = 0.7 * alone;
  expect(spreadWith(near, 6)).toBeLessThan(alone);
  expect(spreadWith(near, 60)).toBeLessThan(spreadWith(near, 6));
  expect(spreadWith(near, 60)).toBeGreaterThan(near);
  // Ten times smaller, and sure of it: of other days, it seems. Also that there is none at all.
  for (const far of [alone / 10, 0]) expect(Math.abs(spreadWith(far, 60) / alone - 1)).toBeLessThan(0.02);
});

test('what a season found tells a later one: narrower where both agree, and gives way where they do not', () => {
  const found = fitted(seriesOf(noisy(0.03)));
  const tells = seasonTells(found.design, 0.01, found.isApart);
  expect(tells.map(({ cause }) => cause)).toEqual(['rig', 'tester', 'submission']);
  // Chance after over chance before: over all that was to be expected before, its mean is 1.
  for (const { cause, points } of tells) {
    const chances = points.map(({ relativeSd, likelihood }, at) => {
      const width = (points[Math.min(at + 1, points.length - 1)]!.relativeSd - points[Math.max(at - 1, 0)]!.relativeSd) / 2;
      return likelihood * priorMass(relativeSd, width, 0.01, cause);
    });
    expect(chances.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 9);
  }
  const submissionWith = (sd: number, earlier: readonly SeasonTold[]) =>
    spreadsOf(fitted(seriesOf(noisy(sd), { earlier }))).find(({ cause }) => cause === 'submission')!;
  const [alone, agreeing] = [submissionWith(0.03, []), submissionWith(0.03, tells)];
  expect(agreeing.high - agreeing.low).toBeLessThan(0.85 * (alone.high - alone.low));
  expect(agreeing.relativeSd / alone.relativeSd).toBeCloseTo(1, 1);
  const contradicted = submissionWith(0.2, tells);
  expect(contradicted.relativeSd / submissionWith(0.2, []).relativeSd).toBeCloseTo(1, 2);
});

test('a season that could not tell tells nothing', () => {
  const single = fitted(seriesOf(crossed(() => 0).filter((_, s) => s % 2 === 0)));
  for (const { points } of seasonTells(single.design, 0.01, single.isApart))
    for (const { likelihood } of points) expect(Math.abs(likelihood - 1)).toBeLessThan(0.02);
  const share = fitted(seriesOf(crossed(() => 0).map((one) => ({ ...one, rig: null }))));
  expect(seasonTells(share.design, 0.01, share.isApart).map(({ cause }) => cause)).toEqual(['tester', 'submission']);
});

test('one submission each: a floor from what the method states, values only where nothing is known', () => {
  const single = crossed(
    () => 0,
    (i) => 100 + i,
  ).filter((_, s) => s % 2 === 0);
  expect(fitSeries(seriesOf(single, { reproducibility: null }))).toMatchObject({ kind: 'values-only', reason: 'nothing-known-of-effects' });
  const repeatability = 0.03 / Math.sqrt(8);
  const [bare, stated, told] = [
    seriesOf(single, { reproducibility: 0.005 }),
    seriesOf(single, { reproducibility: 0.02 }),
    seriesOf(single, { reproducibility: null, told: [{ cause: 'tester', relativeSd: 0.02, degreesOfFreedom: 20 }] }),
  ].map((series) => Math.sqrt(pairMoments(fitted(series), [0, 1]).variance[1]!));
  expect(bare!).toBeGreaterThan(repeatability * Math.SQRT2);
  expect(stated!).toBeGreaterThan(1.2 * bare!);
  expect(told!).toBeGreaterThan(bare!);
});

test('a variant whose submissions disagree is set apart, widened with sensible degrees of freedom, and touches nobody else', () => {
  const calm = noisy(0.01);
  const wild = calm.map((one, s) => (s === 0 ? { ...one, value: 90 } : s === 1 ? { ...one, value: 110 } : one));
  const [before, after] = [fitted(seriesOf(calm)), fitted(seriesOf(wild))];
  expect([...before.isApart]).toEqual(new Array(12).fill(0));
  expect([...after.isApart]).toEqual([1, ...new Array<number>(11).fill(0)]);
  const [calmOnes, others] = [fitted(seriesOf(calm.slice(2))), after].map((fit) => {
    const names = fit.design.variants;
    const { variance } = pairMoments(fit, [names.indexOf('v05'), names.indexOf('v06')]);
    return Math.sqrt(variance[1]!);
  });
  // As if it were not there, but for its word on the rigs and testers.
  expect(others! / calmOnes!).toBeCloseTo(1, 2);
  const [own] = valueBudgets(after);
  expect(own!.isApart).toBe(true);
  expect(own!.degreesOfFreedom).toBeGreaterThan(3.9);
  expect(own!.degreesOfFreedom).toBeLessThan(6);
  expect(own!.standardUncertainty).toBeGreaterThan(4);
  expect(own!.standardUncertainty).toBeLessThan(12);
});

test.each([
  ['a value that is no number', { value: NaN }],
  ['a variance below 0', { relativeVariance: -1 }],
  ['no degrees of freedom', { degreesOfFreedom: 0 }],
  ['a certificate without an uncertainty', { certificates: [{ name: 'c', relativeStandardUncertainty: NaN }] }],
])('%s is refused', (_what, own) => {
  expect(errorCode(() => fitSeries(seriesOf([submission('a', 100, 'R', 'T', own)])))).toBe('bench-model/bad-submission');
});

test('a mean that is not above 0 is refused', () => {
  expect(errorCode(() => fitSeries(seriesOf([submission('a', 0, 'R', 'T')])))).toBe('bench-model/not-positive');
});

test('the order of the submissions changes nothing', () => {
  const one = noisy(0.02);
  const sorted = [...one].sort((a, b) => (a.variant < b.variant ? -1 : 1));
  const turned = [...sorted.filter((_, s) => s % 2 === 1), ...sorted.filter((_, s) => s % 2 === 0)];
  const [found, expected] = [fitted(seriesOf(turned)).values, fitted(seriesOf(one)).values];
  found.forEach((value, v) => expect(value).toBeCloseTo(expected[v]!, 9));
});
