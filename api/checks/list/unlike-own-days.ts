import { observe } from '../check.js';
import type { Check } from '../check.js';
import { unitFactorNear } from '../unit-factors.js';

export const unlikeOwnDays: Check<'tolerancePercent'> = {
  code: 'figures/unlike-own-days',
  title: "A unit away from the same tester's other readings of the spool",
  severity: 'held',
  looksAt: ['figures', 'ownForcesN'],
  explains:
    'The same tester has read the same spool in another submission, and the mean breaking forces differ by the ratio of two units: one of them was written down in the unit that the gauge did not show.',
  limit: 'Mean breaking force over those of the other submissions against 2.2046, 4.448, 9.80665 and their inverses.',
  limits: { tolerancePercent: { words: 'Nearness that counts as a slip', value: 10, unit: '%', atLeast: 1, atMost: 20 } },
  source: 'Ratios of the units themselves; nearness: common practice',
  example: 'A spool that read 90 N last week and 9.2 N today.',
  run({ figures, ownForcesN }, { tolerancePercent }) {
    const mean = figures.breakingForceN?.mean;
    if (mean === undefined) return [];
    const other = ownForcesN.find((force) => unitFactorNear(mean / force, tolerancePercent));
    const found = other === undefined ? undefined : unitFactorNear(mean / other, tolerancePercent);
    if (!found) return [];
    const ratio = `a factor near ${found.factor.toFixed(4)} (${found.words})`;
    return [
      observe(`The breaking forces differ from your other readings of this spool by ${ratio}. Check the unit against the display.`, {
        actual: ratio,
        expected: 'about the same readings',
      }),
    ];
  },
};
