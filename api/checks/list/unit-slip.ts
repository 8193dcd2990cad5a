import { observe } from '../check.js';
import type { Check } from '../check.js';
import { measuredOverClaimed } from '../measured-over-claimed.js';
import { specimenWords } from '../specimen-words.js';

/** Ratios that mixing up two units leaves behind: kg/lb, lbf/N, kgf/N, inch/mm. */
const SLIPS = [2.2046, 4.448, 9.80665, 25.4].flatMap((factor) => [factor, 1 / factor]);

export const unitSlip: Check<'tolerancePercent'> = {
  code: 'figures/unit-slip',
  title: 'Probable slip of the unit',
  severity: 'held',
  isSealed: true,
  explains:
    'Measured over claimed lies next to the ratio of two units (pounds and kilograms, pounds-force and newtons, kilograms-force and newtons, inches and millimetres).',
  limit: 'Measured over claimed force, diameter and linear density against 2.2046, 4.448, 9.80665, 25.4 and their inverses.',
  limits: { tolerancePercent: { words: 'Nearness that counts as a slip', value: 3, unit: '%', atLeast: 0.5, atMost: 10 } },
  source: 'Ratios of the units themselves; nearness: common practice',
  example: 'A line rated 20 lbf that reads 44 lbf, because the gauge showed kilograms.',
  run(input, { tolerancePercent }) {
    return measuredOverClaimed(input).flatMap(({ words, ratios, specimens }) => {
      const slips = ratios.flatMap((ratio) =>
        SLIPS.filter((factor) => Math.abs(ratio / factor - 1) <= tolerancePercent / 100).map((factor) => ({ ratio, factor })),
      );
      const [slip] = slips;
      if (!slip) return [];
      const [ratio, factor] = [slip.ratio.toFixed(4), slip.factor.toFixed(4)];
      return [
        observe(`Measured over claimed ${words} is ${ratio}, within ${tolerancePercent} % of ${factor}: a slip of the unit is likely.`, {
          actual: ratio,
          expected: 'not near the ratio of two units',
          specimens,
          forTester: `Check the unit of specimens ${specimenWords(specimens)} against the display of the instrument.`,
        }),
      ];
    });
  },
};
