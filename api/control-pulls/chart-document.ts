import type { ChartedPull, ControlChart } from './control-charts.js';
import type { ControlPullEvidence } from './control-pull-evidence.js';
import { roundHalfEven } from '../measurement/units/round-half-even.js';
import type { ChartPoint, ControlChartDocument } from '../public-api/rigs-document.schemas.js';

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
    signals: [...(judged?.signals ?? [])],
    state: judged?.state ?? null,
    ambient: pull.ambient ?? null,
    note: pull.note,
    strike: pull.strike,
  };
}

/** A chart as the API and releases show it. */
export const toChartDocument = ({ instrument, method, controlLine, pulls }: ControlChart): ControlChartDocument => ({
  instrument,
  method,
  controlLine,
  points: pulls.map(toPoint),
});
