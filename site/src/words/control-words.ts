import { say } from './say.js';
import type { ChartPoint } from '../../../api/contract/documents/rigs-document.js';

export const stateWords: Record<NonNullable<ChartPoint['state']>, string> = {
  inControl: say`in control`,
  outOfControl: say`out of control`,
  noEvidence: say`no evidence yet`,
};

const SIGNALS: Record<string, string> = {
  oneBeyond3Sigma: say`one beyond 3σ`,
  twoOfThreeBeyond2Sigma: say`two of three beyond 2σ`,
  fourOfFiveBeyond1Sigma: say`four of five beyond 1σ`,
  eightOnOneSide: say`eight on one side`,
};

/** A run rule in words; an unknown one, from a later version of the program, shows as it is written. */
export const signalWords = (signal: string): string => SIGNALS[signal] ?? signal;

/** What lies beyond its limits without deciding anything. */
export const warningWords: Record<NonNullable<ChartPoint['warnings']>[number], string> = {
  movingRange: say`moving range above its limit`,
  movingAverage: say`moving average beyond its limits`,
};
