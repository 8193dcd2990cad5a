import { normalQuantile } from '../../../api/measurement/distributions/normal-distribution.js';
import { algorithmA } from '../../../api/measurement/agreement/algorithm-a.js';
import { concordance } from '../support/formulas/concordance.js';
import { mandelHCritical, mandelKCritical } from '../../../api/measurement/agreement/mandel-critical.js';
import { zScore } from '../../../api/measurement/agreement/performance-scores.js';
import { eNScore, zetaScore } from '../support/formulas/zeta-and-en-scores.js';
import { roundRobin } from '../../../api/measurement/agreement/round-robin.js';
import { screenRoundRobin } from '../../../api/measurement/agreement/screen-round-robin.js';
import { cochranCritical } from '../../../api/measurement/outliers/cochran-c.js';
import { mean } from '../../../api/measurement/summary/mean.js';
import { median } from '../../../api/measurement/summary/median.js';
import { errorCode } from '../support/error-code.js';
import { expectReference, named, referenceCases } from '../support/reference-cases.js';
import { huberLocation, huberProposal2, qn, scaledMad, sn } from '../support/robust-estimators.js';

const interlab = referenceCases('interlab');
const robust = referenceCases('robust');
const ranking = referenceCases('ranking');
const test1 = (one: (typeof interlab)[string] | undefined, run: (found: NonNullable<typeof one>) => void) =>
  test(named(one!), () => run(one!));

/** The round robin under the names of E691; limits are 2.8 standard deviations. */
function asE691(cells: number[][]) {
  const robin = roundRobin(cells);
  return {
    mean: robin.mean,
    s_xbar: robin.sdOfMeans,
    s_r: robin.repeatabilitySd,
    s_R: robin.reproducibilitySd,
    r: 2.8 * robin.repeatabilitySd,
    R: 2.8 * robin.reproducibilitySd,
    cell_means: robin.cellMeans,
    cell_sds: robin.cellSds,
    h: robin.h,
    k: robin.k,
  };
}

test1(interlab['L01-glucose'], (one) => {
  expectReference(
    one,
    Object.fromEntries(Object.entries(one.inputs.materials).map(([material, cells]) => [material, asE691(cells as number[][])])),
  );
});

test1(interlab['L02-glucose-C'], (one) => {
  expectReference(one, {
    as_stored: asE691(one.inputs.as_stored),
    corrected: asE691(one.inputs.corrected),
    k_critical: mandelKCritical(8, 3, 0.005),
    h_critical: mandelHCritical(8, 0.005),
  });
  // The mistyped digit is what the review screen has to show: tester 4 by k, nobody by h.
  const screen = screenRoundRobin(roundRobin(one.inputs.as_stored));
  expect(screen).toMatchObject({ farMeans: [], wideSpreads: [3], cochran: { suspectIndex: 3, isOutlier: true } });
  expect(screen.grubbs!.suspectIndex).toBe(3);
  expect(screen.doubleGrubbs!.areTwoLargestOutliers).toBe(false);
  expect(screenRoundRobin(roundRobin(one.inputs.corrected)).wideSpreads).toEqual([]);
});

test1(interlab['L03-critical-h-k'], (one) => {
  const { p, n, alpha } = one.inputs as { p: number[]; n: number[]; alpha: number };
  expectReference(one, {
    h: p.map((testers) => mandelHCritical(testers, alpha)),
    k: Object.fromEntries(n.map((readings) => [readings, p.map((testers) => mandelKCritical(testers, readings, alpha))])),
  });
});

test1(interlab['L04-apricot-duplicates'], (one) => {
  expectReference(one, { ...asE691(one.inputs.cells), s_L: roundRobin(one.inputs.cells).betweenSd });
});

test1(interlab['L05-coal-level1'], (one) => {
  const robin = roundRobin(one.inputs.cells);
  expectReference(one, {
    mean: robin.mean,
    s_r: robin.repeatabilitySd,
    s_L: robin.betweenSd,
    s_R: robin.reproducibilitySd,
    cell_sizes: robin.cellSizes,
    lab_means: robin.cellMeans,
    lab_sds: robin.cellSds,
  });
});

test('a screen of unequal cells takes the size that most have; of few testers only what can be tested', () => {
  const screen = screenRoundRobin(
    roundRobin([
      [1, 2],
      [1, 2, 3],
    ]),
  );
  expect(screen).toMatchObject({ farMeans: null, grubbs: null, doubleGrubbs: null });
  // As many of two as of three: the smaller size, in either order
  for (const cells of [
    [
      [1, 2],
      [1, 2, 3],
    ],
    [
      [1, 2, 3],
      [1, 2],
    ],
  ]) {
    expect(screenRoundRobin(roundRobin(cells)).cochran.critical).toBe(cochranCritical(2, 2, 0.05));
  }
  expect(
    screenRoundRobin(
      roundRobin([
        [1, 2, 3],
        [1, 2],
        [3, 4],
        [5, 9],
        [1, 2, 3],
      ]),
    ).cochran.critical,
  ).toBeCloseTo(0.8412, 3); // ISO 5725-2 table 4: p = 5, n = 2 (memory)
});

