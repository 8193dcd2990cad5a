import { controlLineOn, type demoControlLines } from '../house/control-lines.js';
import { RIGS } from '../house/instruments.js';
import type { Rig } from '../house/instruments.js';
import { Draws } from '../model/draws.js';
import { daysAfter } from '../season/seasons.js';
import type { DemoHandIn } from '../season/hand-in.js';
import type { BenchTask } from './bench-task.js';
import { forceReads } from './conditions.js';
import { testerAt } from './plan-bench.js';
import { DISPLAYS } from './pulls.js';

/** Pulls on the control line that begin a bench day on one rig by one method, as the API takes them. */
export interface DemoControlPull {
  readonly tester: number;
  readonly controlLine: string;
  readonly instrument: Rig;
  readonly method: string;
  readonly benchDay: string;
  readonly readings: readonly { readonly text: string; readonly unit: string }[];
}

const SPECIMENS = 5;
/** Of single specimens; the reference braid is even. */
const SPREAD = 0.011;
/** What the reference braid keeps of its straight pull. */
const KEEPS: Readonly<Record<string, number>> = { 'straight-pull': 1, 'palomar-knot': 0.62, 'fg-knot': 0.8, abrasion: 0.81 };

/** Evenings before a control line's first season on which it is pulled twice, so that the chart begins with limits. */
const BASELINE_EVENINGS = 5;

/** The pulls that a control line's limits are taken from: ten rounds, in each one a rig and method. */
export function baselinePullsOf(seed: number, { season, since }: (typeof demoControlLines)[number]): DemoControlPull[][] {
  return Array.from({ length: 2 * BASELINE_EVENINGS }, (_, index) =>
    RIGS.flatMap((rig, place) =>
      Object.keys(KEEPS).map((method) => {
        const benchDay = daysAfter(since, 3 * Math.floor(index / 2));
        return controlPull(seed, { season, day: -1, tester: testerAt(index, place), rig, method, benchDay, pull: index });
      }),
    ),
  );
}

/** One a rig and method that is pulled on the day. */
export function controlPullsOf(seed: number, handIns: readonly DemoHandIn[]): DemoControlPull[] {
  const atRig = RIGS.flatMap((rig) => handIns.filter(({ task }) => task.rig === rig).map(({ task }) => task));
  const first = new Map(atRig.toReversed().map((task) => [`${task.rig ?? ''} ${task.method}`, task]));
  return [...first.values()].toReversed().flatMap((task) => (task.rig ? [controlPull(seed, { ...task, rig: task.rig, pull: 0 })] : []));
}

type Pulling = Pick<BenchTask, 'season' | 'day' | 'tester' | 'benchDay'> & {
  readonly rig: Rig;
  readonly method: string;
  readonly pull: number;
};

function controlPull(seed: number, pulling: Pulling): DemoControlPull {
  const { tester, method, benchDay, rig, pull } = pulling;
  const { code, forceN } = controlLineOn(benchDay);
  const draws = new Draws(seed, 'control pull', rig, method, benchDay, pull);
  const { unit, newtons, places } = DISPLAYS[rig];
  const reads = forceN * forceReads(pulling) * (KEEPS[method] ?? 1);
  const readings = Array.from({ length: SPECIMENS }, () => ({
    text: ((reads * draws.normal(1, SPREAD)) / newtons).toFixed(places),
    unit,
  }));
  return { tester, controlLine: code, instrument: rig, method, benchDay, readings };
}
