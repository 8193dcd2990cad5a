import type { ControlPullEvidence } from '../../../api/reckoning/evidence/control-pull-evidence.js';

/** What may be said otherwise of invented control pulls. */
export interface PullsOf {
  readonly rig?: string;
  readonly method?: string;
  readonly line?: string;
  /** Days before the first pull, counted from the first of December 2025. */
  readonly after?: number;
}

/** Control pulls of one specimen each, one a day. */
export function controlPulls(
  forcesN: readonly number[],
  { rig = 'R1', method = 'straight-pull', line = 'C1', after = 0 }: PullsOf = {},
): ControlPullEvidence[] {
  return forcesN.map((forceN, index) => ({
    instrument: rig,
    method,
    controlLine: { code: line, name: 'Reference braid', lot: `Lot of ${line}` },
    benchDay: new Date(Date.UTC(2025, 11, 1 + after + index)).toISOString().slice(0, 10),
    tester: 'A. Fenn',
    readings: [{ text: forceN.toFixed(2), unit: 'N', valueN: forceN.toFixed(2) }],
    note: null,
    strike: null,
  }));
}
