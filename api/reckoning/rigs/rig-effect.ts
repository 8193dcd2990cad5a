import { pooledBetweenVariance } from '../../measurement/consensus/pooled-between-variance.js';
import type { MeanWithUncertainty } from '../../measurement/consensus/consensus.js';
import { mean } from '../../measurement/summary/mean.js';
import { repeatabilityUncertainty } from '../../measurement/uncertainty/standard-uncertainty.js';
import type { ControlChart } from './control-charts.js';

/** What rigs differ by, as the control line tells it. */
export interface RigEffect {
  /** Relative standard deviation between rigs [1]. */
  readonly relativeSd: number;
  /** Rigs less one. */
  readonly degreesOfFreedom: number;
  /** Code of the control line. */
  readonly controlLine: string;
  readonly rigs: readonly string[];
  /** Good pulls behind it. */
  readonly pulls: number;
}

interface RigOnLine extends MeanWithUncertainty {
  readonly rig: string;
  readonly pulls: number;
  readonly lastDay: string;
}

/**
 * How far rigs lie apart on one control line, from the mean of each rig's good pulls by one method. One line alone is taken: that which
 * most rigs have limits on, the newest of these; rigs of several lines are the same rigs, and would be counted twice.
 * @param charts of any rigs, methods and control lines
 * @param method slug
 * @returns null where no two rigs have limits on one line
 */
export function rigEffectOf(charts: readonly ControlChart[], method: string): RigEffect | null {
  const ofMethod = charts.filter((chart) => chart.method === method);
  const byLine = [...Map.groupBy(ofMethod, ({ controlLine }) => controlLine.code)].map(([controlLine, own]) => ({
    controlLine,
    rigs: own.flatMap(rigOnLine),
  }));
  const [most] = byLine.toSorted((one, other) => other.rigs.length - one.rigs.length || (lastDayOf(one) < lastDayOf(other) ? 1 : -1));
  if (!most || most.rigs.length < 2) return null;
  const { relativeVariance, degreesOfFreedom } = pooledBetweenVariance([most.rigs]);
  return {
    relativeSd: Math.sqrt(relativeVariance),
    degreesOfFreedom,
    controlLine: most.controlLine,
    rigs: most.rigs.map(({ rig }) => rig).sort(),
    pulls: most.rigs.reduce((sum, { pulls }) => sum + pulls, 0),
  };
}

const lastDayOf = ({ rigs }: { readonly rigs: readonly RigOnLine[] }): string =>
  rigs
    .map(({ lastDay }) => lastDay)
    .sort()
    .at(-1) ?? '';

/** A rig's level on the line; none while its pulls give no limits. */
function rigOnLine({ instrument, pulls }: ControlChart): RigOnLine[] {
  const counted = pulls.filter(({ judged }) => judged !== null);
  const last = counted.at(-1);
  if (!last?.judged?.limits) return [];
  const good = counted.filter(({ judged }) => judged?.state !== 'outOfControl').map(({ meanN }) => meanN);
  const standardUncertainty = repeatabilityUncertainty(good);
  return [{ rig: instrument, pulls: good.length, lastDay: last.pull.benchDay, mean: mean(good), standardUncertainty }];
}
