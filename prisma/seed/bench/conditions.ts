import type { Rig } from '../house/instruments.js';
import { DRIFT } from '../season/story.js';
import type { BenchTask } from './bench-task.js';

/** What a rig and its stand read of the true force [1]; certificates allow as much. */
const RIG_READS: Readonly<Record<Rig, number>> = { R1: 1, R2: 1.006, R3: 0.993 };
/** A tester's hand: how the line is laid on the grips [1]. */
const TESTER_READS = [1, 1.004, 0.996, 1.002, 0.997];
/** A tester's knots [1]. */
const TESTER_TIES = [1, 1.012, 0.991, 1.004, 0.994];

/** What is read of the true force on this day's rig by this tester [1]. */
export function forceReads({ rig, tester, season, day }: Pick<BenchTask, 'rig' | 'tester' | 'season' | 'day'>): number {
  const drift = season === DRIFT.season && rig === DRIFT.rig ? (DRIFT.readsByDay[day] ?? 1) : 1;
  return (rig ? RIG_READS[rig] : 1) * (TESTER_READS[tester] ?? 1) * drift;
}

export const knotsKeep = ({ tester }: BenchTask): number => TESTER_TIES[tester] ?? 1;
