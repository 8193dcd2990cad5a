import type { ReadingRole } from '../../submissions/submission-content.js';
import { observe } from '../check.js';
import type { Check, Observation } from '../check.js';
import type { CheckInput } from '../check-input.js';
import { specimenWords } from '../specimen-words.js';

/** Ratios that mixing up two units leaves behind: kg/lb, lbf/N, kgf/N, inch/mm. */
const SLIPS = [2.2046, 4.448, 9.80665, 25.4].flatMap((factor) => [factor, 1 / factor]);
const TOLERANCE = 0.03;

interface Measured {
  readonly quantity: string;
  readonly words: string;
  readonly valueSi: number | undefined;
  readonly role: ReadingRole;
}

export const unitSlip: Check = {
  code: 'figures/unit-slip',
  title: 'Probable slip of the unit',
  severity: 'held',
  isSealed: true,
  explains:
    'Measured over claimed lies within 3 % of the ratio of two units (pounds and kilograms, pounds-force and newtons, kilograms-force and newtons, inches and millimetres).',
  limit: 'Within 3 % of 2.2046, 4.448, 9.80665, 25.4 or an inverse, for force, diameter and linear density.',
  run(input) {
    const { breakingForceN, diameterMm, linearDensityTex } = input.figures;
    const measured: Measured[] = [
      { quantity: 'breakingForce', words: 'breaking force', valueSi: breakingForceN?.mean, role: 'breakingForce' },
      { quantity: 'diameter', words: 'diameter', valueSi: diameterMm ? diameterMm.mean / 1e3 : undefined, role: 'wideDiameter' },
      {
        quantity: 'linearDensity',
        words: 'linear density',
        valueSi: linearDensityTex ? linearDensityTex.mean / 1e6 : undefined,
        role: 'mass',
      },
    ];
    return measured.flatMap((one) => slipOf(one, input));
  },
};

function slipOf({ quantity, words, valueSi, role }: Measured, { variant, specimens }: CheckInput): Observation[] {
  if (valueSi === undefined) return [];
  const slips = variant.claims
    .filter((claim) => claim.quantity === quantity)
    .map((claim) => valueSi / Number(claim.valueSi))
    .flatMap((ratio) => SLIPS.filter((factor) => Math.abs(ratio / factor - 1) <= TOLERANCE).map((factor) => ({ ratio, factor })));
  const [slip] = slips;
  if (!slip) return [];
  const numbers = specimens
    .filter(({ state, readings }) => state === 'valid' && readings.some((reading) => reading.role === role))
    .map(({ number }) => number);
  return [
    observe(
      `Measured over claimed ${words} is ${slip.ratio.toFixed(4)}, within 3 % of ${slip.factor.toFixed(4)}: a slip of the unit is likely.`,
      {
        actual: slip.ratio.toFixed(4),
        expected: 'not near the ratio of two units',
        specimens: numbers,
        forTester: `Check the unit of specimens ${specimenWords(numbers)} against the display of the instrument.`,
      },
    ),
  ];
}
