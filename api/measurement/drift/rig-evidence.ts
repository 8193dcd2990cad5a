import type { ControlState } from './control-chart.js';

/** A judged control pull and its day. */
export interface DatedPull {
  /** calendar day, YYYY-MM-DD */
  readonly day: string;
  readonly state: ControlState;
}

/** Of a rig on a day: as its pulls say, or that it was pulled and has no limits yet. */
export type RigDayState = ControlState | 'learning';

export interface RigEvidence {
  readonly state: RigDayState;
  /** day of the pull that decided; null where none did */
  readonly decidedOn: string | null;
  /** pulls up to the day [count] */
  readonly pulls: number;
}

/**
 * What the control pulls say of a rig on a day.
 *
 * Formula: out of control where the last pull up to the day is out, for a rig stays out until a good pull clears it, or the next pull after the day is, for what was pulled between a good pull and a bad one is in doubt; else as the last pull of the day says, where it has no limits yet that the rig is learning; without a pull on the day, no evidence
 * @param pulls judged pulls of one rig and method, in the order of pulling
 * @param day calendar day, YYYY-MM-DD
 * @returns state, the day of the pull that decided, and the pulls up to the day
 * @throws nothing
 * @see NIST-EHANDBOOK 6.3.2
 * @example rigEvidence([{ day: '2031-03-08', state: 'outOfControl' }], '2031-03-01').state // 'outOfControl'
 */
export function rigEvidence(pulls: readonly DatedPull[], day: string): RigEvidence {
  const last = pulls.findLastIndex((pull) => pull.day <= day);
  const before = pulls[last];
  const own = before?.day === day ? before : undefined;
  const decisive = [before, pulls[last + 1]].find((pull) => pull?.state === 'outOfControl') ?? own;
  const count = last + 1;
  if (!decisive) return { state: 'noEvidence', decidedOn: null, pulls: count };
  return { state: decisive.state === 'noEvidence' ? 'learning' : decisive.state, decidedOn: decisive.day, pulls: count };
}
