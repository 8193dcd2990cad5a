/** What a trace tells, by the formulae of the measurement core. Pure; plain JSON. */
import { MeasurementError } from '../../measurement/errors.js';
import { elongationPercent } from '../../measurement/traces/elongation.js';
import { initialModulusMPa } from '../../measurement/traces/initial-modulus.js';
import { slipEvents } from '../../measurement/traces/slip-events.js';
import { LINEAR_BAND, toeCompensation } from '../../measurement/traces/toe-compensation.js';
import { findPeak } from '../../measurement/traces/trace.js';
import { workToBreakJ } from '../../measurement/traces/work-to-break.js';
import { roundHalfEven } from '../../measurement/units/round-half-even.js';

/** What the force was recorded over: extension in millimetres, or time in seconds. */
export type Over = 'extension' | 'time';

/** A sample: extension [mm] or time [s], and force [N]. */
export type Sample = readonly [x: number, forceN: number];

export interface TraceFigures {
  readonly peakForceN: string;
  /** At the peak [mm] or [s]. */
  readonly atPeak: string;
  /** Without the toe, on the method's gauge length [%]; null over time or without a gauge length. */
  readonly elongationPercent: string | null;
  /** [N/mm] */
  readonly stiffnessNPerMm: string | null;
  /** [MPa]; null without a cross-section as well. */
  readonly initialModulusMPa: string | null;
  /** [J] */
  readonly workToBreakJ: string | null;
  /** Drops of more than 5 % before the peak. */
  readonly slips: readonly { readonly at: string; readonly fromForceN: string; readonly toForceN: string }[];
}

/** What the figures lean on beside the samples. */
export interface TraceConditions {
  /** From the settings of the method version [mm]. */
  readonly gaugeLengthMm: number | null;
  /** Of the submission, or known of the variant [mm²]. */
  readonly areaMm2: number | null;
}

/** @throws MeasurementError for a trace without load, with too few samples, or whose x runs back */
export function traceFigures(over: Over, samples: readonly Sample[], { gaugeLengthMm, areaMm2 }: TraceConditions): TraceFigures {
  const points = samples.map(([extensionMm, forceN]) => ({ extensionMm, forceN }));
  const peak = findPeak(points);
  const toe = over === 'extension' ? orNull(() => toeCompensation(points, LINEAR_BAND)) : null;
  const onGauge = toe && gaugeLengthMm !== null ? { toe, gaugeLengthMm } : null;
  return {
    peakForceN: roundHalfEven(peak.forceN, 2),
    atPeak: roundHalfEven(peak.extensionMm, 3),
    elongationPercent: onGauge && roundHalfEven(elongationPercent(points, onGauge.gaugeLengthMm, onGauge.toe, 'nominal'), 2),
    stiffnessNPerMm: toe && roundHalfEven(toe.stiffnessNPerMm, 3),
    initialModulusMPa:
      onGauge && areaMm2 !== null ? roundHalfEven(initialModulusMPa(onGauge.toe.stiffnessNPerMm, onGauge.gaugeLengthMm, areaMm2), 0) : null,
    workToBreakJ: over === 'extension' ? roundHalfEven(workToBreakJ(points), 4) : null,
    slips: slipEvents(points).map(({ atExtensionMm, fromForceN, toForceN }) => ({
      at: roundHalfEven(atExtensionMm, 3),
      fromForceN: roundHalfEven(fromForceN, 2),
      toForceN: roundHalfEven(toForceN, 2),
    })),
  };
}

function orNull<Answer>(compute: () => Answer): Answer | null {
  try {
    return compute();
  } catch (error) {
    if (error instanceof MeasurementError) return null;
    throw error;
  }
}
