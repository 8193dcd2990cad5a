import { observe } from '../check.js';
import type { Check } from '../check.js';

export const rigOutOfControl: Check = {
  code: 'rig/out-of-control',
  title: 'Rig out of control on the bench day',
  severity: 'held',
  explains: 'The control line shows a drift of the rig. A new control pull clears it.',
  limit: 'Individuals chart of the control line (NIST/SEMATECH e-Handbook 6.3.2.2).',
  run({ rigEvidence }) {
    if (rigEvidence !== 'outOfControl') return [];
    return [
      observe('The last control pull put the rig out of control. Make a control pull that clears it.', {
        actual: 'out of control',
        expected: 'in control',
      }),
    ];
  },
};

export const rigWithoutEvidence: Check = {
  code: 'rig/no-evidence',
  title: 'No control pull on the bench day',
  severity: 'held',
  explains:
    'Without a control pull nothing is known of the drift of the rig on that day. A reviewer decides; it neither passes by itself nor blocks.',
  limit: 'A control pull on the bench day.',
  run({ rigEvidence }) {
    if (rigEvidence !== 'noEvidence') return [];
    return [observe('There is no control pull of the rig on the bench day.', { actual: 'no evidence', expected: 'a control pull' })];
  },
};
