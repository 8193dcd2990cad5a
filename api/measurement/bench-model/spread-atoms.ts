import { CAUSES } from './bench-series.js';
import type { BenchSeries, Cause, SeasonTold, Spreads } from './bench-series.js';
import type { Design } from './design.js';
import { columnSds, restrictedLikelihood } from './shared-effects.js';
import { cellWidth, logPrior, priorMass, priorScale, toldTogether, widthOfNone } from './spread-prior.js';
import { submissionLevel } from './submission-level.js';

/** Coarse grid of a cause, in scales of its prior; it only finds where the fine one lies. */
const COARSE = [0, 0.1, 0.2, 0.35, 0.55, 0.8, 1.15, 1.65, 2.5, 4];
const FINE = 10;
/** What may lie beyond either end of the fine grid. */
const BEYOND = 0.002;
/** Sets of spreads that stand for all: equally likely ones. */
const ATOMS = 200;

type Known = Omit<BenchSeries, 'submissions'>;
type Axes = Readonly<Record<Cause, readonly number[]>>;
interface Weighted {
  readonly spreads: Spreads;
  weight: number;
}

/**
 * Spreads of rig, tester and submission that the season and all that is told leave likely: 200 of equal weight, with repeats.
 *
 * Formula: weight ∝ REML likelihood × prior × width of the cell (0 with the chance of no effect), on a grid of ten values a cause laid where a coarse one has its mass; then systematic sampling of the grid in its order
 * @param design series as the model takes it
 * @param series what is stated and told of it
 * @param isApart variants that tell nothing of the effects
 * @returns sets of spreads in the order of the grid
 * @throws nothing: the caller checks the series
 * @see PATTERSON-THOMPSON-1971
 * @see GELMAN-2006
 * @example spreadAtoms(designOf(series), series, new Uint8Array(2)).length // 200
 */
export function spreadAtoms(design: Design, series: Known, isApart: Uint8Array): Spreads[] {
  const known = { ...series, earlier: toldTogether(series.earlier ?? [], series.reproducibility) };
  return systematic(weigh(design, known, isApart, fineAxes(design, known, isApart)));
}

/**
 * What a season itself tells later ones of the spreads, without what it was told.
 *
 * Formula: L(σ) = chance of σ after the season over its chance before, of each cause by itself
 * @param design series as the model takes it
 * @param reproducibility that the method states [1]; null where it states none
 * @param isApart variants that tell nothing of the effects
 * @returns likelihoods of the causes that the series has, on the grid of the fit
 * @throws nothing: the caller checks the series
 * @see PATTERSON-THOMPSON-1971
 * @see SCHMIDLI-2014
 * @example seasonTells(designOf(series), 0.01, new Uint8Array(2)).map(({ cause }) => cause) // ['rig', 'tester', 'submission']
 */
export function seasonTells(design: Design, reproducibility: number | null, isApart: Uint8Array): SeasonTold[] {
  const alone = { reproducibility, told: [] };
  const axes = fineAxes(design, alone, isApart);
  const found = weigh(design, alone, isApart, axes);
  return CAUSES.filter((cause) => axes[cause].length > 1).map((cause) => {
    const [after, widths] = [massOf(found, axes[cause], cause), cellWidths(axes[cause], 0)];
    const points = axes[cause].map((relativeSd, at) => ({
      relativeSd,
      likelihood: after[at]! / priorMass(relativeSd, widths[at]!, reproducibility, cause),
    }));
    return { cause, points };
  });
}

function fineAxes(design: Design, series: Known, isApart: Uint8Array): Axes {
  const coarse = axesOf(design, (cause) => coarseAxis(design, series, cause));
  const found = weigh(design, series, isApart, coarse);
  return axesOf(design, (cause) => fineAxis(found, coarse[cause], cause));
}

function axesOf({ columns }: Design, axisOf: (cause: Cause) => readonly number[]): Axes {
  const has = (cause: Cause): boolean => cause === 'submission' || columns.some(({ kind }) => kind === cause);
  const axis = (cause: Cause): readonly number[] => (has(cause) ? axisOf(cause) : [0]);
  return { submission: axis('submission'), rig: axis('rig'), tester: axis('tester') };
}

/** Goes on doubling until it is past all that the data or anything told could ask for. */
function coarseAxis({ y }: Design, { reproducibility, told }: Known, cause: Cause): number[] {
  const scale = priorScale(reproducibility, cause);
  const axis = COARSE.map((step) => step * scale);
  const farthest = Math.max(...y.map(Math.abs), ...told.filter((one) => one.cause === cause).map(({ relativeSd }) => 3 * relativeSd));
  while (axis.at(-1)! < 3 * farthest) axis.push(1.5 * axis.at(-1)!);
  return axis;
}

function fineAxis(found: readonly Weighted[], coarse: readonly number[], cause: Cause): number[] {
  if (coarse.length === 1) return [...coarse];
  const mass = massOf(found, coarse, cause);
  let [low, high] = [0, coarse.length - 1];
  for (let below = mass[low]!; below < BEYOND; below += mass[low]!) low += 1;
  for (let above = mass[high]!; above < BEYOND; above += mass[high]!) high -= 1;
  const from = coarse[Math.max(0, low - 1)]!;
  const to = coarse[Math.min(coarse.length - 1, high + 1)]!;
  return Array.from({ length: FINE }, (_, at) => from + ((to - from) * at) / (FINE - 1));
}

const massOf = (found: readonly Weighted[], axis: readonly number[], cause: Cause): number[] =>
  axis.map((sd) => found.reduce((sum, { spreads, weight }) => (spreads[cause] === sd ? sum + weight : sum), 0));

/** Half the distance to the neighbours on either side; 0 itself also has the chance that a cause adds nothing. */
function cellWidths(axis: readonly number[], none: number): number[] {
  return axis.map((sd, at) => cellWidth(axis, at) + (sd === 0 && axis.length > 1 ? none : 0));
}

function weigh(design: Design, series: Known, isApart: Uint8Array, axes: Axes): Weighted[] {
  const k = design.columns.length;
  const [factor, effects] = [new Float64Array(k * k), new Float64Array(k)];
  const widths = (cause: Cause): number[] => cellWidths(axes[cause], widthOfNone(series.reproducibility, cause));
  const [ofSubmission, ofRig, ofTester] = [widths('submission'), widths('rig'), widths('tester')];
  const logs: number[] = [];
  const spreads: Spreads[] = [];
  axes.submission.forEach((submission, a) => {
    const level = submissionLevel(design, submission, isApart);
    axes.rig.forEach((rig, b) =>
      axes.tester.forEach((tester, c) => {
        const one = { submission, rig, tester };
        const prior = logPrior(one, series) + Math.log(ofSubmission[a]! * ofRig[b]! * ofTester[c]!);
        logs.push(prior === -Infinity ? prior : prior + restrictedLikelihood(level, columnSds(design, one), factor, effects, 0));
        spreads.push(one);
      }),
    );
  });
  const most = logs.reduce((a, b) => Math.max(a, b), -Infinity);
  const weights = logs.map((log) => Math.exp(log - most));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return spreads.map((one, at) => ({ spreads: one, weight: weights[at]! / total }));
}

function systematic(grid: readonly Weighted[]): Spreads[] {
  const atoms: Spreads[] = [];
  let sum = 0;
  for (const { spreads, weight } of grid) {
    sum += weight;
    while (atoms.length < ATOMS && (atoms.length + 0.5) / ATOMS <= sum) atoms.push(spreads);
  }
  while (atoms.length < ATOMS) atoms.push(grid.at(-1)!.spreads);
  return atoms;
}
