import type { InputFault } from '../../errors/problem.js';

const DEEPEST = 32;
const MOST_KEYS = 1000;
const MOST_VALUES = 1_000_000;
/** Faults that one answer lists. */
export const MOST_FAULTS = 100;

interface Place {
  readonly value: unknown;
  readonly pointer: string;
  readonly depth: number;
}

const escape = (key: string): string => key.replaceAll('~', '~0').replaceAll('/', '~1');

/**
 * Faults of any input, whatever its schema: what no text of the record can be, and shapes that are made to wear out who reads them.
 * @param input parsed JSON, or the parameters of an address
 * @returns at most 100 faults
 */
export function contentFaults(input: unknown): InputFault[] {
  const faults: InputFault[] = [];
  const open: Place[] = [{ value: input, pointer: '', depth: 0 }];
  let values = 0;
  for (let place = open.pop(); place && faults.length < MOST_FAULTS; place = open.pop()) {
    values += 1;
    if (values > MOST_VALUES) return [...faults, shapeFault('', `Found more than ${MOST_VALUES} values. Split it and send the parts.`)];
    const { value, pointer, depth } = place;
    if (typeof value === 'string') faults.push(...textFaults(value, pointer));
    if (typeof value !== 'object' || value === null) continue;
    const fault = objectFault(value, pointer, depth);
    if (fault) faults.push(fault);
    else open.push(...within(value, pointer, depth, faults));
  }
  return faults;
}

const shapeFault = (pointer: string, detail: string): InputFault => ({ pointer, code: 'too_much', detail });

function objectFault(value: object, pointer: string, depth: number): InputFault | null {
  if (depth >= DEEPEST)
    return shapeFault(pointer, `Found more than ${DEEPEST} levels of nesting. Expected the fields that are described at /docs.`);
  if (Array.isArray(value)) return null;
  const keys = Object.keys(value).length;
  return keys <= MOST_KEYS
    ? null
    : shapeFault(pointer, `Found ${keys} fields in one object; expected at most ${MOST_KEYS}. Send those that are described at /docs.`);
}

function* within(value: object, pointer: string, depth: number, faults: InputFault[]): Generator<Place> {
  const isList = Array.isArray(value);
  for (const [key, inner] of Object.entries(value)) {
    const place = `${pointer}/${escape(key)}`;
    if (!isList) faults.push(...textFaults(key, pointer));
    yield { value: inner, pointer: place, depth: depth + 1 };
  }
}

function textFaults(text: string, pointer: string): InputFault[] {
  const nul = text.indexOf('\0');
  if (nul >= 0) return [notText(pointer, nul, 'a NUL character (U+0000)')];
  if (text.isWellFormed()) return [];
  const half = text.search(/\p{Surrogate}/u);
  const code = text.charCodeAt(half).toString(16).toUpperCase();
  return [notText(pointer, half, `half of a character (the lone surrogate U+${code})`)];
}

const notText = (pointer: string, index: number, found: string): InputFault => ({
  pointer,
  code: 'not_text',
  detail: `Found ${found} at place ${index + 1}; expected whole characters. Type this text again.`,
});
