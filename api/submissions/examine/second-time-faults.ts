import type { InputFault } from '../../platform/errors/problem.js';
import type { SecondTime } from '../../retests/retests.read-model.js';
import { notForThis } from './subject.js';

/**
 * What stands against a hand-in on a spool that is tested a second time: it is for another person, on another rig, by the same method.
 * The answer is that for a spool of no entry: it says neither which of these it is nor that it is a second time.
 */
export function secondTimeFaults(
  testerId: string,
  { method, instruments }: { readonly method: string; readonly instruments: readonly string[] },
  first: SecondTime | undefined,
): InputFault[] {
  if (!first) return [];
  const isFor = first.testerId !== testerId && first.method === method && !instruments.some((code) => first.instruments.includes(code));
  return isFor ? [] : [notForThis];
}
