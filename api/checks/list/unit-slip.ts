import { observe } from '../check.js';
import type { Check, Observation } from '../check.js';
import type { CheckInput } from '../check-input.js';

/** Ratios that mixing up two units leaves behind: kg/lb, lbf/N, kgf/N, inch/mm. */
const SLIPS = [2.2046, 4.448, 9.80665, 25.4].flatMap((factor) => [factor, 1 / factor]);
const TOLERANCE = 0.03;

export const unitSlip: Check = {
  code: 'figures/unit-slip',
  title: 'Probable slip of the unit',
  severity: 'held',
  explains:
    'Measured over claimed lies within 3 % of the ratio of two units (pounds and kilograms, pounds-force and newtons, kilograms-force and newtons, inches and millimetres).',
  limit: 'Within 3 % of 2.2046, 4.448, 9.80665, 25.4 or an inverse.',
  run: (input) => [
    ...slipOf('breakingForce', input.figures.breakingForceN?.mean, 1, input),
    ...slipOf('diameter', input.figures.diameterMm?.mean, 0.001, input),
  ],
};

function slipOf(quantity: string, measured: number | undefined, toSi: number, { variant, specimens }: CheckInput): Observation[] {
  const claim = variant.claims.find((candidate) => candidate.quantity === quantity);
  if (measured === undefined || !claim) return [];
  const ratio = (measured * toSi) / Number(claim.valueSi);
  const slip = SLIPS.find((factor) => Math.abs(ratio / factor - 1) <= TOLERANCE);
  if (slip === undefined) return [];
  const numbers = specimens.filter(({ state }) => state === 'valid').map(({ number }) => number);
  return [
    observe(`Measured over claimed ${quantity} is ${ratio.toFixed(4)}, within 3 % of ${slip.toFixed(4)}: a slip of the unit is likely.`, {
      actual: ratio.toFixed(4),
      expected: 'not near the ratio of two units',
      specimens: numbers,
      forTester: `Check the unit of specimens ${numbers.join(', ')} against the display of the instrument.`,
    }),
  ];
}
