import type { Rig } from '../house/instruments.js';
import type { Draws } from '../model/draws.js';
import type { TrueLine } from '../model/true-line.js';
import type { BenchTask } from './bench-task.js';
import { forceReads, knotsKeep } from './conditions.js';
import type { DemoSpecimen } from './demo-content.js';

/** What each rig shows. */
export const DISPLAYS: Readonly<Record<Rig, { unit: string; newtons: number; places: number }>> = {
  R1: { unit: 'N', newtons: 1, places: 1 },
  R2: { unit: 'kgf', newtons: 9.80665, places: 2 },
  R3: { unit: 'lbf', newtons: 4.4482216152605, places: 2 },
};

const STRAIGHT_SPECIMENS = 8;
const COMPARED_SPECIMENS = 6;
/** Chance that one specimen of a set parts at a grip. */
const GRIP_BREAK = 0.12;
const KNOT_GAIN_OF_VERSION_2 = 1.045;
/** From this day on Palomar knots are wetted and seated on the rig. */
const SEATED_FROM = '2025-09-01';

/** Specimens of a pulling method: straight ones, then knotted or rubbed ones. */
export function pulls(task: BenchTask, line: TrueLine, draws: Draws): DemoSpecimen[] {
  const reads = forceReads(task) * draws.normal(1, 0.003);
  const isStraight = task.method === 'straight-pull';
  const straight = aSet(task, draws, {
    first: 1,
    count: isStraight ? STRAIGHT_SPECIMENS : COMPARED_SPECIMENS,
    forceN: line.breakingForceN * reads,
    spread: line.spread,
    condition: 'untreated',
  });
  if (isStraight) return straight;
  const forceN = line.breakingForceN * reads * retentionOf(task, line);
  return [
    ...straight,
    ...aSet(task, draws, {
      first: COMPARED_SPECIMENS + 1,
      count: COMPARED_SPECIMENS,
      forceN,
      spread: 1.25 * line.spread,
      condition: 'treated',
    }),
  ];
}

function retentionOf(task: BenchTask, line: TrueLine): number {
  if (task.method === 'abrasion') return line.abrasionRetention;
  if (task.method === 'fg-knot') return line.fgRetention * knotsKeep(task);
  return line.palomarRetention * knotsKeep(task) * (task.benchDay >= SEATED_FROM ? KNOT_GAIN_OF_VERSION_2 : 1);
}

interface SetOfPulls {
  readonly first: number;
  readonly count: number;
  readonly forceN: number;
  readonly spread: number;
  readonly condition: 'untreated' | 'treated';
}

function aSet({ rig }: BenchTask, draws: Draws, { first, count, forceN, spread, condition }: SetOfPulls): DemoSpecimen[] {
  const atGrip = draws.uniform() < GRIP_BREAK ? draws.below(count) : null;
  return Array.from({ length: count }, (_, index) => {
    const isBad = index === atGrip;
    const pulledN = draws.normal(forceN, forceN * spread) * (isBad ? 0.9 : 1);
    const readings = [
      forceReading(rig ?? 'R1', pulledN),
      { role: 'timeToBreak' as const, value: Math.max(9, draws.normal(18, 2.5)).toFixed(1), unit: 's' },
    ];
    const specimen = { number: first + index, condition, readings };
    return isBad ? { ...specimen, validity: 'invalid', invalidReason: 'brokeAtGrip' } : { ...specimen, validity: 'valid' };
  });
}

/** A force as the display of the rig shows it. */
export function forceReading(rig: Rig, forceN: number): DemoSpecimen['readings'][number] {
  const { unit, newtons, places } = DISPLAYS[rig];
  return { role: 'breakingForce', value: (forceN / newtons).toFixed(places), unit };
}
