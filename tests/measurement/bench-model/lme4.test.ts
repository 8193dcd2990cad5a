/** The model against lme4 1.1-31 on its open crossed-effects data sets; fixtures/lme4-fits.R made the numbers. */
import { readFileSync } from 'node:fs';
import type { BenchSubmission, Spreads } from '../../../api/measurement/bench-model/bench-series.js';
import { designOf } from '../../../api/measurement/bench-model/design.js';
import { effectsOf } from '../../../api/measurement/bench-model/effects-of.js';
import { fitAt } from '../../../api/measurement/bench-model/fit-series.js';
import { pairMoments } from '../../../api/measurement/bench-model/pair-moments.js';
import { columnSds, sharedEffects } from '../../../api/measurement/bench-model/shared-effects.js';
import { submissionLevel } from '../../../api/measurement/bench-model/submission-level.js';

interface Fit {
  id: string;
  y: number[];
  variant: string[];
  rig: string[];
  tester: string[];
  rigSd: number;
  testerSd: number;
  residualSd: number;
  logLikelihood: number;
  variants: string[];
  fixed: number[];
  fixedSe: number[];
  rigs: string[];
  rigEffects: number[];
  rigEffectVariances: number[];
  testers: string[];
  testerEffects: number[];
}

const fits = JSON.parse(readFileSync(new URL('../fixtures/lme4-fits.json', import.meta.url), 'utf8')) as Fit[];

/** All variants share one spread in lme4, so their values are brought to one centre: a common scale c. */
function laidOut(fit: Fit) {
  const scale = 1000;
  // Far above the spread, a value relative to its centre is a difference in one common unit.
  const submissions = fit.y.map((y, s): BenchSubmission => ({
    variant: fit.variant[s]!,
    value: scale + y,
    relativeVariance: 0,
    degreesOfFreedom: 1,
    rig: fit.rig[s]!,
    tester: fit.tester[s]!,
    certificates: [],
  }));
  const design = designOf({ submissions });
  const rows = design.variants.flatMap((variant) => fit.y.filter((_, s) => fit.variant[s] === variant));
  const common = {
    ...design,
    centres: design.centres.map(() => 1),
    y: Float64Array.from(rows),
    repeatability: new Float64Array(rows.length),
  };
  const spreads: Spreads = { rig: fit.rigSd, tester: fit.testerSd, submission: fit.residualSd };
  return { design: common, spreads };
}

const close = (found: ArrayLike<number>, expected: readonly number[], relative: number): void => {
  expect(found).toHaveLength(expected.length);
  const scale = Math.max(...expected.map(Math.abs));
  expected.forEach((value, i) => expect(Math.abs(found[i]! - value)).toBeLessThanOrEqual(relative * scale));
};

describe.each(fits)('$id', (fit) => {
  const { design, spreads } = laidOut(fit);
  const isApart = new Uint8Array(design.variants.length);
  const contrasts = fit.y.length - design.variants.length;
  const likelihoodAt = (at: Spreads): number =>
    sharedEffects(submissionLevel(design, at.submission, isApart), columnSds(design, at), contrasts).logLikelihood;
  const fitted = fitAt(design, [spreads], isApart);

  test('the restricted likelihood is lme4’s, and largest where lme4 found it', () => {
    expect(likelihoodAt(spreads)).toBeCloseTo(fit.logLikelihood, 6);
    for (const cause of ['rig', 'tester', 'submission'] as const)
      for (const factor of [0.9, 1.1])
        expect(likelihoodAt({ ...spreads, [cause]: spreads[cause] * factor })).toBeLessThan(fit.logLikelihood);
  });

  test('values and their standard errors are lme4’s fixed effects', () => {
    expect(design.variants).toEqual(fit.variants);
    close(fitted.means, fit.fixed, 1e-8);
    const absolute = {
      ...fitted,
      means: new Float64Array(fitted.means.length),
      atoms: fitted.atoms.map((atom) => ({ ...atom, means: new Float64Array(fitted.means.length) })),
    };
    const { variance } = pairMoments(
      absolute,
      design.variants.map((_, v) => v),
    );
    close(
      design.variants.map((_, v) => Math.sqrt(variance[v * design.variants.length + v]!)),
      fit.fixedSe,
      1e-7,
    );
  });

  test('effects are lme4’s conditional modes, with their conditional variances below ours, which know that values are estimated', () => {
    const effects = effectsOf(fitted);
    const named = (kind: string, names: readonly string[]) =>
      names.map((name) => effects.find((one) => one.kind === kind && one.name === name)!);
    close(
      named('rig', fit.rigs).map(({ effect }) => effect),
      fit.rigEffects,
      1e-7,
    );
    close(
      named('tester', fit.testers).map(({ effect }) => effect),
      fit.testerEffects,
      1e-7,
    );
    named('rig', fit.rigs).forEach(({ standardUncertainty }, i) =>
      expect(standardUncertainty ** 2).toBeGreaterThanOrEqual(fit.rigEffectVariances[i]! * (1 - 1e-7)),
    );
  });
});
