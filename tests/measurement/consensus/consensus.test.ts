import { derSimonianLaird } from '../support/formulas/dersimonian-laird.js';
import { mandelPaule } from '../support/formulas/mandel-paule.js';
import { moderatedVariances } from '../../../api/measurement/consensus/moderated-variances.js';
import { pooledBetweenVariance } from '../../../api/measurement/consensus/pooled-between-variance.js';
import { errorCode } from '../support/error-code.js';
import { byHedges, byLikelihood, bySidikJonkman, byVangelRukhin } from '../support/consensus-estimators.js';
import { expectReference, named, referenceCases } from '../support/reference-cases.js';

const robust = referenceCases('robust');
const bare = (means: number[], u: number[]) => means.map((mean, i) => ({ mean, standardUncertainty: u[i]! }));
const under = (found: { mean: number; betweenVariance: number; standardError: number; q?: number }) => ({
  mean: found.mean,
  tau2: found.betweenVariance,
  se: found.standardError,
  ...(found.q === undefined ? {} : { Q: found.q }),
});

function meansOf({ means, variances_of_means, sd, n }: any) {
  if (variances_of_means) return bare(means, variances_of_means.map(Math.sqrt));
  return bare(
    means,
    sd.map((s: number, i: number) => s / Math.sqrt(n[i] ?? n)),
  );
}

test.each(['R04-consensus-Cd', 'R14-consensus-two', 'R05-consensus-apples'].map((id) => [named(robust[id]!), robust[id]!] as const))(
  '%s',
  (_, one) => {
    const means = meansOf(one.inputs);
    const [y, v] = [means.map((point) => point.mean), means.map(({ standardUncertainty }) => standardUncertainty ** 2)];
    expectReference(one, {
      mandel_paule: under(mandelPaule(means)),
      dersimonian_laird: under(derSimonianLaird(means)),
      reml: byLikelihood(y, v, true),
    });
  },
);

test(named(robust['R06-bcg']!), () => {
  const one = robust['R06-bcg']!;
  const means = bare(one.inputs.y, one.inputs.v.map(Math.sqrt));
  const { q: _, ...byMoments } = derSimonianLaird(means);
  const { y, v } = one.inputs;
  expectReference(one, {
    DL: under(byMoments),
    PM: under(mandelPaule(means)),
    REML: byLikelihood(y, v, true),
    ML: byLikelihood(y, v, false),
    HE: byHedges(y, v),
    SJ: bySidikJonkman(y, v),
  });
});

test(`${named(robust['R05-consensus-apples']!)}, by maximum likelihood`, () => {
  const one = robust['R05-consensus-apples']!;
  const { means, sd, n } = one.inputs;
  expectReference(one, { vangel_rukhin: byVangelRukhin(means, sd, n) });
});

test('means that agree have no variance between them, and the order does not matter', () => {
  for (const run of [mandelPaule, derSimonianLaird]) expect(run(bare([5, 5.1, 4.9], [1, 2, 1])).betweenVariance).toBe(0);
  expect(mandelPaule(bare([5, 5, 5], [3, 3, 3]))).toEqual({
    mean: expect.closeTo(5, 12),
    betweenVariance: 0,
    standardError: expect.closeTo(Math.sqrt(3), 12),
  });
  const means = bare([1, 5, 9, 2], [0.3, 0.2, 0.5, 0.1]);
  expect(derSimonianLaird([...means].reverse()).mean).toBeCloseTo(derSimonianLaird(means).mean, 12);
  expect(
    mandelPaule(means.map(({ mean, standardUncertainty: u }) => ({ mean: 2 * mean + 7, standardUncertainty: 2 * u }))).mean,
  ).toBeCloseTo(2 * mandelPaule(means).mean + 7, 10);
});

test('what is no set of means is refused', () => {
  for (const run of [mandelPaule, derSimonianLaird]) {
    expect(errorCode(() => run(bare([1], [1])))).toBe('measurement/too-few-readings');
    expect(errorCode(() => run(bare([1, NaN], [1, 1])))).toBe('measurement/not-a-number');
    expect(errorCode(() => run(bare([1, 2], [1, Infinity])))).toBe('measurement/not-a-number');
    expect(errorCode(() => run(bare([1, 2], [1, 0])))).toBe('consensus/no-uncertainty');
  }
});

describe('variance between submissions, pooled over shared variants', () => {
  test('two of one variant: the variance of the two relative means, less what repeatability explains', () => {
    // x/x̃ = 0.98, 1.02: variance 0.0008; u² = 0.0001
    const found = pooledBetweenVariance([bare([98, 102], [1, 1])]);
    expect(found.relativeVariance).toBeCloseTo(0.0008 - 0.0001, 12);
    expect(found.degreesOfFreedom).toBe(1);
  });

  test('variants of any size count alike; agreement gives 0; no shared variant gives 0 of 0', () => {
    const small = bare([0.98, 1.02], [0.01, 0.01]);
    expect(pooledBetweenVariance([bare([98, 102], [1, 1]), small]).relativeVariance).toBeCloseTo(0.0007, 12);
    expect(pooledBetweenVariance([bare([100, 100.1], [1, 1])])).toEqual({ relativeVariance: 0, degreesOfFreedom: 1, leftOut: [] });
    expect(pooledBetweenVariance([])).toEqual({ relativeVariance: 0, degreesOfFreedom: 0, leftOut: [] });
    expect(errorCode(() => pooledBetweenVariance([bare([-1, -2], [1, 1])]))).toBe('consensus/not-positive');
    expect(errorCode(() => pooledBetweenVariance([bare([1], [1])]))).toBe('measurement/too-few-readings');
  });
});

