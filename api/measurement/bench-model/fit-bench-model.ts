import { chiSquareQuantile } from '../distributions/chi-square-distribution.js';
import { MeasurementError } from '../errors.js';
import { effectsAt } from './effects-at.js';
import type { EffectsAt } from './effects-at.js';
import { CAUSES } from './observation.js';
import type { BenchObservation, Cause, ToldSpread } from './observation.js';
import { spreadGrid } from './spread-grid.js';
import type { GridPoint } from './spread-grid.js';
import { benchTable, withinVariants } from './within-variants.js';
import type { BenchTable, EffectColumn, WithinVariants } from './within-variants.js';

/** The model at one setting of the spreads; all settings of a fit are equally likely. */
export interface BenchSetting {
  readonly spreads: Readonly<Record<Cause, number>>;
  readonly effects: Float64Array;
  readonly root: Float64Array;
  readonly within: WithinVariants;
  /** value of each variant over its plain mean [1] */
  readonly values: Float64Array;
}

export interface BenchFit {
  readonly table: BenchTable;
  readonly columns: readonly EffectColumn[];
  readonly settings: readonly BenchSetting[];
  /** values of the variants, effects taken out [unit of the observations] */
  readonly values: Float64Array;
  /** variance of what is a variant's own, relative: submissions and repeatability, averaged over the settings [1] */
  readonly ownVariances: Float64Array;
  readonly ownDegreesOfFreedom: Float64Array;
  /** variants whose submissions disagree beyond the others */
  readonly isDisagreeing: readonly boolean[];
  /** widening of those, relative variance; 0 of the others [1] */
  readonly widening: Float64Array;
}

export interface BenchOptions {
  /** scale of the priors of the spreads: what the method states that laboratories differ by [1] */
  readonly scale: number;
  readonly told: Readonly<Partial<Record<Cause, readonly ToldSpread[]>>>;
}

/** Equally likely settings that stand for the grid. */
const SETTINGS = 100;
/** Chance that submissions of any variant of a table are said to disagree when they do not (common practice). */
const FALSE_DISAGREEMENT = 0.01;
/** Degrees of freedom that a variance between a variant's own few submissions borrows (common practice): with two of them, 1 + 2. */
const BORROWED = 2;

/**
 * Fits the model of the bench: a submission's mean is the value of its variant, times one plus effects of rig, tester and the submission itself, plus repeatability.
 *
 * Formula: x_s = μ_v(1 + r + t + s) + e; no point estimate of the spreads: a grid, weighed by restricted likelihood × prior × what is told, stands as 100 equally
 * likely settings; at each, generalised least squares values with the predicted effects taken out
 * @param observations means of submissions [any one unit]
 * @param options scale of the priors, and what is told of the spreads
 * @returns the fit
 * @throws MeasurementError 'bench-model/bad-observation' for a value or variance that is not above 0; 'measurement/too-few-readings' for none
 * @see PATTERSON-THOMPSON-1971
 * @see GELMAN-2006
 * @example fitBenchModel(observations, { scale: 0.01, told: {} }).values
 */
export function fitBenchModel(observations: readonly BenchObservation[], options: BenchOptions): BenchFit {
  requireObservations(observations);
  const table = benchTable(observations);
  const none = table.variants.map(() => false);
  const first = settingsOf(table, options, none);
  const isDisagreeing = disagreeing(table, first);
  const settings = isDisagreeing.includes(true) ? settingsOf(table, options, isDisagreeing) : first;
  return summarised(table, settings, isDisagreeing);
}

function requireObservations(observations: readonly BenchObservation[]): void {
  if (observations.length === 0)
    throw new MeasurementError('measurement/too-few-readings', 'fitBenchModel: found no submissions, expected at least 1.');
  observations.forEach(({ value, relativeVariance, degreesOfFreedom }, i) => {
    if (value > 0 && value < Infinity && relativeVariance > 0 && relativeVariance < Infinity && degreesOfFreedom > 0) return;
    throw new MeasurementError(
      'bench-model/bad-observation',
      `fitBenchModel: observation ${i + 1} has the value ${value} with relative variance ${relativeVariance} and ${degreesOfFreedom} degrees of freedom, expected all above 0. Leave it out.`,
    );
  });
}

interface Weighed {
  readonly spreads: Readonly<Record<Cause, number>>;
  readonly within: WithinVariants;
  readonly at: EffectsAt;
  readonly logWeight: number;
}

/** The grid as 100 equally likely settings, by systematic sampling of its weights. */
function settingsOf(table: BenchTable, { scale, told }: BenchOptions, isLeftOut: readonly boolean[]): BenchSetting[] {
  const grid = weighGrid(table, scale, told, isLeftOut);
  const most = Math.max(...grid.map(({ logWeight }) => logWeight));
  const weights = grid.map(({ logWeight }) => Math.exp(logWeight - most));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const settings: BenchSetting[] = [];
  let [reached, k] = [weights[0]!, 0];
  for (let m = 0; m < SETTINGS; m++) {
    while (reached < ((m + 0.5) / SETTINGS) * total && k < grid.length - 1) reached += weights[++k]!;
    settings.push(settingAt(table, grid[k]!));
  }
  return settings;
}

