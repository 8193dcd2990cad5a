import type { Finding } from './finding.js';
import { rigOutOfControl } from './list/rig-out-of-control.js';

/**
 * The finding that comes upon a submission after it was handed in, when a later control pull casts doubt on its rig.
 * @param rig bench code
 * @param pulledOn bench day of the control pull, ISO 8601
 */
export function outOfControlFinding(rig: string, pulledOn: string): Finding {
  const message = `The control pull of ${pulledOn} put ${rig} out of control; what was pulled since the last good one is in doubt.`;
  const { code, severity } = rigOutOfControl;
  const seen = { actual: 'out of control', expected: 'in control' };
  return { code, severity, isSealed: false, specimens: [], pointer: null, ...seen, message, forTester: message };
}
