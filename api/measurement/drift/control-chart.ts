import { requireReadings } from '../summary/require-readings.js';
import { ewmaChart } from './ewma-chart.js';
import { individualsChart } from './individuals-chart.js';
import type { ControlLimits } from './individuals-chart.js';
import { runRules } from './run-rules.js';
import type { RunRule } from './run-rules.js';

/** What a control pull says of its rig: three states, never two. */
export type ControlState = 'inControl' | 'outOfControl' | 'noEvidence';

/** A control pull as the pulls before it judge it. */
export interface JudgedPull {
  readonly value: number;
  /** distance from the pull before; null for the first [same unit] */
  readonly movingRange: number | null;
  /** from the good pulls before; null while there are too few of them */
  readonly limits: ControlLimits | null;
  /** moving average with weight 0.2 since the limits hold or the last signal; null without limits [same unit] */
  readonly ewma: number | null;
  /** between which the moving average stays by chance; null without limits [same unit] */
  readonly ewmaLimits: { readonly low: number; readonly high: number } | null;
  readonly signals: readonly RunRule[];
  readonly state: ControlState;
}

/** Good pulls before there are limits. */
export const FEWEST_PULLS = 10;

/**
 * Good pulls at which limits are taken, and taken anew; between these they stand, so that a slow drift does not widen them, and after
 * the last they stay (common practice; the handbook asks for as many as can be had, usually 20 to 25).
 */
const BASELINES = [FEWEST_PULLS, 15, 20];

/**
 * Limits of a rig from its first good control pulls, or nothing while there are too few.
 *
 * Formula: individuals chart of the baseline
 * @param baseline pulls that were found good, in order [any one unit]
 * @returns centre and sigma [same unit]; null below 10 pulls and when the pulls show no spread
 * @throws MeasurementError 'measurement/not-a-number'
 * @see NIST-EHANDBOOK 6.3.2.2
 * @example rigLimits([10, 11, 10, 11, 10, 11, 10, 11, 10, 11])?.centre // 10.5
 */
export function rigLimits(baseline: readonly number[]): ControlLimits | null {
  requireReadings(baseline, 0, 'rigLimits');
  if (baseline.length < FEWEST_PULLS) return null;
  const { centre, sigma } = individualsChart(baseline);
  return sigma > 0 ? { centre, sigma } : null;
}

/**
 * The control chart of one control line on one rig by one method: each pull judged by those before it, so that a later pull never changes an earlier judgement.
 *
 * Formula: limits from the first 10, 15 or 20 good pulls before, as many as there are; run rules 1 to 4 on the pulls since the limits hold or the last signal, so that one good pull clears the rig
 * @param values control pulls in the order of pulling [any one unit]
 * @returns one judgement a pull; 'noEvidence' while there are no limits
 * @throws MeasurementError 'measurement/not-a-number' for a pull that is not finite
 * @see NIST-EHANDBOOK 6.3.2.2
 * @see WESTERN-ELECTRIC
 * @example judgePulls([10, 11, 10, 11, 10, 11, 10, 11, 10, 11, 14]).at(-1)?.state // 'outOfControl'
 */
export function judgePulls(values: readonly number[]): JudgedPull[] {
  requireReadings(values, 0, 'judgePulls');
  const good: number[] = [];
  let run: number[] = [];
  return values.map((value, i) => {
    const limits = rigLimits(good.slice(0, BASELINES.findLast((count) => count <= good.length) ?? 0));
    const movingRange = i === 0 ? null : Math.abs(value - values[i - 1]!);
    if (!limits) {
      good.push(value);
      return { value, movingRange, limits, ewma: null, ewmaLimits: null, signals: [], state: 'noEvidence' };
    }
    run.push(value);
    const signals = runRules(run, limits);
    const { ewma, low, high } = ewmaChart(run, limits);
    if (signals.length > 0) run = [];
    else good.push(value);
    const state = signals.length > 0 ? 'outOfControl' : 'inControl';
    return { value, movingRange, limits, ewma: ewma.at(-1)!, ewmaLimits: { low, high }, signals, state };
  });
}
