import { observe } from '../check.js';
import type { CheckedInstrument } from '../check-input.js';
import type { Check } from '../check.js';
import { instrumentsFor } from '../instruments-for.js';

/** Control pulls watch what pulls: a micrometer or a balance has none. */
const isOnRig = (instruments: readonly CheckedInstrument[]): boolean => instrumentsFor('breakingForce', instruments).length > 0;

export const rigOutOfControl: Check = {
  code: 'rig/out-of-control',
  title: 'Rig out of control on the bench day',
  severity: 'held',
  explains: 'The control line shows a drift of the rig. A new control pull clears it.',
  limit: 'Individuals chart of the control line (NIST/SEMATECH e-Handbook 6.3.2.2).',
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

export const rigWithoutEvidence: Check = {
  code: 'rig/no-evidence',
  title: 'No control pull on the bench day',
  severity: 'held',
  explains:
    'Without a control pull nothing is known of the drift of the rig on that day. A reviewer decides; it neither passes by itself nor blocks.',
  limit: 'A control pull on the bench day.',
  run({ rigEvidence, instruments }) {
    if (rigEvidence !== 'noEvidence' || !isOnRig(instruments)) return [];
    return [observe('There is no control pull of the rig on the bench day.', { actual: 'no evidence', expected: 'a control pull' })];
  },
};