function weighGrid(table: BenchTable, scale: number, told: BenchOptions['told'], isLeftOut: readonly boolean[]): Weighed[] {
  const reach = 3 * differenceWithin(table, isLeftOut);
  const has = (cause: Cause) => cause === 'submission' || table.columns.some((column) => column.cause === cause);
  const points = (cause: Cause): GridPoint[] => (has(cause) ? spreadGrid(scale, reach, told[cause] ?? []) : [{ sd: 0, logWeight: 0 }]);
  return points('submission').flatMap((submission) => {
    const within = withinVariants(table, submission.sd ** 2, isLeftOut);
    return points('rig').flatMap((rig) =>
      points('tester').map((tester): Weighed => {
        const spreads = { rig: rig.sd, tester: tester.sd, submission: submission.sd };
        const at = effectsAt(within, Float64Array.from(table.columns, ({ cause, stated }) => (cause === null ? stated : spreads[cause])));
        return { spreads, within, at, logWeight: rig.logWeight + tester.logWeight + submission.logWeight - at.deviance / 2 };
      }),
    );
  });
}

/** Root mean square of what submissions of a variant differ by [1]. */
function differenceWithin({ submissions, variants }: BenchTable, isLeftOut: readonly boolean[]): number {
  let [squares, degreesOfFreedom] = [0, -variants.filter((_, v) => !isLeftOut[v]).length];
  for (const { variant, relative } of submissions) {
    if (isLeftOut[variant]) continue;
    squares += (relative - 1) ** 2;
    degreesOfFreedom += 1;
  }
  return degreesOfFreedom > 0 ? Math.sqrt(squares / degreesOfFreedom) : 0;
}

function settingAt({ variants, columns }: BenchTable, { spreads, within, at }: Weighed): BenchSetting {
  const q = columns.length;
  const values = Float64Array.from(variants, (_, v) => {
    let value = within.means[v]!;
    for (let c = 0; c < q; c++) value -= within.shares[v * q + c]! * at.effects[c]!;
    return value;
  });
  return { spreads, within, effects: at.effects, root: at.root, values };
}

/** Variants whose submissions differ more than the fitted spreads explain. */
function disagreeing(table: BenchTable, settings: readonly BenchSetting[]): boolean[] {
  const counts = countsOf(table);
  const several = counts.filter((count) => count > 1).length;
  const squares = table.variants.map(() => 0);
  for (const setting of settings) squaresOf(table, setting).forEach((sum, v) => (squares[v] = squares[v]! + sum / settings.length));
  return squares.map((sum, v) => counts[v]! > 1 && sum > chiSquareQuantile(1 - FALSE_DISAGREEMENT / several, counts[v]! - 1));
}

const countsOf = ({ submissions, variants }: BenchTable): number[] => {
  const counts = variants.map(() => 0);
  for (const { variant } of submissions) counts[variant] = counts[variant]! + 1;
  return counts;
};

/** Σ w(y − value − effects)² of each variant. */
function squaresOf({ submissions, variants }: BenchTable, { within, effects, values }: BenchSetting): Float64Array {
  const squares = new Float64Array(variants.length);
  submissions.forEach(({ variant, relative, columns }, s) => {
    const rest = columns.reduce((left, c) => left - effects[c]!, relative - values[variant]!);
    squares[variant] = squares[variant]! + within.weights[s]! * rest * rest;
  });
  return squares;
}

function summarised(table: BenchTable, settings: readonly BenchSetting[], isDisagreeing: readonly boolean[]): BenchFit {
  const counts = countsOf(table);
  const values = table.plainMeans.map((plain, v) => plain * mean(settings.map((setting) => setting.values[v]!)));
  const widening = wideningOf(table, settings, isDisagreeing, counts);
  const ownVariances = table.plainMeans.map((_, v) => mean(settings.map(({ within }) => 1 / within.totals[v]!)) + widening[v]!);
  return {
    table,
    columns: table.columns,
    settings,
    values,
    ownVariances,
    ownDegreesOfFreedom: degreesOfFreedomOf(table, settings).map((own, v) => (isDisagreeing[v] ? counts[v]! - 1 + BORROWED : own)),
    isDisagreeing,
    widening,
  };
}

/** Relative variance that submissions which disagree add to the mean of theirs, beyond what the spreads explain. */
function wideningOf(table: BenchTable, settings: readonly BenchSetting[], isDisagreeing: readonly boolean[], counts: readonly number[]): Float64Array {
  const widening = new Float64Array(table.variants.length);
  if (!isDisagreeing.includes(true)) return widening;
  for (const setting of settings) {
    squaresOf(table, setting).forEach((sum, v) => {
      if (isDisagreeing[v]) widening[v] = widening[v]! + (sum / (counts[v]! - 1) - 1) / setting.within.totals[v]! / settings.length;
    });
  }
  return widening.map((variance) => Math.max(0, variance));
}

/** Of what is a variant's own: only repeatability is estimated from its few specimens, the spreads have their settings (Satterthwaite). */
function degreesOfFreedomOf({ submissions, variants }: BenchTable, settings: readonly BenchSetting[]): Float64Array {
  const inverse = new Float64Array(variants.length);
  for (const { within } of settings) {
    submissions.forEach(({ variant, variance, degreesOfFreedom }, s) => {
      const share = (within.weights[s]! ** 2 * variance) / within.totals[variant]!;
      inverse[variant] = inverse[variant]! + share ** 2 / degreesOfFreedom / settings.length;
    });
  }
  return inverse.map((sum) => (sum === 0 ? Infinity : 1 / sum));
}

const mean = (numbers: readonly number[]): number => numbers.reduce((sum, one) => sum + one, 0) / numbers.length;

/** Spreads of a fit, averaged over its settings [1]. */
export const meanSpreads = ({ settings }: BenchFit): Record<Cause, number> =>
  Object.fromEntries(CAUSES.map((cause) => [cause, mean(settings.map(({ spreads }) => spreads[cause]))])) as Record<Cause, number>;
