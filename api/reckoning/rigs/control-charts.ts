import { judgePulls } from '../../measurement/drift/control-chart.js';
import type { JudgedPull } from '../../measurement/drift/control-chart.js';
import { rigEvidence } from '../../measurement/drift/rig-evidence.js';
import type { RigEvidence } from '../../measurement/drift/rig-evidence.js';
import { mean } from '../../measurement/summary/mean.js';
import type { ControlPullEvidence } from '../evidence/control-pull-evidence.js';

export interface ChartedPull<Pull extends ControlPullEvidence> {
  readonly pull: Pull;
  readonly meanN: number;
  /** Null where the pull was struck. */
  readonly judged: JudgedPull | null;
}

/** Control pulls of one rig by one method on one control line, oldest first. */
export interface ControlChart<Pull extends ControlPullEvidence = ControlPullEvidence> {
  readonly instrument: string;
  readonly method: string;
  readonly controlLine: ControlPullEvidence['controlLine'];
  readonly pulls: readonly ChartedPull<Pull>[];
}

/**
 * Charts of control pulls; another lot of the control line starts a chart of its own. Pure.
 * @param pulls oldest first
 */
export function chartsOf<Pull extends ControlPullEvidence>(pulls: readonly Pull[]): ControlChart<Pull>[] {
  const keyOf = ({ instrument, method, controlLine }: Pull) => [instrument, method, controlLine.code].join('\n');
  return [...Map.groupBy(pulls, keyOf).values()].flatMap((own) => {
    const [first] = own;
    if (!first) return [];
    const { instrument, method, controlLine } = first;
    const counted = own.filter(({ strike }) => strike === null);
    const judged = judgePulls(counted.map(meanOf));
    const charted = own.map((pull) => ({ pull, meanN: meanOf(pull), judged: judged[counted.indexOf(pull)] ?? null }));
    return [{ instrument, method, controlLine, pulls: charted }];
  });
}

const meanOf = ({ readings }: ControlPullEvidence): number => mean(readings.map(({ valueN }) => Number(valueN)));

/** What is known of a rig in a method on a day. */
export function evidenceOfRig(charts: readonly ControlChart[], instrument: string, method: string, day: string): RigEvidence {
  const own = charts.filter((chart) => chart.instrument === instrument && chart.method === method);
  const pulls = own
    .flatMap((chart) => chart.pulls)
    .flatMap(({ pull, judged }) => (judged ? [{ day: pull.benchDay, state: judged.state }] : []))
    .sort((one, other) => (one.day < other.day ? -1 : one.day > other.day ? 1 : 0));
  return rigEvidence(pulls, day);
}

/** The worst of what is known of several rigs that one submission was pulled on. */
export function worstOf(states: readonly RigEvidence['state'][]): RigEvidence['state'] {
  if (states.includes('outOfControl')) return 'outOfControl';
  if (states.length === 0 || states.includes('noEvidence')) return 'noEvidence';
  return states.includes('learning') ? 'learning' : 'inControl';
}
