import { circleAreaMm2 } from '../../measurement/figures/cross-section.js';
import { observe } from '../check.js';
import type { Check } from '../check.js';

export const implausibleStress: Check<'lowMPa' | 'highMPa'> = {
  code: 'figures/implausible-stress',
  title: 'Force and diameter of no fishing line',
  severity: 'held',
  looksAt: ['figures', 'ownDiameterMm'],
  explains:
    "The tester's own forces over the tester's own diameters of the spool give a stress that no line has, of whatever material: one of the units, or a digit, is wrong. What the line is plays no part in it.",
  limit: 'Mean breaking force over the circle of the mean diameter.',
  limits: {
    lowMPa: { words: 'Stress of any line, at least', value: 120, unit: 'MPa', atLeast: 1, atMost: 500 },
    highMPa: { words: 'Stress of any line, at most', value: 4500, unit: 'MPa', atLeast: 2000, atMost: 20_000 },
  },
  source: 'Textbook ranges with room, from the weakest monofilament to the strongest fibre; from memory',
  example: 'A line of 0.3 mm that parts at 5 N.',
  run({ figures, ownDiameterMm }, { lowMPa, highMPa }) {
    const mean = figures.breakingForceN?.mean;
    if (mean === undefined || ownDiameterMm === null) return [];
    const stressMPa = mean / circleAreaMm2(ownDiameterMm);
    if (stressMPa >= lowMPa && stressMPa <= highMPa) return [];
    return [
      observe(
        `Your forces over your diameters of this spool make ${stressMPa.toFixed(0)} MPa; lines have ${lowMPa} to ${highMPa} MPa. Check the units of both.`,
        { actual: `${stressMPa.toFixed(0)} MPa`, expected: `${lowMPa} to ${highMPa} MPa` },
      ),
    ];
  },
};
