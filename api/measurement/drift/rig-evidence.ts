import { requireReadings } from '../summary/require-readings.js';
import { individualsChart } from './individuals-chart.js';
import type { ControlLimits } from './individuals-chart.js';
import { runRules } from './run-rules.js';
import type { RunRule } from './run-rules.js';

/** One pull of the control line on a rig. */
export interface ControlPull {
  /** calendar day, YYYY-MM-DD */
  readonly day: string;
  readonly value: number;
}

export interface RigEvidence {
  /** three states, never two: without a pull or without limits nothing is known */
  readonly state: 'inControl' | 'outOfControl' | 'noEvidence';
  readonly signals: readonly RunRule[];
  /** day of the last pull in control, up to the day asked for; evidence between it and the first good pull after is in doubt */
  readonly lastInControlDay: string | null;
}

/** Fewest pulls from which limits are taken (common practice; the handbook asks for as many as can be had). */
const FEWEST_BASELINE = 5;

/**
 * Limits of a rig from its first control pulls, or nothing while there are too few.
 *
 * Formula: individuals chart of the baseline
 * @param baseline pulls that were found good, in order [any one unit]
 * @returns centre and sigma [same unit]; null below 5 pulls and when the pulls show no spread
 * @throws MeasurementError 'measurement/not-a-number'
 * @see NIST-EHANDBOOK 6.3.2.2
 * @example rigLimits([10, 11, 10, 11, 10])?.centre // 10.4
 */
export function rigLimits(baseline: readonly number[]): ControlLimits | null {
  requireReadings(baseline, 0, 'rigLimits');
  if (baseline.length < FEWEST_BASELINE) return null;
  const { centre, sigma } = individualsChart(baseline);
  return sigma > 0 ? { centre, sigma } : null;
}

/**
 * What the control line says of a rig on a day.
 *
 * Formula: no pull on the day or no limits: no evidence; else the last pull of the day is judged by run rules 1 to 4 on all pulls up to it, so a good pull later that day clears the rig
 * @param pulls control pulls of one rig and method in the order of pulling [any one unit]
 * @param limits result of `rigLimits`; null without any [same unit]
 * @param day calendar day, YYYY-MM-DD
 * @returns state, the rules that signalled, and the day of the last pull in control
 * @throws MeasurementError 'measurement/not-a-number' for a pull that is not finite
 * @see WESTERN-ELECTRIC
 * @example rigEvidence([], { centre: 10, sigma: 1 }, '2031-03-04').state // 'noEvidence'
 */
export function rigEvidence(pulls: readonly ControlPull[], limits: ControlLimits | null, day: string): RigEvidence {
  requireReadings(
    pulls.map(({ value }) => value),
    0,
    'rigEvidence',
  );
  const known = pulls.filter((pull) => pull.day <= day);
  if (!limits) return { state: 'noEvidence', signals: [], lastInControlDay: null };
  const signalsAt = (i: number): RunRule[] =>
    runRules(
      known.slice(0, i + 1).map(({ value }) => value),
      limits,
    );
  const lastGood = known.findLast((_, i) => signalsAt(i).length === 0);
  const lastInControlDay = lastGood?.day ?? null;
  if (known.at(-1)?.day !== day) return { state: 'noEvidence', signals: [], lastInControlDay };
  const signals = signalsAt(known.length - 1);
  return { state: signals.length > 0 ? 'outOfControl' : 'inControl', signals, lastInControlDay };
}
