import { observe } from '../check.js';
import type { Check } from '../check.js';
import { measuredOverClaimed } from '../measured-over-claimed.js';

export const farFromLabel: Check<'lowPercent' | 'highPercent'> = {
  code: 'figures/far-from-label',
  title: 'Far from what the label says',
  severity: 'held',
  looksAt: ['figures', 'specimens', 'variant'],
  explains:
    'Labels are bold, but not by half: so great a difference more often comes from a spool in the wrong box, a code read wrongly or a wrong unit.',
  limit: 'Measured force, diameter and linear density in per cent of each claim of the label.',
  limits: {
    lowPercent: { words: 'Measured over claimed, at least', value: 50, unit: '%', atLeast: 1, atMost: 95 },
    highPercent: { words: 'Measured over claimed, at most', value: 200, unit: '%', atLeast: 105, atMost: 10_000 },
  },
  source: 'common practice',
  example: 'A spool coded as a 50 lbf line whose pulls read 18 lbf.',
  run(input, { lowPercent, highPercent }) {
    return measuredOverClaimed(input).flatMap(({ words, ratios, specimens }) => {
      const far = ratios.map((ratio) => 100 * ratio).find((percent) => percent < lowPercent || percent > highPercent);
      if (far === undefined) return [];
      return [
        observe(`Measured ${words} is ${far.toFixed(0)} % of the claimed one. Look at the spool, its code and the unit.`, {
          actual: `${far.toFixed(1)} %`,
          expected: `${lowPercent} to ${highPercent} %`,
          specimens,
        }),
      ];
    });
  },
};
