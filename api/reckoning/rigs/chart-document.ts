import type { ChartedPull, ControlChart } from './control-charts.js';
import type { ControlPullEvidence } from '../evidence/control-pull-evidence.js';
import { movingRangeLimit } from '../../measurement/drift/moving-range-limit.js';
import type { JudgedPull } from '../../measurement/drift/control-chart.js';
import { roundHalfEven } from '../../measurement/units/round-half-even.js';
import type { ChartPoint, ControlChartDocument } from '../../contract/documents/rigs-document.js';

const PLACES = 3;
const inN = (value: number | null | undefined): string | null =>
  value === null || value === undefined ? null : roundHalfEven(value, PLACES);

export function toPoint<Pull extends ControlPullEvidence>({ pull, meanN, judged }: ChartedPull<Pull>): ChartPoint {
  const limits = judged?.limits;
  return {
    benchDay: pull.benchDay,
    tester: pull.tester,
    readings: pull.readings.map(({ text, unit, valueN }) => ({ text, unit, valueN })),
    meanN: roundHalfEven(meanN, PLACES),
    movingRangeN: inN(judged?.movingRange),
    centreN: inN(limits?.centre),
    sigmaN: inN(limits?.sigma),
    lowN: limits ? inN(limits.centre - 3 * limits.sigma) : null,
    highN: limits ? inN(limits.centre + 3 * limits.sigma) : null,
    ewmaN: inN(judged?.ewma),
    ...secondaryOf(judged),
    signals: [...(judged?.signals ?? [])],
    state: judged?.state ?? null,
    ambient: pull.ambient ?? null,
    note: pull.note,
    strike: pull.strike,
  };
}

/** The charts beside the individuals chart: moving range and moving average, with their limits. */
function secondaryOf(judged: JudgedPull | null): Pick<ChartPoint, 'movingRangeHighN' | 'ewmaLowN' | 'ewmaHighN' | 'warnings'> {
  const { limits, ewmaLimits, ewma, movingRange } = judged ?? {};
  if (!limits || !ewmaLimits) return { movingRangeHighN: null, ewmaLowN: null, ewmaHighN: null, warnings: [] };
  const movingRangeHigh = movingRangeLimit(limits.sigma);
  const isJump = (movingRange ?? 0) > movingRangeHigh;
  const isAway = ewma !== null && ewma !== undefined && (ewma < ewmaLimits.low || ewma > ewmaLimits.high);
  return {
    movingRangeHighN: inN(movingRangeHigh),
    ewmaLowN: inN(ewmaLimits.low),
    ewmaHighN: inN(ewmaLimits.high),
    warnings: [...(isJump ? (['movingRange'] as const) : []), ...(isAway ? (['movingAverage'] as const) : [])],
  };
}

/** A chart as the API and releases show it. */
export const toChartDocument = ({ instrument, method, controlLine, pulls }: ControlChart): ControlChartDocument => ({
  instrument,
  method,
  controlLine,
  points: pulls.map(toPoint),
});
