import { mandelPaule } from '../support/formulas/mandel-paule.js';
import { evidenceOfSubmissions } from '../support/former-ranking/evidence-of-submissions.js';
import type { SubmissionEvidence } from '../support/former-ranking/evidence.js';
import { productOfEvidence } from '../support/former-ranking/product-of-evidence.js';
import { specimensToTell } from '../../../api/measurement/ranking/specimens-to-tell.js';
import { errorCode } from '../support/error-code.js';
import { known } from './ranking-fixtures.js';

const RIG = { relativeStandardUncertainty: 0.02, degreesOfFreedom: Infinity };
const from = (value: number, u: number, tester: string, rig: string): SubmissionEvidence => ({
  value,
  standardUncertainty: u,
  degreesOfFreedom: 9,
  shared: [{ source: rig, sensitivity: 1 }],
  parties: [`tester:${tester}`, `rig:${rig}`],
});

describe('evidence of submissions', () => {
  test('one submission stands for itself, and nothing is left without its parties', () => {
    expect(evidenceOfSubmissions([from(100, 2, 't1', 'r1')], {})).toEqual({
      value: 100,
      standardUncertainty: 2,
      degreesOfFreedom: 9,
      shared: [{ source: 'r1', sensitivity: 1 }],
      without: { 'tester:t1': null, 'rig:r1': null },
    });
  });

  test('several that agree: the weighted mean, each source by its weight, and what is left without each party', () => {
    const found = evidenceOfSubmissions([from(100, 1, 't1', 'r1'), from(101, 1, 't2', 'r1'), from(100.5, 1, 't1', 'r2')], {
      r1: RIG,
      r2: RIG,
    });
    expect(found.value).toBeCloseTo(100.5, 5);
    expect(found.standardUncertainty).toBeCloseTo(1 / Math.sqrt(3), 10);
    expect(found.degreesOfFreedom).toBeCloseTo(27, 8);
    expect(found.shared.map(({ source, sensitivity }) => [source, sensitivity.toFixed(6)])).toEqual([
      ['r1', '0.666667'],
      ['r2', '0.333333'],
    ]);
    expect(found.without['tester:t1']).toBe(101);
    expect(found.without['rig:r2']).toBeCloseTo(100.5, 10);
    expect(found.without['tester:t2']).toBeCloseTo(100.25, 10);
  });

  test('disagreement that the rigs explain is not counted twice; more than that widens', () => {
    const means = [from(96, 1, 't1', 'r1'), from(104, 1, 't2', 'r2')];
    const standardError = mandelPaule(means.map(({ value, standardUncertainty }) => ({ mean: value, standardUncertainty }))).standardError;
    const unexplained = evidenceOfSubmissions(means, {
      r1: { ...RIG, relativeStandardUncertainty: 0 },
      r2: { ...RIG, relativeStandardUncertainty: 0 },
    });
    expect(unexplained.standardUncertainty).toBeCloseTo(standardError, 10);
    expect(unexplained.degreesOfFreedom).toBeLessThan(2);
    const explained = evidenceOfSubmissions(means, {
      r1: { ...RIG, relativeStandardUncertainty: 0.06 },
      r2: { ...RIG, relativeStandardUncertainty: 0.06 },
    });
    expect(explained.standardUncertainty).toBeCloseTo(Math.SQRT1_2, 10);
  });

  test('disagreement that chance explains does not widen', () => {
    const still = { r1: { ...RIG, relativeStandardUncertainty: 0 }, r2: { ...RIG, relativeStandardUncertainty: 0 } };
    // Q = d²/2: 6.4 at d = 3.58, below χ²(0.99; 1) = 6.635 (NIST/SEMATECH e-Handbook 1.3.6.7.4); 6.85 at d = 3.7.
    const within = evidenceOfSubmissions([from(100, 1, 't1', 'r1'), from(103.58, 1, 't2', 'r2')], still);
    expect(within).toMatchObject({ standardUncertainty: expect.closeTo(Math.SQRT1_2, 10), degreesOfFreedom: expect.closeTo(18, 8) });
    const beyond = evidenceOfSubmissions([from(100, 1, 't1', 'r1'), from(103.7, 1, 't2', 'r2')], still);
    expect(beyond.standardUncertainty).toBeGreaterThan(1.8);
  });

  test('a submission on a rig that may be further off weighs less', () => {
    const { value } = evidenceOfSubmissions([from(100, 1, 't1', 'r1'), from(103, 1, 't2', 'r2')], {
      r1: { ...RIG, relativeStandardUncertainty: 0 },
      r2: { ...RIG, relativeStandardUncertainty: 0.02 },
    });
    // w = 1 and 1/(1 + (0.02 · 101.5)²): by hand.
    const weight = 1 / (1 + (0.02 * 101.5) ** 2);
    expect(value).toBeCloseTo((100 + 103 * weight) / (1 + weight), 10);
  });

  test('none, and an unknown source, are refused', () => {
    expect(errorCode(() => evidenceOfSubmissions([], {}))).toBe('measurement/too-few-readings');
    expect(errorCode(() => evidenceOfSubmissions([from(1, 1, 'a', 'r1'), from(1, 1, 'b', 'r2')], { r1: RIG }))).toBe(
      'ranking/unknown-source',
    );
    expect(errorCode(() => evidenceOfSubmissions([from(1, 1, 'a', 'toString'), from(1, 1, 'b', 'r1')], { r1: RIG }))).toBe(
      'ranking/unknown-source',
    );
  });
});

