import type { InvalidReason } from './sheet.js';

export interface ReasonKey {
  readonly reason: InvalidReason;
  readonly key: string;
  readonly words: string;
}

/** Ways in which a specimen fails to count, each with a key that works in an empty field. */
export const REASON_KEYS: readonly ReasonKey[] = [
  { reason: 'brokeAtGrip', key: 'g', words: 'broke at the grip' },
  { reason: 'slipped', key: 's', words: 'slipped' },
  { reason: 'mistied', key: 'm', words: 'mistied' },
  { reason: 'handlingDamage', key: 'h', words: 'damaged in handling' },
  { reason: 'rigFault', key: 'r', words: 'fault of the rig' },
  { reason: 'outsideTimeToBreak', key: 't', words: 'outside time to break' },
];

export const reasonWords = (reason: InvalidReason | null): string => REASON_KEYS.find((one) => one.reason === reason)?.words ?? '';
