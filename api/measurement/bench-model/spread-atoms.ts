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

/** Weights of all sets of spreads on a grid: submissions, in each the rigs, in each the testers. */
interface WeighedGrid {
  readonly axes: Axes;
  readonly weights: Float64Array;
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
    const [after, widths] = [massOf(found, cause), cellWidths(axes[cause], 0)];
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
  return axesOf(design, (cause) => fineAxis(massOf(found, cause), coarse[cause]));
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

function fineAxis(mass: Float64Array, coarse: readonly number[]): number[] {
  if (coarse.length === 1) return [...coarse];
  let [low, high] = [0, coarse.length - 1];
  for (let below = mass[low]!; below < BEYOND; below += mass[low]!) low += 1;
  for (let above = mass[high]!; above < BEYOND; above += mass[high]!) high -= 1;
  const from = coarse[Math.max(0, low - 1)]!;
  const to = coarse[Math.min(coarse.length - 1, high + 1)]!;
  return Array.from({ length: FINE }, (_, at) => from + ((to - from) * at) / (FINE - 1));
}

function massOf({ axes: { submission, rig, tester }, weights }: WeighedGrid, cause: Cause): Float64Array {
  const [length, stride] = {
    submission: [submission.length, rig.length * tester.length] as const,
    rig: [rig.length, tester.length] as const,
    tester: [tester.length, 1] as const,
  }[cause];
  const mass = new Float64Array(length);
  weights.forEach((weight, at) => {
    const own = Math.floor(at / stride) % length;
    mass[own] = mass[own]! + weight;
  });
  return mass;
}

/** Half the distance to the neighbours on either side; 0 itself also has the chance that a cause adds nothing. */
function cellWidths(axis: readonly number[], none: number): number[] {
  return axis.map((sd, at) => cellWidth(axis, at) + (sd === 0 && axis.length > 1 ? none : 0));
}

function weigh(design: Design, series: Known, isApart: Uint8Array, axes: Axes): WeighedGrid {
  const k = design.columns.length;
  const [factor, effects, sds] = [new Float64Array(k * k), new Float64Array(k), columnSds(design, { submission: 0, rig: 0, tester: 0 })];
  const set = (kind: Cause, sd: number): void => design.columns.forEach((column, at) => column.kind === kind && (sds[at] = sd));
  const priors = (cause: Cause): Float64Array => {
    const widths = cellWidths(axes[cause], widthOfNone(series.reproducibility, cause));
    return Float64Array.from(axes[cause], (sd, at) => logPrior(cause, sd, series) + Math.log(widths[at]!));
  };
  const [ofSubmission, ofRig, ofTester] = [priors('submission'), priors('rig'), priors('tester')];
  const logs = new Float64Array(ofSubmission.length * ofRig.length * ofTester.length);
  let [at, most] = [0, -Infinity];
  axes.submission.forEach((submission, a) => {
    const level = submissionLevel(design, submission, isApart);
    axes.rig.forEach((rig, b) => {
      set('rig', rig);
      axes.tester.forEach((tester, c) => {
        set('tester', tester);
        const prior = ofSubmission[a]! + ofRig[b]! + ofTester[c]!;
        logs[at] = prior === -Infinity ? prior : prior + restrictedLikelihood(level, sds, factor, effects, 0);
        most = Math.max(most, logs[at]!);
        at += 1;
      });
    });
  });
  const weights = logs.map((log) => Math.exp(log - most));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return { axes, weights: weights.map((weight) => weight / total) };
}

function systematic({ axes, weights }: WeighedGrid): Spreads[] {
  const atoms: Spreads[] = [];
  const spreadsAt = (at: number): Spreads => {
    const [rigs, testers] = [axes.rig.length, axes.tester.length];
    return {
      submission: axes.submission[Math.floor(at / testers / rigs)]!,
      rig: axes.rig[Math.floor(at / testers) % rigs]!,
      tester: axes.tester[at % testers]!,
    };
  };
  let sum = 0;
  weights.forEach((weight, at) => {
    sum += weight;
    if ((atoms.length + 0.5) / ATOMS > sum) return;
    const spreads = spreadsAt(at);
    while (atoms.length < ATOMS && (atoms.length + 0.5) / ATOMS <= sum) atoms.push(spreads);
  });
  while (atoms.length < ATOMS) atoms.push(atoms.at(-1)!);
  return atoms;
}
