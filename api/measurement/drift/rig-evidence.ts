import type { ControlState } from './control-chart.js';

/** A judged control pull and its day. */
export interface DatedPull {
  /** calendar day, YYYY-MM-DD */
  readonly day: string;
  readonly state: ControlState;
}

export interface RigEvidence {
  readonly state: ControlState;
  /** day of the pull that decided; null where none did */
  readonly decidedOn: string | null;
}

/**
 * What the control pulls say of a rig on a day.
 *
 * Formula: out of control where the last pull of the day is out, or the next pull after it, for what was pulled between a good pull and a bad one is in doubt; else as the last pull of the day says; without a pull on the day, no evidence
 * @param pulls judged pulls of one rig and method, in the order of pulling
 * @param day calendar day, YYYY-MM-DD
 * @returns state and the day of the pull that decided
 * @throws nothing
 * @see NIST-EHANDBOOK 6.3.2
 * @example rigEvidence([{ day: '2031-03-08', state: 'outOfControl' }], '2031-03-01').state // 'outOfControl'
 */
export function rigEvidence(pulls: readonly DatedPull[], day: string): RigEvidence {
  const last = pulls.findLastIndex((pull) => pull.day <= day);
  const own = pulls[last]?.day === day ? pulls[last] : undefined;
  const next = pulls[last + 1];
  const decisive = [own, next].find((pull) => pull?.state === 'outOfControl') ?? own;
  if (!decisive || decisive.state === 'noEvidence') return { state: 'noEvidence', decidedOn: null };
  return { state: decisive.state, decidedOn: decisive.day };
}
