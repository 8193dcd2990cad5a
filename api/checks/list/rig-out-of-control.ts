import { observe } from '../check.js';
import type { Check } from '../check.js';
import { isOnRig } from '../is-on-rig.js';

export const rigOutOfControl: Check = {
  code: 'rig/out-of-control',
  title: 'Rig out of control on the bench day',
  severity: 'held',
  looksAt: ['instruments', 'rigEvidence'],
  explains: 'The control line shows a drift of the rig. A new control pull clears it.',
  limit: 'Individuals chart of the control line.',
  source: 'NIST/SEMATECH e-Handbook 6.3.2.2',
  example: 'The last control pull of the day lies beyond three standard deviations of the chart.',
  run({ rigEvidence, instruments }) {
    if (rigEvidence !== 'outOfControl' || !isOnRig(instruments)) return [];
    return [
      observe('The last control pull put the rig out of control. Make a control pull that clears it.', {
        actual: 'out of control',
        expected: 'in control',
      }),
    ];
  },
};