describe('a variant that disagrees beyond what the others show', () => {
  const quiet = Array.from({ length: 7 }, (_, i) => bare([100 + (i % 3), 101], [1, 1]));
  const stranger = bare([80, 120], [1, 1]);

  test('is left out, so that one mixed-up spool does not widen everybody', () => {
    const found = pooledBetweenVariance([...quiet, stranger]);
    expect(found).toEqual({ ...pooledBetweenVariance(quiet), leftOut: [7] });
    expect(found.degreesOfFreedom).toBe(7);
  });

  test('but not when such disagreement is common, nor when there is nobody to compare with', () => {
    expect(pooledBetweenVariance([...quiet.slice(0, 2), stranger, stranger, stranger]).leftOut).toEqual([]);
    expect(pooledBetweenVariance([stranger]).leftOut).toEqual([]);
    expect(pooledBetweenVariance([...quiet.slice(0, 2), stranger]).leftOut).toEqual([]);
  });
});

describe('moderated variances', () => {
  const own = [0.8, 1.9, 0.4, 3.1, 1.2, 0.9, 2.2, 0.15].map((variance, i) => ({ variance, degreesOfFreedom: i === 2 || i === 5 ? 9 : 4 }));

  // The moment equations of Smyth 2004 solved with scipy 1.17.1 (brentq, digamma, polygamma): recomputed
  test('against an independent solution', () => {
    const { priorVariance, priorDegreesOfFreedom, moderated } = moderatedVariances(own);
    expect(priorDegreesOfFreedom).toBeCloseTo(5.130554298837369, 7);
    expect(priorVariance).toBeCloseTo(0.974768711539311, 8);
    [0.89820437, 1.38010283, 0.60868835, 1.90581023, 1.07344017, 0.9271472, 1.51152968, 0.6134462].forEach((variance, i) => {
      expect(moderated[i]!.variance).toBeCloseTo(variance, 7);
      expect(moderated[i]!.degreesOfFreedom).toBeCloseTo(5.130554298837369 + own[i]!.degreesOfFreedom, 7);
    });
  });

  test('variances that differ by chance alone share one, known well', () => {
    const { priorDegreesOfFreedom, moderated, priorVariance } = moderatedVariances(
      [1, 1.2, 0.9, 1.1].map((variance) => ({ variance, degreesOfFreedom: 4 })),
    );
    expect(priorDegreesOfFreedom).toBe(Infinity);
    expect(moderated[0]).toEqual({ variance: priorVariance, degreesOfFreedom: Infinity });
  });

  test('one specimen borrows all of it', () => {
    const { moderated, priorVariance, priorDegreesOfFreedom } = moderatedVariances([...own, { variance: 0, degreesOfFreedom: 0 }]);
    expect(moderated[8]!.variance / priorVariance!).toBeCloseTo(1, 12);
    expect(moderated[8]!.degreesOfFreedom).toBe(priorDegreesOfFreedom);
  });

  test('fewer than three known variances borrow nothing', () => {
    const two = [
      { variance: 1, degreesOfFreedom: 4 },
      { variance: 2, degreesOfFreedom: 4 },
      { variance: 0, degreesOfFreedom: 0 },
    ];
    expect(moderatedVariances(two)).toEqual({ priorVariance: null, priorDegreesOfFreedom: 0, moderated: [two[0], two[1], null] });
  });

  test('a variance of 0 is possible, and so are all of them', () => {
    const { moderated } = moderatedVariances([{ variance: 0, degreesOfFreedom: 4 }, ...own]);
    expect(moderated[0]!.variance).toBeGreaterThan(0);
    expect(moderatedVariances([0, 0, 0].map((variance) => ({ variance, degreesOfFreedom: 4 }))).moderated[0]).toEqual({
      variance: 0,
      degreesOfFreedom: Infinity,
    });
    const mostlyZero = moderatedVariances([0, 0, 0, 1].map((variance) => ({ variance, degreesOfFreedom: 4 })));
    expect(mostlyZero.moderated.every((one) => one !== null && one.variance > 0 && Number.isFinite(one.variance))).toBe(true);
  });

  test('scale and order', () => {
    const [plain, scaled] = [
      moderatedVariances(own),
      moderatedVariances(own.map((one) => ({ ...one, variance: 100 * one.variance })).reverse()),
    ];
    expect(scaled.priorDegreesOfFreedom).toBeCloseTo(plain.priorDegreesOfFreedom, 8);
    expect(scaled.moderated[7]!.variance).toBeCloseTo(100 * plain.moderated[0]!.variance, 8);
  });

  test('negative or missing numbers are refused', () => {
    for (const one of [
      { variance: -1, degreesOfFreedom: 4 },
      { variance: NaN, degreesOfFreedom: 4 },
      { variance: 1, degreesOfFreedom: -1 },
      { variance: 1, degreesOfFreedom: NaN },
    ]) {
      expect(errorCode(() => moderatedVariances([one]))).toBe('consensus/bad-variance');
    }
  });
});
