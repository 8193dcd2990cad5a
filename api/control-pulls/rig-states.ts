import type { ControlChart } from './control-charts.js';

export interface RigState {
  readonly instrument: string;
  readonly method: string;
  readonly state: 'inControl' | 'outOfControl' | 'noEvidence';
  readonly lastPullOn: string;
  readonly signals: string[];
  readonly words: string;
}

const WORDS = {
  inControl: 'In control. Begin the next bench day with a control pull.',
  outOfControl:
    'Out of control: what was pulled since the last good control pull is in doubt. Find the cause, then make a control pull; a good one clears the rig.',
  noEvidence: 'Too few control pulls yet to give limits. Begin each bench day with one.',
} as const;

/** Where each rig stands in each method, by its last control pull that was not struck. */
export function rigStates(charts: readonly ControlChart[]): RigState[] {
  const byRig = Map.groupBy(charts, ({ instrument, method }) => `${instrument}\n${method}`);
  return [...byRig.values()].flatMap((own) => {
    const pulls = own.flatMap((chart) => chart.pulls).filter(({ judged }) => judged !== null);
    const last = pulls.toSorted((one, other) => (one.pull.benchDay < other.pull.benchDay ? -1 : 1)).at(-1);
    if (!last?.judged) return [];
    const { state, signals } = last.judged;
    const { instrument, method, benchDay } = last.pull;
    return [{ instrument, method, state, lastPullOn: benchDay, signals: [...signals], words: WORDS[state] }];
  });
}