test('round robins without spread have no h and no k, and no NaN', () => {
  expect(
    roundRobin([
      [0.1, 0.1, 0.1],
      [0.1, 0.1, 0.1],
    ]),
  ).toMatchObject({ repeatabilitySd: 0, h: [null, null], k: [null, null] });
  expect(
    roundRobin([
      [1, 1],
      [2, 2],
    ]),
  ).toMatchObject({ repeatabilitySd: 0, k: [null, null] });
});

test('round robins shift, scale and permute', () => {
  const cells = [
    [10, 12, 11],
    [14, 13, 15],
    [9, 9, 12],
  ];
  const [plain, moved] = [roundRobin(cells), roundRobin([...cells].reverse().map((cell) => cell.map((value) => 3 * value + 50)))];
  expect(moved.mean).toBeCloseTo(3 * plain.mean + 50, 10);
  expect(moved.betweenSd).toBeCloseTo(3 * plain.betweenSd, 10);
  expect(moved.repeatabilitySd).toBeCloseTo(3 * plain.repeatabilitySd, 10);
  [...plain.h].reverse().forEach((h, i) => expect(moved.h[i]).toBeCloseTo(h!, 10));
});

test('too few testers or readings are refused', () => {
  expect(errorCode(() => roundRobin([[1, 2]]))).toBe('agreement/too-few-testers');
  expect(errorCode(() => roundRobin([[1, 2], [1]]))).toBe('measurement/too-few-readings');
  expect(errorCode(() => mandelHCritical(2, 0.005))).toBe('agreement/too-few-testers');
  expect(errorCode(() => mandelKCritical(1, 3, 0.005))).toBe('agreement/too-few-testers');
  expect(errorCode(() => mandelKCritical(4, 1, 0.005))).toBe('measurement/too-few-readings');
  expect(errorCode(() => mandelHCritical(8, 0))).toBe('distributions/out-of-domain');
  expect(errorCode(() => mandelKCritical(8, 3, 1))).toBe('distributions/out-of-domain');
});

test1(robust['R01-algA-creosote'], (one) => {
  const { mean: x_star, sd: s_star, rounds } = algorithmA(one.inputs.values);
  expectReference(one, { x_star, s_star, iterations: rounds.slice(0, 5) });
});

test1(robust['R02-algA-E2489'], (one) => {
  const { values } = one.inputs;
  const centre = median(values);
  const mad = median(values.map((value: number) => Math.abs(value - centre)));
  const { mean: x_star, sd: s_star } = algorithmA(values);
  expectReference(one, {
    median: centre,
    mad,
    x_star,
    s_star,
    'scaled_mad_1.4826': scaledMad(values, 1 / normalQuantile(0.75)),
    'z_of_2.75': zScore(2.75, x_star, s_star),
  });
});

test1(robust['R03-chem-copper'], (one) => {
  const { mean: algA_x_star, sd: algA_s_star } = algorithmA(one.inputs.values);
  const { values } = one.inputs;
  const { location: hubers_mu, scale: hubers_s } = huberProposal2(values);
  expectReference(one, {
    mean: mean(values),
    median: median(values),
    mad_scaled: scaledMad(values),
    huber_mu_with_mad: huberLocation(values),
    hubers_mu,
    hubers_s,
    Qn: qn(values),
    Sn: sn(values),
    algA_x_star,
    algA_s_star,
  });
});

test('algorithm A of mostly equal values has spread 0; one value is refused', () => {
  expect(algorithmA([5, 5, 5, 9])).toMatchObject({ mean: 5, sd: 0 });
  expect(errorCode(() => algorithmA([5]))).toBe('measurement/too-few-readings');
});

test('z, ζ and E_n', () => {
  expect(zScore(12, 10, 0.5)).toBe(4);
  expect(zetaScore({ value: 12, u: 0.6 }, { value: 10, u: 0.8 })).toBeCloseTo(2, 14);
  expect(eNScore({ value: 9, expanded: 1.2 }, { value: 10, expanded: 1.6 })).toBeCloseTo(-0.5, 14);
  expect(errorCode(() => zScore(1, 1, 0))).toBe('figures/not-positive');
  expect(errorCode(() => zetaScore({ value: 1, u: 0 }, { value: 1, u: 0 }))).toBe('figures/not-positive');
  expect(errorCode(() => eNScore({ value: 1, expanded: 0 }, { value: 1, expanded: 0 }))).toBe('figures/not-positive');
});

test1(ranking['K03-friedman-rounding'], (one) => {
  const found = concordance(one.inputs.rows_are_blocks);
  expectReference(one, { rank_sums: found.rankSums, chi2: found.chiSquare, df: found.degreesOfFreedom, p: found.p, kendall_W: found.w });
});

test('concordance: full agreement, none to speak of, and tables that are none', () => {
  expect(
    concordance([
      [1, 2, 3],
      [4, 5, 6],
    ]).w,
  ).toBe(1);
  expect(
    concordance([
      [1, 2, 3],
      [3, 2, 1],
    ]).w,
  ).toBe(0);
  expect(
    concordance([
      [1, 1],
      [2, 2],
    ]),
  ).toMatchObject({ w: null, chiSquare: null, p: null });
  for (const table of [
    [[1, 2]],
    [[1], [2]],
    [[1, 2], [1]],
    [
      [1, NaN],
      [1, 2],
    ],
  ])
    expect(errorCode(() => concordance(table))).toBe('agreement/bad-table');
});
