import { FEWEST_PULLS } from '../../measurement/drift/control-chart.js';
import { observe } from '../check.js';
import type { Check } from '../check.js';
import { isOnRig } from '../is-on-rig.js';

export const rigLearning: Check = {
  code: 'rig/learning',
  title: 'Rig has too few control pulls yet',
  severity: 'note',
  looksAt: ['rigEvidence', 'rigPulls', 'instruments'],
  explains:
    'The rig was pulled on the control line that day, but its control pulls are too few to give limits, as in a new house. Nothing is wrong with it.',
  limit: `Limits come from the first ${FEWEST_PULLS} control pulls.`,
  source: 'NIST/SEMATECH e-Handbook 6.3.2.2',
  example: 'The second bench day of a new rig, after its second control pull.',
  run({ rigEvidence, rigPulls, instruments }) {
    if (rigEvidence !== 'learning' || !isOnRig(instruments)) return [];
    const seen = Math.min(rigPulls, FEWEST_PULLS);
    return [
      observe(`The rig is learning: ${seen} of the ${FEWEST_PULLS} control pulls that give its limits. Go on pulling one each bench day.`, {
        actual: `${seen} control pulls`,
        expected: `${FEWEST_PULLS} control pulls`,
      }),
    ];
  },
};
