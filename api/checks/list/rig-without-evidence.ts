import { observe } from '../check.js';
import type { Check } from '../check.js';
import { isOnRig } from '../is-on-rig.js';

export const rigWithoutEvidence: Check = {
  code: 'rig/no-evidence',
  title: 'No control pull on the bench day',
  severity: 'held',
  looksAt: ['instruments', 'rigEvidence'],
  explains:
    'Without a control pull nothing is known of the drift of the rig on that day. A reviewer decides; it neither passes by itself nor blocks.',
  limit: 'A control pull on the bench day, where a rig pulled.',
  source: 'common practice',
  example: 'Eight straight pulls on a rig that pulled no control line that day.',
  run({ rigEvidence, instruments }) {
    if (rigEvidence !== 'noEvidence' || !isOnRig(instruments)) return [];
    return [observe('There is no control pull of the rig on the bench day.', { actual: 'no evidence', expected: 'a control pull' })];
  },
};
