import { roundRobin } from '../../measurement/agreement/round-robin.js';
import type { RoundRobinEvidence } from '../evidence/round-robin-evidence.js';

export interface TesterEffect {
  /** [1] */
  readonly relativeSd: number;
  readonly degreesOfFreedom: number;
}

/**
 * What testers add to a result, by closed round robins of a method in which all pulled a spool on one rig: else rigs would be in it too. Pure.
 * @returns null where none tells it
 */
export function testerEffectOf(robins: readonly RoundRobinEvidence[], method: string): TesterEffect | null {
  const parts = robins
    .filter((robin) => robin.method === method && robin.state === 'closed')
    .flatMap(({ levels, cells }) => levels.map((level) => cells.filter((cell) => cell.level === level)))
    .filter((cells) => new Set(cells.map(({ instrument }) => instrument)).size === 1)
    .map((cells) => {
      const { betweenSd, mean } = roundRobin(cells.map(({ readings }) => readings.map(({ valueN }) => Number(valueN))));
      return { relativeSd: betweenSd / mean, degreesOfFreedom: cells.length - 1 };
    });
  const degreesOfFreedom = parts.reduce((sum, part) => sum + part.degreesOfFreedom, 0);
  if (degreesOfFreedom === 0) return null;
  const variance = parts.reduce((sum, part) => sum + part.degreesOfFreedom * part.relativeSd ** 2, 0) / degreesOfFreedom;
  return { relativeSd: Math.sqrt(variance), degreesOfFreedom };
}
