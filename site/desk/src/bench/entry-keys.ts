/** What keys do in the table of readings: Enter takes and goes on, arrows walk, letters mark in an empty field. Pure. */
import type { InvalidReason } from './sheet.js';
import { REASON_KEYS } from './reasons.js';

export interface KeyActs {
  readonly enter: () => void;
  readonly back: () => void;
  readonly up: () => void;
  readonly down: () => void;
  /** Null where nothing is marked as invalid, or nothing treated. */
  readonly mark: ((reason: InvalidReason) => void) | null;
  readonly treat: (() => void) | null;
}

const WALKING: Readonly<Record<string, 'enter' | 'up' | 'down'>> = { Enter: 'enter', ArrowUp: 'up', ArrowDown: 'down' };
const TREAT_KEY = 'k';

/** What a pressed key does; null for one that types, and for those of the browser. */
export function actOfKey(
  { key, ctrlKey, metaKey, altKey }: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey'>,
  isFieldEmpty: boolean,
  acts: KeyActs,
): (() => void) | null {
  if (ctrlKey || metaKey || altKey) return null;
  const walk = WALKING[key];
  if (walk) return acts[walk];
  if (!isFieldEmpty) return null;
  if (key === 'Backspace') return acts.back;
  if (key === TREAT_KEY) return acts.treat;
  const reason = REASON_KEYS.find((one) => one.key === key.toLowerCase())?.reason;
  const { mark } = acts;
  return reason && mark ? () => mark(reason) : null;
}