describe('evidence of a product', () => {
  const force = known(200, 2, {
    degreesOfFreedom: 9,
    shared: [{ source: 'gauge', sensitivity: 1 }],
    without: { 'tester:t1': 198, 'tester:t2': null },
  });
  const diameter = known(0.2, 0.001, {
    degreesOfFreedom: 4,
    shared: [{ source: 'micrometer', sensitivity: 1 }],
    without: { 'tester:t1': null, 'tester:t3': 0.25 },
  });
  const stress = productOfEvidence(
    [
      { evidence: force, power: 1 },
      { evidence: diameter, power: -2 },
    ],
    4 / Math.PI,
  );

  test('F/(πd²/4) with u²(σ) = u²(F) + 4u²(d) (JCGM 100), shared effects by their powers', () => {
    expect(stress.value).toBeCloseTo((4 * 200) / (Math.PI * 0.04), 8);
    expect(stress.standardUncertainty / stress.value).toBeCloseTo(Math.sqrt(0.01 ** 2 + 4 * 0.005 ** 2), 12);
    expect(stress.degreesOfFreedom).toBeCloseTo(0.0002 ** 2 / (0.0001 ** 2 / 9 + 0.0001 ** 2 / 4), 8);
    expect(stress.shared).toEqual([
      { source: 'gauge', sensitivity: 1 },
      { source: 'micrometer', sensitivity: -2 },
    ]);
  });

  test('without a party: the product of what is left, nothing when a factor is gone', () => {
    expect(stress.without['tester:t1']).toBeNull();
    expect(stress.without['tester:t2']).toBeNull();
    expect(stress.without['tester:t3']).toBeCloseTo((4 * 200) / (Math.PI * 0.0625), 8);
    expect(productOfEvidence([{ evidence: known(2, 0), power: 3 }])).toMatchObject({
      value: 8,
      standardUncertainty: 0,
      degreesOfFreedom: Infinity,
    });
  });

  test('a factor of 0 or less is refused', () => {
    expect(errorCode(() => productOfEvidence([{ evidence: known(0, 1), power: -2 }]))).toBe('ranking/bad-evidence');
    expect(errorCode(() => productOfEvidence([{ evidence: known(1, 1), power: 1 }], 0))).toBe('ranking/bad-evidence');
  });
});

// Smallest n with 80 % power of the two-sample t test by the noncentral t distribution, scipy 1.17.1: recomputed
test.each([
  [2, 9],
  [5, 45],
  [8, 113],
])('planning aid: CV %d %% needs %d specimens for 3 %%', (cvPercent, n) => {
  expect(Math.abs(specimensToTell(cvPercent) - n)).toBeLessThanOrEqual(1);
});

test('planning aid: its limits', () => {
  expect(specimensToTell(0.01)).toBe(2);
  expect(specimensToTell(5, 6)).toBeLessThan(specimensToTell(5, 3));
  expect(errorCode(() => specimensToTell(0))).toBe('figures/not-positive');
  expect(errorCode(() => specimensToTell(5, -1))).toBe('figures/not-positive');
  expect(errorCode(() => specimensToTell(5, 3, 1))).toBe('distributions/out-of-domain');
  expect(errorCode(() => specimensToTell(5, 3, 0.8, 0))).toBe('distributions/out-of-domain');
  expect(errorCode(() => specimensToTell(50_000, 3))).toBe('uncertainty/too-many-specimens');
});
