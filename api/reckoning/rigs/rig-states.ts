import { FEWEST_PULLS } from '../../measurement/drift/control-chart.js';
import type { RigDayState } from '../../measurement/drift/rig-evidence.js';
import { evidenceOfRig } from './control-charts.js';
import type { ChartedPull, ControlChart } from './control-charts.js';

export interface RigState {
  readonly instrument: string;
  readonly method: string;
  readonly state: RigDayState;
  readonly since: string | null;
  readonly lastPullOn: string | null;
  readonly pullsToLimits: number;
  readonly signals: string[];
  readonly words: string;
}

const IN_CONTROL = 'In control. Begin the next bench day with a control pull.';
const OUT_OF_CONTROL =
  'Out of control: what was pulled since the last good control pull is in doubt. Find the cause, then make a control pull; a good one clears the rig.';
const NOT_TODAY = 'There is no control pull of this bench day. Begin with one: what is pulled without it waits for a reviewer.';
const LIMITS_NOW = 'The control pulls so far give the limits; the next one is judged by them.';
const learning = (wanting: number): string =>
  `Learning: ${FEWEST_PULLS - wanting} of the ${FEWEST_PULLS} control pulls that give limits. What is pulled meanwhile carries a note and waits for nobody.`;
const tooFew = (wanting: number): string => `Too few control pulls yet to give limits, ${wanting} more. Begin each bench day with one.`;

/**
 * Where each rig stands in each method that the control line is pulled by, from pulls that were not struck.
 * @param rigs codes of all rigs; one that was never pulled is told too
 * @param charts up to the day
 * @param day bench day to be told of; by default that of the last pull of each rig and method
 */
export function rigStates(rigs: readonly string[], charts: readonly ControlChart[], day?: string): RigState[] {
  const methods = [...new Set(charts.filter(({ pulls }) => pulls.some(isCounted)).map(({ method }) => method))].sort();
  return rigs.flatMap((rig) => methods.map((method) => stateOf(rig, method, charts, day)));
}

const isCounted = ({ judged }: ChartedPull<ControlChart['pulls'][number]['pull']>): boolean => judged !== null;

function stateOf(instrument: string, method: string, charts: readonly ControlChart[], day: string | undefined): RigState {
  const own = charts.filter((chart) => chart.instrument === instrument && chart.method === method);
  const pulls = own
    .flatMap((chart) => chart.pulls.map((one) => ({ ...one, wanting: wantingOf(chart) })))
    .filter(isCounted)
    .sort((one, other) => (one.pull.benchDay < other.pull.benchDay ? -1 : one.pull.benchDay > other.pull.benchDay ? 1 : 0));
  const last = pulls.at(-1);
  const lastPullOn = last?.pull.benchDay ?? null;
  const { state } = evidenceOfRig(charts, instrument, method, day ?? lastPullOn ?? '');
  const ofPulls = state === 'learning' ? 'noEvidence' : state;
  const changed = pulls.findLastIndex(({ judged }) => judged?.state !== ofPulls);
  const since = last?.judged?.state === ofPulls ? (pulls[changed + 1]?.pull.benchDay ?? null) : null;
  const pullsToLimits = last?.wanting ?? FEWEST_PULLS;
  const signals = [...(last?.judged?.signals ?? [])];
  return {
    instrument,
    method,
    state,
    since,
    lastPullOn,
    pullsToLimits,
    signals,
    words: wordsOf(state, pullsToLimits),
  };
}

const wantingOf = ({ pulls }: ControlChart): number => Math.max(0, FEWEST_PULLS - pulls.filter(isCounted).length);

function wordsOf(state: RigDayState, wanting: number): string {
  if (state === 'inControl') return IN_CONTROL;
  if (state === 'outOfControl') return OUT_OF_CONTROL;
  if (state === 'learning') return wanting > 0 ? learning(wanting) : LIMITS_NOW;
  return wanting > 0 ? tooFew(wanting) : NOT_TODAY;
}
