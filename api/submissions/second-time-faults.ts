import type { InputFault } from '../platform/errors/problem.js';
import type { SecondTime } from '../retests/retests.read-model.js';

/**
 * What stands against a hand-in on a spool that is tested a second time: it is for another person, on another rig, by the same method.
 * The words do not say that it is a second time.
 */
export function secondTimeFaults(
  testerId: string,
  { method, instruments }: { readonly method: string; readonly instruments: readonly string[] },
  first: SecondTime | undefined,
): InputFault[] {
  if (!first) return [];
  const faults: InputFault[] = [];
  const fault = (pointer: string, code: string, detail: string) => faults.push({ pointer, code, detail });
  if (first.testerId === testerId) fault('/spool', 'for_another_tester', 'This spool is for another tester. Put it back on the shelf.');
  if (method !== first.method) fault('/method', 'for_another_method', `This spool is for ${first.method}. Ask an editor.`);
  instruments.forEach((code, index) => {
    if (first.instruments.includes(code))
      fault(`/instruments/${index}`, 'for_another_instrument', `This spool is to be pulled without ${code}: take another rig.`);
  });
  return faults;
}
