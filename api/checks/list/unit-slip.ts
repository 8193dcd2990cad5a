import { observe } from '../check.js';
import type { Check, Observation } from '../check.js';
import type { CheckInput } from '../check-input.js';
import { measuredOverClaimed } from '../measured-over-claimed.js';
import type { MeasuredOverClaimed } from '../measured-over-claimed.js';
import { commonUnitFactor, unitFactorNear } from '../unit-factors.js';

type LimitName = 'tolerancePercent' | 'leastLines' | 'togetherPercent';
type Limits = Readonly<Record<LimitName, number>>;

export const unitSlip: Check<LimitName> = {
  code: 'figures/unit-slip',
  title: 'Probable slip of the unit',
  severity: 'held',
  looksAt: ['figures', 'specimens', 'variant', 'sameDayRatios'],
  explains:
    'Measured over claimed lies next to the ratio of two units (pounds and kilograms, pounds-force and newtons, kilograms-force and newtons, inches and millimetres); or the lines of one bench day share such a ratio, though no label is exact.',
  limit: 'Measured over claimed force, diameter and linear density against 2.2046, 4.448, 9.80665, 25.4 and their inverses.',
  limits: {
    tolerancePercent: { words: 'Nearness that counts as a slip', value: 3, unit: '%', atLeast: 0.5, atMost: 10 },
    leastLines: {
      words: 'Lines of the tester and bench day that are looked at together, from',
      value: 3,
      unit: '',
      atLeast: 2,
      atMost: 100,
    },
    togetherPercent: { words: 'Nearness of their mean that counts as a slip', value: 20, unit: '%', atLeast: 1, atMost: 40 },
  },
  source: 'Ratios of the units themselves; nearness: common practice',
  example: 'A line rated 20 lbf that reads 44 lbf, because the gauge showed kilograms.',
  run(input, limits) {
    return measuredOverClaimed(input).flatMap((measured) => {
      const found = slipOf(measured, limits) ?? slipOfTheDay(measured, input, limits);
      return found ? [found] : [];
    });
  },
};

function slipOf({ words, ratios, specimens }: MeasuredOverClaimed, { tolerancePercent }: Limits): Observation | null {
  for (const ratio of ratios) {
    const near = unitFactorNear(ratio, tolerancePercent);
    if (!near) continue;
    return slip(
      `Measured over claimed ${words} is ${ratio.toFixed(4)}, within ${tolerancePercent} % of ${near.factor.toFixed(4)}: ${near.words} were probably mixed up.`,
      ratio,
      specimens,
    );
  }
  return null;
}

/** All lines that one gauge pulled on a day have the same slip, whatever their labels are worth. */
function slipOfTheDay(
  { quantity, words, ratios, specimens }: MeasuredOverClaimed,
  { sameDayRatios }: Pick<CheckInput, 'sameDayRatios'>,
  { leastLines, togetherPercent }: Limits,
): Observation | null {
  const [own] = ratios;
  const all = own === undefined || quantity !== 'breakingForce' ? [] : [own, ...sameDayRatios];
  if (own === undefined || all.length < leastLines) return null;
  const common = commonUnitFactor(all, togetherPercent);
  if (!common) return null;
  const message = `Measured over claimed ${words} of ${all.length} lines of this bench day shares the factor ${common.factor.toFixed(4)} (here ${own.toFixed(4)}): ${common.words} were probably mixed up.`;
  return slip(message, own, specimens);
}

const slip = (message: string, ratio: number, specimens: readonly number[]): Observation =>
  observe(message, {
    actual: ratio.toFixed(4),
    expected: 'not near the ratio of two units',
    specimens,
  });
